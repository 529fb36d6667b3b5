package versewind.screen;

/**
 * What the program last said.
 *
 * @param text a sentence; blank for nothing
 * @param style how it is shown
 */
record Notice(String text, Style style) {

    static final Notice NONE = new Notice("", Style.MESSAGE);

    /** Something that went well or that is good to know. */
    static Notice says(String text) {
        return new Notice(text, Style.MESSAGE);
    }

    /** Something that did not work. */
    static Notice warns(String text) {
        return new Notice(text, Style.BAD);
    }
}
