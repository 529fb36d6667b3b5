/**
 * Reads a stop list as people publish it, in the languages of organ building, and knows the names of stops.
 *
 * <p>Text in, result out: nothing is dropped in silence, and what could not be read is listed with its line and the reason.
 * Knows {@code organ} only.
 */
package versewind.stoplist;
