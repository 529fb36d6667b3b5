package versewind.proposal;

import versewind.organ.Worded;

/** Of what a row of a score is. */
public enum PartKind implements Worded {
    /** How far the balance lies from where the verse wants it. */
    BALANCE,
    /** How far it lies from the middle of that, where it is as wanted. */
    AIM,
    /** The verdict on the balance, where it is not the best. */
    VERDICT,
    /** A rule that nobody breaks. */
    FAULT,
    /** A rule that a teacher would mention. */
    RULE,
    /** A step of the order that suits other words. */
    ORDER,
    /** Where the hands play, and with or without the feet; the boxes. */
    PLAYING,
    /** Stops and couplers, and moves that fit in the breath. */
    ECONOMY,
    /** A change from the verse before that does not fit in the breath. */
    CHANGES,
    /** How it stands to its neighbours. */
    HYMN;
}
