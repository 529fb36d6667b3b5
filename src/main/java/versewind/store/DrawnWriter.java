package versewind.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;

/** Writes what is drawn and how it is played into a file, as {@link VerseReader} reads it. */
final class DrawnWriter {
    private final Instrument instrument;

    DrawnWriter(Instrument instrument) {
        this.instrument = instrument;
    }

    /** Where hands and feet play, on one line. */
    void hands(Block block, HandsAndFeet hands) {
        block.row(new Row()
                .text("hands", hands.layout().word())
                .text("right", divisionName(hands.right()))
                .text("left", divisionName(hands.left()))
                .bare());
    }

    /** What is drawn: a field for the stops, and one each for couplers, boxes and tremulants if there are any. */
    void registration(Block block, Registration registration) {
        List<String> couplers = instrument.couplerNames();
        List<String> tremulants = instrument.tremulantNames();
        stops(block, "drawn", registration.stops());
        knobs(block, "couplers", registration.couplers().stream(), couplers);
        boxes(block, registration);
        knobs(block, "tremulants", registration.tremulants().stream(), tremulants);
    }

    /** Some stops under a field, left out where there are none. */
    void stopsUnlessNone(Block block, String field, IndexSet stops) {
        if (!stops.isEmpty()) {
            stops(block, field, stops);
        }
    }

    private String divisionName(int division) {
        return instrument.divisions().get(division).name();
    }

    /** The stops stand on one line, a division a line where that is too long. */
    private void stops(Block block, String field, IndexSet stops) {
        Map<String, List<String>> drawn = new LinkedHashMap<>();
        stops.forEach(i -> {
            Instrument.Knob knob = instrument.stops().get(i);
            drawn.computeIfAbsent(knob.name().division(), division -> new ArrayList<>())
                    .add(knob.name().label());
        });
        Row row = new Row();
        Block rows = block.inner();
        drawn.forEach((division, labels) -> {
            row.add(division, Row.list(labels));
            rows.field(division, Row.list(labels));
        });
        String oneLine = new Row().add(field, row.braced()).bare();
        if (block.holds(oneLine)) {
            block.row(oneLine);
        } else {
            block.field(field, rows.object());
        }
    }

    private static void knobs(Block block, String field, IntStream drawn, List<String> names) {
        List<String> labels = drawn.mapToObj(names::get).toList();
        if (!labels.isEmpty()) {
            block.field(field, Row.list(labels));
        }
    }

    private void boxes(Block block, Registration registration) {
        Row row = new Row();
        for (int d = 0; d < instrument.divisions().size(); d++) {
            BoxPosition position = registration.boxes().get(d);
            if (instrument.divisions().get(d).isEnclosed() && position != BoxPosition.OPEN) {
                row.text(divisionName(d), position.word());
            }
        }
        if (!row.bare().isEmpty()) {
            block.field("boxes", row.braced());
        }
    }
}
