package versewind.screen;

import java.util.List;
import java.util.Map;

/** Choosing from a list, filling in a form, reading the help. */
final class ChooserCommands {
    private ChooserCommands() {}

    static void into(Map<Command, Handler> handlers) {
        handlers.put(Command.ROW_BELOW, chooser((state, chooser) -> toRow(state, chooser, chooser.at() + 1)));
        handlers.put(Command.ROW_ABOVE, chooser((state, chooser) -> toRow(state, chooser, chooser.at() - 1)));
        handlers.put(Command.CHOOSE, chooser(ChooserCommands::choose));
        handlers.put(Command.CLOSE_CHOOSER, chooser(ChooserCommands::close));

        handlers.put(Command.NEXT_FIELD, form((state, form) -> toField(state, form, form.at() + 1)));
        handlers.put(Command.PREVIOUS_FIELD, form((state, form) -> toField(state, form, form.at() - 1)));
        handlers.put(Command.CLEAR_FIELD, form((state, form) -> Transition.to(state.with(form.with(TextLine.EMPTY)))));
        handlers.put(Command.KEEP, form(Forms::keep));
        handlers.put(Command.DISCARD, form(ChooserCommands::discard));

        handlers.put(Command.HELP_DOWN, help((state, help) -> readFrom(state, help.top() + 1)));
        handlers.put(Command.HELP_UP, help((state, help) -> readFrom(state, help.top() - 1)));
        handlers.put(
                Command.HELP_PAGE_DOWN, help((state, help) -> readFrom(state, help.top() + HelpView.room(state) - 1)));
        handlers.put(
                Command.HELP_PAGE_UP, help((state, help) -> readFrom(state, help.top() - HelpView.room(state) + 1)));
        handlers.put(Command.CLOSE_HELP, help((state, help) -> Transition.to(state.closed())));
    }

    @FunctionalInterface
    private interface OnPanel<P> {
        Transition on(State state, P panel);
    }

    private static Handler chooser(OnPanel<Panel.Chooser> handler) {
        return state ->
                state.panel() instanceof Panel.Chooser chooser ? handler.on(state, chooser) : Transition.to(state);
    }

    private static Handler form(OnPanel<Panel.Form> handler) {
        return state -> state.panel() instanceof Panel.Form form ? handler.on(state, form) : Transition.to(state);
    }

    private static Handler help(OnPanel<Panel.Help> handler) {
        return state -> state.panel() instanceof Panel.Help help ? handler.on(state, help) : Transition.to(state);
    }

    private static Transition toRow(State state, Panel.Chooser chooser, int row) {
        int last = Math.max(0, chooser.fitting().size() - 1);
        int at = Math.max(0, Math.min(row, last));
        return Transition.to(
                state.with(new Panel.Chooser(chooser.title(), chooser.rows(), chooser.filter(), at, chooser.choice())));
    }

    /** After a key or a paste that narrows the list; the caret alone leaves the row that is marked. */
    static Transition typed(State state, Panel.Chooser chooser, TextLine line) {
        int at = line.text().equals(chooser.filter().text()) ? chooser.at() : 0;
        return Transition.to(
                state.with(new Panel.Chooser(chooser.title(), chooser.rows(), line, at, chooser.choice())));
    }

    private static Transition choose(State state, Panel.Chooser chooser) {
        List<Panel.Row> fitting = chooser.fitting();
        if (fitting.isEmpty()) {
            return Transition.says(state, "Nothing in the list fits what was typed.");
        }
        String id = fitting.get(chooser.at()).id();
        if (chooser.choice() instanceof Panel.Choice.OfStopText list) {
            return PasteCommands.named(state, list);
        }
        if (chooser.choice() instanceof Panel.Choice.HymnOf from) {
            return Transition.to(state, new Effect.BringHymn(from.plan(), Integer.parseInt(id)));
        }
        return chooser.choice() instanceof Panel.Choice.Organ
                ? Transition.to(state.with(ServiceForm.ofNewPlan(state, id)))
                : Transition.to(state.closed());
    }

    private static Transition close(State state, Panel.Chooser chooser) {
        if (chooser.choice() instanceof Panel.Choice.OfStopText list) {
            return Transition.to(state.with(list.back()));
        }
        if (state.work().isPresent()) {
            return Transition.to(state.closed());
        }
        return LibraryCommands.open(state);
    }

    /** Back to the plan, the findings or the library; where none is open, back to the plans there are. */
    private static Transition discard(State state, Panel.Form form) {
        if (form.purpose() instanceof FormAction.Rename rename) {
            return Transition.to(state.with(rename.back()));
        }
        if (form.purpose() instanceof FormAction.Silence silence) {
            return FindingsCommands.back(state, silence.people());
        }
        if (form.purpose() instanceof FormAction.OrganOfList list) {
            return Transition.to(state.with(list.back()));
        }
        return state.work().isPresent() || state.bench().isPresent()
                ? Transition.to(state.closed())
                : LibraryCommands.open(state);
    }

    private static Transition toField(State state, Panel.Form form, int field) {
        return Transition.to(
                state.with(form.at(Math.floorMod(field, form.fields().size()))));
    }

    private static Transition readFrom(State state, int top) {
        int last = Math.max(0, HelpView.shown(state).size() - HelpView.room(state));
        return Transition.to(state.with(new Panel.Help(Math.max(0, Math.min(top, last)))));
    }
}
