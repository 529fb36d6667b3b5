package versewind.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import versewind.organ.Count;
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
     * How to touch the keys, "Detached, notes held 3/4 of the beat.", where that differs from the last verse of the
     * hymn that was played; and whether what is moved before the verse takes longer than the breath.
     *
     * @param advice a colleague who knows the instrument
     * @param plan a plan that can be played on it
     * @param place a verse of the plan
     */
    static List<String> of(Advice advice, Plan plan, VersePlace place) {
        if (!plan.verse(place).isPlayed()) {
            return List.of(advice.touch(plan, place).sentence());
        }
        String touch = words(advice.touch(plan, place));
        Optional<String> before = Stream.iterate(place.verse() - 1, i -> i >= 0, i -> i - 1)
                .map(i -> new VersePlace(place.hymn(), i))
                .filter(other -> plan.verse(other).isPlayed())
                .findFirst()
                .map(other -> words(advice.touch(plan, other)));
        return Stream.concat(
                        Stream.of(touch).filter(words -> !before.equals(Optional.of(words))),
                        place.verse() > 0 ? breathless(advice, plan, place) : Stream.empty())
                .toList();
    }

    private static String words(Touch touch) {
        String manner = touch.manner().word();
        String capital = Character.toUpperCase(manner.charAt(0)) + manner.substring(1);
        String held = touch.manner() == Touch.Manner.LEGATO
                ? ""
                : ", notes held " + touch.manner().hold();
        return capital + held + "." + (touch.isLastMeans() ? Touch.LAST_MEANS : "");
    }

    private static Stream<String> breathless(Advice advice, Plan plan, VersePlace place) {
        return advice.mentions(plan, place).stream()
                .filter(finding -> finding.rule() == ChangeRule.TOO_MANY_MOVES)
                .map(Finding::sentence)
                .limit(1);
    }

    /** How long to breathe between the verses of a hymn: "breathe 2 beats"; blank where there is one verse. */
    static String breath(Advice advice, Plan plan, int hymn) {
        if (plan.hymns().get(hymn).verses().size() < 2) {
            return "";
        }
        int beats = advice.touch(plan, new VersePlace(hymn, 0)).breathBeats();
        return "breathe " + Count.of(beats, "beat");
    }
}
