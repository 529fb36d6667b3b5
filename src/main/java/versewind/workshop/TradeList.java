package versewind.workshop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import versewind.organ.Instrument;
import versewind.organ.Stop;

/**
 * The stop list of an instrument as the trade prints it: its name, divisions with their stops, couplers, tremulants,
 * pistons; and below, under "Particulars", what such a list cannot tell and what its names alone would not. Read again, it
 * is the same instrument.
 *
 * <p>Checked against: {@code TradeListTest}, every shipped instrument and some drawn by lot.
 */
public final class TradeList {

    private static final String COUPLERS = "Couplers";
    private static final String TREMULANTS = "Tremulants";
    private static final String PISTONS = "Pistons";
    private static final String PARTICULARS = "Particulars";
    private static final String GENERAL = "General";
    private static final String LEVELS = "Memory levels";
    private static final String PEDAL = "Pedal";
    private static final int NAME = 30;

    private static final Pattern DIVISION =
            Pattern.compile("(.+) \\((?:(?:manual ([1-7])|pedal), )?(\\d+) keys(, enclosed)?\\)");
    private static final Pattern STOP = Pattern.compile("  (.+?) {2,}(?:(\\S+(?: \\d/\\d+)?)')?(?: ?([IVX]+))?");
    private static final Pattern COUNT = Pattern.compile("  (.+?)(?: pistons)? (\\d+)");

    private TradeList() {}

    /** The text of an instrument. */
    public static String of(Instrument organ) {
        List<DraftLine> lines = Lines.of(organ);
        String list = list(lines, organ);
        List<DraftLine> plain = Reader.of(list).lines();
        StringBuilder text =
                new StringBuilder(list).append('\n').append(PARTICULARS).append('\n');
        for (int i = 0; i < lines.size(); i++) {
            DraftLine line = lines.get(i);
            if (line.part() == Part.SURFACE) {
                text.append(particulars("Surface", line, DraftLine.blank(Part.SURFACE)));
                continue;
            }
            String called = line.part().word() + (isNamed(line.part()) ? " " + Quotation.of(fullName(plain, i)) : "");
            text.append(particulars(called, line, plain.get(i)));
        }
        return text.toString();
    }

    private static boolean isNamed(Part part) {
        return switch (part) {
            case DIVISION, STOP, COUPLER, TREMULANT -> true;
            case ORGAN, PISTONS, ROOM, TIMES, DISTANCES, SURFACE -> false;
        };
    }

    private static String fullName(List<DraftLine> lines, int at) {
        return new OrganDraft(lines).fullName(at);
    }

    private static String particulars(String called, DraftLine line, DraftLine plain) {
        String values = line.part().slots().stream()
                .filter(slot -> !line.at(slot).equals(plain.at(slot)))
                .map(slot -> slot.word() + " " + Quotation.of(line.at(slot)))
                .collect(Collectors.joining(", "));
        return values.isEmpty() ? "" : "  " + called + ": " + values + "\n";
    }

    private static String list(List<DraftLine> lines, Instrument organ) {
        StringBuilder text = new StringBuilder(Quotation.ifNeeded(organ.name())).append('\n');
        if (!organ.place().isEmpty()) {
            text.append(Quotation.ifNeeded(organ.place())).append('\n');
        }
        Part before = Part.ORGAN;
        for (DraftLine line : lines) {
            text.append(
                    switch (line.part()) {
                        case DIVISION -> "\n" + division(line);
                        case STOP -> stop(line);
                        case COUPLER -> (before == Part.COUPLER ? "" : "\n" + COUPLERS + "\n") + named(line);
                        case TREMULANT -> (before == Part.TREMULANT ? "" : "\n" + TREMULANTS + "\n") + named(line);
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
        boolean pedal = line.at(Slot.MANUAL).equals("pedal");
        String keyboard =
                pedal ? line.at(Slot.NAME).equals(PEDAL) ? "" : "pedal, " : "manual " + line.at(Slot.MANUAL) + ", ";
        return Quotation.ifNeeded(line.at(Slot.NAME)) + " (" + keyboard + line.at(Slot.KEYS) + " keys"
                + (line.at(Slot.BOX).isEmpty() ? "" : ", enclosed") + ")\n";
    }

    private static String stop(DraftLine line) {
        String feet = line.at(Slot.FEET).isEmpty() ? "" : line.at(Slot.FEET) + "'";
        String ranks = Figures.ranks(line.at(Slot.RANKS)).stream()
                .mapToObj(count -> Stop.NUMERALS.get(count - 1))
                .findFirst()
                .orElse("");
        String name = Quotation.ifNeeded(line.at(Slot.NAME));
        return "  " + name + " ".repeat(Math.max(2, NAME - name.length())) + (feet + " " + ranks).strip() + "\n";
    }

    private static String named(DraftLine line) {
        return "  " + Quotation.ifNeeded(line.at(Slot.NAME)) + "\n";
    }

    /** Whether a text is such a list. */
    public static boolean isOne(String text) {
        return text.lines().anyMatch(line -> line.stripTrailing().equals(PARTICULARS));
    }

    /** The list alone, without the particulars below it. */
    public static String withoutParticulars(String text) {
        return text.lines()
                .takeWhile(line -> !line.stripTrailing().equals(PARTICULARS))
                .collect(Collectors.joining("\n", "", "\n"));
    }

    /**
     * Such a list as it was read.
     *
     * @param draft what it says, right or wrong
     * @param troubles lines that could not be read, each with its number and the reason
     */
    public record Read(OrganDraft draft, List<String> troubles) {

        public Read {
            troubles = List.copyOf(troubles);
        }

        /** The instrument, where all could be read and nothing is wrong. */
        public Optional<Instrument> instrument() {
            return troubles.isEmpty() ? draft.instrument() : Optional.empty();
        }

        /** What keeps it from being an instrument, a sentence each. */
        public List<String> objections() {
            List<String> all = new ArrayList<>(troubles);
            draft.problems()
                    .forEach(problem -> all.add(
                            (draft.lines().get(problem.line()).part().slots().contains(Slot.NAME)
                                            ? draft.fullName(problem.line()) + ": "
                                            : "")
                                    + problem.sentence()));
            return all;
        }
    }

    /** Reads such a list. */
    public static Read read(String text) {
        Reader reader = Reader.of(withoutParticulars(text));
        List<String> lines = text.lines().toList();
        int at = 0;
        while (at < lines.size() && !lines.get(at).stripTrailing().equals(PARTICULARS)) {
            at++;
        }
        Particulars particulars = new Particulars(reader.lines(), reader.troubles());
        for (int i = at + 1; i < lines.size(); i++) {
            particulars.read(i + 1, lines.get(i));
        }
        return new Read(new OrganDraft(particulars.lines()), particulars.troubles());
    }

    /** Reads what stands above the particulars. */
    private static final class Reader {
        private final List<DraftLine> divisions = new ArrayList<>();
        private final List<DraftLine> couplers = new ArrayList<>();
        private final List<DraftLine> tremulants = new ArrayList<>();
        private final List<String> troubles = new ArrayList<>();
        private DraftLine organ = DraftLine.blank(Part.ORGAN);
        private DraftLine pistons = DraftLine.blank(Part.PISTONS);
        private String section = "";

        static Reader of(String list) {
            Reader reader = new Reader();
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
            } else if (List.of(COUPLERS, TREMULANTS, PISTONS).contains(line)) {
                section = line;
            } else if (!line.startsWith("  ") || !entry(line)) {
                troubles.add("Line " + number + " cannot be read: \"" + line.strip() + "\".");
            }
        }

        private static DraftLine division(Matcher division) {
            return DraftLine.blank(Part.DIVISION)
                    .with(Slot.NAME, Quotation.read(division.group(1)))
                    .with(Slot.MANUAL, division.group(2) == null ? "pedal" : division.group(2))
                    .with(Slot.KEYS, division.group(3))
                    .with(Slot.BOX, division.group(4) == null ? "" : "yes");
        }

        private boolean entry(String line) {
            switch (section) {
                case COUPLERS -> couplers.add(coupler(Quotation.read(line.strip())));
                case TREMULANTS ->
                    tremulants.add(DraftLine.blank(Part.TREMULANT).with(Slot.NAME, Quotation.read(line.strip())));
                case PISTONS -> {
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
            if (name.equals(GENERAL) || name.equals(LEVELS)) {
                pistons = pistons.with(name.equals(GENERAL) ? Slot.GENERALS : Slot.LEVELS, count.group(2));
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
}
