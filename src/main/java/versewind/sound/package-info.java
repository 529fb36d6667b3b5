/**
 * An organ and its singers in a room: levels, loudness, margins and verdicts, each with its uncertainty.
 *
 * <p>Built on the published methods of {@code acoustics}; everything else is an estimate and called so. How certain the
 * parameters are comes in as a {@link versewind.sound.Covariance}; readings and feedback are no concern of this
 * package. Verdicts are made in {@link versewind.sound.Thresholds} alone, and margins in {@link
 * versewind.sound.MarginEvaluator} and {@code Hearing}. Pure: no clock, no threads; reads only its own tables.
 */
package versewind.sound;
