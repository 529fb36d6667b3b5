package versewind.proposal;

import java.util.Optional;
import versewind.rules.BalanceRule;
import versewind.sound.Thresholds;

/** The rules on the balance of a verse, as a search asks them: by a margin alone. */
final class Verdicts {

    private Verdicts() {}

    /** The rule that a margin breaks; none where the organ plays alone, for then nobody judges by it. */
    static Optional<BalanceRule> broken(Requirement wish, double marginDb) {
        boolean isJudged = wish.company().isSung() || wish.role() == Role.UNDER_SOLO;
        return isJudged ? BalanceRule.brokenBy(Thresholds.of(wish.mode()).verdict(marginDb)) : Optional.empty();
    }

    /** Cost of that. */
    static double weight(Requirement wish, double marginDb) {
        Optional<BalanceRule> rule = broken(wish, marginDb);
        return rule.isPresent() ? rule.get().points() : 0;
    }

    /** The sentence of that. */
    static String sentence(BalanceRule rule) {
        return "The estimate says: " + rule.word() + ".";
    }
}
