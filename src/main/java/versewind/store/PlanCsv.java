package versewind.store;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import versewind.organ.Instrument;
import versewind.organ.NameList;
import versewind.organ.Registration;
import versewind.organ.RegistrationText;
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
    private final RegistrationText text;
    private final Map<CsvColumn, String> cells = new EnumMap<>(CsvColumn.class);
    private final StringBuilder written = new StringBuilder(Csv.row(CsvColumn.heads()));

    private PlanCsv(Instrument instrument) {
        this.instrument = instrument;
        this.text = new RegistrationText(instrument);
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
        cells.put(CsvColumn.STOPS, text.stops(drawn.stops()));
        cells.put(CsvColumn.COUPLERS, text.couplers(drawn.couplers()));
        cells.put(CsvColumn.BOXES, text.boxes(drawn));
        cells.put(CsvColumn.TREMULANTS, text.tremulants(drawn.tremulants()));
        cells.put(CsvColumn.PISTON, verse.piston());
        cells.put(CsvColumn.NOTE, verse.note());
        cells.put(CsvColumn.MOOD, verse.mood() == Mood.PLAIN ? "" : verse.mood().word());
        cells.put(CsvColumn.ALWAYS, text.stops(verse.locks().always()));
        cells.put(CsvColumn.NEVER, text.stops(verse.locks().never()));
        cells.put(
                CsvColumn.SILENCED,
                verse.silenced().stream()
                        .map(each -> NameList.escaped(each.rule()) + ": " + NameList.escaped(each.note()))
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
}
