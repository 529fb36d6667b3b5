package versewind.agreement;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.agreement.Fault.Remark;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Plan;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;

/** A teacher who listens to a hymn from its introduction to its end. Only the levels are the program's own. */
final class HymnTeacher {

    /** What is heard as a difference, in dB. */
    private static final double HEARD_DB = 1;

    /** By how much an introduction may be louder than the organ in its verse, in dB. */
    private static final double INTRODUCTION_DB = 4;

    /** The widest step between verses of the same singers, in dB. */
    private static final double LEAP_DB = 8;

    private static final int ALIKE = 3;

    private final Plan plan;
    private final Hymn hymn;
    private final ToDoubleFunction<Verse> levelDba;
    private final List<Remark> remarks = new ArrayList<>();

    private HymnTeacher(Plan plan, Hymn hymn, ToDoubleFunction<Verse> levelDba) {
        this.plan = plan;
        this.hymn = hymn;
        this.levelDba = levelDba;
    }

    /** What could be better in a hymn that has something drawn in every verse. */
    static List<Remark> mentions(Plan plan, Hymn hymn, ToDoubleFunction<Verse> levelDba) {
        HymnTeacher teacher = new HymnTeacher(plan, hymn, levelDba);
        teacher.introduction();
        teacher.growth();
        teacher.neighbours();
        return List.copyOf(teacher.remarks);
    }

    private void say(boolean isBroken, Fault fault, String sentence) {
        if (isBroken) {
            remarks.add(fault.says(sentence));
        }
    }

    private List<Verse> sung() {
        return hymn.verses().stream().filter(Verse::isSung).toList();
    }

    private void introduction() {
        Verse first = hymn.verses().get(0);
        if (first.kind() != VerseKind.INTRODUCTION || sung().isEmpty()) {
            return;
        }
        double introduction = levelDba.applyAsDouble(first);
        double loudest = sung().stream().mapToDouble(levelDba).max().orElseThrow();
        say(
                introduction > loudest + HEARD_DB,
                Fault.LOUDEST_ON_INTRODUCTION,
                "The introduction is louder than every verse.");
        say(
                introduction >= levelDba.applyAsDouble(sung().get(0)) + INTRODUCTION_DB,
                Fault.INTRODUCTION_LOUDER,
                "The introduction is 4 dB louder than the organ in its verse.");
    }

    private void growth() {
        List<Verse> people = sung().stream()
                .filter(verse -> verse.mode() == Mode.CONGREGATION)
                .toList();
        if (people.size() < 2) {
            return;
        }
        Verse last = people.get(people.size() - 1);
        Verse before = people.get(people.size() - 2);
        boolean isHeldBack = last.mood() == Mood.GENTLE || last.singing() == Singing.GENTLE;
        say(
                !isHeldBack
                        && isOfSameSingers(before, last)
                        && levelDba.applyAsDouble(last) < levelDba.applyAsDouble(before) - HEARD_DB,
                Fault.LAST_VERSE_WEAKER,
                "The last verse is weaker than the one before.");
        say(
                people.size() > 2
                        && Teacher.isFestal(plan, last)
                        && isOfSameSingers(people.get(0), last)
                        && levelDba.applyAsDouble(last) < levelDba.applyAsDouble(people.get(0)) + HEARD_DB,
                Fault.NO_GROWTH,
                "A festal hymn does not grow from first to last verse.");
    }

    private static boolean isOfSameSingers(Verse one, Verse other) {
        return one.sung().equals(other.sung());
    }

    private void neighbours() {
        List<Verse> verses = hymn.verses();
        int alike = 1;
        for (int i = 1; i < verses.size(); i++) {
            Verse before = verses.get(i - 1);
            Verse verse = verses.get(i);
            boolean isCompared = before.isSung() && verse.isSung();
            double stepDb = levelDba.applyAsDouble(verse) - levelDba.applyAsDouble(before);
            say(
                    isCompared && isOfSameSingers(before, verse) && Math.abs(stepDb) > LEAP_DB,
                    Fault.LEAP,
                    "More than 8 dB lie between " + before.label() + " and " + verse.label() + ".");
            alike = isCompared && before.played().equals(verse.played()) ? alike + 1 : 1;
            say(alike == ALIKE, Fault.THREE_ALIKE, verse.label() + " is the third verse with one sound.");
        }
    }

    /** What could be better in the pistons of a plan; a piston of a division is compared with others of it. */
    static List<Remark> pistons(Instrument organ, Plan plan) {
        Map<String, List<Registration>> set = new TreeMap<>();
        plan.hymns().stream()
                .flatMap(hymn -> hymn.verses().stream())
                .filter(verse -> !verse.piston().isBlank())
                .forEach(verse -> Stream.of(verse.piston().split(", ", -1))
                        .forEach(piston -> set.computeIfAbsent(piston, key -> new ArrayList<>())
                                .add(reached(organ, piston, verse.registration()))));
        List<Remark> remarks = new ArrayList<>();
        set.forEach((piston, registrations) -> {
            if (registrations.stream().distinct().count() > 1) {
                remarks.add(Fault.PISTON_OF_TWO_MEANINGS.says(piston + " sets different registrations."));
            }
        });
        Map<List<Object>, List<String>> by = set.entrySet().stream()
                .collect(Collectors.groupingBy(
                        entry -> List.of(
                                division(organ, entry.getKey()),
                                entry.getValue().get(0)),
                        Collectors.mapping(Map.Entry::getKey, Collectors.toList())));
        by.values().stream()
                .filter(pistons -> pistons.size() > 1)
                .sorted(Comparator.comparing(Object::toString))
                .forEach(pistons ->
                        remarks.add(Fault.PISTONS_ALIKE.says(String.join(" and ", pistons) + " are set alike.")));
        return remarks;
    }

    /** The division of a piston; empty for a general. */
    private static Optional<Integer> division(Instrument organ, String piston) {
        return IntStream.range(0, organ.divisions().size())
                .filter(division ->
                        piston.contains(organ.divisions().get(division).name()))
                .boxed()
                .findFirst();
    }

    /** What a piston sets: everything but the boxes, or the stops of its division. */
    private static Registration reached(Instrument organ, String piston, Registration drawn) {
        return division(organ, piston)
                .map(division -> new Registration(
                        IndexSet.of(drawn.stops().stream()
                                .filter(stop -> organ.stops().get(stop).division() == division)),
                        IndexSet.EMPTY,
                        IndexSet.EMPTY,
                        Collections.emptyList()))
                .orElseGet(() ->
                        new Registration(drawn.stops(), drawn.couplers(), drawn.tremulants(), Collections.emptyList()));
    }
}
