package versewind.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import versewind.plan.Sought;
import versewind.screen.state.KeyTable;
import versewind.screen.state.Screen;
import versewind.screen.state.State;
import versewind.screen.state.TextEntry;
import versewind.screen.toolkit.Box;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.ListBox;
import versewind.screen.toolkit.Mark;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;
import versewind.screen.toolkit.TextLine;

/**
 * The line in which a command of the screen beneath is found by a part of what it does, with its key beside it.
 *
 * @param text typed so far
 * @param marked which of the commands that fit
 */
record CommandScreen(TextLine text, int marked) implements TextEntry {

    static final KeyTable<CommandScreen> KEYS = KeyTable.<CommandScreen>under("A command by its name")
            .key("Tab, Down", "the next command that fits", (line, state) -> line.marking(state, line.marked + 1))
            .key("Shift-Tab, Up", "the previous command", (line, state) -> line.marking(state, line.marked - 1))
            .key("Enter", "do it", CommandScreen::chosen)
            .key("Esc", "close", (line, state) -> state.close());

    /** Other words that some look for a command by, after what it does. */
    static final Map<String, String> OTHER_WORDS = Map.of(
            "leave", "quit exit close",
            "undo", "take back",
            "write the sheet for the music desk", "print export",
            "desk: the verse fills the screen, to play from", "ladder play steps louder softer",
            "findings: what a colleague would say", "check faults advice",
            "feedback: too soft, right, too strong", "heard answers",
            "usual registrations: recall one; what feedback was kept", "favourites",
            "edit title, date and people of the service", "rename heading seats",
            "how the verse sounds: plain, bright, festal, gentle", "mood character");

    private static final int MOST_ROWS = 10;

    static State open(Screen screen, State state) {
        return state.open(new CommandScreen(TextLine.EMPTY, 0));
    }

    /** The commands of the screen beneath that hold every word typed, those first that begin with it. */
    private ListBox<KeyTable.Command<?>> fitting(State state) {
        String plain = Sought.plain(text.text()).strip();
        Sought sought = Sought.of(text.text());
        List<KeyTable.Command<?>> beginning = new ArrayList<>();
        List<KeyTable.Command<?>> holding = new ArrayList<>();
        for (KeyTable.Command<?> command : KeyTable.commands(state.close())) {
            String does = command.row().does();
            if (Sought.plain(does).startsWith(plain)) {
                beginning.add(command);
            } else if (sought.isIn(command.row().heading() + " " + does + " " + OTHER_WORDS.getOrDefault(does, ""))) {
                holding.add(command);
            }
        }
        beginning.addAll(holding);
        return new ListBox<>(beginning, marked);
    }

    private State marking(State state, int row) {
        int count = fitting(state).size();
        return count == 0 ? state : state.show(new CommandScreen(text, Math.floorMod(row, count)));
    }

    private State chosen(State state) {
        return fitting(state)
                .current()
                .map(command -> command.done(state.close()))
                .orElseGet(() -> state.says("No command of this screen fits."));
    }

    @Override
    public KeyTable<?> keys() {
        return KEYS;
    }

    @Override
    public TextLine line() {
        return text;
    }

    @Override
    public State typed(TextLine line, State state) {
        return state.show(new CommandScreen(line, line.text().equals(text.text()) ? marked : 0));
    }

    private static String words(KeyTable.Command<?> command) {
        return command.row().does() + ", " + command.row().keyNames();
    }

    /** The marked command beside what is typed, for who hears the line of the caret alone. */
    private static void spokenChoice(Frame frame, ListBox<KeyTable.Command<?>> fitting, int x) {
        fitting.current().ifPresent(command -> {
            String end = ", " + command.row().keyNames() + ", " + fitting.place();
            String does = frame.fit(command.row().does(), frame.width() - x - Text.columns(end));
            frame.write(x, frame.height() - 1, does + end, Style.FAINT);
        });
    }

    @Override
    public void paint(Frame frame, State state) {
        ListBox<KeyTable.Command<?>> fitting = fitting(state);
        int rows = Math.max(1, Math.min(Math.min(fitting.size(), MOST_ROWS), frame.height() - 3));
        int top = frame.height() - rows - 2;
        frame.clear(0, top, frame.width(), rows + 2);
        frame.write(0, top, frame.mark(Mark.RULE).repeat(frame.width()), Style.FAINT);
        frame.write(2, top, " " + fitting.position("command") + " ", Style.FAINT);
        if (fitting.isEmpty()) {
            frame.write(1, top + 1, "No command of this screen fits.", Style.FAINT);
        }
        Box window = new Box(1, top + 1, frame.width() - 2, rows);
        fitting.paint(frame, window, CommandScreen::words, (command, index, y) -> {
            String keys = command.row().keyNames();
            int keysX = window.end() - Text.columns(keys);
            frame.write(window.x(), y, frame.fit(command.row().does(), keysX - window.x() - 1), Style.TEXT);
            frame.write(keysX, y, keys, Style.KEY);
        });
        int x = frame.write(1, frame.height() - 1, ": ", Style.HEADING);
        text.paint(frame, x, frame.height() - 1, frame.width() - x - 1, true);
        if (state.isSpoken()) {
            spokenChoice(frame, fitting, x + Text.columns(text.text()) + 2);
        }
    }
}
