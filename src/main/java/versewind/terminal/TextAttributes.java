package versewind.terminal;

/**
 * The attributes of a cell (SGR), limited to those of the VT220 and the 256 colours of xterm.
 *
 * @param attributes sum of {@link #BOLD}, {@link #DIM}, {@link #UNDERLINE} and {@link #REVERSE}
 * @param foreground colour of the character, 0 to 255, the first eight in ANSI order, or {@link #OWN}
 * @param background colour behind it, 0 to 7 or {@link #OWN}
 */
record TextAttributes(int attributes, int foreground, int background) {

    static final int BOLD = 1;
    static final int DIM = 2;
    static final int UNDERLINE = 4;
    static final int REVERSE = 8;

    /** The terminal's default colour. */
    static final int OWN = -1;

    private static final int LAST_ANSI = 7;

    static final TextAttributes PLAIN = new TextAttributes(0);

    private static final int[] ATTRIBUTES = {BOLD, DIM, UNDERLINE, REVERSE};
    private static final int[] ATTRIBUTE_CODES = {1, 2, 4, 7};

    TextAttributes(int attributes) {
        this(attributes, OWN, OWN);
    }

    /** Equality, written out since a record's own is generated at run time, which delays the start. */
    boolean isLike(TextAttributes other) {
        return attributes == other.attributes && foreground == other.foreground && background == other.background;
    }

    /** True if a blank with these attributes looks like a blank with none. */
    boolean isPlainWhenBlank() {
        return (attributes & (UNDERLINE | REVERSE)) == 0 && background == OWN;
    }

    /**
     * The control sequence from one set of attributes to another. It resets before it removes any, since terminals
     * older than the VT220 cannot switch off a single attribute.
     *
     * <p>Source: ECMA-48, 5th edition, 8.3.117 SGR; for colours from 8 on, XTerm Control Sequences, SGR 38;5.
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
            if (to.foreground > LAST_ANSI) {
                add(codes, 38);
                add(codes, 5);
            }
            add(codes, to.foreground > LAST_ANSI ? to.foreground : 30 + to.foreground);
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
