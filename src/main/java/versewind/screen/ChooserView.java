package versewind.screen;

import java.util.List;

/** A list to choose from, over the plan. */
final class ChooserView {

    private static final int WIDTH = 76;

    private ChooserView() {}

    static void paint(Frame frame, State state, Panel.Chooser chooser) {
        List<Panel.Row> rows = chooser.fitting();
        int wanted = Math.max(rows.size(), Math.min(chooser.rows().size(), 12)) + 4;
        Box box = Box.open(frame, state, chooser.title(), WIDTH, wanted);
        int x = frame.write(box.x(), box.y(), "Only with: ", Style.TEXT);
        FormView.paintField(frame, chooser.filter(), x, box.y(), box.end() - x, true);

        int room = box.height() - 3;
        int top = Math.max(0, Math.min(chooser.at() - room / 2, rows.size() - room));
        for (int i = top; i < Math.min(rows.size(), top + room); i++) {
            paintRow(frame, state, rows.get(i), i == chooser.at(), box, box.y() + 1 + i - top);
        }
        if (rows.isEmpty()) {
            String none = chooser.rows().isEmpty() ? "There is none yet." : "Nothing fits what was typed.";
            frame.write(box.x(), box.y() + 1, none, Style.FAINT);
        }
        int last = box.y() + box.height() - 1;
        if (chooser.choice() instanceof Panel.Choice.Nothing) {
            KeyRow.paint(frame, box.x(), last, box.end(), Command.CLOSE_CHOOSER);
        } else {
            KeyRow.paint(frame, box.x(), last, box.end(), Command.CHOOSE, Command.CLOSE_CHOOSER);
        }
    }

    static void paintRow(Frame frame, State state, Panel.Row row, boolean marked, Box box, int y) {
        int second = Math.min(Text.columns(row.second()), box.width() / 2);
        int first = box.width() - second - 2;
        frame.write(box.x(), y, Text.fit(row.first(), first, state.marks().cut()), Style.TEXT);
        frame.write(
                box.end() - second,
                y,
                Text.fit(row.second(), second, state.marks().cut()),
                Style.FAINT);
        if (marked) {
            frame.paint(box.x(), y, box.width(), Style.CURSOR);
        }
    }
}
