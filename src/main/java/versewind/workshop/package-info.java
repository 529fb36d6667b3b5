/**
 * An instrument while it is being changed: its draft in lines of text, what is wrong with them, the edits and undo; and the
 * stop list as the trade writes it, out of an instrument and back.
 *
 * <p>Pure: a draft may hold anything, an instrument is made of it only when nothing is wrong.
 */
package versewind.workshop;
