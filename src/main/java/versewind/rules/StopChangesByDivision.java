package versewind.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import versewind.organ.BoxPosition;
import versewind.organ.Division;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.Stop;

/**
 * What is moved in one place of the console: a division's stops, tremulants and box, or the couplers.
 *
 * @param where the division's name, or {@link #COUPLERS}
 * @param putIn names of knobs to put in, as a registration is written
 * @param drawn names of knobs to draw, likewise
 * @param box where the box is moved, if it is
 */
public record StopChangesByDivision(String where, List<String> putIn, List<String> drawn, Optional<BoxPosition> box) {

    /** The place of the couplers. */
    public static final String COUPLERS = "Couplers";

    public StopChangesByDivision {
        putIn = List.copyOf(putIn);
        drawn = List.copyOf(drawn);
    }

    /** The movements, division after division and the couplers last; places where nothing moves are left out. */
    public static List<StopChangesByDivision> of(Instrument organ, StopChanges moves) {
        List<StopChangesByDivision> all = new ArrayList<>();
        for (int i = 0; i < organ.divisions().size(); i++) {
            int division = i;
            all.add(new StopChangesByDivision(
                    organ.divisions().get(division).name(),
                    knobs(organ, moves.stopsPutIn(), moves.tremulantsPutIn(), division),
                    knobs(organ, moves.stopsDrawn(), moves.tremulantsDrawn(), division),
                    moves.boxes().stream()
                            .filter(move -> move.division() == division)
                            .map(StopChanges.BoxMove::to)
                            .findFirst()));
        }
        all.add(new StopChangesByDivision(
                COUPLERS,
                couplers(organ, moves.couplersPutIn()),
                couplers(organ, moves.couplersDrawn()),
                Optional.empty()));
        all.removeIf(StopChangesByDivision::isNone);
        return List.copyOf(all);
    }

    /** The movements in words: "put in Great Mixture III", "draw Swell Oboe 8, Cornopean 8", "Swell box half open". */
    public static List<String> words(Instrument organ, StopChanges moves) {
        List<String> words = new ArrayList<>();
        for (StopChangesByDivision each : of(organ, moves)) {
            String place = each.where.equals(COUPLERS) ? "" : each.where + " ";
            if (!each.putIn.isEmpty()) {
                words.add(Registration.PUT_IN + " " + place + String.join(", ", each.putIn));
            }
            if (!each.drawn.isEmpty()) {
                words.add("draw " + place + String.join(", ", each.drawn));
            }
            each.box.ifPresent(box -> words.add(place + "box " + box.opened()));
        }
        return words;
    }

    private boolean isNone() {
        return putIn.isEmpty() && drawn.isEmpty() && box.isEmpty();
    }

    private static List<String> knobs(Instrument organ, IndexSet stops, IndexSet tremulants, int index) {
        Division division = organ.divisions().get(index);
        List<String> names = new ArrayList<>();
        stops.stream()
                .mapToObj(organ.stops()::get)
                .filter(knob -> knob.division() == index)
                .map(Instrument.Knob::stop)
                .sorted(Stop.asWritten())
                .forEach(stop -> names.add(stop.label()));
        tremulants.forEach(tremulant -> {
            if (organ.tremulants().get(tremulant).division().equals(division.name())) {
                names.add(organ.tremulants().get(tremulant).name());
            }
        });
        return names;
    }

    private static List<String> couplers(Instrument organ, IndexSet set) {
        List<String> names = new ArrayList<>();
        set.forEach(coupler -> names.add(organ.couplers().get(coupler).name()));
        return names;
    }
}
