package versewind.proposal;

import java.util.ArrayList;
import java.util.List;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Player;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.rules.OrganFacts;

/** The ways to play a verse that are worth weighing. Common practice, no source. */
final class WaysToPlay {

    private WaysToPlay() {}

    /**
     * The ways to play a verse: what the plan keeps, or says before anything is drawn, or what its player can do;
     * with the hands only where the plan says so.
     *
     * @param organ the instrument
     * @param player who plays
     * @param verse the verse
     * @param opens whether the people begin the hymn with it, and others follow
     * @param mode whom the organ accompanies there
     * @param mood of the words
     */
    static List<HandsAndFeet> of(OrganFacts organ, Player player, Verse verse, boolean opens, Mode mode, Mood mood) {
        if (verse.locks().keepsHands()) {
            return List.of(verse.hands());
        }
        List<HandsAndFeet> ways =
                isWritten(organ, verse, mode) ? List.of(verse.hands()) : of(organ, verse, opens, mode, mood);
        return ways.stream()
                .map(hands -> player.plays(hands.layout()) && !restsFeet(verse)
                        ? hands
                        : hands.withLayout(hands.layout().withoutPedal()))
                .distinct()
                .toList();
    }

    /** True for a verse that the plan has played with the hands only. */
    private static boolean restsFeet(Verse verse) {
        Layout layout = verse.hands().layout();
        return layout == Layout.MANUALS_ONLY || layout == Layout.SOLOED_WITHOUT_PEDAL;
    }

    /** True where the plan says how a verse is to be played before anything is drawn for it. */
    private static boolean isWritten(OrganFacts organ, Verse verse, Mode mode) {
        HandsAndFeet hands = verse.hands();
        int main = organ.organ().mainDivision();
        boolean isUsual = hands.right() == main && hands.left() == main && hands.layout() == Layout.FOUR_PARTS;
        boolean isPlayable =
                organ.pedal() != OrganFacts.NO_PEDAL || !hands.layout().usesPedal();
        return verse.registration().stops().isEmpty()
                && !isUsual
                && isPlayable
                && hands.layout().isSoloed() == (mode == Mode.MELODY_SOLOED);
    }

    private static List<HandsAndFeet> of(OrganFacts organ, Verse verse, boolean opens, Mode mode, Mood mood) {
        return switch (mode) {
            case MELODY_SOLOED -> soloed(organ);
            case CONGREGATION -> leading(organ, verse, opens, mood);
            case SMALL_CHOIR, SOLO_VOICE -> onEach(organ, organ.keyboards(), true);
        };
    }

    /**
     * The people are led on the main manual. A gentle verse may go to another and, where it is the verse that is gentle
     * and not the day, and it stands between others, do without the feet.
     */
    private static List<HandsAndFeet> leading(OrganFacts organ, Verse verse, boolean opens, Mood mood) {
        boolean restsFeet = !opens
                && verse.kind() != VerseKind.LAST_VERSE
                && (verse.singing() == Singing.GENTLE || verse.mood() == Mood.GENTLE);
        List<Integer> chorus = organ.keyboards().stream()
                .filter(division -> !organ.isForSolos(division))
                .toList();
        return switch (mood) {
            case GENTLE -> onEach(organ, chorus.isEmpty() ? organ.keyboards() : chorus, restsFeet);
            case PLAIN, BRIGHT, FESTAL ->
                chorus.stream()
                        .map(division -> HandsAndFeet.on(usual(organ), division))
                        .toList();
        };
    }

    private static Layout usual(OrganFacts organ) {
        return organ.pedal() == OrganFacts.NO_PEDAL ? Layout.MANUALS_ONLY : Layout.FOUR_PARTS;
    }

    private static List<HandsAndFeet> onEach(OrganFacts organ, List<Integer> divisions, boolean restsFeet) {
        List<HandsAndFeet> all = new ArrayList<>();
        for (int division : divisions) {
            all.add(HandsAndFeet.on(usual(organ), division));
            if (restsFeet && organ.pedal() != OrganFacts.NO_PEDAL) {
                all.add(HandsAndFeet.on(Layout.MANUALS_ONLY, division));
            }
        }
        return all;
    }

    /**
     * The tune on one manual and the other parts on another; where no piston sets the verse that follows, also with the
     * feet at rest, so that the pedal and its couplers stand ready for it.
     */
    private static List<HandsAndFeet> soloed(OrganFacts organ) {
        List<HandsAndFeet> all = new ArrayList<>();
        List<Layout> layouts = organ.pedal() == OrganFacts.NO_PEDAL
                ? List.of(Layout.SOLOED_WITHOUT_PEDAL)
                : organ.organ().pistons().any()
                        ? List.of(Layout.MELODY_SOLOED)
                        : List.of(Layout.MELODY_SOLOED, Layout.SOLOED_WITHOUT_PEDAL);
        for (int right : organ.keyboards()) {
            for (int left : organ.keyboards()) {
                if (right != left) {
                    for (Layout layout : layouts) {
                        all.add(new HandsAndFeet(layout, right, left));
                    }
                }
            }
        }
        return all;
    }
}
