/** The desk, to play a service from, and the feedback after it. */
package versewind.screen.desk;
