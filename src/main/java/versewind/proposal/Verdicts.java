package versewind.proposal;

import java.util.Optional;
import versewind.rules.Rule;
import versewind.sound.Thresholds;

/** The rules that speak of a margin: a registration that does not lead, or that covers a voice, breaks one of them. */
final class Verdicts {

    private Verdicts() {}

    /** The rule that a margin breaks; none where the organ plays alone, for then nobody judges by it. */
    static Optional<Rule> broken(Requirement wish, double marginDb) {
        boolean isJudged = wish.company().isSung() || wish.role() == Role.UNDER_SOLO;
        if (!isJudged) {
            return Optional.empty();
        }
        return switch (Thresholds.verdict(wish.mode(), marginDb)) {
            case NO_TUNE -> Optional.of(Rule.NO_TUNE);
            case LOST -> Optional.of(Rule.LEAD_LOST);
            case LEAD_ONLY_JUST -> Optional.of(Rule.LEAD_ONLY_JUST);
            case TOO_STRONG -> Optional.of(Rule.LEAD_TOO_STRONG);
            case COVERED -> Optional.of(Rule.WORDS_COVERED);
            case VOICE_ONLY_JUST -> Optional.of(Rule.WORDS_ONLY_JUST);
            case BURIED -> Optional.of(Rule.MELODY_BURIED);
            case SOLO_LINE_ONLY_JUST -> Optional.of(Rule.MELODY_ONLY_JUST);
            case LEADS, CLEAR, STANDS_OUT, ORGAN_ALONE -> Optional.empty();
        };
    }

    /** What that costs: the rule's weight, and half of it where it is only just kept. */
    static double weight(Requirement wish, double marginDb) {
        Optional<Rule> rule = broken(wish, marginDb);
        return rule.isPresent() ? rule.get().weight() * share(rule.get()) : 0;
    }

    private static double share(Rule rule) {
        boolean isRemark = rule == Rule.LEAD_ONLY_JUST || rule == Rule.WORDS_ONLY_JUST || rule == Rule.MELODY_ONLY_JUST;
        return isRemark ? 0.5 : 1;
    }

    /** What is said of it. */
    static String sentence(Rule rule) {
        return "The estimate says: " + rule.word() + ".";
    }
}
