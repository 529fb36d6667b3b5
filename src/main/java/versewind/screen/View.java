package versewind.screen;

import java.util.List;
import java.util.Optional;

/** What the screen shows: a pure function from a state to a frame. */
public final class View {
    private View() {}

    /** The screen of a state. */
    public static Frame paint(State state) {
        Frame frame = new Frame(state.columns(), state.rows());
        if (Layout.isTooSmall(state)) {
            paintTooSmall(frame, state);
            return frame;
        }
        Optional<PlanEdit> open = state.work();
        if (state.bench().isPresent()) {
            OrganEditView.paint(frame, state, state.bench().get());
        } else if (open.isPresent() && Layout.isDesk(state)) {
            DeskView.paint(frame, state, open.get());
        } else if (open.isPresent()) {
            PlanEdit work = open.get();
            HeaderView.paint(frame, state, work);
            StopGridView.paint(frame, state, work);
            VerseListView.paint(frame, state, work);
            StatusView.paint(frame, state, work);
        } else {
            frame.write(1, 0, "Versewind", Style.HEADING);
            frame.write(1, 2, "No plan is open. Press o to open one, q to leave.", Style.TEXT);
            StatusView.paintNotice(frame, state);
        }
        paintPanel(frame, state);
        return frame;
    }

    private static void paintTooSmall(Frame frame, State state) {
        String sentence = "Versewind needs " + Layout.leastColumns(state) + " columns and " + Layout.leastRows(state)
                + " rows; this window has " + frame.width() + " by " + frame.height() + ". Nothing is lost."
                + (canOpenDesk(state)
                        ? " " + Command.AT_DESK.keys().get(0).name() + " opens the desk, which fits."
                        : "")
                + (state.panel() instanceof Panel.Question question ? " Here it is asked: " + question.text() : "");
        List<String> lines = Text.wrapped(sentence, Math.min(frame.width(), 36));
        for (int i = 0; i < lines.size(); i++) {
            frame.write(0, i, lines.get(i), Style.TEXT);
        }
    }

    private static boolean canOpenDesk(State state) {
        return state.work().isPresent()
                && state.bench().isEmpty()
                && state.panel() instanceof Panel.None
                && Layout.hasRoomForDesk(state);
    }

    private static void paintPanel(Frame frame, State state) {
        Panel panel = state.panel();
        if (panel instanceof Panel.Form form) {
            FormView.paint(frame, state, form);
        } else if (panel instanceof Panel.Chooser chooser) {
            ChooserView.paint(frame, state, chooser);
        } else if (panel instanceof Panel.Library library) {
            LibraryView.paint(frame, state, library.shelves());
        } else if (panel instanceof Panel.Readings readings && state.work().isPresent()) {
            ReadingsView.paint(frame, state, state.work().get(), readings);
        } else if (panel instanceof Panel.Findings findings) {
            FindingsView.paint(frame, state, findings);
        } else if (panel instanceof Panel.Proposals proposals) {
            ProposalsView.paint(frame, state, proposals);
        } else if (panel instanceof Panel.Searching searching) {
            ProposalsView.paint(frame, state, searching);
        } else if (panel instanceof Panel.StopText box) {
            StopTextView.paint(frame, state, box);
        } else if (panel instanceof Panel.Help help) {
            HelpView.paint(frame, state, help);
        } else if (panel instanceof Panel.Question question) {
            QuestionView.paint(frame, state, question);
        }
    }
}
