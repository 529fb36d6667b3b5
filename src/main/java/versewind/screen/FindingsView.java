package versewind.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import versewind.plan.Hymn;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.rules.Advice;
import versewind.rules.Finding;
import versewind.rules.Mend;
import versewind.rules.Touch;

/** What was found in the plan, over it: a list, and the one that is marked in full. */
final class FindingsView {

    private static final int WIDTH = 76;
    private static final int NUMBER = 5;
    private static final int LABEL = 8;
    private static final int SEVERITY = 9;

    /** Rows for a finding in full and its mend on a small screen; on others, one for so many rows of the screen. */
    private static final int LEAST_FULL_ROWS = 3;

    private static final int ROWS_A_FULL_ROW = 6;

    /** Rows that a long mend may have where the finding is long, too. */
    private static final int MEND_ROWS = 2;

    /** From this height on it is said how to play. */
    private static final int TALL = 22;

    private FindingsView() {}

    static void paint(Frame frame, State state, Panel.Findings panel) {
        if (state.work().isEmpty()) {
            return;
        }
        PlanEdit work = state.work().get();
        VersePlace place = panel.marked().map(Finding::place).orElse(work.place());
        List<String> playing = frame.height() < TALL ? List.of() : playing(work, panel, place);
        int fullRows = Math.max(LEAST_FULL_ROWS, frame.height() / ROWS_A_FULL_ROW);
        int under = 1 + (panel.rows().isEmpty() ? 0 : 1 + fullRows) + (playing.isEmpty() ? 0 : playing.size() + 1);
        Box box = Box.open(
                frame, state, title(panel), WIDTH, Math.max(1, panel.rows().size()) + under + 1);
        int room = Math.max(1, box.height() - under - 1);
        paintList(frame, state, work, panel, box, room);
        int last = box.y() + box.height() - 1;
        int y = last - playing.size() - 1;
        if (!playing.isEmpty()) {
            frame.write(
                    box.x(),
                    y,
                    "How to play " + verse(work, place).orElseThrow().label(),
                    Style.HEADING);
            write(frame, box, y + 1, playing);
        }
        Optional<Finding> marked = panel.marked();
        if (marked.isEmpty()) {
            KeyRow.paint(frame, box.x(), last, box.end(), Command.CLOSE_FINDINGS);
            return;
        }
        String cut = state.marks().cut();
        write(frame, box, box.y() + room + 1, full(marked.get(), box.width(), fullRows, cut));
        KeyRow.paint(
                frame,
                box.x(),
                last,
                box.end(),
                Command.GO_THERE,
                Command.MEND,
                Command.SILENCE,
                Command.CLOSE_FINDINGS);
    }

    private static String title(Panel.Findings panel) {
        return panel.people().isPresent()
                ? "Findings, if " + panel.people().getAsInt() + (panel.people().getAsInt() == 1 ? " comes" : " come")
                : "Findings";
    }

    private static void write(Frame frame, Box box, int y, List<String> lines) {
        for (int i = 0; i < lines.size(); i++) {
            frame.write(box.x(), y + i, lines.get(i), Style.TEXT);
        }
    }

    /** The list, scrolled to the row that is marked. */
    private static void paintList(Frame frame, State state, PlanEdit work, Panel.Findings panel, Box box, int room) {
        List<Finding> rows = panel.rows();
        if (rows.isEmpty()) {
            frame.write(box.x(), box.y(), "There is nothing to say.", Style.GOOD);
            return;
        }
        int top = Math.max(0, Math.min(panel.at() - room / 2, rows.size() - room));
        for (int i = top; i < Math.min(rows.size(), top + room); i++) {
            paintRow(frame, state, work, rows.get(i), box, box.y() + i - top);
        }
        frame.paint(box.x(), box.y() + panel.at() - top, box.width(), Style.CURSOR);
    }

    private static Optional<Verse> verse(PlanEdit work, VersePlace place) {
        return work.at(place).verse();
    }

    /** Touch, breath and lag of a verse, with their reasons. */
    private static List<String> playing(PlanEdit work, Panel.Findings panel, VersePlace place) {
        if (verse(work, place).isEmpty()) {
            return List.of();
        }
        Touch touch = Advice.on(work.sound()).touch(FindingsCommands.attended(work.plan(), panel.people()), place);
        List<String> lines = new ArrayList<>(Text.wrapped(touch.sentence(), WIDTH - 4));
        lines.addAll(Text.wrapped(touch.breath(), WIDTH - 4));
        touch.lag().ifPresent(lag -> lines.addAll(Text.wrapped(lag, WIDTH - 4)));
        return lines;
    }

    private static void paintRow(Frame frame, State state, PlanEdit work, Finding finding, Box box, int y) {
        Hymn hymn = work.plan().hymns().get(finding.place().hymn());
        String cut = state.marks().cut();
        String number =
                hymn.number().isBlank() ? Integer.toString(finding.place().hymn() + 1) : hymn.number();
        String label = hymn.verses().get(finding.place().verse()).label();
        Style style = finding.isSilenced() ? Style.FAINT : Style.TEXT;
        frame.write(box.x(), y, Text.fit(number, NUMBER - 1, cut), style);
        frame.write(box.x() + NUMBER, y, Text.fit(label, LABEL - 1, cut), style);
        int x = box.x() + NUMBER + LABEL;
        frame.write(x, y, word(finding), style(finding));
        x += SEVERITY;
        frame.write(x, y, Text.fit(finding.sentence(), box.end() - x, cut), style);
    }

    /** The severity, or that it is silenced. */
    static String word(Finding finding) {
        return finding.isSilenced() ? "silenced" : finding.severity().word();
    }

    static Style style(Finding finding) {
        if (finding.isSilenced()) {
            return Style.FAINT;
        }
        return switch (finding.severity()) {
            case CAUTION -> Style.BAD;
            case REMARK -> Style.NEAR;
        };
    }

    /** The finding and its mend in so many rows at most; where they are longer, both are shortened, the finding first. */
    private static List<String> full(Finding finding, int columns, int rows, String cut) {
        List<String> found = new ArrayList<>(Text.wrapped(finding.sentence(), columns));
        finding.silence()
                .filter(note -> !note.isBlank())
                .ifPresent(note -> found.addAll(Text.wrapped("Silenced: " + note, columns)));
        List<String> mend = finding.mend()
                .map(Mend::words)
                .map(words -> Text.wrapped("Mend: " + words, columns))
                .orElse(List.of());
        int mendRows = Math.min(mend.size(), Math.max(MEND_ROWS, rows - found.size()));
        List<String> lines = new ArrayList<>(first(found, rows - mendRows, columns, cut));
        lines.addAll(first(mend, mendRows, columns, cut));
        return lines;
    }

    /** The first lines of a text, with a mark where more would follow. */
    private static List<String> first(List<String> lines, int rows, int columns, String cut) {
        if (lines.size() <= rows || rows == 0) {
            return lines;
        }
        List<String> first = new ArrayList<>(lines.subList(0, rows));
        first.set(rows - 1, Text.fit(String.join(" ", lines.subList(rows - 1, lines.size())), columns, cut));
        return first;
    }
}
