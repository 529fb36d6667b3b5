package versewind.proposal;

import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mood;
import versewind.rules.OrganFacts;
import versewind.rules.StopClass;

/** Where the hands play, with or without the feet, and how the boxes stand. Common practice, no source. */
final class PlayingCost {

    private final OrganFacts organ;
    private final Requirement requirement;

    PlayingCost(OrganFacts organ, Requirement requirement) {
        this.organ = organ;
        this.requirement = requirement;
    }

    void add(DraftAnalysis sounding, Tally tally) {
        Draft draft = sounding.draft();
        addLayout(sounding, tally);
        if (sounding.most().inRight() == 0 || sounding.most().inLeft() == 0) {
            tally.add(Cost.EMPTY_HAND);
        }
        if (sounding.most().eightsInLeft() == 0 && sounding.drawn().inLeft() > 0) {
            tally.add(Cost.HANDS_WITHOUT_EIGHT);
        }
        if (sounding.most().ownOfRight() == 0) {
            tally.add(Cost.NOTHING_UNDER_THE_HANDS);
        }
        int right = draft.hands().right();
        if (requirement.isPeople()
                && requirement.mood() != Mood.GENTLE
                && !organ.isOneKeyboard(right, organ.keyboards().get(0))) {
            tally.add(Cost.NOT_THE_MAIN_MANUAL);
        }
        boolean isCarrying = requirement.role() == Role.CHOIR || requirement.role() == Role.SOLOIST;
        if (isCarrying && organ.isForSolos(right)) {
            tally.add(Cost.MEANT_FOR_SOLOS);
        }
        if (isCarrying && organ.hasEnclosedManual() && !organ.isEnclosed(right)) {
            tally.add(Cost.IN_THE_OPEN);
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
            case FOUR_PARTS, MELODY_SOLOED, SOLOED_WITHOUT_PEDAL -> {}
            case MANUALS_ONLY -> {
                if (requirement.mayUsePedal()) {
                    tally.add(withoutSixteen(), "wide chords lie badly without the pedal");
                }
            }
            case COUPLED_DOWN -> {
                tally.add(withoutSixteen() - 0.05, "the feet have no 16 ft");
                if (!isCoupledDown(draft.couplers())) {
                    tally.add(Cost.NOTHING_COUPLED_DOWN);
                }
            }
        }
        boolean isBig =
                sounding.drawn().inRight(StopClass.REED_8) + sounding.drawn().inRight(StopClass.MIXTURE) > 0;
        boolean isWithoutBass = layout != Layout.FOUR_PARTS && requirement.mayUsePedal();
        if (requirement.isPeople() && isBig && isWithoutBass && organ.pedal() != OrganFacts.NO_PEDAL) {
            tally.add(Cost.NO_BASS);
        }
        boolean isSoloed = layout.isSoloed();
        if (isSoloed && draft.couplers().stream().anyMatch(coupler -> organ.keyboardOf(coupler) != organ.pedal())) {
            tally.add(Cost.COUPLED_SOLO);
        }
        tally.add(leastOf(draft.hands()), (isSoloed ? Cost.SOLOED : Cost.NOT_SOLOED).words());
    }

    /** What a way to play it costs at least: the melody is soloed where that is wanted, and not elsewhere. */
    double leastOf(HandsAndFeet hands) {
        boolean isSoloed = hands.layout().isSoloed();
        return isSoloed == (requirement.role() == Role.UNDER_SOLO)
                ? 0
                : (isSoloed ? Cost.SOLOED : Cost.NOT_SOLOED).points();
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
        return switch (requirement.role()) {
            case PEOPLE ->
                switch (requirement.layers()) {
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
        switch (requirement.role()) {
            case PEOPLE -> tally.add(shut * forPeople(), "a swell box could be opened wider");
            case CHOIR -> tally.add(0.7 * Math.abs(shut - 0.5), "the swell box would be better half open");
            case SOLOIST -> tally.add(0.5 * position.opening(), "the swell box could be closed for a soloist");
            case SOLO_LINE, UNDER_SOLO -> tally.add(0.05 * shut, "a swell box is not quite open");
        }
        boolean isBetween = position == BoxPosition.QUARTER || position == BoxPosition.THREE_QUARTERS;
        tally.addIf(isBetween, Cost.BETWEEN_POSITIONS);
    }

    private double forPeople() {
        return switch (requirement.mood()) {
            case GENTLE -> 0.3;
            case PLAIN -> 0.5;
            case BRIGHT -> 0.9;
            case FESTAL -> 1.6;
        };
    }
}
