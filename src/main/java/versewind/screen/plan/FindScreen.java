package versewind.screen.plan;

import java.util.ArrayList;
import java.util.List;
import versewind.organ.Instrument;
import versewind.plan.Sought;
import versewind.screen.state.KeyTable;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.State;
import versewind.screen.state.TextEntry;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;
import versewind.screen.toolkit.TextLine;

/**
 * The search for a stop by part of its name, in the last row of the plan.
 *
 * @param text what was typed
 * @param from the knob to go back to
 * @param side what had the keys before
 */
public record FindScreen(TextLine text, int from, PlanEdit.Side side) implements TextEntry {

    public static final KeyTable<FindScreen> KEYS = KeyTable.<FindScreen>under("Finding a stop")
            .key("Tab, Down", "the next match", (find, state) -> find.further(state, 1))
            .key("Shift-Tab, Up", "the previous match", (find, state) -> find.further(state, -1))
            .key("Enter", "stay at this stop", (find, state) -> state.close())
            .key("Esc", "back to where you were", (find, state) -> state.close()
                    .onWork(work -> state.close().with(work.at(find.from).on(find.side))));

    static State open(State state, PlanEdit work) {
        return state.with(work.on(PlanEdit.Side.STOPS)).open(new FindScreen(TextLine.EMPTY, work.item(), work.side()));
    }

    private List<Integer> fitting(PlanEdit work, TextLine line) {
        return Finder.fitting(work.instrument(), StopGridLayout.items(work.instrument()), line.text());
    }

    private State further(State state, int step) {
        return state.onWork(work -> {
            List<Integer> fitting = fitting(work, text);
            return fitting.isEmpty()
                    ? state
                    : state.with(
                            work.at(fitting.get(Math.floorMod(fitting.indexOf(work.item()) + step, fitting.size()))));
        });
    }

    /** With something else typed: at the first knob that fits; the caret alone leaves the knob. */
    @Override
    public State typed(TextLine line, State state) {
        State next = state.show(new FindScreen(line, from, side));
        return line.text().equals(text.text())
                ? next
                : next.onWork(work -> next.with(
                        work.at(fitting(work, line).stream().findFirst().orElse(from))));
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
    public void paint(Frame frame, State state) {
        state.work().ifPresent(work -> paint(frame, work));
    }

    private void paint(Frame frame, PlanEdit work) {
        int y = frame.height() - 1;
        int x = frame.write(1, y, "Find: ", Style.HEADING);
        int typed = Math.min(Text.columns(text.text()) + 1, frame.width() / 2);
        text.paint(frame, x, y, typed, true);
        x += typed + 1;
        List<Integer> fitting = fitting(work, text);
        String found = fitting.isEmpty()
                ? text.text().isBlank() ? "part of a stop's name" : "no stop has this in its name"
                : Item.fullName(
                                work.instrument(),
                                StopGridLayout.items(work.instrument()).get(work.item()))
                        + (fitting.size() > 1 ? "  (" + fitting.size() + " fit, Tab: the next)" : "");
        frame.write(x, y, frame.fit(found, frame.width() - 1 - x), Style.TEXT);
    }

    /** Finds knobs by parts of their names. */
    static final class Finder {

        private Finder() {}

        /** The knobs whose full names hold every word typed, those first whose own name begins with it. */
        static List<Integer> fitting(Instrument instrument, List<Item> items, String typed) {
            String plain = Sought.plain(typed).strip();
            if (plain.isEmpty()) {
                return List.of();
            }
            Sought sought = Sought.of(typed);
            List<Integer> beginning = new ArrayList<>();
            List<Integer> holding = new ArrayList<>();
            for (int i = 0; i < items.size(); i++) {
                if (Sought.plain(Item.name(instrument, items.get(i))).startsWith(plain)) {
                    beginning.add(i);
                } else if (sought.isIn(Item.fullName(instrument, items.get(i)))) {
                    holding.add(i);
                }
            }
            beginning.addAll(holding);
            return beginning;
        }
    }
}
