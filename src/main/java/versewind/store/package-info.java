/**
 * Files: how instruments and plans are written as JSON, how they are read with the place of every mistake, how they are
 * saved so that no work is lost, and the folder they lie in.
 *
 * <p>The only package that knows JSON and the disk. It knows {@code organ} and {@code plan}; they do not know it.
 */
package versewind.store;
