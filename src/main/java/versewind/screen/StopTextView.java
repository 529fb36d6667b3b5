package versewind.screen;

import java.util.List;

/** The box into which a stop list is pasted, over the whole screen. */
final class StopTextView {

    private static final int TOP = 2;
    private static final int FOOT = 3;

    private StopTextView() {}

    static void paint(Frame frame, State state, Panel.StopText box) {
        frame.clear(0, 0, frame.width(), frame.height());
        frame.write(1, 0, "A new organ out of a stop list", Style.HEADING);
        List<String> lines = box.text().lines().toList();
        int room = Math.max(1, frame.height() - TOP - FOOT);
        boolean ends = box.text().isEmpty() || box.text().endsWith("\n");
        int rows = lines.size() + (ends ? 1 : 0);
        int top = Math.max(0, rows - room);
        for (int i = top; i < lines.size(); i++) {
            frame.write(1, TOP + i - top, frame.fit(lines.get(i), frame.width() - 2), Style.TEXT);
        }
        int y = TOP + rows - 1 - top;
        int x = ends ? 0 : Text.columns(lines.get(lines.size() - 1));
        frame.caret(Math.min(frame.width() - 1, 1 + x), y);
        if (box.text().isEmpty()) {
            frame.write(
                    3,
                    TOP,
                    frame.fit("Paste the list here as it is published; it is kept as it stands.", frame.width() - 4),
                    Style.FAINT);
        }
        String count = lines.size() + (lines.size() == 1 ? " line" : " lines");
        frame.write(frame.width() - count.length() - 1, 0, count, Style.FAINT);
        state.notice().paint(frame, frame.height() - 2);
        KeyRow.paint(
                frame,
                1,
                frame.height() - 1,
                frame.width(),
                Command.READ_STOP_TEXT,
                Command.CLOSE_STOP_TEXT,
                Command.CLEAR_STOP_TEXT);
    }
}
