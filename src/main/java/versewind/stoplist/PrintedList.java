package versewind.stoplist;

import java.util.List;
import versewind.organ.Instrument;
import versewind.schema.DivisionFields;
import versewind.schema.DraftLine;
import versewind.schema.InstrumentFields;
import versewind.schema.RowKind;
import versewind.schema.StopFields;

/** A stop list as the trade prints it: name and place, divisions with their stops, couplers, tremulants, pistons. */
final class PrintedList {

    static final String COUPLERS = "Couplers";
    static final String TREMULANTS = "Tremulants";
    static final String PISTONS = "Pistons";
    static final String GENERAL = "General";
    static final String LEVELS = "Memory levels";
    private static final String PEDAL = "Pedal";

    /** How wide a stop's name is, in characters. */
    private static final int NAME_WIDTH = 30;

    private PrintedList() {}

    /** The list of an instrument, which these lines describe. */
    static String of(Instrument organ, List<DraftLine> lines) {
        StringBuilder text = new StringBuilder(Quotation.ifNeeded(organ.name())).append('\n');
        if (!organ.place().isEmpty()) {
            text.append(Quotation.ifNeeded(organ.place())).append('\n');
        }
        RowKind before = RowKind.ORGAN;
        for (DraftLine line : lines) {
            text.append(
                    switch (line.part()) {
                        case DIVISION -> "\n" + division(line);
                        case STOP -> stop(line);
                        case COUPLER -> (before == RowKind.COUPLER ? "" : "\n" + COUPLERS + "\n") + named(line);
                        case TREMULANT -> (before == RowKind.TREMULANT ? "" : "\n" + TREMULANTS + "\n") + named(line);
                        case ORGAN, PISTONS, ROOM, TIMES, DISTANCES, SURFACE -> "";
                    });
            before = line.part();
        }
        if (organ.pistons().any()) {
            text.append('\n').append(PISTONS).append('\n');
            if (organ.pistons().generals() > 0) {
                text.append(count(GENERAL, organ.pistons().generals()));
            }
            organ.divisions().stream()
                    .filter(each -> organ.pistons().divisionals().containsKey(each.name()))
                    .forEach(each -> text.append(
                            count(each.name(), organ.pistons().divisionals().get(each.name()))));
            text.append(count(LEVELS, organ.pistons().memoryLevels()));
        }
        return text.toString();
    }

    private static String count(String name, int number) {
        String what = name.equals(LEVELS) ? name : Quotation.ifNeeded(name) + " pistons";
        return "  " + what + " " + number + "\n";
    }

    private static String division(DraftLine line) {
        String keyboard = line.isPedal()
                ? line.name().equals(PEDAL) ? "" : "pedal, "
                : "manual " + line.at(DivisionFields.KEYBOARD) + ", ";
        return Quotation.ifNeeded(line.name()) + " (" + keyboard + line.at(InstrumentFields.KEYS) + " keys"
                + (line.at(DivisionFields.IS_BOXED).isEmpty() ? "" : ", enclosed") + ")\n";
    }

    private static String stop(DraftLine line) {
        String feet = line.at(StopFields.FEET).isEmpty() ? "" : line.at(StopFields.FEET) + "'";
        String name = Quotation.ifNeeded(line.name());
        return "  " + name + " ".repeat(Math.max(2, NAME_WIDTH - name.length())) + (feet + " " + line.numeral()).strip()
                + "\n";
    }

    private static String named(DraftLine line) {
        return "  " + Quotation.ifNeeded(line.name()) + "\n";
    }
}
