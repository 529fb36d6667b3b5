/**
 * Learning about an organ from what was measured and heard: readings of a sound-level meter, feedback after a service,
 * the fit to both, and the choice of the next reading.
 *
 * <p>Built on {@code sound}, which knows nothing of it: a calibration ends in trims, {@link versewind.sound.Offsets}
 * and a {@link versewind.sound.Covariance}, and these are all that an {@link versewind.sound.OrganSound} needs. Pure:
 * no clock, no threads, no files.
 */
package versewind.calibration;
