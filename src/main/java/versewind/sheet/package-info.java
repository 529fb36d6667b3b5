/**
 * The sheet for the music desk: for every verse what is drawn, what changes and how it stands; and the cards for the
 * pistons and for the registrant.
 *
 * <p>Pure: a plan and its estimates in, text out. Knows {@code organ}, {@code plan}, {@code sound} and {@code advice}.
 */
package versewind.sheet;
