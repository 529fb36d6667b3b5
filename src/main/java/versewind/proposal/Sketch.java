package versewind.proposal;

/**
 * A draft, and the sound that it is of.
 *
 * @param draft what is drawn, and how it is played
 * @param sound its name
 */
record Sketch(Draft draft, Sound sound) {}
