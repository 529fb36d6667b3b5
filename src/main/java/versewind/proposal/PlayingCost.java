package versewind.proposal;

import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mood;

/** Where the hands play, with or without the feet, and how the boxes stand. Common practice, no source. */
final class PlayingCost {

    private static final double NOT_THE_MAIN_MANUAL = 1.2;
    private static final double IN_THE_OPEN = 0.9;
    private static final double NO_COUPLER = 8;
    private static final double NO_SOLO = 6;
    private static final double COUPLED_SOLO = 0.4;
    private static final double EMPTY_HAND = 100;
    private static final double NO_EIGHT = 60;
    private static final double NOTHING_OF_ITS_OWN = 1.5;
    private static final double BETWEEN = 0.05;
    private static final double NO_BASS = 2.5;
    private static final double MEANT_FOR_SOLOS = 0.3;

    private final OrganFacts organ;
    private final Requirement wish;

    PlayingCost(OrganFacts organ, Requirement wish) {
        this.organ = organ;
        this.wish = wish;
    }

    void add(DraftAnalysis sounding, Tally tally) {
        Draft draft = sounding.draft();
        addLayout(sounding, tally);
        if (sounding.most().inRight() == 0 || sounding.most().inLeft() == 0) {
            tally.add(EMPTY_HAND, "a hand plays where nothing sounds");
        }
        if (sounding.most().eightsInLeft() == 0 && sounding.drawn().inLeft() > 0) {
            tally.add(NO_EIGHT, "the hands have no 8 ft to play on");
        }
        if (sounding.most().ownOfRight() == 0) {
            tally.add(NOTHING_OF_ITS_OWN, "the manual under the hands has nothing of its own drawn");
        }
        int right = draft.hands().right();
        if (wish.isPeople()
                && wish.mood() != Mood.GENTLE
                && !organ.isOneKeyboard(right, organ.keyboards().get(0))) {
            tally.add(NOT_THE_MAIN_MANUAL, "the people are led from another manual than usual");
        }
        boolean isCarrying = wish.role() == Role.CHOIR || wish.role() == Role.SOLOIST;
        if (isCarrying && organ.isForSolos(right)) {
            tally.add(MEANT_FOR_SOLOS, "a division meant for solos carries the voices");
        }
        if (isCarrying && organ.hasEnclosedManual() && !organ.isEnclosed(right)) {
            tally.add(IN_THE_OPEN, "a division in a box could follow the voices");
        }
    }

    /** How the boxes stand that are heard. */
    void addBoxes(DraftAnalysis sounding, Tally tally) {
        Draft draft = sounding.draft();
        for (int division = 0; division < draft.registration().boxes().size(); division++) {
            if (organ.isEnclosed(division) && sounding.isHeard(division)) {
                addBox(draft.registration().boxes().get(division), tally);
            }
        }
    }

    private void addLayout(DraftAnalysis sounding, Tally tally) {
        Draft draft = sounding.draft();
        Layout layout = draft.hands().layout();
        switch (layout) {
            case FOUR_PARTS, MELODY_SOLOED -> {}
            case MANUALS_ONLY -> tally.add(withoutSixteen(), "wide chords lie badly without the pedal");
            case COUPLED_DOWN -> {
                tally.add(withoutSixteen() - 0.05, "the feet have no 16 ft");
                if (!isCoupledDown(draft.couplers())) {
                    tally.add(NO_COUPLER, "nothing is coupled to the feet");
                }
            }
        }
        boolean isBig =
                sounding.drawn().inRight(StopClass.REED_8) + sounding.drawn().inRight(StopClass.MIXTURE) > 0;
        if (wish.isPeople() && isBig && layout != Layout.FOUR_PARTS && organ.pedal() != OrganFacts.NO_PEDAL) {
            tally.add(NO_BASS, "a big chorus wants the pedal's 16 ft");
        }
        boolean isSoloed = layout == Layout.MELODY_SOLOED;
        if (isSoloed && draft.couplers().stream().anyMatch(coupler -> organ.keyboardOf(coupler) != organ.pedal())) {
            tally.add(COUPLED_SOLO, "manuals are coupled where one by itself would do");
        }
        tally.add(leastOf(draft.hands()), isSoloed ? "the melody is soloed" : "the melody has no manual of its own");
    }

    /** What a way to play it costs at least: the melody is soloed where that is wanted, and not elsewhere. */
    double leastOf(HandsAndFeet hands) {
        boolean isSoloed = hands.layout() == Layout.MELODY_SOLOED;
        return isSoloed == (wish.role() == Role.UNDER_SOLO) ? 0 : NO_SOLO;
    }

    private boolean isCoupledDown(IndexSet couplers) {
        for (int coupler = 0; coupler < organ.couplers(); coupler++) {
            if (organ.keyboardOf(coupler) == organ.pedal() && couplers.contains(coupler)) {
                return true;
            }
        }
        return false;
    }

    private double withoutSixteen() {
        return switch (wish.role()) {
            case PEOPLE ->
                switch (wish.layers()) {
                    case GENTLE -> 0.5;
                    case PLAIN -> 1.5;
                    case BRIGHT -> 2.5;
                    case FESTAL -> 4;
                };
            case CHOIR -> 0.4;
            case SOLOIST -> 0.2;
            case SOLO_LINE, UNDER_SOLO -> 1;
        };
    }

    private void addBox(BoxPosition position, Tally tally) {
        double shut = 1 - position.opening();
        switch (wish.role()) {
            case PEOPLE -> tally.add(shut * forPeople(), "a box could stand wider open");
            case CHOIR -> tally.add(0.7 * Math.abs(shut - 0.5), "the box would be better half open");
            case SOLOIST -> tally.add(0.5 * position.opening(), "the box could be closed for one voice");
            case SOLO_LINE, UNDER_SOLO -> tally.add(0.05 * shut, "a box is not quite open");
        }
        boolean isBetween = position == BoxPosition.QUARTER || position == BoxPosition.THREE_QUARTERS;
        tally.add(isBetween ? BETWEEN : 0, "a foot finds closed, half and open more surely");
    }

    private double forPeople() {
        return switch (wish.mood()) {
            case GENTLE -> 0.3;
            case PLAIN -> 0.5;
            case BRIGHT -> 0.9;
            case FESTAL -> 1.6;
        };
    }
}
