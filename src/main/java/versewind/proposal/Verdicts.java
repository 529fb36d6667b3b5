package versewind.proposal;

import java.util.Optional;
import versewind.rules.BalanceRule;
import versewind.sound.Thresholds;

/** The rules on the balance of a verse, as a search asks them: by a margin alone. */
final class Verdicts {

    private Verdicts() {}

    /** The rule that a margin breaks; none where the organ plays alone, for then nobody judges by it. */
    static Optional<BalanceRule> broken(Requirement requirement, double marginDb) {
        boolean isJudged = requirement.company().isSung() || requirement.role() == Role.UNDER_SOLO;
        return isJudged ? BalanceRule.brokenBy(Thresholds.of(requirement.mode()).verdict(marginDb)) : Optional.empty();
    }

    /** Cost of that. */
    static double weight(Requirement requirement, double marginDb) {
        Optional<BalanceRule> rule = broken(requirement, marginDb);
        return rule.isPresent() ? rule.get().points() : 0;
    }

    /** The sentence of that. */
    static String sentence(BalanceRule rule) {
        return "The estimate says: " + rule.word() + ".";
    }
}
