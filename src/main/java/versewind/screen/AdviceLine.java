package versewind.screen;

import java.util.List;
import versewind.advice.Advice;
import versewind.advice.Finding;
import versewind.advice.Touch;

/** The touch of the verse where we are, and the weightiest finding in it, in a row. */
final class AdviceLine {
    private AdviceLine() {}

    static void paint(Frame frame, State state, Work work, int y) {
        Advice advice = Advice.on(work.sound());
        Touch touch = advice.touch(work.plan(), work.place());
        List<Finding> findings = advice.mentions(work.plan(), work.place());
        int x = frame.write(1, y, touch.manner().word() + ", " + touch.manner().hold(), Style.TEXT);
        if (findings.isEmpty()) {
            return;
        }
        Finding first = findings.get(0);
        x = frame.write(x, y, " " + state.marks().wall() + " ", Style.FAINT);
        x = frame.write(x, y, FindingsView.word(first) + ": ", FindingsView.style(first));
        String more = findings.size() == 1 ? "" : " " + state.marks().plus() + (findings.size() - 1);
        int room = frame.width() - 1 - x - Text.columns(more);
        x = frame.write(x, y, Text.fit(first.sentence(), room, state.marks().cut()), Style.TEXT);
        frame.write(x, y, more, Style.FAINT);
    }
}
