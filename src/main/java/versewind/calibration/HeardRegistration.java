package versewind.calibration;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import versewind.organ.DayWords;
import versewind.organ.Quoted;
import versewind.organ.Registration;
import versewind.plan.Feedback;
import versewind.plan.HandsAndFeet;
import versewind.plan.HeardAs;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.Singing;
import versewind.plan.SungBy;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.sound.FeltVerses;
import versewind.sound.OrganSound;

/**
 * A registration that the organist has heard with singers, and the judgement of it: one that is usually drawn, or one
 * of a service.
 *
 * @param name what the organist calls it, "ordinary", or the verse it was played for
 * @param by who sings: trebles, or the usual singers whom the organ accompanies so
 * @param singing how strongly they sing
 * @param people number of people present, 1 to 50000
 * @param voices the singers of a small choir
 * @param hands the layout of hands and feet
 * @param registration what is drawn
 * @param heard the judgement
 */
public record HeardRegistration(
        String name,
        SungBy by,
        Singing singing,
        int people,
        OptionalInt voices,
        HandsAndFeet hands,
        Registration registration,
        HeardAs heard) {

    private static final String APART = ", ";
    private static final Pattern DAY = Pattern.compile("\\d{4}-\\d\\d-\\d\\d, ");
    private static final int DAY_LENGTH = 10;

    public HeardRegistration {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a registration is kept under a name");
        }
        by = by == SungBy.TREBLES ? by : SungBy.of(by.mode());
    }

    /** Whom the organ accompanies. */
    public Mode mode() {
        return by.mode();
    }

    /** True if singers of the same kind sing as strongly: only such judgements can be held against each other. */
    boolean isSungAs(Mode other, Singing otherwise) {
        return mode() == other && singing == otherwise;
    }

    /**
     * A verse as it was heard.
     *
     * @param name under which it is kept
     * @param feedback on the verse
     */
    public static HeardRegistration of(String name, Verse verse, Feedback feedback) {
        return new HeardRegistration(
                name,
                verse.sungBy(),
                verse.singing(),
                feedback.present(),
                verse.mode() == Mode.SMALL_CHOIR ? verse.people() : OptionalInt.empty(),
                verse.hands(),
                feedback.played().orElse(verse.registration()),
                feedback.heard());
    }

    /** The verses of a plan on which there is feedback, each named by its service, hymn and label. */
    public static List<HeardRegistration> of(Plan plan) {
        String service = plan.heading()
                .date()
                .map(LocalDate::toString)
                .orElse(plan.heading().title());
        return plan.hymns().stream()
                .flatMap(hymn -> hymn.verses().stream()
                        .filter(verse -> verse.isSung() || verse.mode() == Mode.MELODY_SOLOED)
                        .flatMap(verse -> verse.answer().stream()
                                .map(answer -> sungAsUsual(plan, verse, answer))
                                .map(answer -> of(name(service, hymn, verse), verse, answer))))
                .toList();
    }

    /**
     * The feedback with as many people as sing as usual where there are as many singers: of a verse with a number of
     * its own so many fewer or more than planned as came to the service, and of a verse that only some sing only those.
     */
    private static Feedback sungAsUsual(Plan plan, Verse verse, Feedback answer) {
        if (verse.mode() != Mode.CONGREGATION) {
            return answer;
        }
        int expected = plan.heading().people();
        double present = answer.present() * (verse.people().orElse(expected) / (double) expected);
        int people = verse.sung().asUsual((int) Math.round(present));
        return new Feedback(answer.heard(), Math.max(1, Math.min(Verse.MOST_PEOPLE, people)), answer.played());
    }

    /** The service of an answer, as its name begins: its day, "2026-11-22", or its title. */
    public String service() {
        return DAY.matcher(name).lookingAt()
                ? name.substring(0, DAY_LENGTH)
                : name.substring(0, Math.max(0, name.lastIndexOf(APART)));
    }

    /** The day of its service, "2026-11-22", where its name begins with one. */
    Optional<String> day() {
        return Optional.of(service()).filter(day -> DAY.matcher(name).lookingAt());
    }

    /** A service as people say it: "Sun 22 Nov 2026", or its title. */
    static String said(String service) {
        return DAY.matcher(service + APART).matches() ? DayWords.of(LocalDate.parse(service)) : service;
    }

    /** What it is called by people: "V5 of 208 on Sun 22 Nov 2026"; of what is usual its name: "your \"ordinary\"". */
    public String inWords() {
        int end = name.lastIndexOf(' ');
        if (service().isEmpty() || end <= service().length() + 1) {
            return "your " + Quoted.text(name);
        }
        String hymn = name.substring(service().length() + APART.length(), end);
        String on = DAY.matcher(name).lookingAt() ? " on " : ", ";
        return name.substring(end + 1) + " of " + hymn + on + said(service());
    }

    /** The same beside another: of the same hymn the verse alone, "V4". */
    String besides(HeardRegistration other) {
        int end = name.lastIndexOf(' ') + 1;
        boolean isSameHymn = !service().isEmpty() && other.name.startsWith(name.substring(0, end));
        return isSameHymn ? name.substring(end) : inWords();
    }

    private static String name(String service, Hymn hymn, Verse verse) {
        return service + APART + (hymn.number().isBlank() ? hymn.title() : hymn.number()) + " " + verse.label();
    }

    /** True if a verse is heard and sung just as it was when this was heard; see {@link FeltVerses#areAlike}. */
    boolean isAlike(OrganSound sound, Verse other, int otherPeople) {
        return isOf(sound, sound.heard(other), otherPeople);
    }

    /** The same for a verse as it is {@link OrganSound#heard}, which is worked out once for many. */
    boolean isOf(OrganSound sound, Verse asHeard, int otherPeople) {
        return hands.equals(asHeard.hands()) && FeltVerses.areAlike(sound.heard(verse()), people, asHeard, otherPeople);
    }

    /** A verse that is played and judged so. */
    public Verse verse() {
        return new Verse(VerseKind.VERSE, name, mode(), singing, voices, hands, registration, "", "")
                .withSungBy(by)
                .withAnswer(Optional.of(new Feedback(heard, people)));
    }
}
