package versewind.screen;

import java.util.List;
import versewind.screen.state.Screen;
import versewind.screen.state.State;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;

/** What the screen shows: a pure function from a state to a frame. */
public final class View {
    private View() {}

    /** The screen of a state. */
    public static Frame paint(State state) {
        return paint(state, Frame.Extent.ALL);
    }

    /** The screen of a state, or as much of it as is known at once. */
    public static Frame paint(State state, Frame.Extent extent) {
        Frame frame = new Frame(state.columns(), state.rows(), state.marks(), extent);
        if (state.isTooSmall()) {
            paintTooSmall(frame, state);
            return frame;
        }
        Screen top = state.top();
        if (top.layer() == Screen.Layer.WINDOW && !state.isSpoken()) { // which reads nothing that lies beneath
            state.ground().paint(frame, state);
        }
        top.paint(frame, state);
        boolean isTypedInto = top.takesText() && frame.caretY() == frame.height() - 1;
        if (state.isSpoken() && !isTypedInto && !state.notice().text().isBlank()) {
            state.notice().paint(frame); // in full, whatever else stands there: it is what is heard
        }
        return frame;
    }

    private static void paintTooSmall(Frame frame, State state) {
        Screen.Size least = state.ground().least();
        String sentence = "Versewind needs " + least.columns() + " columns and " + least.rows()
                + " rows; this window has " + frame.width() + " by " + frame.height() + ". Nothing is lost."
                + state.top().smallWords(state);
        List<String> lines = Text.wrapped(sentence, Math.min(frame.width(), 36));
        for (int i = 0; i < lines.size(); i++) {
            frame.write(0, i, lines.get(i), Style.TEXT);
        }
    }
}
