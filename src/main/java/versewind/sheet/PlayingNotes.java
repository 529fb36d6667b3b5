package versewind.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import versewind.plan.Plan;
import versewind.plan.VersePlace;
import versewind.rules.Advice;
import versewind.rules.ChangeRule;
import versewind.rules.Finding;
import versewind.rules.Touch;

/** How a verse is played, in the few words that can be read at the console. */
final class PlayingNotes {

    private PlayingNotes() {}

    /**
     * How to touch the keys, "Detached, notes held 3/4 of the beat."; at the first verse of a hymn how long to breathe
     * between its verses, and at the others whether what is moved before them takes longer than that.
     *
     * @param advice a colleague who knows the instrument
     * @param plan a plan that can be played on it
     * @param place a verse of the plan
     */
    static List<String> of(Advice advice, Plan plan, VersePlace place) {
        Touch touch = advice.touch(plan, place);
        return Stream.concat(Stream.of(words(touch)), breath(advice, plan, place, touch).stream())
                .toList();
    }

    private static String words(Touch touch) {
        String manner = touch.manner().word();
        String capital = Character.toUpperCase(manner.charAt(0)) + manner.substring(1);
        String held = touch.manner() == Touch.Manner.LEGATO
                ? ""
                : ", notes held " + touch.manner().hold();
        return capital + held + "."
                + (touch.isLastMeans() ? " There is no more organ in hand: lead by touch and a steady beat." : "");
    }

    private static Optional<String> breath(Advice advice, Plan plan, VersePlace place, Touch touch) {
        if (place.verse() > 0) {
            return advice.mentions(plan, place).stream()
                    .filter(finding -> finding.rule() == ChangeRule.TOO_MANY_MOVES)
                    .map(Finding::sentence)
                    .findFirst();
        }
        if (plan.hymns().get(place.hymn()).verses().size() == 1) {
            return Optional.empty();
        }
        int beats = touch.breathBeats();
        return Optional.of("Breathe " + beats + (beats == 1 ? " beat" : " beats") + " between verses.");
    }
}
