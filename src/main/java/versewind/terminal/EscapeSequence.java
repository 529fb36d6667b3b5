package versewind.terminal;

/**
 * How far a control sequence has come, as the characters of it arrive one by one.
 *
 * <p>Source: ECMA-48, 5th edition, 5.4 (CSI), 5.6 (control strings) and 8.3.143 (SS3), with the Linux console's and
 * rxvt's own forms of function keys.
 */
enum EscapeSequence {
    /** Not begun, or complete. */
    NONE,
    /** ESC alone: the Escape key, or the beginning of more. */
    ESCAPE,
    /** ESC [, after which parameters may come. */
    CSI,
    /** The same with a first digit, so that a dollar ends it: rxvt's keys with Shift. */
    CSI_NUMBER,
    /** The same with another first sign: the terminal's answers, which may have a dollar within. */
    CSI_MARKED,
    /** ESC [ [, after which one letter comes: the Linux console's F1 to F5. */
    CONSOLE,
    /** ESC O, after which digits and a letter come. */
    SS3,
    /** ESC ] or ESC P, which is an answer of the terminal only if a digit or a mark follows. */
    ANSWER,
    /** An answer, until BEL or ESC \. */
    STRING,
    /** ESC within an answer. */
    STRING_END,
    /** Not a control sequence, as it turns out. */
    BROKEN;

    private static final int ESC = 0x1B;
    private static final int BEL = 0x07;

    /** Whether more is to come, or may be. */
    boolean isOpen() {
        return this != NONE && this != BROKEN;
    }

    /** Where the sequence stands after another character. */
    EscapeSequence after(int c) {
        return switch (this) {
            case NONE, BROKEN -> c == ESC ? ESCAPE : NONE;
            case ESCAPE -> afterEscape(c);
            case CSI -> c == '[' ? CONSOLE : isDigit(c) ? CSI_NUMBER : afterParameter(c, CSI_MARKED);
            case CSI_NUMBER -> c == '$' ? NONE : afterParameter(c, CSI_NUMBER);
            case CSI_MARKED -> afterParameter(c, CSI_MARKED);
            case CONSOLE -> isFinal(c) ? NONE : BROKEN;
            case SS3 -> isDigit(c) || c == ';' ? SS3 : c > ' ' && c < 0x7F ? NONE : BROKEN;
            case ANSWER -> isDigit(c) || "!>$+=?".indexOf(c) >= 0 ? STRING : BROKEN;
            case STRING -> c == BEL ? NONE : c == ESC ? STRING_END : STRING;
            case STRING_END -> c == '\\' ? NONE : BROKEN;
        };
    }

    private static EscapeSequence afterEscape(int c) {
        return switch (c) {
            case '[' -> CSI;
            case 'O' -> SS3;
            case ']', 'P' -> ANSWER;
            default -> BROKEN;
        };
    }

    private static EscapeSequence afterParameter(int c, EscapeSequence same) {
        return isFinal(c) ? NONE : c >= 0x20 && c < 0x40 ? same : BROKEN;
    }

    private static boolean isFinal(int c) {
        return c >= 0x40 && c < 0x7F;
    }

    private static boolean isDigit(int c) {
        return c >= '0' && c <= '9';
    }
}
