/** An organ that is being changed, or made from a stop list. */
package versewind.screen.organ;
