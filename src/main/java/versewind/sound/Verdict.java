package versewind.sound;

/** The meaning of a margin, and the change it calls for. {@link Thresholds} says where each begins. */
public enum Verdict {
    /** The organ sounds, but not the melody: nothing is drawn for the right hand. */
    NO_TUNE(Margin.Kind.LEAD, "no tune", Call.ATTENTION, Way.STRONGER),
    /** The singers do not hear their leader. */
    LOST(Margin.Kind.LEAD, "lost", Call.ATTENTION, Way.STRONGER),
    /** The lead just holds. */
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
    /** The melody stands out. */
    STANDS_OUT(Margin.Kind.SOLO_LINE, "stands out", Call.NONE, Way.NONE),

    /** Nobody sings and nothing is soloed. */
    ORGAN_ALONE(Margin.Kind.ORGAN_ALONE, "organ alone", Call.NONE, Way.NONE),
    /** Nobody plays. */
    UNACCOMPANIED(Margin.Kind.ORGAN_ALONE, "unaccompanied", Call.NONE, Way.NONE);

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

    /** The question it answers. */
    public Margin.Kind kind() {
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
