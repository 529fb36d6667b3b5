package versewind.screen.plan;

import java.util.List;
import java.util.stream.Stream;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mood;
import versewind.plan.Singing;
import versewind.plan.SungBy;
import versewind.plan.Verse;
import versewind.screen.state.PlanChanges;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.State;
import versewind.screen.toolkit.Text;
import versewind.sheet.Wording;

/** Who sings, and how hands and feet are laid out. */
final class PlayingCommands {
    private static final String NOBODY = "The organ plays alone in this verse.";

    private static final String WHOLE_HYMN = " E sets the whole hymn.";

    private PlayingCommands() {}

    /** Sets who sings; a soloed melody takes its way of playing with it, and leaves it with it. */
    static State sungBy(State state, PlanEdit work, Verse verse, SungBy by) {
        HandsAndFeet hands = verse.hands();
        boolean soloed = hands.layout().isSoloed();
        if (by == SungBy.MELODY_SOLOED && !soloed) {
            hands = apart(work, hands.withLayout(Layout.MELODY_SOLOED));
        }
        if (by != SungBy.MELODY_SOLOED && soloed && verse.sungBy() == SungBy.MELODY_SOLOED) {
            hands = HandsAndFeet.on(Layout.FOUR_PARTS, work.instrument().mainDivision());
        }
        if (!verse.isPlayed() && by != SungBy.MELODY_SOLOED) {
            Verse still = verse.withSungBy(by.unaccompanied());
            State said = state.says("Still unaccompanied: 8 has the organ play.");
            return still.equals(verse) ? said : PlanChanges.change(said, work, still);
        }
        Verse after = verse.withSungBy(by).withHands(hands);
        State step = PlanChanges.change(state, work, after);
        return after.kind().isOrganAlone() && after.isPlayed() && by != SungBy.MELODY_SOLOED && !after.equals(verse)
                ? step.says(NOBODY)
                : step;
    }

    /** The same singers unaccompanied, or accompanied again. */
    static State unaccompanied(State state, PlanEdit work, Verse verse) {
        SungBy by = verse.sungBy();
        return PlanChanges.change(
                state, work, verse.withSungBy(verse.isPlayed() ? by.unaccompanied() : by.accompanied()));
    }

    /** A soloed melody wants two manuals: where both hands share one, the right goes to the next. */
    private static HandsAndFeet apart(PlanEdit work, HandsAndFeet hands) {
        return hands.right() == hands.left()
                ? new HandsAndFeet(hands.layout(), nextManual(work, hands.right()), hands.left())
                : hands;
    }

    static State sing(State state, PlanEdit work, Verse verse, int step) {
        if (!verse.isSung()) {
            return state.says(NOBODY);
        }
        Singing[] strengths = Singing.values();
        int at = verse.singing().ordinal() + step;
        if (at < 0 || at >= strengths.length) {
            return state.says(step > 0 ? "Stronger singing is not possible." : "Gentler singing is not possible.");
        }
        return PlanChanges.change(state, work, verse.withSinging(strengths[at]));
    }

    static State nextMood(State state, PlanEdit work, Verse verse) {
        Mood[] moods = Mood.values();
        Verse after = inMood(verse, moods[(verse.mood().ordinal() + 1) % moods.length]);
        State step = PlanChanges.change(state, work, after);
        boolean isSungAsBefore = after.singing() == verse.singing() || !verse.isSung();
        String too = isSungAsBefore ? "" : " They sing " + sung(after.singing()) + ".";
        return step.says(verse.label() + " is to sound " + after.mood().word() + "." + too + WHOLE_HYMN);
    }

    /** A verse in another mood; a gentle one takes the singing with it, and leaves it with it. */
    static Verse inMood(Verse verse, Mood mood) {
        Singing singing = verse.singing();
        if (mood == Mood.GENTLE && singing == Singing.ORDINARY) {
            singing = Singing.GENTLE;
        } else if (mood != Mood.GENTLE && verse.mood() == Mood.GENTLE && singing == Singing.GENTLE) {
            singing = Singing.ORDINARY;
        }
        return verse.withMood(mood).withSinging(singing);
    }

    private static String sung(Singing singing) {
        return singing == Singing.GENTLE ? "gently too" : "as usual again";
    }

    static State nextLayout(State state, PlanEdit work, Verse verse) {
        List<Layout> layouts = Stream.of(Layout.values())
                .filter(work.plan().heading().player()::plays)
                .toList();
        Layout next = layouts.get((layouts.indexOf(verse.hands().layout()) + 1) % layouts.size());
        HandsAndFeet hands = verse.hands().layout().isSoloed() && !next.isSoloed()
                ? HandsAndFeet.on(next, verse.hands().left())
                : verse.hands().withLayout(next);
        HandsAndFeet after = next.isSoloed() ? apart(work, hands) : hands;
        return told(state, work, verse.withHands(after), Wording.handsInWords(work.instrument(), after));
    }

    static State moveRightHand(State state, PlanEdit work, Verse verse) {
        HandsAndFeet hands = verse.hands();
        int right = nextManual(work, hands.right());
        return toManual(state, work, verse, new HandsAndFeet(hands.layout(), right, hands.left()));
    }

    static State moveLeftHand(State state, PlanEdit work, Verse verse) {
        HandsAndFeet hands = verse.hands();
        int left = nextManual(work, hands.left());
        return toManual(state, work, verse, new HandsAndFeet(hands.layout(), hands.right(), left));
    }

    private static State toManual(State state, PlanEdit work, Verse verse, HandsAndFeet hands) {
        if (hands.equals(verse.hands())) {
            return state.says("This organ has only one manual.");
        }
        String manuals = Wording.manuals(work.instrument(), hands);
        return told(
                state, work, verse.withHands(hands), hands.right() == hands.left() ? "both hands " + manuals : manuals);
    }

    private static State told(State state, PlanEdit work, Verse after, String hands) {
        return PlanChanges.told(state, PlanChanges.change(state, work, after), Text.capital(hands) + ".");
    }

    private static int nextManual(PlanEdit work, int division) {
        List<Integer> manuals = work.instrument().manualDivisions();
        return manuals.get((manuals.indexOf(division) + 1) % manuals.size());
    }
}
