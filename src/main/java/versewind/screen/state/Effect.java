package versewind.screen.state;

import java.util.List;
import java.util.OptionalInt;
import versewind.plan.Verse;
import versewind.plan.VersePlace;

/** Something to be done outside the editor: a call of one of the {@link Effects}. */
@FunctionalInterface
public interface Effect {

    /** Does it, and returns what came of it at once; what comes of it later is an event of its own. */
    List<Event> by(Effects effects);

    /** As what a hymn is brought over from another plan. */
    enum Bringing {
        /** As one more hymn. */
        NEW_HYMN,
        /** As the verses of the current hymn. */
        VERSES
    }

    /** How it is told what was done with a hymn before. */
    enum Telling {
        IN_A_SENTENCE,
        LISTED
    }

    /**
     * Whose ladder is meant.
     *
     * @param place of the verse in the plan
     * @param verse the verse
     * @param people how many are present
     * @param tempo of its hymn
     */
    record LadderOf(VersePlace place, Verse verse, int people, OptionalInt tempo) {}
}
