package versewind.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import versewind.organ.BoxPosition;
import versewind.organ.Division;
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
 */
public record DivisionLine(String where, List<String> knobs, Optional<BoxPosition> box) {

    public DivisionLine {
        knobs = List.copyOf(knobs);
    }

    /**
     * The manuals in the order of the organ, then the pedal, then the couplers; without places where nothing is drawn.
     */
    public static List<DivisionLine> of(Instrument organ, Registration registration) {
        List<DivisionLine> all = new ArrayList<>();
        for (int division : organ.manualDivisions()) {
            all.add(of(organ, registration, division));
        }
        organ.pedalDivision().ifPresent(division -> all.add(of(organ, registration, division)));
        List<String> couplers = new ArrayList<>();
        registration
                .couplers()
                .forEach(coupler -> couplers.add(organ.couplers().get(coupler).name()));
        all.add(new DivisionLine(StopChangesByDivision.COUPLERS, couplers, Optional.empty()));
        all.removeIf(each -> each.knobs().isEmpty());
        return List.copyOf(all);
    }

    private static DivisionLine of(Instrument organ, Registration registration, int index) {
        Division division = organ.divisions().get(index);
        List<String> knobs = new ArrayList<>();
        registration.stops().stream()
                .mapToObj(organ.stops()::get)
                .filter(knob -> knob.division() == index)
                .map(Instrument.Knob::stop)
                .sorted(Stop.AS_WRITTEN)
                .forEach(stop -> knobs.add(stop.label()));
        registration.tremulants().stream()
                .mapToObj(organ.tremulants()::get)
                .filter(tremulant -> tremulant.division().equals(division.name()))
                .forEach(tremulant -> knobs.add(tremulant.name()));
        return new DivisionLine(
                division.name(),
                knobs,
                division.isEnclosed() ? Optional.of(registration.boxes().get(index)) : Optional.empty());
    }
}
