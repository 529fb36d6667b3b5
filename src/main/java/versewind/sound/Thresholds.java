package versewind.sound;

import java.util.List;
import java.util.stream.Stream;
import versewind.plan.Mode;

/**
 * Where one verdict ends and the next begins, in dB of margin. All thresholds of the program stand here, and all are
 * estimates.
 *
 * <p>With them the registrations that organists use come out as organists judge them (common practice, no source). The
 * band of "only just" is never narrower than 3 dB, for the model knows no finer difference. Those of a soloist's words
 * lie at an index of 0.45 and 0.6, where ANSI S3.5-1997 (informative) has 0.45 as the end of poor and 0.75 as the
 * beginning of good communication: words that are sung are mostly known. A choir is carried closer than a soloist.
 *
 * <p>Checked against: {@code KnownSituationsTest}.
 */
public final class Thresholds {

    /** Margin of the lead from which the singers only just hear it. */
    public static final double LEAD_HELD_DB = -5;

    /** Margin of the lead from which the organ leads. */
    public static final double LEAD_DB = -1.5;

    /** Margin of the lead from which the organ is too strong. */
    public static final double LEAD_TOO_STRONG_DB = 9;

    /** Margin of a choir's words from which they only just come through. */
    public static final double CHOIR_HEARD_DB = -5;

    /** Margin of a choir's words from which they are clear. */
    public static final double CHOIR_CLEAR_DB = -1;

    /** Margin of a soloist's words from which they only just come through. */
    public static final double SOLOIST_HEARD_DB = -1.5;

    /** Margin of a soloist's words from which they are clear. */
    public static final double SOLOIST_CLEAR_DB = 3;

    /** Margin of a soloed melody from which it can be followed. */
    public static final double SOLO_LINE_HEARD_DB = -2;

    /** Margin of a soloed melody from which it stands out. */
    public static final double SOLO_LINE_STANDS_OUT_DB = 2;

    private Thresholds() {}

    /** Margin from which the words of a choir or a soloist are clear. */
    static double clearDb(Mode mode) {
        return mode == Mode.SMALL_CHOIR ? CHOIR_CLEAR_DB : SOLOIST_CLEAR_DB;
    }

    /** The verdict on a margin in dB in an accompaniment mode. */
    public static Verdict verdict(Mode mode, double marginDb) {
        return switch (mode) {
            case CONGREGATION -> lead(marginDb);
            case SMALL_CHOIR -> words(marginDb, CHOIR_HEARD_DB, CHOIR_CLEAR_DB);
            case SOLO_VOICE -> words(marginDb, SOLOIST_HEARD_DB, SOLOIST_CLEAR_DB);
            case MELODY_SOLOED -> soloLine(marginDb);
        };
    }

    /** Every verdict that margins from low to high in dB have, in their order. */
    static List<Verdict> reached(Mode mode, double lowDb, double highDb) {
        Verdict first = verdict(mode, lowDb);
        Verdict last = verdict(mode, highDb);
        return Stream.of(Verdict.values())
                .filter(each -> each.compareTo(first) >= 0 && each.compareTo(last) <= 0)
                .toList();
    }

    private static Verdict lead(double marginDb) {
        if (marginDb < LEAD_HELD_DB) {
            return Verdict.LOST;
        }
        if (marginDb < LEAD_DB) {
            return Verdict.LEAD_ONLY_JUST;
        }
        return marginDb < LEAD_TOO_STRONG_DB ? Verdict.LEADS : Verdict.TOO_STRONG;
    }

    private static Verdict words(double marginDb, double heardDb, double clearDb) {
        if (marginDb < heardDb) {
            return Verdict.COVERED;
        }
        return marginDb < clearDb ? Verdict.VOICE_ONLY_JUST : Verdict.CLEAR;
    }

    private static Verdict soloLine(double marginDb) {
        if (marginDb < SOLO_LINE_HEARD_DB) {
            return Verdict.BURIED;
        }
        return marginDb < SOLO_LINE_STANDS_OUT_DB ? Verdict.SOLO_LINE_ONLY_JUST : Verdict.STANDS_OUT;
    }
}
