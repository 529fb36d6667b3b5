package versewind.sound;

import java.util.OptionalDouble;
import versewind.plan.Mode;

/**
 * How far what should be heard stands above what disturbs it.
 *
 * <p>In dB: 30 times the audible share less 15, so that 0 is an even match, 15 wholly clear, -15 wholly covered. The
 * share is that of ANSI S3.5-1997, which was made for speech; applied to music it is an estimate.
 *
 * @param kind which question
 * @param db the margin in dB, -15 to 15; empty where nothing sounds that could be weighed
 * @param verdict what it means
 */
public record Margin(Kind kind, OptionalDouble db, Verdict verdict) {

    /** Which question a margin answers. */
    public enum Kind {
        /** Does the congregation hear its leader? The organ against the singing, at a seat among the singers. */
        LEAD,
        /** Do the words come through? The singing against the organ, at a seat in the nave. */
        VOICE,
        /** Is the melody heard for itself? The melody against its accompaniment, at a seat in the nave. */
        SOLO_LINE,
        /** None: the organ plays alone. */
        ORGAN_ALONE
    }

    /** The organ alone. */
    static final Margin NONE = new Margin(Kind.ORGAN_ALONE, OptionalDouble.empty(), Verdict.ORGAN_ALONE);

    static Margin of(Mode mode, double db) {
        Verdict verdict = Thresholds.verdict(mode, db);
        return new Margin(verdict.kind(), OptionalDouble.of(db), verdict);
    }

    /** A margin that needs no number: what should be heard, or what would disturb it, is silent. */
    static Margin of(Verdict verdict) {
        return new Margin(verdict.kind(), OptionalDouble.empty(), verdict);
    }
}
