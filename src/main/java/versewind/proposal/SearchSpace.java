package versewind.proposal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import versewind.organ.Action;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Locks;
import versewind.plan.Mood;
import versewind.plan.Player;
import versewind.plan.Verse;
import versewind.rules.OrganFacts;

/**
 * Everything that is looked at for a verse.
 *
 * <ul> <li>Hands and feet: both hands on any manual with the bass on the pedal, with the hands only, or coupled down;
 * and the melody on any manual over any other. <li>Stops: any that sound from there; those locked in always, those
 * locked out never. <li>Couplers: all that a key which is played, or moved by another, can reach, of every kind.
 * <li>Boxes: all their positions where something is drawn that is heard; else open. <li>Tremulants: none.
 * </ul>
 */
final class SearchSpace {

    /** The positions at which a box is tried. */
    static final List<BoxPosition> POSITIONS = List.of(BoxPosition.values());

    private final OrganFacts organ;
    private final Requirement requirement;
    private final List<HandsAndFeet> hands;
    private final List<HandsAndFeet> usual;
    private final Map<HandsAndFeet, int[]> couplers = new HashMap<>();

    SearchSpace(OrganFacts organ, Requirement requirement) {
        this.organ = organ;
        this.requirement = requirement;
        hands = requirement.hands();
        usual = hands.stream().filter(this::isUsual).toList();
    }

    /** The ways to play a verse that the plan allows. */
    static List<HandsAndFeet> hands(OrganFacts organ, Player player, Verse verse) {
        return switch (verse.locks().kept()) {
            case HANDS_AND_FEET -> List.of(verse.hands());
            case NOTHING -> hands(organ, player);
        };
    }

    private static List<HandsAndFeet> hands(OrganFacts organ, Player player) {
        List<HandsAndFeet> all = new ArrayList<>();
        Layout soloed = player.plays(Layout.MELODY_SOLOED) ? Layout.MELODY_SOLOED : Layout.SOLOED_WITHOUT_PEDAL;
        for (int right : organ.keyboards()) {
            all.add(HandsAndFeet.on(Layout.FOUR_PARTS, right));
            if (organ.pedal() != OrganFacts.NO_PEDAL || player == Player.MANUALS_ONLY) {
                all.add(HandsAndFeet.on(Layout.MANUALS_ONLY, right));
            }
            if (organ.pedal() != OrganFacts.NO_PEDAL) {
                all.add(HandsAndFeet.on(Layout.COUPLED_DOWN, right));
            }
            organ.keyboards().stream()
                    .filter(left -> left != right)
                    .forEach(left -> all.add(new HandsAndFeet(soloed, right, left)));
        }
        return all.stream().filter(each -> player.plays(each.layout())).toList();
    }

    List<HandsAndFeet> hands() {
        return hands;
    }

    Locks locks() {
        return requirement.locks();
    }

    /** The ways to play with which a search begins; all of them where none is usual. */
    List<HandsAndFeet> firstHands() {
        return usual.isEmpty() ? hands : usual;
    }

    /**
     * The melody is soloed where that is wanted and not elsewhere, and the people are led on the main manual with the
     * feet, but for a gentle verse.
     */
    private boolean isUsual(HandsAndFeet layout) {
        boolean isSoloWanted =
                requirement.role() == Role.UNDER_SOLO && organ.keyboards().size() > 1;
        if (isSoloWanted != layout.layout().isSoloed()) {
            return false;
        }
        boolean isLed = requirement.isPeople() && requirement.mood() != Mood.GENTLE;
        return !isLed
                || (layout.layout() == Layout.FOUR_PARTS
                        && layout.right() == organ.keyboards().get(0));
    }

    /** Indices of the couplers that may be drawn. */
    int[] couplers(HandsAndFeet layout) {
        return couplers.computeIfAbsent(layout, this::reached);
    }

    private int[] reached(HandsAndFeet layout) {
        boolean[] isMoved = new boolean[organ.organ().divisions().size()];
        for (int division = 0; division < isMoved.length; division++) {
            isMoved[division] = isPlayed(layout, division);
        }
        boolean isFarther = organ.organ().action() == Action.MECHANICAL;
        while (isFarther) {
            isFarther = false;
            for (int coupler = 0; coupler < organ.couplers(); coupler++) {
                int source = organ.sourceOf(coupler);
                if (isMoved[organ.keyboardOf(coupler)] && !isMoved[source]) {
                    isMoved[source] = true;
                    isFarther = true;
                }
            }
        }
        return IntStream.range(0, organ.couplers())
                .filter(coupler -> isMoved[organ.keyboardOf(coupler)])
                .toArray();
    }

    private boolean isPlayed(HandsAndFeet layout, int division) {
        if (division == organ.pedal()) {
            return layout.layout().usesPedal();
        }
        return organ.isOneKeyboard(division, layout.right()) || organ.isOneKeyboard(division, layout.left());
    }

    /** Indices of the stops that may be drawn or left, where they sound. */
    int[] free(DraftAnalysis sounding) {
        boolean noPedalStops = sounding.draft().hands().layout() == Layout.COUPLED_DOWN;
        int[] free = new int[organ.stops()];
        int count = 0;
        for (int stop = 0; stop < free.length; stop++) {
            int division = organ.divisionOf(stop);
            boolean isHeard = sounding.isPlayed(division) && !(noPedalStops && division == organ.pedal());
            if (isHeard && !locks().always().contains(stop) && !locks().never().contains(stop)) {
                free[count++] = stop;
            }
        }
        return Arrays.copyOf(free, count);
    }

    /** What is locked in, and nothing else, all boxes open. */
    Draft least(HandsAndFeet layout) {
        Registration silent = Registration.silent(organ.organ());
        return new Draft(silent.withStops(locks().always()), layout);
    }

    /** Whether the locks and the hands allow a draft. */
    boolean contains(Draft draft) {
        boolean isUnlocked = draft.stops().minus(locks().never()).equals(draft.stops())
                && locks().always().minus(draft.stops()).isEmpty();
        return isUnlocked
                && hands.contains(draft.hands())
                && inPlay(draft.couplers(), draft.hands()).equals(draft.couplers());
    }

    /** Divisions whose boxes may be moved. */
    int[] boxes(DraftAnalysis sounding) {
        return IntStream.range(0, organ.organ().divisions().size())
                .filter(organ::isEnclosed)
                .filter(sounding::isHeard)
                .toArray();
    }

    /** The same draft where boxes that nobody hears stand open, and with no stops left that do not sound. */
    Draft tidied(Draft draft, DraftAnalysis sounding) {
        sounding.look(draft);
        IndexSet idle = (draft.hands().layout() == Layout.COUPLED_DOWN
                        ? sounding.idle().plus(ofPedal(draft))
                        : sounding.idle())
                .minus(locks().always());
        Draft tidy = idle.isEmpty() ? draft : draft.withStops(draft.stops().minus(idle));
        for (int division = 0; division < organ.organ().divisions().size(); division++) {
            boolean isHeard = sounding.isHeard(division);
            if (!isHeard && tidy.registration().boxes().get(division) != BoxPosition.OPEN) {
                tidy = tidy.withBox(division, BoxPosition.OPEN);
            }
        }
        return tidy;
    }

    private IndexSet ofPedal(Draft draft) {
        IndexSet found = IndexSet.EMPTY;
        for (int stop : draft.stops().stream().toArray()) {
            found = organ.divisionOf(stop) == organ.pedal() ? found.with(stop) : found;
        }
        return found;
    }

    /** The couplers of a draft that are in the space for hands. */
    IndexSet inPlay(IndexSet drawn, HandsAndFeet layout) {
        IndexSet kept = IndexSet.EMPTY;
        for (int coupler : couplers(layout)) {
            kept = drawn.contains(coupler) ? kept.with(coupler) : kept;
        }
        return kept;
    }
}
