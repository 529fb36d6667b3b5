package versewind.rules;

import versewind.plan.Mode;
import versewind.plan.Singing;
import versewind.plan.Verse;

/**
 * For whom the organ plays.
 *
 * @param who who sings
 * @param singing how strongly they sing; of no meaning when nobody does
 */
public record Company(Who who, Singing singing) {

    /** Who sings. */
    public enum Who {
        CONGREGATION,
        CHOIR,
        SOLOIST,
        NOBODY
    }

    /** Those for whom a verse is played. */
    public static Company of(Verse verse) {
        return new Company(verse.isSung() ? who(verse.mode()) : Who.NOBODY, verse.singing());
    }

    private static Who who(Mode mode) {
        return switch (mode) {
            case CONGREGATION -> Who.CONGREGATION;
            case SMALL_CHOIR -> Who.CHOIR;
            case SOLO_VOICE -> Who.SOLOIST;
            case MELODY_SOLOED -> Who.NOBODY;
        };
    }

    /** Whether the people sing. */
    public boolean isCongregation() {
        return who == Who.CONGREGATION;
    }

    /** Whether anybody sings. */
    public boolean isSung() {
        return who != Who.NOBODY;
    }
}
