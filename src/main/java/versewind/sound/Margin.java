package versewind.sound;

import java.util.List;
import java.util.Optional;
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
 * @param spread where it may well lie; empty where there is no number
 * @param perhaps the other verdicts that the 68 % of the spread reach into, from the smallest margin to the greatest; empty
 *     where the verdict is sure
 */
public record Margin(
        Kind kind, OptionalDouble db, Verdict verdict, Optional<MarginBands> spread, List<Verdict> perhaps) {

    public Margin {
        perhaps = List.copyOf(perhaps);
    }

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
    static final Margin NONE = of(Verdict.ORGAN_ALONE);

    static Margin of(Mode mode, double db, MarginBands spread) {
        Verdict verdict = Thresholds.verdict(mode, db);
        return new Margin(
                verdict.kind(),
                OptionalDouble.of(db),
                verdict,
                Optional.of(spread),
                Thresholds.reached(mode, spread.lowDb(), spread.highDb()).stream()
                        .filter(other -> other != verdict)
                        .toList());
    }

    /** A margin that needs no number: what should be heard, or what would disturb it, is silent. */
    static Margin of(Verdict verdict) {
        return new Margin(verdict.kind(), OptionalDouble.empty(), verdict, Optional.empty(), List.of());
    }

    /** Whether the verdict holds over all that the margin may well be. */
    public boolean isSure() {
        return perhaps.isEmpty();
    }

    /** Half the width of the 68 % band in dB; empty where there is no number. */
    public OptionalDouble plusMinusDb() {
        return spread.isPresent() ? OptionalDouble.of(spread.get().plusMinusDb()) : OptionalDouble.empty();
    }

    /** The verdict in a word or two, with "maybe" before it where another may well be true. */
    public String words() {
        return isSure() ? verdict.word() : MAYBE + " " + verdict.word();
    }

    private static final String MAYBE = "maybe";
}
