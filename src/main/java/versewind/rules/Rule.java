package versewind.rules;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * A rule of the trade, one row of the rule book: its condition, its sentence, the change that mends it, and its points.
 *
 * <p>Source: common practice, no source; the points are estimates.
 */
public sealed interface Rule permits ChorusRule, PlanRule {

    /** The word and the points. */
    RuleHead head();

    /** Name in files and on screens: "bare mixture". */
    default String word() {
        return head().word();
    }

    /** Cost of breaking it: 5 to 10 for what nobody does, 1 to 3 for what a teacher would mention. */
    default int points() {
        return head().points();
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
