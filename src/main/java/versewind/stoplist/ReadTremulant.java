package versewind.stoplist;

/**
 * A tremulant as it was read.
 *
 * @param name what it is called
 * @param division name of the division it acts on, given or assumed
 * @param line where it stands, counted from 1
 */
public record ReadTremulant(String name, String division, int line) {}
