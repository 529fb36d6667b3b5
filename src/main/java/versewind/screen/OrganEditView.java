package versewind.screen;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import versewind.stoplist.Lexicon;
import versewind.workshop.DraftField;
import versewind.workshop.DraftLine;
import versewind.workshop.Problem;
import versewind.workshop.RowKind;

/** An organ that is being changed: its lines to the left, the marked one in full to the right, below what is wrong. */
final class OrganEditView {

    private static final int TOP = 2;
    private static final int FOOT = 5;
    private static final int PROBLEM_ROWS = 2;
    private static final int NAME = 8;

    private OrganEditView() {}

    /** How many lines are shown at once. */
    static int room(State state) {
        return Math.max(1, state.rows() - TOP - FOOT);
    }

    static void paint(Frame frame, State state, OrganEdit bench) {
        List<Problem> problems = bench.problems();
        int width = frame.width() * 11 / 20;
        paintHead(frame, state, bench, problems);
        paintLines(frame, state, bench, problems, width);
        paintLine(frame, state, bench, width + 2);
        paintFoot(frame, state, bench, problems);
    }

    private static void paintHead(Frame frame, State state, OrganEdit bench, List<Problem> problems) {
        String name = bench.draft().lines().get(0).at(DraftField.NAME);
        long stops = bench.draft().lines().stream()
                .filter(line -> line.part() == RowKind.STOP)
                .count();
        String right = (bench.history().isUnsaved() ? Mark.UNSAVED.in(state.marks()) + " not saved  " : "")
                + stops
                + (stops == 1 ? " stop" : " stops");
        int room = frame.width() - Text.columns(right) - 3;
        frame.write(1, 0, frame.fit(name, room), Style.HEADING);
        frame.write(frame.width() - Text.columns(right) - 1, 0, right, Style.FAINT);
        frame.write(0, 1, Mark.RULE.in(state.marks()).repeat(frame.width()), Style.FAINT);
        if (!problems.isEmpty()) {
            String wrong = " " + problems.size() + (problems.size() == 1 ? " thing is wrong " : " things are wrong ");
            frame.write(2, 1, wrong, Style.BAD);
        }
    }

    private static void paintLines(Frame frame, State state, OrganEdit bench, List<Problem> problems, int width) {
        List<DraftLine> lines = bench.draft().lines();
        Set<Integer> wrong = new HashSet<>();
        problems.forEach(problem -> wrong.add(problem.line()));
        int room = room(state);
        int top = new ListBox<>(lines, bench.at()).top(room);
        for (int i = top; i < Math.min(lines.size(), top + room); i++) {
            DraftLine line = lines.get(i);
            int y = TOP + i - top;
            int x = line.part() == RowKind.STOP ? 3 : 1;
            String second = second(line);
            int limit = width - Math.min(Text.columns(second), width * 3 / 5) - 1;
            String first = frame.fit(first(line), limit - x - 1);
            frame.write(x, y, first, line.part() == RowKind.DIVISION ? Style.HEADING : Style.TEXT);
            frame.write(limit, y, frame.fit(second, width - limit - 1), Style.FAINT);
            if (wrong.contains(i)) {
                frame.write(0, y, "!", Style.BAD);
            }
            if (i == bench.at()) {
                frame.paint(1, y, width - 1, Style.CURSOR);
            }
        }
        for (int y = TOP; y < TOP + room; y++) {
            frame.write(width, y, Mark.WALL.in(state.marks()), Style.FAINT);
        }
    }

    private static String first(DraftLine line) {
        return switch (line.part()) {
            case STOP, DIVISION, COUPLER, TREMULANT ->
                line.at(DraftField.NAME).isBlank()
                        ? "(" + line.part().word() + " without a name)"
                        : line.at(DraftField.NAME);
            case ORGAN -> line.at(DraftField.NAME);
            case PISTONS, ROOM, TIMES, DISTANCES -> line.part().word();
            case SURFACE -> line.at(DraftField.MATERIAL).isBlank() ? "Surface" : line.at(DraftField.MATERIAL);
        };
    }

    private static String second(DraftLine line) {
        return switch (line.part()) {
            case ORGAN -> line.at(DraftField.PLACE);
            case DIVISION ->
                (line.at(DraftField.MANUAL).equalsIgnoreCase("pedal")
                                ? "pedal"
                                : "manual " + line.at(DraftField.MANUAL))
                        + ", " + line.at(DraftField.KEYS) + " keys"
                        + (line.at(DraftField.BOX).equalsIgnoreCase("yes") ? ", box" : "");
            case STOP -> pitch(line);
            case COUPLER ->
                line.at(DraftField.SOUNDS) + " on " + line.at(DraftField.KEYBOARD)
                        + (line.at(DraftField.KIND).isBlank() ? "" : ", " + line.at(DraftField.KIND));
            case TREMULANT -> line.at(DraftField.DIVISION);
            case PISTONS -> line.at(DraftField.GENERALS).isBlank() ? "" : line.at(DraftField.GENERALS) + " general";
            case ROOM -> line.at(DraftField.VOLUME) + " m3, " + line.at(DraftField.SEATS) + " seats";
            case TIMES -> joined(line) + " s";
            case DISTANCES -> joined(line) + " m";
            case SURFACE -> line.at(DraftField.AREA) + " m2";
        };
    }

    private static String pitch(DraftLine line) {
        String label = line.label();
        String name = line.at(DraftField.NAME);
        String pitch = label.length() > name.length() && label.startsWith(name)
                ? label.substring(name.length()).strip()
                : "";
        return pitch.equals(line.at(DraftField.FEET))
                        || line.at(DraftField.FEET).isBlank()
                ? pitch
                : line.at(DraftField.FEET) + "  " + pitch;
    }

    private static String joined(DraftLine line) {
        return line.values().stream().filter(text -> !text.isBlank()).collect(Collectors.joining(" "));
    }

    /** The marked line slot by slot, and what a stop of its name is. */
    private static void paintLine(Frame frame, State state, OrganEdit bench, int x) {
        DraftLine line = bench.line();
        int end = TOP + room(state);
        int width = frame.width() - x - 1;
        int y = TOP;
        frame.write(x, y++, line.part().word(), Style.STRONG);
        for (DraftField slot : line.part().slots()) {
            List<String> text = Text.wrapped(line.at(slot), Math.max(1, width - NAME));
            frame.write(x, y, slot.word(), Style.FAINT);
            for (String part : text) {
                if (y < end) {
                    frame.write(x + NAME, y++, part, Style.TEXT);
                }
            }
            y += text.isEmpty() ? 1 : 0;
            if (y >= end) {
                return;
            }
        }
        List<String> about = new ArrayList<>();
        if (line.part() == RowKind.STOP) {
            Lexicon.describe(line.at(DraftField.NAME)).ifPresent(said -> about.addAll(Text.wrapped(said, width)));
        }
        y++;
        for (int i = 0; i < about.size() && y + i < end; i++) {
            frame.write(x, y + i, about.get(i), Style.FAINT);
        }
    }

    /** What is wrong with the marked line, else anywhere; what was said; keys. */
    private static void paintFoot(Frame frame, State state, OrganEdit bench, List<Problem> problems) {
        int y = frame.height() - FOOT;
        frame.write(0, y, Mark.RULE.in(state.marks()).repeat(frame.width()), Style.FAINT);
        List<String> said = problems.stream()
                .filter(problem -> problem.line() == bench.at())
                .findFirst()
                .or(() -> problems.stream().findFirst())
                .map(problem -> Text.wrapped(where(bench, problem) + problem.sentence(), frame.width() - 2))
                .orElse(List.of());
        for (int i = 0; i < Math.min(PROBLEM_ROWS, said.size()); i++) {
            frame.write(1, y + 1 + i, said.get(i), Style.BAD);
        }
        state.notice().paint(frame, frame.height() - 2);
        KeyRow.paint(
                frame,
                1,
                frame.height() - 1,
                frame.width(),
                Command.EDIT_LINE,
                Command.INSERT_LINE,
                Command.SAVE_ORGAN,
                Command.CLOSE_ORGAN,
                Command.REMOVE_LINE,
                Command.UNDO_LINE,
                Command.ORGAN_HELP);
    }

    private static String where(OrganEdit bench, Problem problem) {
        DraftLine line = bench.draft().lines().get(problem.line());
        return switch (line.part()) {
            case STOP, DIVISION, COUPLER, TREMULANT, ORGAN ->
                line.label().isBlank() ? "" : bench.draft().fullName(problem.line()) + ": ";
            case PISTONS, ROOM, TIMES, DISTANCES, SURFACE -> line.part().word() + ": ";
        };
    }
}
