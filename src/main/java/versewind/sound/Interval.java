package versewind.sound;

/**
 * Bounds of a margin in dB.
 *
 * @param lowDb it is no less
 * @param highDb it is no more
 */
public record Interval(double lowDb, double highDb) {}
