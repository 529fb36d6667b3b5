package versewind.agreement;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.agreement.Fault.Remark;
import versewind.agreement.Program.Balance;
import versewind.agreement.Program.Said;
import versewind.organ.Family;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.RegistrationText;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Plan;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;

/** One organ in one situation after the other, and whatever disagrees there. */
final class Measurement {

    /** A change that nobody hears as one, in dB. */
    static final double UNHEARD_DB = 1;

    private static final Path TABLE = Path.of("target", "agreement.txt");

    private final Program program;
    private final Instrument organ;
    private final CaseCounts counts;
    private final String size;
    private final Subject subject;
    private final Extent extent;

    private Measurement(Subject subject, Extent extent, CaseCounts counts) {
        this.subject = subject;
        this.extent = extent;
        program = new Program(subject.organ());
        organ = subject.organ();
        size = subject.size();
        this.counts = counts;
    }

    /** Of how many verses of a plan every proposal and its ladder is judged. */
    enum Extent {
        /** Another one in each situation. */
        ONE_VERSE,
        EVERY_VERSE
    }

    /**
     * Everything that is measured, also as a table on the console and in {@code target/agreement.txt}.
     *
     * @param subjects on which organs
     * @param situations beginning of the words for situations; empty for all
     * @param extent how many verses
     */
    static CaseCounts of(Predicate<Subject> subjects, String situations, Extent extent) {
        CaseCounts counts = new CaseCounts();
        // chosen by the caller's thread: a test class that is still being initialized would wait for itself
        List<Subject> chosen = Subject.all().filter(subjects).toList();
        chosen.parallelStream().forEach(subject -> {
            Measurement measurement = new Measurement(subject, extent, counts);
            Stream.of(Situation.values())
                    .filter(situation -> situation.word().startsWith(situations.replace('-', ' ')))
                    .forEach(measurement::measure);
            write(counts);
        });
        System.out.print(counts.table());
        return counts;
    }

    private static synchronized void write(CaseCounts counts) {
        try {
            Files.createDirectories(TABLE.getParent());
            Files.writeString(TABLE, counts.table() + counts.told(counts.rows()));
        } catch (IOException trouble) {
            throw new IllegalStateException(trouble);
        }
    }

    private void measure(Situation situation) {
        Plan asked = situation.plan(organ);
        Plan drawn = program.proposed(asked);
        for (VersePlace place : places(drawn)) {
            counts.judged("verses proposed", size);
            ofProposal(situation, asked, drawn, place);
        }
        hymns(situation, drawn);
        new FiveOffers(program, counts, subject, situation).measure(asked, drawn, extent);
        new Reasons(program, counts, subject, situation).measure(asked);
        new Mending(program, counts, subject, situation).measure(drawn);
    }

    static List<VersePlace> places(Plan plan) {
        return IntStream.range(0, plan.hymns().size())
                .boxed()
                .flatMap(hymn -> IntStream.range(
                                0, plan.hymns().get(hymn).verses().size())
                        .mapToObj(verse -> new VersePlace(hymn, verse)))
                .toList();
    }

    private void ofProposal(Situation situation, Plan asked, Plan drawn, VersePlace place) {
        Verse verse = Program.verse(drawn, place);
        String where = where(subject, situation, verse);
        report(Claim.PROPOSAL_KEEPS_TABLE_2, Teacher.hard(organ, drawn, verse), where);
        report(Claim.ORDER, OrderTeacher.order(organ, verse), where);
        report(Claim.MENTIONED, SoftTeacher.mentions(organ, drawn, verse), where);
        if (hasReedsThoughFluesSurelyLead(drawn, place)) {
            report(Claim.MENTIONED, List.of(Fault.REED_THOUGH_FLUES_LEAD.says("The flues lead by themselves.")), where);
        }
        report(Claim.PLAN_KEPT, Teacher.fixed(asked, Program.verse(asked, place), verse), where);
        for (Said said : program.mentions(drawn, place)) {
            if (said.rule().equals(Program.TOO_MANY_CHANGES)) {
                counts.broken(Claim.CHANGES_FIT, said.rule(), size, where + said.sentence());
            } else if (said.isCaution() && !isAllThereIs(drawn, place)) {
                counts.broken(Claim.PROPOSAL_HAS_NO_CAUTION, said.rule(), size, where + said.sentence());
            }
        }
    }

    /** Whether a plain verse of the people has chorus reeds, and leads surely without them too. */
    private boolean hasReedsThoughFluesSurelyLead(Plan plan, VersePlace place) {
        Verse verse = Program.verse(plan, place);
        IndexSet reeds = IndexSet.of(verse.registration().stops().stream()
                .filter(stop -> organ.stops().get(stop).stop().family() == Family.CHORUS_REED));
        boolean isPlain = verse.isSung()
                && verse.mode() == Mode.CONGREGATION
                && verse.mood() == Mood.PLAIN
                && verse.kind() == VerseKind.VERSE
                && verse.singing().compareTo(Singing.ORDINARY) <= 0;
        Verse without = verse.withRegistration(
                verse.registration().withStops(verse.registration().stops().minus(reeds)));
        return isPlain
                && !reeds.isEmpty()
                && Teacher.hard(organ, plan, without).isEmpty()
                && program.surelyLeads(plan.withVerse(place, without), place);
    }

    /** Whether a verse out of balance has all, or the least, that the organ can give: then it cannot be helped. */
    private boolean isAllThereIs(Plan plan, VersePlace place) {
        Balance balance = program.balance(plan, place);
        boolean isUnbalanced = balance == Balance.TOO_WEAK || balance == Balance.TOO_STRONG;
        return isUnbalanced
                && program.ladder(plan, place, Program.verse(plan, place), balance == Balance.TOO_WEAK)
                        .isEmpty();
    }

    private void report(Claim claim, List<Remark> remarks, String where) {
        counts.broken(claim, remarks, size, where);
    }

    /** The organ, the situation and what is drawn, in words. */
    static String where(Subject subject, Situation situation, Verse verse) {
        List<String> divisions = subject.organ().divisionNames();
        return subject.id() + ", " + situation.word() + ", " + verse.label() + " ("
                + verse.hands().layout().word() + ", "
                + divisions.get(verse.hands().right()) + "/"
                + divisions.get(verse.hands().left()) + ") ["
                + new RegistrationText(subject.organ()).format(verse.registration()) + "]: ";
    }

    private void hymns(Situation situation, Plan drawn) {
        for (VersePlace first :
                places(drawn).stream().filter(place -> place.verse() == 0).toList()) {
            int index = first.hymn();
            Hymn hymn = drawn.hymns().get(index);
            boolean mayBeginSofter = mayBeginSofter(drawn, index);
            Set<Fault> once = new HashSet<>();
            HymnTeacher.mentions(drawn, hymn, program::levelDba).stream()
                    .filter(remark -> once.add(remark.fault()))
                    .filter(remark -> remark.fault() != Fault.NO_GROWTH || mayBeginSofter)
                    .filter(remark -> remark.fault() != Fault.THREE_ALIKE || hasChoice(drawn, third(drawn, index)))
                    .forEach(remark -> counts.broken(
                            Claim.MENTIONED, remark.fault().word(), size, inLevels(situation, hymn, remark)));
            pistons(situation, hymn);
        }
        report(Claim.MENTIONED, HymnTeacher.pistons(organ, drawn), subject.id() + ", " + situation.word() + ": ");
    }

    /** The first verse that is the third with one sound. */
    private static VersePlace third(Plan drawn, int hymn) {
        List<Verse> verses = drawn.hymns().get(hymn).verses();
        return IntStream.range(2, verses.size())
                .filter(verse -> verses.subList(verse - 2, verse).stream()
                        .allMatch(other -> other.isSung()
                                && other.played().equals(verses.get(verse).played())))
                .mapToObj(verse -> new VersePlace(hymn, verse))
                .findFirst()
                .orElseThrow();
    }

    /** Whether another sound, a step away, would be as good: in balance too, and leading as surely. */
    private boolean hasChoice(Plan drawn, VersePlace place) {
        Verse verse = Program.verse(drawn, place);
        boolean isSure = program.surelyLeads(drawn, place);
        return Stream.of(true, false)
                .flatMap(isStronger ->
                        program.ladder(drawn, place, verse, isStronger).stream().limit(1))
                .filter(other -> SoftTeacher.mentions(organ, drawn, other).isEmpty())
                .map(other -> drawn.withVerse(place, other))
                .anyMatch(other -> program.balance(other, place) == Balance.GOOD
                        && (!isSure || program.surelyLeads(other, place)));
    }

    /** Whether the first verse that is sung still leads a step softer. */
    private boolean mayBeginSofter(Plan drawn, int hymn) {
        List<Verse> verses = drawn.hymns().get(hymn).verses();
        VersePlace first = new VersePlace(
                hymn,
                IntStream.range(0, verses.size())
                        .filter(verse -> verses.get(verse).isSung())
                        .findFirst()
                        .orElse(0));
        return program.ladder(drawn, first, Program.verse(drawn, first), false).stream()
                .limit(1)
                .anyMatch(softer -> program.balance(drawn.withVerse(first, softer), first) == Balance.GOOD);
    }

    private String inLevels(Situation situation, Hymn hymn, Remark remark) {
        return subject.id() + ", " + situation.word() + ": " + remark.sentence() + " "
                + hymn.verses().stream()
                        .map(verse -> verse.label() + " " + Math.round(program.levelDba(verse)) + " dB ["
                                + new RegistrationText(organ).format(verse.registration()) + "]")
                        .collect(Collectors.joining(" "));
    }

    /** Pistons between neighbours that sound the same. */
    private void pistons(Situation situation, Hymn hymn) {
        for (int i = 1; i < hymn.verses().size(); i++) {
            Verse before = hymn.verses().get(i - 1);
            Verse verse = hymn.verses().get(i);
            boolean isSpent = !verse.piston().isBlank()
                    && !before.piston().isBlank()
                    && !verse.piston().equals(before.piston())
                    && isAlike(program, verse, before);
            if (isSpent) {
                counts.broken(
                        Claim.PISTON_EARNED,
                        "under 1 dB and of one colour",
                        size,
                        where(subject, situation, verse) + before.piston() + " and " + verse.piston());
            }
        }
    }

    /** Whether two verses are one sound: the same manuals, less than 1 dB apart, and of one colour. */
    static boolean isAlike(Program program, Verse one, Verse other) {
        return one.hands().equals(other.hands())
                && Math.abs(program.levelDba(one) - program.levelDba(other)) < UNHEARD_DB
                && colour(program.organ(), one).equals(colour(program.organ(), other));
    }

    /** What a listener would name: the families and pitches that the hands sound. */
    private static Set<String> colour(Instrument organ, Verse verse) {
        return new Speaking(organ, verse.registration(), verse.hands())
                .manuals().stream()
                        .map(stop -> stop.stop().family().word() + " " + stop.feet())
                        .collect(Collectors.toSet());
    }
}
