package versewind.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import versewind.organ.BoxPosition;
import versewind.organ.Division;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.Stop;
import versewind.rules.StopChangesByDivision;

/**
 * What is drawn in one place of the console, as a registration is written.
 *
 * @param where the division's name, or {@link StopChangesByDivision#COUPLERS}
 * @param knobs names of stops and tremulants, or of couplers
 * @param box how far its box stands open, if it has one and any of its stops is drawn
 * @param waits true if none of it sounds: it is drawn for what follows, on a keyboard that nobody plays or couples
 */
public record DivisionLine(String where, List<String> knobs, Optional<BoxPosition> box, boolean waits) {

    public DivisionLine {
        knobs = List.copyOf(knobs);
    }

    /**
     * The manuals in the order of the organ, then the pedal, then the couplers; without places where nothing is drawn.
     *
     * @param sounding indices of the stops that sound
     */
    public static List<DivisionLine> of(Instrument organ, Registration registration, IndexSet sounding) {
        List<DivisionLine> all = new ArrayList<>();
        for (int division : organ.manualDivisions()) {
            all.add(of(organ, registration, sounding, division));
        }
        organ.pedalDivision().ifPresent(division -> all.add(of(organ, registration, sounding, division)));
        List<String> couplers = new ArrayList<>();
        registration
                .couplers()
                .forEach(coupler -> couplers.add(organ.couplers().get(coupler).name()));
        all.add(new DivisionLine(StopChangesByDivision.COUPLERS, couplers, Optional.empty(), false));
        all.removeIf(each -> each.knobs().isEmpty());
        return List.copyOf(all);
    }

    private static DivisionLine of(Instrument organ, Registration registration, IndexSet sounding, int index) {
        Division division = organ.divisions().get(index);
        List<String> knobs = new ArrayList<>();
        IndexSet stops = IndexSet.of(registration.stops().stream()
                .filter(stop -> organ.stops().get(stop).division() == index));
        stops.stream()
                .mapToObj(organ.stops()::get)
                .map(Instrument.Knob::stop)
                .sorted(Stop.asWritten())
                .forEach(stop -> knobs.add(stop.label()));
        registration.tremulants().stream()
                .mapToObj(organ.tremulants()::get)
                .filter(tremulant -> tremulant.division().equals(division.name()))
                .forEach(tremulant -> knobs.add(tremulant.name()));
        return new DivisionLine(
                division.name(),
                knobs,
                division.isEnclosed() ? Optional.of(registration.boxes().get(index)) : Optional.empty(),
                !stops.isEmpty() && !stops.meets(sounding));
    }
}
