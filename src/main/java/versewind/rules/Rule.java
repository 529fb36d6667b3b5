package versewind.rules;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * A rule of the trade, one row of the rule book: its condition, its sentence, the change that mends it, and its weight.
 *
 * <p>Source: common practice, no source; the weights are estimates.
 */
public sealed interface Rule permits ChorusRule, PlanRule {

    /** The word, the weight and the usual severity. */
    RuleHead head();

    /** Name in files and on screens: "bare mixture". */
    default String word() {
        return head().word();
    }

    /** Cost of breaking it, from 1 for a matter of taste to 10. */
    default int weight() {
        return head().weight();
    }

    /** Cost where it is broken so badly: the weight, and half of it for a remark. */
    default double points(Severity severity) {
        return weight() * severity.share();
    }

    /** The whole rule book. */
    static Rule[] values() {
        return Stream.of(
                        BalanceRule.values(),
                        VerseRule.values(),
                        ChorusRule.values(),
                        HymnRule.values(),
                        ChangeRule.values())
                .flatMap(Stream::of)
                .toArray(Rule[]::new);
    }

    /** The rule of this word, if there is one. */
    static Optional<Rule> ofWord(String word) {
        return Stream.of(values()).filter(rule -> rule.word().equals(word)).findFirst();
    }
}
