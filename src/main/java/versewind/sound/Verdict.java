package versewind.sound;

/**
 * What a margin means, in a word, and which way the organ should go. All thresholds of the program stand here.
 *
 * <p>A verdict holds from its threshold up to the next. Thresholds in dB of margin, all estimates: with them the usual
 * registrations of the handbook situations come out as organists judge them (common practice, no source), and the band
 * between good and bad is never narrower than 3 dB, for the model knows no finer difference. Those of the voice lie near
 * an index of 0.45 and 0.65, where ANSI S3.5-1997 (informative) has 0.45 as the end of poor and 0.75 as the beginning of
 * good communication; words that are sung are mostly known.
 */
public enum Verdict {
    /** The singers do not hear their leader. */
    LOST(Margin.Kind.LEAD, "lost", Double.NEGATIVE_INFINITY, Advice.WANTS_ATTENTION, Way.STRONGER),
    /** The lead holds, and no more. */
    LEAD_ONLY_JUST(Margin.Kind.LEAD, "only just", -5, Advice.STANDS, Way.STRONGER),
    /** The organ leads. */
    LEADS(Margin.Kind.LEAD, "leads", -1.5, Advice.STANDS, Way.NONE),
    /** The organ is far above the singers, which is as wrong as below them. */
    TOO_STRONG(Margin.Kind.LEAD, "too strong", 9, Advice.WANTS_ATTENTION, Way.SOFTER),

    /** The words are lost. */
    COVERED(Margin.Kind.VOICE, "covered", Double.NEGATIVE_INFINITY, Advice.WANTS_ATTENTION, Way.SOFTER),
    /** Most words come through. */
    VOICE_ONLY_JUST(Margin.Kind.VOICE, "only just", -1.5, Advice.STANDS, Way.SOFTER),
    /** The words come through. */
    CLEAR(Margin.Kind.VOICE, "clear", 3, Advice.STANDS, Way.NONE),

    /** The melody is lost in its accompaniment. */
    BURIED(Margin.Kind.SOLO_LINE, "buried", Double.NEGATIVE_INFINITY, Advice.WANTS_ATTENTION, Way.STRONGER),
    /** The melody can be followed. */
    SOLO_LINE_ONLY_JUST(Margin.Kind.SOLO_LINE, "only just", -3, Advice.STANDS, Way.STRONGER),
    /** The melody is heard for itself. */
    STANDS_OUT(Margin.Kind.SOLO_LINE, "stands out", 1, Advice.STANDS, Way.NONE),

    /** Nobody sings and nothing is soloed: there is nothing to weigh. */
    ORGAN_ALONE(Margin.Kind.ORGAN_ALONE, "organ alone", Double.NEGATIVE_INFINITY, Advice.STANDS, Way.NONE);

    /** Which way the organ should go. */
    public enum Way {
        STRONGER,
        SOFTER,
        NONE
    }

    private enum Advice {
        WANTS_ATTENTION,
        STANDS
    }

    private final Margin.Kind kind;
    private final String word;
    private final double fromDb;
    private final Advice advice;
    private final Way way;

    Verdict(Margin.Kind kind, String word, double fromDb, Advice advice, Way way) {
        this.kind = kind;
        this.word = word;
        this.fromDb = fromDb;
        this.advice = advice;
        this.way = way;
    }

    /** The verdict on a margin in dB. */
    static Verdict of(Margin.Kind kind, double marginDb) {
        Verdict found = ORGAN_ALONE;
        for (Verdict verdict : values()) {
            if (verdict.kind == kind && marginDb >= verdict.fromDb) {
                found = verdict;
            }
        }
        return found;
    }

    /** Which question it answers. */
    public Margin.Kind kind() {
        return kind;
    }

    /** In words: "only just". */
    public String word() {
        return word;
    }

    /** Margin in dB from which it holds; negative infinity for the lowest of its kind. An estimate. */
    public double fromDb() {
        return fromDb;
    }

    /**
     * Whether something should be done: the lead is lost or far too strong, the words are covered, the melody is buried.
     * "Only just" is no call for action: with a full church nothing more may be had.
     */
    public boolean wantsAttention() {
        return advice == Advice.WANTS_ATTENTION;
    }

    /** Which way the organ should go; for a solo line, which way its melody should. */
    public Way way() {
        return way;
    }
}
