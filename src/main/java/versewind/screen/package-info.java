/**
 * The full-screen editor without a terminal: what it shows, what a key does, what is to be done outside. Here the rooms
 * are put together: {@code Rooms} are the doors between them, the help and the line of commands read the keys of all.
 *
 * <p>Pure: {@code Update.step} takes a state and an event and returns a state and effects; a picture is a function from
 * a state to a {@link versewind.screen.toolkit.Frame}. No files, no clock, no terminal, and no search.
 */
package versewind.screen;
