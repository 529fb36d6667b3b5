/**
 * The full-screen editor without a terminal: what it shows, what a key does, what is to be done outside.
 *
 * <p>Pure: {@code Update} takes a state and an input and returns a state and effects; a view is a function from a state
 * to a {@link versewind.screen.Frame}. No files, no clock, no terminal.
 */
package versewind.screen;
