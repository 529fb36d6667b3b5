package versewind.workshop;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

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
    private DraftLine organ = DraftLine.blank(Part.ORGAN);
    private DraftLine pistons = DraftLine.blank(Part.PISTONS);
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
        for (Part part : List.of(Part.ROOM, Part.TIMES, Part.DISTANCES)) {
            all.add(DraftLine.blank(part));
        }
        OrganDraft draft = new OrganDraft(all);
        for (int i = 0; i < all.size(); i++) {
            DraftLine line = all.get(i);
            if (line.part() == Part.STOP) {
                all.set(i, line.with(Completion.stop(draft, i, line).values()));
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
            organ = organ.with(Slot.NAME, Quotation.read(line));
        } else if (division.matches() && !line.startsWith(" ")) {
            section = "";
            divisions.add(division(division));
        } else if (fromHead == 1 && divisions.isEmpty()) {
            organ = organ.with(Slot.PLACE, Quotation.read(line));
        } else if (List.of(PrintedList.COUPLERS, PrintedList.TREMULANTS, PrintedList.PISTONS)
                .contains(line)) {
            section = line;
        } else if (!line.startsWith("  ") || !entry(line)) {
            troubles.add("Line " + number + " cannot be read: \"" + line.strip() + "\".");
        }
    }

    private static DraftLine division(Matcher division) {
        return DraftLine.blank(Part.DIVISION)
                .with(Slot.NAME, Quotation.read(division.group(1)))
                .with(Slot.MANUAL, division.group(2) == null ? DraftLine.PEDAL : division.group(2))
                .with(Slot.KEYS, division.group(3))
                .with(Slot.BOX, division.group(4) == null ? "" : DraftLine.YES);
    }

    private boolean entry(String line) {
        switch (section) {
            case PrintedList.COUPLERS -> couplers.add(coupler(Quotation.read(line.strip())));
            case PrintedList.TREMULANTS ->
                tremulants.add(DraftLine.blank(Part.TREMULANT).with(Slot.NAME, Quotation.read(line.strip())));
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
        DraftLine line = DraftLine.blank(Part.COUPLER).with(Slot.NAME, name);
        for (DraftLine source : divisions) {
            for (DraftLine keyboard : divisions) {
                boolean said = source.part() == Part.DIVISION
                        && keyboard.part() == Part.DIVISION
                        && name.equals(source.at(Slot.NAME) + " to " + keyboard.at(Slot.NAME));
                if (said) {
                    return line.with(Slot.SOUNDS, source.at(Slot.NAME)).with(Slot.KEYBOARD, keyboard.at(Slot.NAME));
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
            pistons = pistons.with(name.equals(PrintedList.GENERAL) ? Slot.GENERALS : Slot.LEVELS, count.group(2));
            return true;
        }
        for (int i = 0; i < divisions.size(); i++) {
            DraftLine division = divisions.get(i);
            if (division.part() == Part.DIVISION && division.at(Slot.NAME).equals(name)) {
                divisions.set(i, division.with(Slot.DIVISIONALS, count.group(2)));
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
        OptionalInt ranks = stop.group(3) == null ? OptionalInt.empty() : Figures.ranks(stop.group(3));
        divisions.add(DraftLine.blank(Part.STOP)
                .with(Slot.NAME, Quotation.read(stop.group(1)))
                .with(Slot.FEET, stop.group(2) == null ? "" : stop.group(2))
                .with(Slot.RANKS, ranks.isPresent() ? Integer.toString(ranks.getAsInt()) : ""));
        return true;
    }
}
