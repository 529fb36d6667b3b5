package versewind.proposal;

import java.util.Optional;
import versewind.plan.Verse;
import versewind.rules.BalanceRule;
import versewind.rules.PlayedRegistration;
import versewind.rules.VerseRule;
import versewind.sound.ClearShare;
import versewind.sound.OrganSound;
import versewind.sound.Verdict;

/** The balance of one verse with its singers, draft after draft. Belongs to one thread, as the sound does. */
final class VerseBalance {

    /** Cost of a verdict that is only just right. */
    private static final double ONLY_JUST = 1.5;

    private final OrganSound sound;
    private final Requirement requirement;
    private final ClearShare shares;

    /**
     * Prepares for a verse.
     *
     * @param sound the instrument
     * @param requirement what the verse wants
     * @param weighed the verse as it is weighed
     * @param people number of people at the service
     */
    VerseBalance(OrganSound sound, Requirement requirement, Verse weighed, int people) {
        this.sound = sound;
        this.requirement = requirement;
        shares = sound.clearShare(weighed, people);
    }

    /** The share, 0 to 1. */
    double of(Draft draft) {
        return shares.of(draft.registration(), draft.hands());
    }

    /** Level of the organ in dB(A). */
    double levelDba(Draft draft) {
        return sound.levelDba(draft.registration(), draft.hands());
    }

    /** Adds what a tune on the weaker of two manuals costs. */
    void addCrossed(PlayedRegistration played, double share, Rows rows) {
        Verdict verdict = Verdict.of(requirement.mode(), share);
        boolean isCrossed = VerseRule.isCrossed(
                sound, played, verdict, requirement.company().isSung());
        rows.add(PartKind.FAULT, isCrossed ? VerseRule.HANDS_CROSSED.points() : 0, () -> VerseRule.ofCrossed(played));
    }

    /** Adds what the verdict on a share costs; nothing where the organ plays alone, for then nobody judges by it. */
    void addVerdict(double share, Rows rows) {
        if (!requirement.company().isSung() && !requirement.isOfTune()) {
            return;
        }
        Verdict verdict = Verdict.of(requirement.mode(), share);
        Optional<BalanceRule> broken = BalanceRule.brokenBy(verdict);
        double points = broken.map(BalanceRule::points).orElse(0);
        boolean isRight = verdict.way() == Verdict.Way.NONE;
        rows.add(
                PartKind.VERDICT,
                isRight ? 0 : Math.max(ONLY_JUST, points),
                () -> "The estimate says: " + verdict.word() + ".");
    }
}
