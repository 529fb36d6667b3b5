/**
 * Published methods of acoustics, one class each: third-octave bands, loudness, audibility, reverberation, rooms, dose.
 *
 * <p>Pure: knows nothing of organs, and reads only the tables of the sound model. Every class names its source.
 */
package versewind.acoustics;
