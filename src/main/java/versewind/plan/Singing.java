package versewind.plan;

import versewind.organ.Worded;

/** How strongly the singers sing. */
public enum Singing implements Worded {
    GENTLE,
    ORDINARY,
    STRONG,
    FULL_VOICE;
}
