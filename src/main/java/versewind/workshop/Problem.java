package versewind.workshop;

/**
 * Something that keeps a draft from becoming an instrument.
 *
 * @param line index of the line of the draft
 * @param slot where in the line
 * @param sentence what is wrong, a whole sentence
 */
public record Problem(int line, DraftField slot, String sentence) {}
