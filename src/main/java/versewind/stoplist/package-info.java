/**
 * Reads a stop list as people publish it, in the languages of organ building, knows the names of stops, and prints an
 * instrument as a stop list that can be read again.
 *
 * <p>Text in, result out: every line either becomes part of the result or is listed with the reason.
 * Knows {@code organ} and {@code schema} only.
 */
package versewind.stoplist;
