package versewind.terminal;

/**
 * How a cell is drawn, in the attributes that terminals have had since the VT220 and the eight ANSI colours.
 *
 * @param attributes sum of {@link #BOLD}, {@link #DIM}, {@link #UNDERLINE} and {@link #REVERSE}
 * @param foreground colour of the character, 0 to 7 in ANSI order, or {@link #OWN}
 * @param background colour behind it, likewise
 */
record TextAttributes(int attributes, int foreground, int background) {

    static final int BOLD = 1;
    static final int DIM = 2;
    static final int UNDERLINE = 4;
    static final int REVERSE = 8;

    /** The terminal's own colour, whichever that is. */
    static final int OWN = -1;

    static final TextAttributes PLAIN = new TextAttributes(0);

    private static final int[] ATTRIBUTES = {BOLD, DIM, UNDERLINE, REVERSE};
    private static final int[] ATTRIBUTE_CODES = {1, 2, 4, 7};

    TextAttributes(int attributes) {
        this(attributes, OWN, OWN);
    }

    /** Whether both are the same. A record's own comparison is spun at run time, which the start would wait for. */
    boolean isLike(TextAttributes other) {
        return attributes == other.attributes && foreground == other.foreground && background == other.background;
    }

    /** Whether a blank in this look is the same as a blank without any. */
    boolean isPlainWhenBlank() {
        return (attributes & (UNDERLINE | REVERSE)) == 0 && background == OWN;
    }

    /**
     * The control sequence that changes a terminal from one look to another. What the new look lacks is taken away by a
     * reset, since terminals older than the VT220 can switch single attributes on but not off.
     *
     * <p>Source: ECMA-48, 5th edition, 8.3.117 SGR.
     */
    static String change(TextAttributes from, TextAttributes to) {
        if (from.isLike(to)) {
            return "";
        }
        boolean adds = (from.attributes & ~to.attributes) == 0
                && (from.foreground == OWN || from.foreground == to.foreground)
                && (from.background == OWN || from.background == to.background);
        return adds ? sequence("", from, to) : sequence("0", PLAIN, to);
    }

    private static String sequence(String first, TextAttributes from, TextAttributes to) {
        StringBuilder codes = new StringBuilder(first);
        for (int i = 0; i < ATTRIBUTES.length; i++) {
            if ((to.attributes & ~from.attributes & ATTRIBUTES[i]) != 0) {
                add(codes, ATTRIBUTE_CODES[i]);
            }
        }
        if (to.foreground != from.foreground) {
            add(codes, 30 + to.foreground);
        }
        if (to.background != from.background) {
            add(codes, 40 + to.background);
        }
        return "\033[" + (codes.toString().equals("0") ? "" : codes) + "m";
    }

    private static void add(StringBuilder codes, int code) {
        codes.append(codes.length() > 0 ? ";" : "").append(code);
    }
}
