package versewind.screen;

import java.util.List;

/** What the screen shows: a pure function from a state to a frame. */
public final class View {
    private View() {}

    /** The screen of a state. */
    public static Frame paint(State state) {
        Frame frame = new Frame(state.columns(), state.rows(), state.marks());
        if (Layout.isTooSmall(state)) {
            paintTooSmall(frame, state);
            return frame;
        }
        Screen top = state.top();
        if (top.layer() == Screen.Layer.WINDOW) {
            state.ground().paint(frame, state);
        }
        top.paint(frame, state);
        return frame;
    }

    private static void paintTooSmall(Frame frame, State state) {
        Screen.Size least = state.ground().least();
        String sentence = "Versewind needs " + least.columns() + " columns and " + least.rows()
                + " rows; this window has " + frame.width() + " by " + frame.height() + ". Nothing is lost."
                + (Layout.canOpenDesk(state)
                        ? " " + Command.AT_DESK.keys().get(0).name() + " opens the desk, which fits."
                        : "")
                + (state.top() instanceof Question question ? " Here it is asked: " + question.text() : "");
        List<String> lines = Text.wrapped(sentence, Math.min(frame.width(), 36));
        for (int i = 0; i < lines.size(); i++) {
            frame.write(0, i, lines.get(i), Style.TEXT);
        }
    }

    /** Draws what is not yet a screen of its own. */
    static void paint(Panel panel, Frame frame, State state) {
        if (panel instanceof Panel.Library library) {
            LibraryView.paint(frame, state, library.shelves());
        } else if (panel instanceof Panel.Proposals proposals) {
            ProposalsView.paint(frame, state, proposals);
        } else if (panel instanceof Panel.Searching searching) {
            ProposalsView.paint(frame, state, searching);
        } else if (panel instanceof Panel.StopText box) {
            StopTextView.paint(frame, state, box);
        } else if (panel instanceof Panel.Help help) {
            HelpView.paint(frame, state, help);
        } else if (state.bench().isPresent()) {
            OrganEditView.paint(frame, state, state.bench().get());
        } else if (panel instanceof Panel.None) {
            paintPlan(frame, state);
        }
    }

    private static void paintPlan(Frame frame, State state) {
        if (state.work().isPresent()) {
            PlanEdit work = state.work().get();
            HeaderView.paint(frame, state, work);
            StopGridView.paint(frame, state, work);
            VerseListView.paint(frame, state, work);
            StatusView.paint(frame, state, work);
            return;
        }
        frame.write(1, 0, "Versewind", Style.HEADING);
        frame.write(1, 2, "No plan is open. Press o to open one, q to leave.", Style.TEXT);
        StatusView.paintNotice(frame, state);
    }
}
