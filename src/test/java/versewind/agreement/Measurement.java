package versewind.agreement;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.agreement.Fault.Remark;
import versewind.agreement.Program.Balance;
import versewind.agreement.Program.Offer;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.RegistrationText;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;

/** One organ in one situation after the other, and whatever disagrees there. */
final class Measurement {

    /** A change that nobody hears as one, in dB. */
    private static final double UNHEARD_DB = 1;

    /** The knobs that a step may move where the organ allows it. */
    private static final int KNOBS_A_STEP = 2;

    private static final Path TABLE = Path.of("target", "agreement.txt");

    private final Program program;
    private final Instrument organ;
    private final CaseCounts counts;
    private final String size;
    private final Set<Verse> climbed = new HashSet<>();

    Measurement(Subject subject, CaseCounts counts) {
        program = new Program(subject.organ());
        organ = subject.organ();
        size = subject.size();
        this.counts = counts;
    }

    /**
     * Everything that is measured, also as a table on the console and in {@code target/agreement.txt}.
     *
     * @param organs beginning of the names of organs; empty for all
     * @param situations beginning of the words for situations; empty for all
     */
    static CaseCounts all(String organs, String situations) {
        CaseCounts counts = new CaseCounts();
        Subject.all()
                .parallel()
                .filter(subject -> subject.id().startsWith(organs))
                .forEach(subject -> {
                    Measurement measurement = new Measurement(subject, counts);
                    Stream.of(Situation.values())
                            .filter(situation -> situation.word().startsWith(situations.replace('-', ' ')))
                            .forEach(measurement::measure);
                });
        print(counts);
        return counts;
    }

    private static void print(CaseCounts counts) {
        System.out.print(counts.table());
        try {
            Files.createDirectories(TABLE.getParent());
            Files.writeString(TABLE, counts.table() + counts.told(counts.rows()));
        } catch (IOException trouble) {
            throw new IllegalStateException(trouble);
        }
    }

    /** Everything that is measured of a situation. */
    void measure(Situation situation) {
        climbed.clear();
        Plan asked = situation.plan(organ);
        Plan drawn = program.proposed(asked);
        for (VersePlace place : places(drawn)) {
            counts.judged("verses proposed", size);
            ofProposal(situation, asked, drawn, place);
        }
        pistons(situation, drawn);
        for (VersePlace place : places(drawn)) {
            five(situation, asked, drawn, place);
        }
        new Mending(program, counts, size).measure(situation, drawn);
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
        String where = where(situation, verse);
        report(Claim.PROPOSAL_KEEPS_TABLE_2, Teacher.hard(organ, drawn, verse), where);
        report(Claim.ORDER, OrderTeacher.order(organ, verse), where);
        report(Claim.MENTIONED, SoftTeacher.mentions(organ, drawn, verse), where);
        report(Claim.PLAN_KEPT, Teacher.fixed(asked, Program.verse(asked, place), verse), where);
        program.mentions(drawn, place).forEach(said -> {
            if (said.rule().equals(Program.TOO_MANY_CHANGES)) {
                counts.broken(Claim.CHANGES_FIT, said.rule(), size, where + said.sentence());
            } else if (said.isCaution() && !isAllThereIs(drawn, place)) {
                counts.broken(Claim.PROPOSAL_HAS_NO_CAUTION, said.rule(), size, where + said.sentence());
            }
        });
    }

    /** Whether a verse out of balance has all, or the least, that the organ can give: then a finding is no contradiction. */
    private boolean isAllThereIs(Plan plan, VersePlace place) {
        Balance balance = program.balance(plan, place);
        boolean isUnbalanced = balance == Balance.TOO_WEAK || balance == Balance.TOO_STRONG;
        return isUnbalanced
                && program.ladder(plan, place, Program.verse(plan, place), balance == Balance.TOO_WEAK)
                        .isEmpty();
    }

    private void report(Claim claim, List<Remark> remarks, String where) {
        Set<Fault> once = new HashSet<>();
        remarks.stream()
                .filter(remark -> once.add(remark.fault()))
                .forEach(remark -> counts.broken(claim, remark.fault().word(), size, where + remark.sentence()));
    }

    /** The organ, the situation and what is drawn, in words. */
    private String where(Situation situation, Verse verse) {
        return where(organ, situation, verse);
    }

    static String where(Instrument organ, Situation situation, Verse verse) {
        return organ.name() + ", " + situation.word() + ", " + verse.label() + " ("
                + verse.hands().layout().word() + ", "
                + organ.divisionNames().get(verse.hands().right()) + "/"
                + organ.divisionNames().get(verse.hands().left()) + ") ["
                + new RegistrationText(organ).format(verse.registration()) + "]: ";
    }

    /** Pistons between neighbours that sound the same. */
    private void pistons(Situation situation, Plan drawn) {
        for (Hymn hymn : drawn.hymns()) {
            for (int i = 1; i < hymn.verses().size(); i++) {
                Verse before = hymn.verses().get(i - 1);
                Verse verse = hymn.verses().get(i);
                boolean isSpent = !verse.piston().isBlank()
                        && !before.piston().isBlank()
                        && !verse.piston().equals(before.piston())
                        && verse.hands().equals(before.hands())
                        && Math.abs(program.levelDba(verse) - program.levelDba(before)) < UNHEARD_DB
                        && colour(verse).equals(colour(before));
                if (isSpent) {
                    counts.broken(
                            Claim.PISTON_EARNED,
                            "under 1 dB and of one colour",
                            size,
                            where(situation, verse) + before.piston() + " and " + verse.piston());
                }
            }
        }
    }

    /** What a listener would name: the families and pitches that the hands sound. */
    private Set<String> colour(Verse verse) {
        return new Speaking(organ, verse.registration(), verse.hands())
                .manuals().stream()
                        .map(voice -> voice.stop().family().word() + " " + voice.feet())
                        .collect(Collectors.toSet());
    }

    private void five(Situation situation, Plan asked, Plan drawn, VersePlace place) {
        List<Offer> offers = program.five(drawn, place);
        Map<Balance, String> balances = new TreeMap<>();
        for (int i = 0; i < offers.size(); i++) {
            Verse verse = offers.get(i).verse();
            Plan with = drawn.withVerse(place, verse);
            String where = where(situation, verse);
            counts.judged("proposals of verses", size);
            report(Claim.PROPOSAL_KEEPS_TABLE_2, Teacher.hard(organ, with, verse), where);
            report(Claim.PLAN_KEPT, Teacher.fixed(asked, Program.verse(asked, place), verse), where);
            if (!program.isPromiseKept(with, place, offers.get(i).why())) {
                counts.broken(
                        Claim.PROMISE_KEPT,
                        program.balance(with, place).name(),
                        size,
                        where + offers.get(i).why());
            }
            balances.putIfAbsent(program.balance(with, place), where);
            alike(situation, offers, i);
            if (climbed.add(verse.withLabel("").withKind(VerseKind.VERSE).withPiston(""))) {
                ladder(situation, with, place, verse, true);
                ladder(situation, with, place, verse, false);
            }
        }
        boolean bestIsGood = !offers.isEmpty()
                && balances.getOrDefault(Balance.GOOD, "")
                        .equals(where(situation, offers.get(0).verse()));
        if (!bestIsGood && balances.containsKey(Balance.GOOD)) {
            counts.broken(
                    Claim.BAND,
                    "another of the five is better balanced than the first",
                    size,
                    balances.get(Balance.GOOD));
        }
    }

    private void alike(Situation situation, List<Offer> offers, int index) {
        Verse verse = offers.get(index).verse();
        for (Offer other : offers.subList(0, index)) {
            boolean isAlike = verse.hands().equals(other.verse().hands())
                    && Math.abs(program.levelDba(verse) - program.levelDba(other.verse())) < UNHEARD_DB
                    && colour(verse).equals(colour(other.verse()));
            if (isAlike) {
                counts.broken(
                        Claim.FIVE_SOUNDS,
                        "same manual, step and colour",
                        size,
                        where(situation, verse) + " beside "
                                + new RegistrationText(organ)
                                        .format(other.verse().registration()));
                return;
            }
        }
    }

    private void ladder(Situation situation, Plan plan, VersePlace place, Verse start, boolean isStronger) {
        Verse before = start;
        for (Verse after : program.ladder(plan, place, start, isStronger)) {
            counts.judged("steps of ladders", size);
            String where = where(situation, before) + (isStronger ? "stronger " : "softer ")
                    + new RegistrationText(organ).format(after.registration()) + ": ";
            Set<Remark> were = new HashSet<>(Teacher.hard(organ, plan, before));
            report(
                    Claim.STEP_KEEPS_TABLE_2,
                    Teacher.hard(organ, plan, after).stream()
                            .filter(remark -> !were.contains(remark))
                            .toList(),
                    where);
            report(Claim.STEP_IN_ORDER, OrderTeacher.step(organ, before, after, isStronger), where);
            double rise = program.levelDba(after) - program.levelDba(before);
            if (isStronger ? rise <= 0 : rise >= 0) {
                counts.broken(
                        Claim.STEP_HEARD, isStronger ? "stronger is not louder" : "softer is not softer", size, where);
            }
            knobs(before, after, where);
            before = after;
        }
    }

    /** Counts what must be moved while it is heard, on the manuals and, with them, in the pedal. */
    private void knobs(Verse before, Verse after, String where) {
        Registration from = before.registration();
        Registration to = after.registration();
        Speaking was = new Speaking(organ, from, before.hands());
        Speaking is = new Speaking(organ, to, after.hands());
        List<Integer> stops = Stream.concat(
                        to.stops().minus(from.stops()).stream().boxed().filter(stop -> was.isHeard(home(stop))),
                        from.stops().minus(to.stops()).stream().boxed().filter(stop -> is.isHeard(home(stop))))
                .toList();
        long pedal = stops.stream()
                .filter(stop -> organ.divisions().get(home(stop)).isPedal())
                .count();
        long couplers = to.couplers().minus(from.couplers()).size()
                + from.couplers().minus(to.couplers()).size();
        if (stops.size() - pedal + couplers > KNOBS_A_STEP) {
            counts.broken(Claim.STEP_HEARD, "more than two knobs of the manuals", size, where);
        }
        if (pedal > KNOBS_A_STEP) {
            counts.broken(Claim.STEP_HEARD, "more than two knobs of the pedal", size, where);
        }
    }

    private int home(int stop) {
        return organ.stops().get(stop).division();
    }
}
