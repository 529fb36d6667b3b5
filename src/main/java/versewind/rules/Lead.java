package versewind.rules;

import java.util.Optional;
import versewind.plan.Verse;
import versewind.sound.Estimate;
import versewind.sound.Verdict;

/** The people hear their leader, and are not driven. Source of the thresholds: {@link versewind.sound.Thresholds}. */
final class Lead implements VerseRule {

    @Override
    public Optional<UnfixedFinding> judge(InHymn hymn, int verse) {
        Estimate estimate = hymn.estimate(verse);
        return switch (estimate.margin().verdict()) {
            case NO_TUNE ->
                Optional.of(UnfixedFinding.caution(
                        hymn,
                        verse,
                        Rule.NO_TUNE,
                        FindingNumbers.balance(estimate),
                        "Nothing sounds in the right hand: the people have no tune to follow.",
                        Optional::empty));
            case LOST ->
                Optional.of(UnfixedFinding.caution(
                        hymn,
                        verse,
                        Rule.LEAD_LOST,
                        FindingNumbers.balance(estimate),
                        estimate.isSilent()
                                ? "Nothing is drawn that sounds: the people sing without a lead."
                                : "The lead is " + FindingNumbers.probably(estimate) + "lost: "
                                        + singers(hymn.verse(verse)) + " cover the organ.",
                        () -> Remedy.of(hymn, verse, Verdict.Way.STRONGER)));
            case LEAD_ONLY_JUST ->
                Optional.of(UnfixedFinding.remark(
                        hymn,
                        verse,
                        Rule.LEAD_ONLY_JUST,
                        FindingNumbers.balance(estimate),
                        "The lead " + FindingNumbers.probably(estimate) + "only just holds against "
                                + singers(hymn.verse(verse)) + ".",
                        () -> Remedy.of(hymn, verse, Verdict.Way.STRONGER)));
            case TOO_STRONG ->
                Optional.of(UnfixedFinding.caution(
                        hymn,
                        verse,
                        Rule.LEAD_TOO_STRONG,
                        FindingNumbers.balance(estimate),
                        "The organ " + FindingNumbers.probably(estimate) + "overbears " + singers(hymn.verse(verse))
                                + ".",
                        () -> Remedy.of(hymn, verse, Verdict.Way.SOFTER)));
            case LEADS, COVERED, VOICE_ONLY_JUST, CLEAR, BURIED, SOLO_LINE_ONLY_JUST, STANDS_OUT, ORGAN_ALONE ->
                Optional.empty();
        };
    }

    private static String singers(Verse verse) {
        return switch (verse.singing()) {
            case GENTLE -> "people who sing gently";
            case ORDINARY -> "people who sing as usual";
            case STRONG -> "people who sing strongly";
            case FULL_VOICE -> "people who sing with full voice";
        };
    }
}
