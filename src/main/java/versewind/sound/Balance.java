package versewind.sound;

import java.util.Optional;
import java.util.OptionalDouble;
import versewind.plan.Mode;

/**
 * How the wanted sound of a verse stands to the other: its share, and what that comes to.
 *
 * <p>For a congregation and for a soloed melody the share is the clear share: what would be missing from all that is
 * heard if the organ, or the melody, fell silent. For a choir or a soloist it is the speech intelligibility index of
 * ANSI S3.5-1997, which was made for speech.
 *
 * @param share 0 to 1, as estimated; empty if the organ plays alone
 * @param estimated the verdict on the share as estimated: the truth is as likely to be weaker as to be stronger, so
 *     that a failure is one with odds of a half or more
 * @param verdict the most likely verdict
 * @param odds of every verdict; empty where nothing is in doubt
 */
public record Balance(OptionalDouble share, Verdict estimated, Verdict verdict, Odds odds) {

    private static final double NEAR = 1e-9;

    /** The organ alone. */
    static final Balance NONE = certain(OptionalDouble.empty(), Verdict.ORGAN_ALONE);

    static Balance certain(OptionalDouble share, Verdict verdict) {
        return new Balance(share, verdict, verdict, Odds.NONE);
    }

    /** The question that a verse puts. */
    public enum Kind {
        /** Does the congregation hear its leader? The organ beside the singing, at a seat among the singers. */
        LEAD,
        /** Do the words come through? The singing beside the organ, at a seat in the nave. */
        VOICE,
        /** Does the melody stand out? The melody beside its accompaniment, at a seat in the nave. */
        SOLO_LINE,
        /** None: the organ plays alone. */
        ORGAN_ALONE;

        /** The question of a verse that is sung, or whose melody is soloed. */
        public static Kind of(Mode mode) {
            return switch (mode) {
                case CONGREGATION -> LEAD;
                case SMALL_CHOIR, SOLO_VOICE -> VOICE;
                case MELODY_SOLOED -> SOLO_LINE;
            };
        }
    }

    /** A share in whole percent, rounded down: the percent shown have the same verdict as the share. */
    public static long percent(double share) {
        return (long) Math.floor(100 * share + NEAR);
    }

    /** The question it answers. */
    public Kind kind() {
        return verdict.kind();
    }

    /** True if nothing is in doubt, or the odds of the verdict are 8 in 10 or better. */
    public boolean isSure() {
        return odds.isEmpty() || odds.of(verdict) >= Odds.SURE;
    }

    /** Too much of the organ, where the most likely verdict is right and this the most likely after it. */
    public Optional<Verdict> excess() {
        return verdict.way() != Verdict.Way.NONE
                ? Optional.empty()
                : odds.second().filter(other -> other.wantsAttention() && other.way() == Verdict.Way.SOFTER);
    }

    /** The verdict with its odds: "leads, 8 in 10"; where it may be too much, "leads 7, too strong 3 in 10". */
    public String words() {
        if (odds.isEmpty()) {
            return verdict.word();
        }
        int tenths = Odds.tenths(odds.of(verdict));
        return excess().map(other -> verdict.word() + " " + tenths + ", " + other.word() + " "
                        + Math.min(Odds.TENTHS - tenths, Odds.tenths(odds.of(other))) + " in 10")
                .orElse(verdict.word() + ", " + tenths + " in 10");
    }

    /** In sixteen columns at most: "leads, 8 in 10", "leads/too strong". */
    public String shortWords() {
        return excess().map(other -> verdict.word() + "/" + other.word()).orElseGet(this::words);
    }
}
