package versewind.screen.organ;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import versewind.schema.DivisionFields;
import versewind.schema.DraftLine;
import versewind.schema.Field;
import versewind.schema.InstrumentFields;
import versewind.schema.RoomFields;
import versewind.schema.RowKind;
import versewind.schema.StopFields;
import versewind.screen.state.State;
import versewind.screen.toolkit.Box;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.ListBox;
import versewind.screen.toolkit.Mark;
import versewind.screen.toolkit.Marks;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;
import versewind.stoplist.Lexicon;

/** A row of an organ's draft, in one line (its name and, in less weight, what else is typed in it) and in full. */
final class DraftLineText {

    /** Columns of the names of fields. */
    private static final int NAME = 10;

    private DraftLineText() {}

    /** The name of what it describes. */
    static String first(DraftLine line) {
        return switch (line.part()) {
            case STOP, DIVISION, COUPLER, TREMULANT ->
                line.name().isBlank() ? "(unnamed " + line.part().word().toLowerCase(Locale.ROOT) + ")" : line.name();
            case ORGAN, PISTONS, ROOM, TIMES, DISTANCES -> line.label();
            case SURFACE -> {
                String material = line.at(RoomFields.MATERIAL);
                yield material.isBlank() ? line.part().word() : material;
            }
        };
    }

    /** What else is typed in it, in short. */
    static String second(DraftLine line) {
        return switch (line.part()) {
            case ORGAN -> line.at(InstrumentFields.PLACE);
            case DIVISION ->
                (line.isPedal() ? "pedal" : "manual " + line.at(DivisionFields.KEYBOARD)) + ", "
                        + line.at(InstrumentFields.KEYS) + " keys"
                        + (line.read(DivisionFields.IS_BOXED).orElse(false) ? ", in box" : "");
            case STOP -> pitch(line.pitch(), line.at(StopFields.FEET));
            case COUPLER -> {
                String kind = line.at(InstrumentFields.PITCH);
                yield line.at(InstrumentFields.SOURCE) + " on " + line.at(InstrumentFields.PLAYED_FROM)
                        + (kind.isBlank() ? "" : ", " + kind);
            }
            case TREMULANT -> line.at(InstrumentFields.AFFECTED);
            case PISTONS -> {
                String generals = line.at(InstrumentFields.GENERALS);
                yield generals.isBlank() ? "" : generals + " general";
            }
            case ROOM -> line.at(RoomFields.VOLUME) + " m3, " + line.at(RoomFields.SEATS) + " seats";
            case TIMES -> joined(line) + " s";
            case DISTANCES -> joined(line) + " m";
            case SURFACE -> line.at(RoomFields.AREA) + " m2";
        };
    }

    private static String pitch(String pitch, String feet) {
        return pitch.equals(feet) || feet.isBlank() ? pitch : feet + "  " + pitch;
    }

    private static String joined(DraftLine line) {
        return line.values().stream().filter(text -> !text.isBlank()).collect(Collectors.joining(" "));
    }

    /** Draws all rows and beside them the marked one in full; in words, all rows alone. */
    static void paint(Frame frame, State state, ListBox<DraftLine> lines, Set<Integer> wrong, Box box) {
        if (state.isSpoken()) {
            List<String> texts = IntStream.range(0, lines.size())
                    .mapToObj(index -> (wrong.contains(index) ? "wrong: " : "")
                            + spoken(lines.rows().get(index)))
                    .toList();
            new ListBox<>(texts, lines.marked())
                    .paintWords(frame, new Box(2, box.y(), box.width() - 1, box.height()), text -> text);
            return;
        }
        int width = frame.width() * 11 / 20;
        paintAll(frame, lines, wrong, new Box(1, box.y(), width - 1, box.height()), state.marks());
        lines.current()
                .ifPresent(line ->
                        paint(frame, line, new Box(width + 2, box.y(), frame.width() - width - 3, box.height())));
    }

    /** Draws a row field by field, and what a stop of its name is. */
    private static void paint(Frame frame, DraftLine line, Box window) {
        int end = window.y() + window.height();
        int y = window.y();
        frame.write(window.x(), y++, line.part().word(), Style.STRONG);
        for (Field<?, ?> field : line.part().fields()) {
            List<String> text = Text.wrapped(line.at(field), Math.max(1, window.width() - NAME));
            frame.write(window.x(), y, field.label(), Style.FAINT);
            Box.write(frame, window.x() + NAME, y, text, end - y, Style.TEXT);
            y += Math.max(1, text.size());
            if (y >= end) {
                return;
            }
        }
        if (line.part() == RowKind.STOP) {
            List<String> about = Text.wrapped(Lexicon.describe(line.name()).orElse(""), window.width());
            Box.write(frame, window.x(), y + 1, about, end - y - 1, Style.FAINT);
        }
    }

    /** A row in words, with the name of every field in it: "Stop Dulciana: Feet 8, Family string". */
    static String spoken(DraftLine line) {
        String fields = line.part().fields().stream()
                .filter(field -> !line.at(field).isBlank())
                .filter(field ->
                        !line.has(InstrumentFields.NAME) || !line.at(field).equals(line.name()))
                .map(field -> field.label() + " " + line.at(field))
                .collect(Collectors.joining(", "));
        String kind = line.part().word();
        String first = first(line);
        return (first.startsWith(kind) ? first : kind + " " + first) + (fields.isEmpty() ? "" : ": " + fields);
    }

    /**
     * Paints lines, one a row, with a wall to their right.
     *
     * @param wrong the lines with which something is wrong
     * @param box where; one column to its left is for marks, and one to its right for the wall
     */
    static void paintAll(Frame frame, ListBox<DraftLine> lines, Set<Integer> wrong, Box box, Marks marks) {
        int width = box.x() + box.width();
        lines.paint(frame, box, DraftLineText::spoken, (line, index, y) -> {
            int x = line.part() == RowKind.STOP ? box.x() + 2 : box.x();
            String second = second(line);
            int limit = width - Math.min(Text.columns(second), width * 3 / 5) - 1;
            Style style = line.part() == RowKind.DIVISION ? Style.HEADING : Style.TEXT;
            frame.write(x, y, frame.fit(first(line), limit - x - 1), style);
            frame.write(limit, y, frame.fit(second, width - limit - 1), Style.FAINT);
            if (wrong.contains(index)) {
                frame.write(box.x() - 1, y, "!", Style.BAD);
            }
        });
        for (int y = box.y(); y < box.y() + box.height(); y++) {
            frame.write(width, y, Mark.WALL.in(marks), Style.FAINT);
        }
    }
}
