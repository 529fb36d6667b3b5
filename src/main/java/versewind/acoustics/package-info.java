/**
 * Published methods of acoustics, one class each: third-octave bands, loudness, audibility, reverberation, rooms, dose.
 *
 * <p>Pure, and independent of every other package; reads only tables. Every class names its source.
 */
package versewind.acoustics;
