package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import versewind.organ.Instrument;
import versewind.schema.DraftLine;
import versewind.schema.OrganDraft;
import versewind.schema.RowKind;

/**
 * The stop list of an instrument as the trade prints it: its name, divisions with their stops, couplers, tremulants,
 * pistons; and below, under "Particulars", what such a list cannot tell and what its names alone would not. Read again,
 * it is the same instrument.
 *
 * <p>Checked against: {@code TradeListTest}, every shipped instrument and some drawn by lot.
 */
public final class TradeList {

    private static final String PARTICULARS = "Particulars";

    private TradeList() {}

    /** The text of an instrument. */
    public static String of(Instrument organ) {
        List<DraftLine> lines = OrganDraft.of(organ).lines();
        String list = PrintedList.of(organ, lines);
        List<DraftLine> plain = PrintedListReader.of(list).lines();
        StringBuilder text =
                new StringBuilder(list).append('\n').append(PARTICULARS).append('\n');
        for (int i = 0; i < lines.size(); i++) {
            DraftLine line = lines.get(i);
            if (line.part() == RowKind.SURFACE) {
                text.append(particulars("Surface", line, DraftLine.blank(RowKind.SURFACE)));
                continue;
            }
            String called = line.part().word() + (line.part().isNamed() ? " " + Quotation.of(fullName(plain, i)) : "");
            text.append(particulars(called, line, plain.get(i)));
        }
        return text.toString();
    }

    private static String fullName(List<DraftLine> lines, int at) {
        return new OrganDraft(lines).fullName(at);
    }

    private static String particulars(String called, DraftLine line, DraftLine plain) {
        String values = line.part().fields().stream()
                .filter(slot -> !line.at(slot).equals(plain.at(slot)))
                .map(slot -> slot.label() + " " + Quotation.of(line.at(slot)))
                .collect(Collectors.joining(", "));
        return values.isEmpty() ? "" : "  " + called + ": " + values + "\n";
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
     * @param isPrinted whether all of it was printed here, not only the particulars
     */
    public record Read(OrganDraft draft, List<String> troubles, boolean isPrinted) {

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
            draft.problems().forEach(problem -> all.add(draft.sentence(problem)));
            return all;
        }
    }

    /** Reads such a list. */
    public static Read read(String text) {
        return read(text, Optional.empty());
    }

    /** Reads such a list; where one that was published has particulars below it, these are added to its organ. */
    static Read read(String text, Optional<Instrument> published) {
        PrintedListReader reader = PrintedListReader.of(withoutParticulars(text));
        boolean isPrinted = reader.troubles().isEmpty() || published.isEmpty();
        List<String> lines = text.lines().toList();
        int at = 0;
        while (at < lines.size() && !lines.get(at).stripTrailing().equals(PARTICULARS)) {
            at++;
        }
        Particulars particulars = isPrinted
                ? new Particulars(reader.lines(), reader.troubles())
                : new Particulars(OrganDraft.of(published.get()).lines(), List.of());
        for (int i = at + 1; i < lines.size(); i++) {
            particulars.read(i + 1, lines.get(i));
        }
        return new Read(new OrganDraft(particulars.lines()), particulars.troubles(), isPrinted);
    }
}
