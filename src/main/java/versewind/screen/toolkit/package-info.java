/** Cells, marks, words and widgets: a frame and what is drawn on it. Knows no plan that is open and no screen. */
package versewind.screen.toolkit;
