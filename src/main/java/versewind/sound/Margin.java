package versewind.sound;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import versewind.plan.Mode;

/**
 * The margin by which the wanted sound stands out from the disturbing one.
 *
 * <p>In dB: 30 times the audible share minus 15, so that 0 is an even match, 15 fully clear, -15 fully covered. The
 * share is that of ANSI S3.5-1997, which was made for speech; for music it is an estimate.
 *
 * @param kind the question it answers
 * @param db the margin in dB, -15 to 15; empty if one of the two sounds is silent
 * @param verdict what the margin means
 * @param bands where the true margin may lie; empty without a number
 * @param perhaps the other verdicts within the 68 % band, from the smallest margin to the greatest; empty if the
 *     verdict is sure
 */
public record Margin(Kind kind, OptionalDouble db, Verdict verdict, Optional<Bands> bands, List<Verdict> perhaps) {

    /** Margin in dB of a sound that is fully covered, or silent. */
    static final double COVERED_DB = -15;

    /** Margin in dB of a sound that nothing disturbs. */
    static final double CLEAR_DB = 15;

    private static final String MAYBE = "maybe";

    /** The organ alone. */
    static final Margin NONE = of(Verdict.ORGAN_ALONE);

    public Margin {
        perhaps = List.copyOf(perhaps);
    }

    /** The question that a margin answers. */
    public enum Kind {
        /** Does the congregation hear its leader? The organ against the singing, at a seat among the singers. */
        LEAD,
        /** Do the words come through? The singing against the organ, at a seat in the nave. */
        VOICE,
        /** Does the melody stand out? The melody against its accompaniment, at a seat in the nave. */
        SOLO_LINE,
        /** None: the organ plays alone. */
        ORGAN_ALONE
    }

    /**
     * The bands that hold the true margin with 68 % and with 95 %, in dB. They need not be symmetrical, since a margin
     * is bounded at 15 dB either way.
     *
     * @param lowestDb lower edge of 95 %
     * @param lowDb lower edge of 68 %
     * @param highDb upper edge of 68 %
     * @param highestDb upper edge of 95 %
     */
    public record Bands(double lowestDb, double lowDb, double highDb, double highestDb) {}

    static Margin of(Mode mode, double db, Bands bands) {
        Thresholds thresholds = Thresholds.of(mode);
        Verdict verdict = thresholds.verdict(db);
        return new Margin(
                verdict.kind(),
                OptionalDouble.of(db),
                verdict,
                Optional.of(bands),
                thresholds.verdicts(bands.lowDb(), bands.highDb()).stream()
                        .filter(other -> other != verdict)
                        .toList());
    }

    /** A margin without a number: the wanted or the disturbing sound is silent. */
    static Margin of(Verdict verdict) {
        return new Margin(verdict.kind(), OptionalDouble.empty(), verdict, Optional.empty(), List.of());
    }

    /** True if the verdict is the same over the whole 68 % band. */
    public boolean isSure() {
        return perhaps.isEmpty();
    }

    /** Half the width of the 68 % band in dB, the figure after "±"; empty without a number. */
    public OptionalDouble plusMinusDb() {
        return bands.isPresent()
                ? OptionalDouble.of((bands.get().highDb() - bands.get().lowDb()) / 2)
                : OptionalDouble.empty();
    }

    /** The verdict in a word or two, after "maybe" if it is not sure. */
    public String words() {
        return isSure() ? verdict.word() : MAYBE + " " + verdict.word();
    }
}
