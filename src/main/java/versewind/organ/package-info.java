/**
 * What an instrument is: its divisions, stops, couplers, pistons and room; and what is drawn on it at one moment.
 *
 * <p>Pure values. This package knows no other of the program.
 */
package versewind.organ;
