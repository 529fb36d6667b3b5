package versewind.organ;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Trims of an organ and its parts: levels above the estimate, in dB. A calibration changes nothing else.
 *
 * @param organDb the whole organ
 * @param stopsDb every stop, in the order of {@link Instrument#stops()}
 * @param boxesDb the box of every division, in their order; 0 where there is none
 */
public record Trims(double organDb, List<Double> stopsDb, List<Double> boxesDb) {

    public Trims {
        stopsDb = List.copyOf(stopsDb);
        boxesDb = List.copyOf(boxesDb);
    }

    /** The trims of an instrument. */
    public static Trims of(Instrument organ) {
        return new Trims(
                organ.trimDb(),
                organ.stops().stream().map(knob -> knob.stop().trimDb()).toList(),
                organ.divisions().stream()
                        .map(division -> division.box().map(SwellBox::trimDb).orElse(0.0))
                        .toList());
    }

    /**
     * The instrument with these trims.
     *
     * @throws IllegalArgumentException if the numbers of stops or divisions differ
     */
    public Instrument on(Instrument organ) {
        if (stopsDb.size() != organ.stops().size()
                || boxesDb.size() != organ.divisions().size()) {
            throw new IllegalArgumentException("these trims belong to another organ");
        }
        List<Division> divisions = new ArrayList<>();
        int first = 0;
        for (int d = 0; d < organ.divisions().size(); d++) {
            Division division = organ.divisions().get(d);
            int start = first;
            List<Stop> stops = IntStream.range(0, division.stops().size())
                    .mapToObj(i -> trimmed(division.stops().get(i), stopsDb.get(start + i)))
                    .toList();
            double boxDb = boxesDb.get(d);
            Optional<SwellBox> box = division.box().map(any -> new SwellBox(boxDb));
            divisions.add(new Division(division.name(), division.manual(), division.keys(), box, stops));
            first += stops.size();
        }
        return new Instrument(
                organ.name(),
                organ.place(),
                organ.action(),
                organDb,
                divisions,
                organ.couplers(),
                organ.tremulants(),
                organ.pistons(),
                organ.room());
    }

    /** Borrowed pipes have the trim of the stop that lends them. */
    private static Stop trimmed(Stop stop, double db) {
        return stop.borrowed().isPresent() ? stop : stop.withTrimDb(db);
    }
}
