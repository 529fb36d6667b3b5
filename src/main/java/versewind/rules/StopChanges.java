package versewind.rules;

import java.util.ArrayList;
import java.util.List;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Knobs;
import versewind.organ.Registration;

/**
 * What has to be moved to get from one registration to the next by hand and foot.
 *
 * @param stopsDrawn indices of stops to draw
 * @param stopsPutIn indices of stops to put in
 * @param couplersDrawn indices of couplers to draw
 * @param couplersPutIn indices of couplers to put in
 * @param tremulantsDrawn indices of tremulants to draw
 * @param tremulantsPutIn indices of tremulants to put in
 * @param boxes boxes to move
 */
public record StopChanges(
        IndexSet stopsDrawn,
        IndexSet stopsPutIn,
        IndexSet couplersDrawn,
        IndexSet couplersPutIn,
        IndexSet tremulantsDrawn,
        IndexSet tremulantsPutIn,
        List<BoxMove> boxes) {

    public StopChanges {
        boxes = List.copyOf(boxes);
    }

    /**
     * A box that changes its position.
     *
     * @param division index of its division
     * @param to where it is moved
     */
    public record BoxMove(int division, BoxPosition to) {}

    /** The movements from one registration to another of the same instrument. */
    public static StopChanges between(Registration before, Registration after) {
        List<BoxMove> boxes = new ArrayList<>();
        for (int division = 0; division < after.boxes().size(); division++) {
            BoxPosition to = after.boxes().get(division);
            if (before.boxes().get(division) != to) {
                boxes.add(new BoxMove(division, to));
            }
        }
        return new StopChanges(
                after.stops().minus(before.stops()),
                before.stops().minus(after.stops()),
                after.couplers().minus(before.couplers()),
                before.couplers().minus(after.couplers()),
                after.tremulants().minus(before.tremulants()),
                before.tremulants().minus(after.tremulants()),
                boxes);
    }

    /**
     * Those that are heard: where a division does not sound before, or not afterwards, its stops are moved while it
     * rests; likewise couplers of a keyboard, and boxes.
     *
     * @param before what sounds before
     * @param after what sounds afterwards
     */
    StopChanges heard(PlayedRegistration before, PlayedRegistration after) {
        IndexSet both = before.withinEarshot().and(after.withinEarshot());
        return new StopChanges(
                stopsDrawn.and(both),
                stopsPutIn.and(both),
                heard(heard(couplersDrawn, before), after),
                heard(heard(couplersPutIn, before), after),
                tremulantsDrawn,
                tremulantsPutIn,
                boxes.stream()
                        .filter(box -> after.isHeard(box.division()) && before.isHeard(box.division()))
                        .toList());
    }

    private static IndexSet heard(IndexSet couplers, PlayedRegistration played) {
        return IndexSet.of(couplers.stream()
                .filter(coupler -> played.isPlayed(played.organ().keyboardOf(coupler))));
    }

    /** Without the stops drawn that do not sound then: of what is drawn, what is heard. */
    public StopChanges sounding(IndexSet sounding) {
        return new StopChanges(
                stopsDrawn.and(sounding),
                stopsPutIn,
                couplersDrawn,
                couplersPutIn,
                tremulantsDrawn,
                tremulantsPutIn,
                boxes);
    }

    /** The stops drawn that do not sound then, and nothing else: they are drawn for a later verse. */
    public StopChanges waiting(IndexSet sounding) {
        IndexSet none = IndexSet.EMPTY;
        return new StopChanges(stopsDrawn.minus(sounding), none, none, none, none, none, List.of());
    }

    /** Those that some knobs are not among; boxes always. */
    public StopChanges beyond(Knobs reach) {
        return new StopChanges(
                stopsDrawn.minus(reach.stops()),
                stopsPutIn.minus(reach.stops()),
                couplersDrawn.minus(reach.couplers()),
                couplersPutIn.minus(reach.couplers()),
                tremulantsDrawn.minus(reach.tremulants()),
                tremulantsPutIn.minus(reach.tremulants()),
                boxes);
    }

    /** Number of stops, couplers and tremulants that are moved. */
    public int knobs() {
        return count() - boxes.size();
    }

    /** Number of movements: each stop, coupler, tremulant and box is one. */
    public int count() {
        return stopsDrawn.size()
                + stopsPutIn.size()
                + couplersDrawn.size()
                + couplersPutIn.size()
                + tremulantsDrawn.size()
                + tremulantsPutIn.size()
                + boxes.size();
    }
}
