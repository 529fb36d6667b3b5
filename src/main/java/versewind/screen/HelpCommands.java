package versewind.screen;

import java.util.Map;
import java.util.function.BiFunction;

/** Reading the help. */
final class HelpCommands {

    private HelpCommands() {}

    static void into(Map<Command, Handler> handlers) {
        handlers.put(Command.HELP_DOWN, help((state, help) -> readFrom(state, help.top() + 1)));
        handlers.put(Command.HELP_UP, help((state, help) -> readFrom(state, help.top() - 1)));
        handlers.put(
                Command.HELP_PAGE_DOWN, help((state, help) -> readFrom(state, help.top() + HelpView.room(state) - 1)));
        handlers.put(
                Command.HELP_PAGE_UP, help((state, help) -> readFrom(state, help.top() - HelpView.room(state) + 1)));
        handlers.put(Command.CLOSE_HELP, help((state, help) -> state.closed()));
    }

    private static Handler help(BiFunction<State, Panel.Help, State> handler) {
        return state -> state.panel() instanceof Panel.Help help ? handler.apply(state, help) : state;
    }

    private static State readFrom(State state, int top) {
        int last = Math.max(0, HelpView.shown(state).size() - HelpView.room(state));
        return state.with(new Panel.Help(Math.max(0, Math.min(top, last))));
    }
}
