package versewind.rules;

import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Occasion;
import versewind.plan.Plan;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VersePlace;

/**
 * For whom the organ plays.
 *
 * @param who who sings
 * @param singing how strongly they sing; of no meaning when nobody does
 * @param mood the character of the verse
 */
public record Company(Who who, Singing singing, Mood mood) {

    /** Who sings. */
    public enum Who {
        CONGREGATION,
        CHOIR,
        SOLOIST,
        NOBODY
    }

    /** Those for whom a verse is played, of whose day nothing is known. */
    public static Company of(Verse verse) {
        return of(verse, Occasion.ORDINARY);
    }

    /** Those for whom a verse of a plan is played. */
    public static Company of(Plan plan, VersePlace place) {
        return of(
                plan.hymns().get(place.hymn()).verses().get(place.verse()),
                plan.heading().occasion());
    }

    /** Those for whom a verse is played on such a day. */
    static Company of(Verse verse, Occasion occasion) {
        Who who = verse.isSung() ? who(verse.mode()) : Who.NOBODY;
        Mood mood = verse.mood() == Mood.PLAIN ? usual(verse.singing(), occasion) : verse.mood();
        return new Company(who, verse.singing(), mood);
    }

    /** The character of a verse of which the plan says nothing. */
    private static Mood usual(Singing singing, Occasion occasion) {
        if (occasion.isHeldBack() || singing == Singing.GENTLE) {
            return Mood.GENTLE;
        }
        boolean isFeast = occasion == Occasion.FESTAL || occasion == Occasion.JOYFUL;
        boolean isFestal = singing == Singing.FULL_VOICE || (isFeast && singing == Singing.STRONG);
        return isFestal ? Mood.FESTAL : Mood.PLAIN;
    }

    private static Who who(Mode mode) {
        return switch (mode) {
            case CONGREGATION -> Who.CONGREGATION;
            case SMALL_CHOIR -> Who.CHOIR;
            case SOLO_VOICE -> Who.SOLOIST;
            case MELODY_SOLOED -> Who.NOBODY;
        };
    }

    /** True where the people sing. */
    public boolean isCongregation() {
        return who == Who.CONGREGATION;
    }

    /** True where anybody sings. */
    public boolean isSung() {
        return who != Who.NOBODY;
    }

    /** True for a verse that is held back. */
    public boolean isGentle() {
        return mood == Mood.GENTLE;
    }

    /** True for the climax of a festal service. */
    public boolean isFestal() {
        return mood == Mood.FESTAL;
    }

    /** True where a soloist or a choir sings. */
    public boolean isFew() {
        return who == Who.CHOIR || who == Who.SOLOIST;
    }
}
