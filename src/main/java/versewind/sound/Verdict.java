package versewind.sound;

import java.util.List;
import java.util.stream.Stream;
import versewind.plan.Mode;

/**
 * The meaning of a share, and the change it calls for: the only place where a share becomes a verdict.
 *
 * <p>The edges are estimates. The lead and a soloed melody hold from a clear share of 17 %, and only just from 9 %; a
 * lead is too strong from 55 %. The words of a soloist are clear from a speech intelligibility index of 60 %, those of
 * a choir, whose words are mostly known, from 47 %; both only just from 10 % below that.
 *
 * <p>Checked against: {@code VerdictTest}, {@code KnownSituationsTest}.
 */
public enum Verdict {
    /** The organ sounds, but not the melody: nothing is drawn for the right hand. */
    NO_TUNE(Balance.Kind.LEAD, 0, "no tune", Call.ATTENTION, Way.STRONGER),
    /** The singers do not hear their leader. */
    LOST(Balance.Kind.LEAD, 0, "lost", Call.ATTENTION, Way.STRONGER),
    /** The lead just holds. */
    LEAD_ONLY_JUST(Balance.Kind.LEAD, 0.09, "only just", Call.NONE, Way.STRONGER),
    /** The organ leads. */
    LEADS(Balance.Kind.LEAD, 0.17, "leads", Call.NONE, Way.NONE),
    /** The organ stands far above the singers. */
    TOO_STRONG(Balance.Kind.LEAD, 0.55, "too strong", Call.ATTENTION, Way.SOFTER),

    /** The words are lost. */
    COVERED(Balance.Kind.VOICE, 0, "covered", Call.ATTENTION, Way.SOFTER),
    /** Most words come through. */
    VOICE_ONLY_JUST(Balance.Kind.VOICE, 0.37, "only just", Call.NONE, Way.SOFTER),
    /** The words come through. */
    CLEAR(Balance.Kind.VOICE, 0.47, "clear", Call.NONE, Way.NONE),

    /** The melody is lost in its accompaniment. */
    BURIED(Balance.Kind.SOLO_LINE, 0, "buried", Call.ATTENTION, Way.STRONGER),
    /** The melody can be followed. */
    SOLO_LINE_ONLY_JUST(Balance.Kind.SOLO_LINE, 0.09, "only just", Call.NONE, Way.STRONGER),
    /** The melody stands out. */
    STANDS_OUT(Balance.Kind.SOLO_LINE, 0.17, "stands out", Call.NONE, Way.NONE),

    /** Nobody sings and nothing is soloed. */
    ORGAN_ALONE(Balance.Kind.ORGAN_ALONE, 0, "organ alone", Call.NONE, Way.NONE),
    /** Nobody plays. */
    UNACCOMPANIED(Balance.Kind.ORGAN_ALONE, 0, "unaccompanied", Call.NONE, Way.NONE);

    /** The change that a verdict calls for. */
    public enum Way {
        STRONGER,
        SOFTER,
        NONE
    }

    private enum Call {
        ATTENTION,
        NONE
    }

    /** How much higher the edges lie for a soloist's words than for a choir's. */
    private static final double SOLOIST = 0.13;

    private static final List<Verdict> OF_LEAD = List.of(LOST, LEAD_ONLY_JUST, LEADS, TOO_STRONG);
    private static final List<Verdict> OF_WORDS = List.of(COVERED, VOICE_ONLY_JUST, CLEAR);
    private static final List<Verdict> OF_SOLO_LINE = List.of(BURIED, SOLO_LINE_ONLY_JUST, STANDS_OUT);

    private final Balance.Kind kind;
    private final double from;
    private final String word;
    private final Call call;
    private final Way way;

    Verdict(Balance.Kind kind, double from, String word, Call call, Way way) {
        this.kind = kind;
        this.from = from;
        this.word = word;
        this.call = call;
        this.way = way;
    }

    /** The verdicts on a share of such a verse, from the weakest sound to the strongest. */
    public static List<Verdict> of(Mode mode) {
        return switch (mode) {
            case CONGREGATION -> OF_LEAD;
            case SMALL_CHOIR, SOLO_VOICE -> OF_WORDS;
            case MELODY_SOLOED -> OF_SOLO_LINE;
        };
    }

    /** All verdicts on a share among which this one stands; this one alone if no share leads to it. */
    public static List<Verdict> beside(Verdict one) {
        return Stream.of(OF_LEAD, OF_WORDS, OF_SOLO_LINE)
                .filter(all -> all.contains(one))
                .findFirst()
                .orElse(List.of(one));
    }

    /** The verdict on a share, 0 to 1. */
    public static Verdict of(Mode mode, double share) {
        List<Verdict> verdicts = of(mode);
        int place = verdicts.size() - 1;
        while (place > 0 && share < verdicts.get(place).from(mode)) {
            place--;
        }
        return verdicts.get(place);
    }

    /** The verdict that is wanted: the organ leads, the words are clear, the melody stands out. */
    public static Verdict right(Mode mode) {
        return switch (mode) {
            case CONGREGATION -> LEADS;
            case SMALL_CHOIR, SOLO_VOICE -> CLEAR;
            case MELODY_SOLOED -> STANDS_OUT;
        };
    }

    /** The share from which it is the verdict on such a verse, 0 to 1. */
    public double from(Mode mode) {
        return mode == Mode.SOLO_VOICE && from > 0 ? from + SOLOIST : from;
    }

    /** The question it answers. */
    public Balance.Kind kind() {
        return kind;
    }

    /** In words: "only just". */
    public String word() {
        return word;
    }

    /**
     * True for a failure: the lead is lost or too strong, the tune is missing, the words are covered, the melody is
     * buried. "Only just" is none, since a full church may allow no more.
     */
    public boolean wantsAttention() {
        return call == Call.ATTENTION;
    }

    /** The change of the organ, or of the melody of a solo line. */
    public Way way() {
        return way;
    }
}
