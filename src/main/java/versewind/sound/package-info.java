/**
 * From the stops drawn to what is heard: bands, pipes, room, box, singers, loudness, audibility, exposure.
 *
 * <p>One class a published method. Where no method is published the number is an estimate and is called so. Pure: no
 * clock, no threads; the only reading is of this package's own tables.
 */
package versewind.sound;
