/**
 * A service: its hymns, their verses, who sings, how hands and feet are laid out, what is drawn; and the edits that
 * change it, each with its inverse.
 *
 * <p>Pure values. This package knows {@code organ} and nothing else of the program.
 */
package versewind.plan;
