package versewind.sound;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import versewind.plan.Mode;

/**
 * The edges between verdicts, in dB of margin: the only place where a margin becomes a verdict.
 *
 * <p>All are estimates, set so that well-known registrations get the verdict that organists give them (common practice,
 * no source). "Only just" is at least 3 dB wide, since the model resolves no finer difference. Those of a soloist's
 * words lie at an index of 0.45 and 0.6; ANSI S3.5-1997 (informative) ends poor communication at 0.45 and begins good
 * communication at 0.75, but most sung words are known. A choir is covered later than a soloist.
 *
 * <p>Checked against: {@code KnownSituationsTest}.
 */
public enum Thresholds {
    LEAD(Verdict.LOST, -5, Verdict.LEAD_ONLY_JUST, -1.5, Verdict.LEADS, OptionalDouble.of(9)),
    CHOIR_WORDS(Verdict.COVERED, -5, Verdict.VOICE_ONLY_JUST, -1, Verdict.CLEAR, OptionalDouble.empty()),
    SOLOIST_WORDS(Verdict.COVERED, -1.5, Verdict.VOICE_ONLY_JUST, 3, Verdict.CLEAR, OptionalDouble.empty()),
    SOLO_LINE(Verdict.BURIED, -2, Verdict.SOLO_LINE_ONLY_JUST, 2, Verdict.STANDS_OUT, OptionalDouble.empty());

    private final Verdict failed;
    private final double onlyJustDb;
    private final Verdict onlyJust;
    private final double goodDb;
    private final Verdict good;
    private final OptionalDouble tooStrongDb;

    Thresholds(
            Verdict failed,
            double onlyJustDb,
            Verdict onlyJust,
            double goodDb,
            Verdict good,
            OptionalDouble tooStrongDb) {
        this.failed = failed;
        this.onlyJustDb = onlyJustDb;
        this.onlyJust = onlyJust;
        this.goodDb = goodDb;
        this.good = good;
        this.tooStrongDb = tooStrongDb;
    }

    /** The thresholds of an accompaniment mode. */
    public static Thresholds of(Mode mode) {
        return switch (mode) {
            case CONGREGATION -> LEAD;
            case SMALL_CHOIR -> CHOIR_WORDS;
            case SOLO_VOICE -> SOLOIST_WORDS;
            case MELODY_SOLOED -> SOLO_LINE;
        };
    }

    /** The question that these thresholds answer. */
    public Margin.Kind kind() {
        return good.kind();
    }

    /** Margin in dB from which the verdict is "only just". */
    public double onlyJustDb() {
        return onlyJustDb;
    }

    /** Margin in dB from which the organ leads, the words are clear, or the melody stands out. */
    public double goodDb() {
        return goodDb;
    }

    /** Margin in dB from which the organ is too strong; empty if it cannot be. */
    public OptionalDouble tooStrongDb() {
        return tooStrongDb;
    }

    /** The verdict on a margin in dB. */
    public Verdict verdict(double marginDb) {
        if (marginDb < onlyJustDb) {
            return failed;
        }
        if (marginDb < goodDb) {
            return onlyJust;
        }
        return marginDb < tooStrongDb.orElse(Double.POSITIVE_INFINITY) ? good : Verdict.TOO_STRONG;
    }

    /** Every verdict on margins between two in dB, in order. */
    List<Verdict> verdicts(double lowDb, double highDb) {
        Verdict first = verdict(lowDb);
        Verdict last = verdict(highDb);
        return Stream.of(Verdict.values())
                .filter(each -> each.compareTo(first) >= 0 && each.compareTo(last) <= 0)
                .toList();
    }
}
