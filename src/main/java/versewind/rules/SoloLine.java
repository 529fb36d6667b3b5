package versewind.rules;

import java.util.Optional;
import versewind.sound.Estimate;
import versewind.sound.Verdict;

/** A soloed melody stands out from its accompaniment. Source of the thresholds: {@link versewind.sound.Thresholds}. */
final class SoloLine implements VerseRule {

    @Override
    public Optional<UnfixedFinding> judge(InHymn hymn, int verse) {
        Estimate estimate = hymn.estimate(verse);
        return switch (estimate.margin().verdict()) {
            case BURIED ->
                Optional.of(UnfixedFinding.caution(
                        hymn,
                        verse,
                        Rule.MELODY_BURIED,
                        FindingNumbers.balance(estimate),
                        "The soloed melody is " + FindingNumbers.probably(estimate) + "buried in its accompaniment.",
                        () -> mend(hymn, verse)));
            case SOLO_LINE_ONLY_JUST ->
                Optional.of(UnfixedFinding.remark(
                        hymn,
                        verse,
                        Rule.MELODY_ONLY_JUST,
                        FindingNumbers.balance(estimate),
                        "The soloed melody " + FindingNumbers.probably(estimate)
                                + "only just stands out from its accompaniment.",
                        () -> mend(hymn, verse)));
            case NO_TUNE,
                    LOST,
                    LEAD_ONLY_JUST,
                    LEADS,
                    TOO_STRONG,
                    COVERED,
                    VOICE_ONLY_JUST,
                    CLEAR,
                    STANDS_OUT,
                    ORGAN_ALONE -> Optional.empty();
        };
    }

    /** A softer accompaniment if that helps, else a stronger melody. */
    static Optional<Mend> mend(InHymn hymn, int verse) {
        return SmallestChange.to(hymn, verse, Verdict.Way.SOFTER)
                .or(() -> SmallestChange.to(hymn, verse, Verdict.Way.STRONGER));
    }
}
