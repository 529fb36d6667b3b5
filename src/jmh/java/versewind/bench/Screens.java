package versewind.bench;

import java.time.LocalDate;
import java.util.Optional;
import versewind.screen.Update;
import versewind.screen.View;
import versewind.screen.plan.FileEvent;
import versewind.screen.state.Event;
import versewind.screen.state.State;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Key;
import versewind.screen.toolkit.Marks;
import versewind.store.OpenPlan;

/** The editor without a terminal, 80 by 24. */
final class Screens {

    private static final int COLUMNS = 80;
    private static final int ROWS = 24;

    private Screens() {}

    static State opened(OpenPlan file) {
        State empty = Update.empty(COLUMNS, ROWS, Marks.UNICODE, LocalDate.of(2026, 10, 1));
        FileEvent.PlanOpened opened = new FileEvent.PlanOpened(
                "plan", file.plan(), file.instrument(), file.organ().calibrated(), Optional.empty());
        return Update.step(empty, opened).state();
    }

    static State after(State state, Key key) {
        return Update.step(state, new Event.Press(key)).state();
    }

    /** A screen as the ncurses program reads it: its rows, then the styles of its rows. */
    static String text(State state) {
        Frame frame = View.paint(state);
        StringBuilder text = new StringBuilder();
        StringBuilder styles = new StringBuilder();
        for (int y = 0; y < ROWS; y++) {
            for (int x = 0; x < COLUMNS; x++) {
                text.appendCodePoint(frame.character(x, y));
                styles.append(frame.style(x, y).letter());
            }
            text.append('\n');
            styles.append('\n');
        }
        return text.append(styles).toString();
    }
}
