package versewind.rules;

import java.util.Optional;
import versewind.organ.IndexSet;
import versewind.organ.Registration;

/**
 * A chorus has no gap: 2 ft over 8 ft wants 4 ft between them. What is drawn for a choir or a soloist, or to play alone,
 * may want the gap for its colour; then it is a remark. Common practice, no source.
 */
final class Gap implements ChorusRule {

    @Override
    public Rule rule() {
        return Rule.GAP;
    }

    @Override
    public Optional<ChorusFault> judge(Chorus chorus) {
        boolean isGap = chorus.isAccompaniment() && missing(chorus).isPresent();
        Severity severity = chorus.company().isCongregation() ? Severity.CAUTION : Severity.REMARK;
        return isGap ? Optional.of(new ChorusFault(this, severity, chorus, IndexSet.EMPTY)) : Optional.empty();
    }

    /** The lowest pitch above 8 ft that is missing below one that sounds. */
    private static Optional<Pitch> missing(Chorus chorus) {
        if (!chorus.has(Pitch.FEET_8)) {
            return Optional.empty();
        }
        if (!chorus.has(Pitch.FEET_4)) {
            return chorus.has(Pitch.FEET_2) || chorus.has(Pitch.FEET_1) ? Optional.of(Pitch.FEET_4) : Optional.empty();
        }
        return chorus.has(Pitch.FEET_1) && !chorus.has(Pitch.FEET_2) ? Optional.of(Pitch.FEET_2) : Optional.empty();
    }

    @Override
    public String sentence(ChorusFault fault) {
        Chorus chorus = fault.chorus();
        Pitch missing = missing(chorus).orElseThrow();
        Pitch above = missing == Pitch.FEET_4 && chorus.has(Pitch.FEET_2) ? Pitch.FEET_2 : Pitch.FEET_1;
        Pitch below = missing == Pitch.FEET_4 ? Pitch.FEET_8 : Pitch.FEET_4;
        return fault.hand().has() + " " + above.feet() + " ft over " + below.feet() + " ft without " + missing.feet()
                + " ft between them.";
    }

    @Override
    public Optional<Registration> mended(ChorusFault fault) {
        return fault.chorus().withOne(missing(fault.chorus()).orElseThrow());
    }
}
