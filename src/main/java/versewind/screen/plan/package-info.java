/** The plan that is open: its stops, verses and levels, and the screens over it. */
package versewind.screen.plan;
