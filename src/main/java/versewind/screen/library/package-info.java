/** The plans and organs of the library. */
package versewind.screen.library;
