package versewind.calibration;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import versewind.organ.IndexSet;
import versewind.plan.Plan;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.sound.OrganSound;

/**
 * What an organist knows of an organ without a meter.
 *
 * @param usual the registrations that are usually drawn, {@value #MOST_USUAL} at most, each under a name of its own
 * @param answers feedback after services, the latest last; of more than {@value #MOST_ANSWERS} the earliest are
 *     dropped, which add little beside the later ones, since all share the organist's taste
 */
public record Experience(List<HeardRegistration> usual, List<HeardRegistration> answers) {

    /** The most usual registrations: more are no longer usual. */
    public static final int MOST_USUAL = 12;

    private static final int MOST_ANSWERS = 40;
    private static final double STRENGTH_DB = 4;

    /** Nothing is known yet. */
    public static final Experience NONE = new Experience(List.of(), List.of());

    public Experience {
        usual = List.copyOf(usual);
        answers = List.copyOf(answers.subList(Math.max(0, answers.size() - MOST_ANSWERS), answers.size()));
        if (usual.size() > MOST_USUAL) {
            throw new IllegalArgumentException("an organ keeps up to " + MOST_USUAL + " usual registrations");
        }
        if (usual.stream().map(HeardRegistration::name).distinct().count() < usual.size()) {
            throw new IllegalArgumentException("two usual registrations have the same name");
        }
    }

    /** Everything that was heard: what is usual, then the answers. */
    public List<HeardRegistration> all() {
        return Stream.of(usual, answers).flatMap(List::stream).toList();
    }

    /** The usual registration of this name. */
    public Optional<HeardRegistration> usual(String name) {
        return usual.stream().filter(each -> each.name().equals(name)).findFirst();
    }

    /**
     * The usual registration by which a verse is measured: of those for the same singers the one for the nearest level
     * of singing, which grows by 10 lg of the people and by about 4 dB from one strength to the next (ANSI S3.5-1997,
     * the levels of voices). Empty where nobody sings.
     *
     * @param people present
     */
    public Optional<HeardRegistration> nearest(Verse verse, int people) {
        return nearest(usual.stream(), verse, people);
    }

    static Optional<HeardRegistration> nearest(Stream<HeardRegistration> some, Verse verse, int people) {
        return some.filter(each -> verse.isSung() && each.mode() == verse.mode())
                .min(Comparator.comparingDouble(each -> Math.abs(10 * Math.log10((double) people / each.people())
                        + STRENGTH_DB
                                * (verse.singing().ordinal() - each.singing().ordinal()))));
    }

    /** What is usually drawn where people sing no more strongly than is usual. */
    public IndexSet usualStops() {
        return usual.stream()
                .filter(each -> each.singing().compareTo(Singing.ORDINARY) <= 0)
                .map(each -> each.registration().stops())
                .reduce(IndexSet.EMPTY, IndexSet::plus);
    }

    /** What a usual registration is called where a verse is measured by it: the only one needs no name. */
    public String called(HeardRegistration one) {
        return usual.size() == 1 ? "your usual" : "\"" + one.name() + "\"";
    }

    /** With a usual registration, in place of the one of its name. */
    public Experience keeping(HeardRegistration one) {
        List<HeardRegistration> more = new ArrayList<>(usual);
        int place = usual.stream().map(HeardRegistration::name).toList().indexOf(one.name());
        if (place < 0) {
            more.add(one);
        } else {
            more.set(place, one);
        }
        return new Experience(more, answers);
    }

    /** The service that was answered last, if any was. */
    Optional<String> lastService() {
        return answers.isEmpty()
                ? Optional.empty()
                : Optional.of(answers.get(answers.size() - 1).service());
    }

    /** The day of the last service that was answered, if it is known. */
    Optional<String> lastDay() {
        return answers.isEmpty()
                ? Optional.empty()
                : answers.get(answers.size() - 1).day();
    }

    /** The answers on a service. */
    List<HeardRegistration> answersOn(String service) {
        return answers.stream().filter(each -> each.service().equals(service)).toList();
    }

    /**
     * The last answer on a verse that was heard and sung just so, in this service or an earlier one.
     *
     * @param sound the organ
     * @param people present
     */
    public Optional<HeardRegistration> lastHeard(OrganSound sound, Verse verse, int people) {
        Verse heard = answers.isEmpty() ? verse : sound.heard(verse);
        for (int place = answers.size() - 1; place >= 0; place--) {
            if (answers.get(place).isOf(sound, heard, people)) {
                return Optional.of(answers.get(place));
            }
        }
        return Optional.empty();
    }

    /** The feedback on the verses of a plan that is not among the answers. */
    public List<HeardRegistration> unkept(Plan plan) {
        return HeardRegistration.of(plan).stream()
                .filter(each -> !answers.contains(each))
                .toList();
    }

    /** With feedback on the verses of a plan, in place of earlier answers on the same verses. */
    public Experience keepingAnswers(Plan plan) {
        List<HeardRegistration> more = HeardRegistration.of(plan);
        List<String> names = more.stream().map(HeardRegistration::name).toList();
        return new Experience(
                usual,
                Stream.concat(answers.stream().filter(each -> !names.contains(each.name())), more.stream())
                        .toList());
    }

    /** Without a usual registration or an answer. */
    public Experience without(HeardRegistration one) {
        return new Experience(
                usual.stream().filter(each -> !each.equals(one)).toList(),
                answers.stream().filter(each -> !each.equals(one)).toList());
    }
}
