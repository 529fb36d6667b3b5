package versewind.schema;

/**
 * Something that keeps a draft from becoming an instrument.
 *
 * @param line index of the row of the draft
 * @param sentence what is wrong and what would be right, in sentences
 */
public record Problem(int line, String sentence) {}
