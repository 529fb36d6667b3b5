package versewind.rules;

import java.util.List;
import java.util.Optional;

/** Between neighbouring verses that the congregation sings the organ makes no leap. Common practice, no source. */
final class Leap implements VerseRule {

    @Override
    public Optional<UnfixedFinding> judge(InHymn hymn, int index) {
        boolean isCompared = index > 0
                && Company.of(hymn.verse(index)).isCongregation()
                && Company.of(hymn.verse(index - 1)).isCongregation()
                && !hymn.estimate(index).isSilent()
                && !hymn.estimate(index - 1).isSilent();
        if (!isCompared) {
            return Optional.empty();
        }
        double stepDb = hymn.organDba(index) - hymn.organDba(index - 1);
        return Math.round(Math.abs(stepDb)) <= Practice.STEP_DB
                ? Optional.empty()
                : Optional.of(UnfixedFinding.remark(
                        hymn,
                        index,
                        Rule.STEP,
                        List.of(FindingNumbers.db("step", stepDb)),
                        "The organ leaps " + (stepDb > 0 ? "up" : "down") + " by " + FindingNumbers.about(stepDb)
                                + " from " + hymn.verse(index - 1).label() + ".",
                        Optional::empty));
    }
}
