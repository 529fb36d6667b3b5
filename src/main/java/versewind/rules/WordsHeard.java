package versewind.rules;

import java.util.Optional;
import versewind.plan.Mode;
import versewind.sound.Estimate;
import versewind.sound.Verdict;

/** A soloist and a choir are carried, never covered. Source of the thresholds: {@link versewind.sound.Thresholds}. */
final class WordsHeard implements VerseRule {

    @Override
    public Optional<UnfixedFinding> judge(InHymn hymn, int verse) {
        Estimate estimate = hymn.estimate(verse);
        String who = hymn.verse(verse).mode() == Mode.SOLO_VOICE ? "the soloist" : "the choir";
        return switch (estimate.margin().verdict()) {
            case COVERED ->
                Optional.of(UnfixedFinding.caution(
                        hymn,
                        verse,
                        Rule.WORDS_COVERED,
                        FindingNumbers.balance(estimate),
                        "The organ " + FindingNumbers.probably(estimate) + "covers " + who
                                + ": the words are lost in the nave.",
                        () -> Remedy.of(hymn, verse, Verdict.Way.SOFTER)));
            case VOICE_ONLY_JUST ->
                Optional.of(UnfixedFinding.remark(
                        hymn,
                        verse,
                        Rule.WORDS_ONLY_JUST,
                        FindingNumbers.balance(estimate),
                        "The words of " + who + " " + FindingNumbers.probably(estimate) + "only just come through.",
                        () -> Remedy.of(hymn, verse, Verdict.Way.SOFTER)));
            case NO_TUNE,
                    LOST,
                    LEAD_ONLY_JUST,
                    LEADS,
                    TOO_STRONG,
                    CLEAR,
                    BURIED,
                    SOLO_LINE_ONLY_JUST,
                    STANDS_OUT,
                    ORGAN_ALONE -> Optional.empty();
        };
    }
}
