/**
 * An organ and its singers in a room: levels, loudness, shares and verdicts, each with its uncertainty.
 *
 * <p>Built on the published methods of {@code acoustics}; everything else is an estimate and called so. How certain the
 * parameters are comes in as a {@link versewind.sound.Covariance}; readings and feedback are no concern of this
 * package. Verdicts are made in {@link versewind.sound.Verdict} alone. Pure: no clock, no threads; reads only its own
 * tables.
 */
package versewind.sound;
