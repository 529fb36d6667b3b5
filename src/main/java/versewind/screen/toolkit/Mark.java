package versewind.screen.toolkit;

import versewind.organ.Registration;

/** A mark that the screen is drawn with: in Unicode, in ASCII and in words; blank where words beside it say so. */
public enum Mark {
    /** Before a stop that is drawn. */
    DRAWN("●", "#"),
    /** Before a stop that is drawn and does not sound here: nobody plays or couples its keyboard. */
    WAITS("○", "o"),
    /** Before a stop that is in. */
    IN("·", "."),
    /** Before the current verse or row. */
    HERE("▸", ">"),
    /** Where text was cut. */
    CUT("…", "~", "..."),
    /** A piece of a rule across. */
    RULE("─", "-"),
    /** A piece of a rule down. */
    WALL("│", "|"),
    /** The organ is too weak for the singers. */
    WEAK("▼", "V"),
    /** The same, and not sure. */
    PERHAPS_WEAK("▽", "v"),
    /** The organ is only just right for the singers. */
    ONLY_JUST("◆", "O"),
    /** The same, and not sure. */
    PERHAPS_ONLY_JUST("◇", "o"),
    /** The organ is right for the singers. */
    RIGHT("■", "="),
    /** The same, and not sure. */
    PERHAPS_RIGHT("□", "-"),
    /** The organ is too strong for the singers. */
    STRONG("▲", "A"),
    /** The same, and not sure. */
    PERHAPS_STRONG("△", "^"),
    /** The plan is not saved. */
    UNSAVED("▪", "*"),
    /** There is more to the left. */
    MORE_LEFT("◂", "<"),
    /** There is more to the right. */
    MORE_RIGHT("▸", ">"),
    /** Before beats a minute. */
    BEAT("♩", "beat ", "tempo "),
    /** Before what is drawn. */
    DRAW("+", "+", "draw"),
    /** Before what is put in. */
    PUT_IN("−", "-", Registration.PUT_IN),
    /** Before a number of dB that the organ becomes louder. */
    PLUS("+", "+", "plus "),
    /** Before a number of dB that it becomes softer. */
    MINUS("−", "-", "minus "),
    /** Between a level and its uncertainty. */
    PLUS_MINUS("±", "+-", " plus or minus "),
    /** Where the organ begins to be right, in a bar. */
    EDGE("┃", "!"),
    /** Before a stop that a proposal has to draw. */
    ALWAYS("!", "!"),
    /** Before a stop that a proposal must not draw. */
    NEVER("×", "x"),
    /** The upper half of a cell, in a curve. */
    UPPER("▀", "#"),
    /** The lower half of a cell, in a curve. */
    LOWER("▄", "#"),
    /** A cell of a broken line. */
    DASH("╌", "-"),
    /** A cell of a field behind a curve. */
    SHADE("░", ":"),
    /** A cell that is filled. */
    FULL("█", "#");

    private final String unicode;
    private final String ascii;
    private final String words;

    Mark(String unicode, String ascii) {
        this(unicode, ascii, " ");
    }

    Mark(String unicode, String ascii, String words) {
        this.unicode = unicode;
        this.ascii = ascii;
        this.words = words;
    }

    public String in(Marks marks) {
        return switch (marks) {
            case UNICODE -> unicode;
            case ASCII -> ascii;
            case WORDS -> words;
        };
    }
}
