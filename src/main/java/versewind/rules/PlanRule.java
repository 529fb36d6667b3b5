package versewind.rules;

import java.util.Optional;
import java.util.stream.Stream;

/** A rule on a verse as it sounds, in its hymn and its plan. */
sealed interface PlanRule extends Rule permits BalanceRule, VerseRule, ChangeRule, HymnRule {

    /** How a verse of a hymn breaks the rule, if it does. */
    Optional<Breach> breach(InHymn hymn, int verse);

    /** The rules on a verse and on its place beside the verse before, in the order in which they are judged. */
    static Stream<PlanRule> ofVerse() {
        return Stream.<PlanRule[]>of(BalanceRule.values(), VerseRule.values(), ChangeRule.values())
                .flatMap(Stream::of);
    }
}
