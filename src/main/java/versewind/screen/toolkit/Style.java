package versewind.screen.toolkit;

/**
 * What a cell of the screen means; the terminal decides how that looks. Whatever a style says is also said by a shape
 * or a word, so that nothing is lost without colour.
 */
public enum Style {
    /** Ordinary text. */
    TEXT('.'),
    /** Text of less weight: rules, units, what is not drawn. */
    FAINT('f'),
    /** Text of more weight. */
    STRONG('s'),
    /** Name of a division, a panel or a form. */
    HEADING('h'),
    /** A stop, coupler or tremulant that is drawn. */
    DRAWN('d'),
    /** The place where keys act. */
    CURSOR('C'),
    /** The place where keys would act if its panel had them. */
    RESTING_CURSOR('c'),
    /** All is well. */
    GOOD('g'),
    /** Only just. */
    NEAR('n'),
    /** Wants attention. */
    BAD('b'),
    /** The organ's part of a level bar. */
    BAR('o'),
    /** Where the organ begins to be right, in a bar. */
    EDGE('v'),
    /** A field into which text is typed. */
    FIELD('t'),
    /** The name of a key. */
    KEY('k'),
    /** What the program says. */
    MESSAGE('m');

    private final char letter;

    Style(char letter) {
        this.letter = letter;
    }

    /** The letter that stands for the style in a recorded screen. */
    public char letter() {
        return letter;
    }
}
