package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import versewind.organ.Stop;
import versewind.schema.DivisionFields;
import versewind.schema.DraftLine;
import versewind.schema.InstrumentFields;
import versewind.schema.OrganDraft;
import versewind.schema.RowKind;
import versewind.schema.StopFields;

/** Reads a {@link PrintedList} into the lines of a draft. */
final class PrintedListReader {

    private static final Pattern DIVISION =
            Pattern.compile("(.+) \\((?:(?:manual ([1-7])|pedal), )?(\\d+) keys(, enclosed)?\\)");
    private static final Pattern STOP = Pattern.compile("  (.+?) {2,}(?:(\\S+(?: \\d/\\d+)?)')?(?: ?([IVX]+))?");
    private static final Pattern COUNT = Pattern.compile("  (.+?)(?: pistons)? (\\d+)");

    private final List<DraftLine> divisions = new ArrayList<>();
    private final List<DraftLine> couplers = new ArrayList<>();
    private final List<DraftLine> tremulants = new ArrayList<>();
    private final List<String> troubles = new ArrayList<>();
    private DraftLine organ = DraftLine.blank(RowKind.ORGAN);
    private DraftLine pistons = DraftLine.blank(RowKind.PISTONS);
    private String section = "";

    static PrintedListReader of(String list) {
        PrintedListReader reader = new PrintedListReader();
        List<String> lines = list.lines().map(String::stripTrailing).toList();
        int head = 0;
        while (head < lines.size() && lines.get(head).isEmpty()) {
            head++;
        }
        for (int i = head; i < lines.size(); i++) {
            reader.line(i - head, i + 1, lines.get(i));
        }
        return reader;
    }

    List<String> troubles() {
        return troubles;
    }

    /** The lines of a draft, with what goes without saying filled in. */
    List<DraftLine> lines() {
        List<DraftLine> all = new ArrayList<>(List.of(organ));
        all.addAll(divisions);
        all.addAll(couplers);
        all.addAll(tremulants);
        all.add(pistons);
        for (RowKind part : List.of(RowKind.ROOM, RowKind.TIMES, RowKind.DISTANCES)) {
            all.add(DraftLine.blank(part));
        }
        OrganDraft draft = new OrganDraft(all);
        for (int i = 0; i < all.size(); i++) {
            DraftLine line = all.get(i);
            if (line.part() == RowKind.STOP) {
                all.set(i, line.with(Autofill.stop(draft, i, line).values()));
            }
        }
        return all;
    }

    private void line(int fromHead, int number, String line) {
        if (line.isEmpty()) {
            return;
        }
        Matcher division = DIVISION.matcher(line);
        if (fromHead == 0) {
            organ = organ.with(InstrumentFields.NAME, Quotation.read(line));
        } else if (division.matches() && !line.startsWith(" ")) {
            section = "";
            divisions.add(division(division));
        } else if (fromHead == 1 && divisions.isEmpty()) {
            organ = organ.with(InstrumentFields.PLACE, Quotation.read(line));
        } else if (List.of(PrintedList.COUPLERS, PrintedList.TREMULANTS, PrintedList.PISTONS)
                .contains(line)) {
            section = line;
        } else if (!line.startsWith("  ") || !entry(line)) {
            troubles.add("Line " + number + " cannot be read: \"" + line.strip() + "\".");
        }
    }

    private static DraftLine division(Matcher division) {
        return DraftLine.blank(RowKind.DIVISION)
                .with(InstrumentFields.NAME, Quotation.read(division.group(1)))
                .with(DivisionFields.KEYBOARD, division.group(2) == null ? "pedal" : division.group(2))
                .with(InstrumentFields.KEYS, division.group(3))
                .with(DivisionFields.IS_BOXED, division.group(4) == null ? "" : "yes");
    }

    private boolean entry(String line) {
        switch (section) {
            case PrintedList.COUPLERS -> couplers.add(coupler(Quotation.read(line.strip())));
            case PrintedList.TREMULANTS ->
                tremulants.add(
                        DraftLine.blank(RowKind.TREMULANT).with(InstrumentFields.NAME, Quotation.read(line.strip())));
            case PrintedList.PISTONS -> {
                return piston(line);
            }
            default -> {
                return stop(line);
            }
        }
        return true;
    }

    /** "Swell to Great" says what it couples; of other names the particulars tell. */
    private DraftLine coupler(String name) {
        DraftLine line = DraftLine.blank(RowKind.COUPLER).with(InstrumentFields.NAME, name);
        for (DraftLine source : divisions) {
            for (DraftLine keyboard : divisions) {
                boolean said = source.part() == RowKind.DIVISION
                        && keyboard.part() == RowKind.DIVISION
                        && name.equals(source.name() + " to " + keyboard.name());
                if (said) {
                    return line.with(InstrumentFields.SOURCE, source.name())
                            .with(InstrumentFields.PLAYED_FROM, keyboard.name());
                }
            }
        }
        return line;
    }

    private boolean piston(String line) {
        Matcher count = COUNT.matcher(line);
        if (!count.matches()) {
            return false;
        }
        String name = Quotation.read(count.group(1));
        if (name.equals(PrintedList.GENERAL) || name.equals(PrintedList.LEVELS)) {
            pistons = pistons.with(
                    name.equals(PrintedList.GENERAL) ? InstrumentFields.GENERALS : InstrumentFields.MEMORY_LEVELS,
                    count.group(2));
            return true;
        }
        for (int i = 0; i < divisions.size(); i++) {
            DraftLine division = divisions.get(i);
            if (division.part() == RowKind.DIVISION && division.name().equals(name)) {
                divisions.set(i, division.with(DivisionFields.DIVISIONAL_COUNT, count.group(2)));
                return true;
            }
        }
        return false;
    }

    private boolean stop(String line) {
        Matcher stop = STOP.matcher(line);
        if (divisions.isEmpty() || !stop.matches()) {
            return false;
        }
        divisions.add(DraftLine.blank(RowKind.STOP)
                .with(InstrumentFields.NAME, Quotation.read(stop.group(1)))
                .with(StopFields.FEET, stop.group(2) == null ? "" : stop.group(2))
                .with(StopFields.RANKS, stop.group(3) == null ? "" : arabic(stop.group(3))));
        return true;
    }

    /** A number of ranks in Arabic figures; blank where there is no such number. */
    private static String arabic(String numeral) {
        int ranks = Stop.NUMERALS.indexOf(numeral) + 1;
        return ranks > 0 ? Integer.toString(ranks) : "";
    }
}
