package versewind.sound;

import versewind.organ.Worded;

/** A place of a listener or a meter; the room gives its distance from the organ. */
public enum Seat implements Worded {
    /** In the middle of the nave. */
    NAVE,
    /** Among the singers farthest from the organ. */
    FAR,
    /** Where a choir or a soloist stands. */
    CHOIR,
    /** With the organist. */
    CONSOLE;
}
