package versewind.screen;

/** What was last said, in a row of its own. */
final class NoticeLine {

    private NoticeLine() {}

    static void paint(Frame frame, State state, int y) {
        Notice notice = state.notice();
        frame.write(
                1, y, Text.fit(notice.text(), frame.width() - 2, state.marks().cut()), notice.style());
    }
}
