package versewind.store;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import versewind.organ.BoxPosition;
import versewind.organ.Coupler;
import versewind.organ.Division;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.Tremulant;
import versewind.plan.Hymn;
import versewind.plan.Mood;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Verse;

/**
 * A plan as a spreadsheet: a row a verse, with what belongs to its hymn and its service in every row; a row for a hymn
 * without verses and for a plan without hymns. Stops are written "Great: Open Diapason 8, Principal 4; Pedal: Bourdon 16".
 */
public final class PlanCsv {

    private final Instrument instrument;
    private final Map<CsvColumn, String> cells = new EnumMap<>(CsvColumn.class);
    private final StringBuilder written = new StringBuilder(Csv.row(CsvColumn.heads()));

    private PlanCsv(Instrument instrument) {
        this.instrument = instrument;
    }

    /** All rows, the first of them with the names of the columns, as RFC 4180 has it. */
    public static String of(Plan plan, Instrument instrument) {
        PlanCsv csv = new PlanCsv(instrument);
        csv.service(plan);
        return csv.written.toString();
    }

    private void row() {
        written.append(Csv.row(Arrays.stream(CsvColumn.values())
                .map(column -> cells.getOrDefault(column, ""))
                .toList()));
    }

    private void service(Plan plan) {
        ServiceHeading heading = plan.heading();
        cells.put(CsvColumn.SERVICE, heading.title());
        cells.put(CsvColumn.DATE, heading.date().map(Object::toString).orElse(""));
        cells.put(CsvColumn.INSTRUMENT, plan.instrument());
        cells.put(CsvColumn.PEOPLE, Integer.toString(heading.people()));
        cells.put(
                CsvColumn.SECONDS_A_MOVE,
                heading.moveS() == ServiceHeading.USUAL_MOVE_S ? "" : Written.number(heading.moveS()));
        cells.put(CsvColumn.SERVICE_NOTES, heading.notes());
        if (plan.hymns().isEmpty()) {
            row();
        }
        for (int i = 0; i < plan.hymns().size(); i++) {
            cells.put(CsvColumn.HYMN, Integer.toString(i + 1));
            hymn(plan.hymns().get(i));
        }
    }

    private void hymn(Hymn hymn) {
        cells.put(CsvColumn.NUMBER, hymn.number());
        cells.put(CsvColumn.TITLE, hymn.title());
        cells.put(CsvColumn.TUNE, hymn.tune());
        cells.put(CsvColumn.METRE, hymn.metre());
        cells.put(CsvColumn.KEY, hymn.key());
        cells.put(CsvColumn.TEMPO, number(hymn.tempo()));
        cells.put(CsvColumn.HYMN_NOTES, hymn.notes());
        if (hymn.verses().isEmpty()) {
            cells.keySet().removeIf(column -> column.compareTo(CsvColumn.KIND) >= 0);
            row();
        }
        for (Verse verse : hymn.verses()) {
            verse(verse);
            row();
        }
    }

    private void verse(Verse verse) {
        cells.put(CsvColumn.KIND, verse.kind().word());
        cells.put(CsvColumn.LABEL, verse.label());
        cells.put(CsvColumn.MODE, verse.mode().word());
        cells.put(CsvColumn.SINGING, verse.singing().word());
        cells.put(CsvColumn.SINGERS, number(verse.people()));
        cells.put(CsvColumn.HANDS, verse.hands().layout().word());
        cells.put(
                CsvColumn.RIGHT,
                instrument.divisions().get(verse.hands().right()).name());
        cells.put(
                CsvColumn.LEFT, instrument.divisions().get(verse.hands().left()).name());
        Registration drawn = verse.registration();
        cells.put(CsvColumn.STOPS, stops(drawn.stops()));
        cells.put(
                CsvColumn.COUPLERS,
                names(drawn.couplers().stream()
                        .mapToObj(instrument.couplers()::get)
                        .map(Coupler::name)
                        .toList()));
        cells.put(CsvColumn.BOXES, boxes(drawn));
        cells.put(
                CsvColumn.TREMULANTS,
                names(drawn.tremulants().stream()
                        .mapToObj(instrument.tremulants()::get)
                        .map(Tremulant::name)
                        .toList()));
        cells.put(CsvColumn.PISTON, verse.piston());
        cells.put(CsvColumn.NOTE, verse.note());
        cells.put(CsvColumn.MOOD, verse.mood() == Mood.PLAIN ? "" : verse.mood().word());
        cells.put(CsvColumn.ALWAYS, stops(verse.locks().always()));
        cells.put(CsvColumn.NEVER, stops(verse.locks().never()));
        cells.put(
                CsvColumn.SILENCED,
                verse.silenced().stream()
                        .map(each -> CsvList.written(each.rule()) + ": " + CsvList.written(each.note()))
                        .collect(Collectors.joining("; ")));
        cells.put(
                CsvColumn.HEARD, verse.answer().map(each -> each.heard().word()).orElse(""));
        cells.put(
                CsvColumn.PRESENT,
                verse.answer().map(each -> Integer.toString(each.present())).orElse(""));
    }

    private static String number(OptionalInt number) {
        return number.isPresent() ? Integer.toString(number.getAsInt()) : "";
    }

    private static String names(List<String> names) {
        return names.stream().map(CsvList::written).collect(Collectors.joining(", "));
    }

    private String stops(IndexSet stops) {
        List<String> parts = new ArrayList<>();
        for (int d = 0; d < instrument.divisions().size(); d++) {
            int here = d;
            List<String> labels = stops.stream()
                    .mapToObj(instrument.stops()::get)
                    .filter(knob -> knob.division() == here)
                    .map(knob -> knob.stop().label())
                    .toList();
            if (!labels.isEmpty()) {
                parts.add(CsvList.written(instrument.divisions().get(d).name()) + ": " + names(labels));
            }
        }
        return String.join("; ", parts);
    }

    private String boxes(Registration drawn) {
        List<Division> divisions = instrument.divisions();
        return IntStream.range(0, divisions.size())
                .filter(d -> divisions.get(d).isEnclosed() && drawn.boxes().get(d) != BoxPosition.OPEN)
                .mapToObj(d -> CsvList.written(divisions.get(d).name()) + ": "
                        + drawn.boxes().get(d).word())
                .collect(Collectors.joining("; "));
    }
}
