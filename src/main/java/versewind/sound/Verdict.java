package versewind.sound;

/** What a margin means, in a word, and which way the organ should go. Where each begins stands in {@link Thresholds}. */
public enum Verdict {
    /** The organ sounds, but not the melody: the right hand's stops are in. */
    NO_TUNE(Margin.Kind.LEAD, "no tune", Call.ATTENTION, Way.STRONGER),
    /** The singers do not hear their leader. */
    LOST(Margin.Kind.LEAD, "lost", Call.ATTENTION, Way.STRONGER),
    /** The lead holds, and no more. */
    LEAD_ONLY_JUST(Margin.Kind.LEAD, "only just", Call.NONE, Way.STRONGER),
    /** The organ leads. */
    LEADS(Margin.Kind.LEAD, "leads", Call.NONE, Way.NONE),
    /** The organ stands far above the singers. */
    TOO_STRONG(Margin.Kind.LEAD, "too strong", Call.ATTENTION, Way.SOFTER),

    /** The words are lost. */
    COVERED(Margin.Kind.VOICE, "covered", Call.ATTENTION, Way.SOFTER),
    /** Most words come through. */
    VOICE_ONLY_JUST(Margin.Kind.VOICE, "only just", Call.NONE, Way.SOFTER),
    /** The words come through. */
    CLEAR(Margin.Kind.VOICE, "clear", Call.NONE, Way.NONE),

    /** The melody is lost in its accompaniment. */
    BURIED(Margin.Kind.SOLO_LINE, "buried", Call.ATTENTION, Way.STRONGER),
    /** The melody can be followed. */
    SOLO_LINE_ONLY_JUST(Margin.Kind.SOLO_LINE, "only just", Call.NONE, Way.STRONGER),
    /** The melody is heard for itself. */
    STANDS_OUT(Margin.Kind.SOLO_LINE, "stands out", Call.NONE, Way.NONE),

    /** Nobody sings and nothing is soloed: there is nothing to weigh. */
    ORGAN_ALONE(Margin.Kind.ORGAN_ALONE, "organ alone", Call.NONE, Way.NONE);

    /** Which way the organ should go. */
    public enum Way {
        STRONGER,
        SOFTER,
        NONE
    }

    private enum Call {
        ATTENTION,
        NONE
    }

    private final Margin.Kind kind;
    private final String word;
    private final Call call;
    private final Way way;

    Verdict(Margin.Kind kind, String word, Call call, Way way) {
        this.kind = kind;
        this.word = word;
        this.call = call;
        this.way = way;
    }

    /** Which question it answers. */
    public Margin.Kind kind() {
        return kind;
    }

    /** In words: "only just". */
    public String word() {
        return word;
    }

    /**
     * Whether something fails and should be changed: the lead is lost or far too strong, the tune is missing, the words are
     * covered, the melody is buried. "Only just" is no such call, for with a full church nothing more may be had.
     */
    public boolean wantsAttention() {
        return call == Call.ATTENTION;
    }

    /** Which way the organ should go; for a solo line, which way its melody should. */
    public Way way() {
        return way;
    }
}
