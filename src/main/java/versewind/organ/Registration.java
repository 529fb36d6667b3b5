package versewind.organ;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A registration: the stops, couplers and tremulants drawn and the position of every box, as indices of one
 * {@link Instrument}.
 *
 * @param stops indices of the stops drawn
 * @param couplers indices of the couplers drawn
 * @param tremulants indices of the tremulants drawn
 * @param boxes a position for every division, in their order; {@link BoxPosition#OPEN} for those without a box
 */
public record Registration(IndexSet stops, IndexSet couplers, IndexSet tremulants, List<BoxPosition> boxes) {

    /** What is done with a knob that was drawn, as it is said everywhere; its partner is "draw". */
    public static final String PUT_IN = "put in";

    public Registration {
        boxes = List.copyOf(boxes);
    }

    /**
     * Written out, like {@link #equals}, because the search calls it constantly and a record's own methods are slow
     * until compiled.
     */
    @Override
    public int hashCode() {
        return 31 * (31 * (31 * stops.hashCode() + couplers.hashCode()) + tremulants.hashCode()) + boxes.hashCode();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Registration drawn
                && stops.equals(drawn.stops)
                && couplers.equals(drawn.couplers)
                && tremulants.equals(drawn.tremulants)
                && boxes.equals(drawn.boxes);
    }

    /** Nothing drawn, all boxes open. */
    public static Registration silent(Instrument instrument) {
        return new Registration(
                IndexSet.EMPTY,
                IndexSet.EMPTY,
                IndexSet.EMPTY,
                instrument.divisions().stream()
                        .map(division -> BoxPosition.OPEN)
                        .toList());
    }

    /**
     * Full organ: all stops but celestes, all unison and octave couplers, no tremulant, all boxes open. Sub-octave
     * couplers and unison off are not drawn. Common practice, no source.
     */
    public static Registration full(Instrument instrument) {
        IndexSet stops = IndexSet.of(IntStream.range(0, instrument.stops().size())
                .filter(i -> instrument.stops().get(i).stop().family() != Family.CELESTE));
        IndexSet couplers = IndexSet.of(IntStream.range(0, instrument.couplers().size())
                .filter(i -> switch (instrument.couplers().get(i).kind()) {
                    case UNISON, OCTAVE -> true;
                    case SUB_OCTAVE, UNISON_OFF -> false;
                }));
        return new Registration(
                stops, couplers, IndexSet.EMPTY, silent(instrument).boxes());
    }

    /** True if every index belongs to a part of the instrument and every division has a box position. */
    public boolean fits(Instrument instrument) {
        return boxes.size() == instrument.divisions().size()
                && stops.isBelow(instrument.stops().size())
                && couplers.isBelow(instrument.couplers().size())
                && tremulants.isBelow(instrument.tremulants().size());
    }

    /** With one stop drawn, or put in if it was drawn. */
    public Registration toggleStop(int stop) {
        return withStops(stops.toggled(stop));
    }

    /** With one coupler drawn, or put in if it was drawn. */
    public Registration toggleCoupler(int coupler) {
        return new Registration(stops, couplers.toggled(coupler), tremulants, boxes);
    }

    /** With one tremulant drawn, or put in if it was drawn. */
    public Registration toggleTremulant(int tremulant) {
        return new Registration(stops, couplers, tremulants.toggled(tremulant), boxes);
    }

    /** With other stops. */
    public Registration withStops(IndexSet others) {
        return new Registration(others, couplers, tremulants, boxes);
    }

    /** With other couplers. */
    public Registration withCouplers(IndexSet others) {
        return new Registration(stops, others, tremulants, boxes);
    }

    /** With other tremulants. */
    public Registration withTremulants(IndexSet others) {
        return new Registration(stops, couplers, others, boxes);
    }

    /** With the boxes in other positions, one for every division. */
    public Registration withBoxes(List<BoxPosition> others) {
        return new Registration(stops, couplers, tremulants, others);
    }

    /** With the box of one division in another position. */
    public Registration withBox(int division, BoxPosition position) {
        List<BoxPosition> others = new ArrayList<>(boxes);
        others.set(division, position);
        return withBoxes(others);
    }
}
