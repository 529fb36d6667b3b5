/**
 * Reads a stop list as people publish it, in the languages of organ building, and knows the names of stops.
 *
 * <p>Text in, result out: every line either becomes part of the result or is listed with the reason.
 * Knows {@code organ} only.
 */
package versewind.stoplist;
