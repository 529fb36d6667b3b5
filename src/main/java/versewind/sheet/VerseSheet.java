package versewind.sheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import versewind.plan.Verse;
import versewind.rules.DynamicStep;
import versewind.sound.ClearShare;
import versewind.sound.Estimate;

/**
 * One verse as it stands on the sheet.
 *
 * @param verse the verse
 * @param estimate its sound, an estimate
 * @param target between which levels the organ would be right, from its level now, where that can be said
 * @param playing who sings and how, what hands and feet play, and where
 * @param drawn what is drawn
 * @param before label of the verse played before it; empty for the first of the service
 * @param changes what hands and feet move since then besides the pistons; all that is drawn for the first of the
 *     service
 * @param leftOut what is moved instead where verses before it are left out, if that is not the same
 * @param played how to touch the keys, where that is not as in the verse before, and whether the breath is too short
 *     for what is moved
 * @param stronger what makes it stronger, step by step, if that is wanted
 * @param softer what makes it softer, likewise
 */
public record VerseSheet(
        Verse verse,
        Estimate estimate,
        Optional<ClearShare.RightBand> target,
        String playing,
        List<DivisionLine> drawn,
        Optional<String> before,
        List<ChangeRow> changes,
        List<LeftOut> leftOut,
        List<String> played,
        List<Step> stronger,
        List<Step> softer) {

    public VerseSheet {
        drawn = List.copyOf(drawn);
        changes = List.copyOf(changes);
        leftOut = List.copyOf(leftOut);
        played = List.copyOf(played);
        stronger = List.copyOf(stronger);
        softer = List.copyOf(softer);
    }

    /**
     * Another way to a verse.
     *
     * @param verses the labels of the verses that are left out
     * @param changes what is moved then
     */
    public record LeftOut(String verses, List<ChangeRow> changes) {

        public LeftOut {
            changes = List.copyOf(changes);
        }

        /** "With V3 left out:". */
        public String words() {
            return "With " + verses + " left out:";
        }
    }

    /**
     * A step stronger or softer.
     *
     * @param changes what is moved
     * @param rung what comes of it
     */
    public record Step(List<ChangeRow> changes, DynamicStep rung) {

        public Step {
            changes = List.copyOf(changes);
        }

        /** The step of the order that is reached, and by how much the level changes: "step 7 of 8: mixtures, +2 dB". */
        public String changeWords() {
            String change = printed(LevelText.signed(OptionalDouble.of(rung.changeDb()))) + " dB";
            return rung.reached().map(step -> step + ", " + change).orElse(change);
        }
    }

    /** The organ's level in the nave in dB(A): "f 81±3"; "silent". */
    public String levelWords() {
        return LevelText.words(estimate);
    }

    /** With a minus sign for a hyphen, as print has it. */
    private static String printed(String signed) {
        return signed.replace('-', '\u2212');
    }

    /** Whether something should be done about it. */
    public boolean wantsAttention() {
        return estimate.balance().estimated().wantsAttention();
    }
}
