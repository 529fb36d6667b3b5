package versewind.agreement;

import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import versewind.agreement.Fault.Remark;
import versewind.agreement.Program.Said;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;

/**
 * What the mends of findings do, on plans that are spoilt on purpose: a few stops and couplers of one verse moved
 * blindly, the same for the same organ and situation.
 */
final class Mending {

    private static final int MOVED = 4;

    private final Program program;
    private final Instrument organ;
    private final CaseCounts counts;
    private final Subject subject;
    private final String size;
    private final Situation situation;
    private final Random random;

    Mending(Program program, CaseCounts counts, Subject subject, Situation situation) {
        this.program = program;
        this.counts = counts;
        this.subject = subject;
        this.situation = situation;
        organ = subject.organ();
        size = subject.size();
        random = new Random(subject.id().hashCode() * 31L + situation.ordinal());
    }

    /** Spoils one verse of the last hymn, another one in each situation. */
    void measure(Plan drawn) {
        int hymn = drawn.hymns().size() - 1;
        int verses = drawn.hymns().get(hymn).verses().size();
        VersePlace place = new VersePlace(hymn, situation.ordinal() % verses);
        Plan spoilt = spoilt(drawn, place);
        for (Said finding : program.findings(spoilt, place)) {
            if (finding.mended().isPresent()) {
                counts.judged("mends", size);
                mend(spoilt, finding);
            }
        }
    }

    private Plan spoilt(Plan plan, VersePlace place) {
        Verse verse = Program.verse(plan, place);
        Registration drawn = verse.registration();
        for (int i = 0; i < MOVED; i++) {
            drawn = drawn.toggleStop(random.nextInt(organ.stops().size()));
        }
        if (!organ.couplers().isEmpty()) {
            drawn = drawn.toggleCoupler(random.nextInt(organ.couplers().size()));
        }
        return plan.withVerse(place, verse.withRegistration(drawn).withPiston(""));
    }

    private void mend(Plan before, Said finding) {
        Plan after = finding.mended().orElseThrow();
        VersePlace place = finding.place();
        Verse verse = Program.verse(before, place);
        String where = Measurement.where(subject, situation, verse) + finding.sentence() + " > " + finding.mend() + " ";
        List<Said> left = program.findings(after, place);
        if (isSaid(left, finding)) {
            counts.broken(Claim.MEND_WORKS, "does not remove its finding: " + finding.rule(), size, where);
        }
        Set<Remark> were = new HashSet<>(Teacher.hard(organ, before, verse));
        Set<Fault> once = new HashSet<>();
        for (Remark remark : Teacher.hard(organ, after, Program.verse(after, place))) {
            if (!were.contains(remark) && once.add(remark.fault())) {
                counts.broken(
                        Claim.MEND_WORKS,
                        "adds " + remark.fault().word() + ": " + finding.rule(),
                        size,
                        where + remark.sentence());
            }
        }
        for (Said next : left) {
            boolean undoes = next.mended().isPresent()
                    && !isSaid(left, finding)
                    && isSaid(program.mentions(next.mended().get(), place), finding);
            if (undoes) {
                counts.broken(
                        Claim.MEND_WORKS,
                        next.rule() + " undoes " + finding.rule(),
                        size,
                        where + next.sentence() + " > " + next.mend());
            }
        }
    }

    private static boolean isSaid(List<Said> findings, Said finding) {
        return findings.stream()
                .anyMatch(each -> each.rule().equals(finding.rule())
                        && each.place().equals(finding.place())
                        && each.sentence().equals(finding.sentence()));
    }
}
