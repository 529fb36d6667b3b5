/**
 * Files: how instruments and plans are written as JSON, how they are read with the place of every mistake, how they are
 * saved so that no work is lost, and the folder they lie in.
 *
 * <p>The only package that knows JSON and the disk. It knows the core: {@code organ} and {@code plan}, which it reads
 * and writes; the materials of {@code sound}, which a room is made of; the assessments of {@code advice}, which it
 * writes for other programs. The core does not know it.
 */
package versewind.store;
