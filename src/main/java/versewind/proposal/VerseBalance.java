package versewind.proposal;

import versewind.plan.Verse;
import versewind.rules.BalanceRule;
import versewind.sound.MarginEvaluator;
import versewind.sound.OrganSound;
import versewind.sound.Thresholds;

/** The balance of one verse with its singers, draft after draft. Belongs to one thread, as the sound does. */
final class VerseBalance {

    private final OrganSound sound;
    private final Requirement requirement;
    private final MarginEvaluator margins;

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
        margins = sound.marginEvaluator(weighed, people);
    }

    /** The balance, in the unit of {@link Target}. */
    double of(Draft draft) {
        return margins.marginDb(draft.registration(), draft.hands());
    }

    /** Level of the organ in dB(A). */
    double levelDba(Draft draft) {
        return sound.levelDba(draft.registration(), draft.hands());
    }

    /** Adds the rule that a balance breaks; none where the organ plays alone, for then nobody judges by it. */
    void addBroken(double balance, Rows rows) {
        boolean isJudged = requirement.company().isSung() || requirement.isOfTune();
        if (isJudged) {
            BalanceRule.brokenBy(Thresholds.of(requirement.mode()).verdict(balance))
                    .ifPresent(rule ->
                            rows.add(PartKind.VERDICT, rule.points(), () -> "The estimate says: " + rule.word() + "."));
        }
    }
}
