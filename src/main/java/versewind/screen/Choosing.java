package versewind.screen;

import java.util.List;
import java.util.Map;

/** Choosing from a list, filling in a form, reading the help. */
final class Choosing {
    private Choosing() {}

    static void into(Map<Command, Handler> handlers) {
        handlers.put(Command.ROW_BELOW, chooser((state, chooser) -> toRow(state, chooser, chooser.at() + 1)));
        handlers.put(Command.ROW_ABOVE, chooser((state, chooser) -> toRow(state, chooser, chooser.at() - 1)));
        handlers.put(Command.CHOOSE, chooser(Choosing::choose));
        handlers.put(Command.CLOSE_CHOOSER, chooser(Choosing::close));

        handlers.put(Command.NEXT_FIELD, form((state, form) -> toField(state, form, form.at() + 1)));
        handlers.put(Command.PREVIOUS_FIELD, form((state, form) -> toField(state, form, form.at() - 1)));
        handlers.put(Command.CLEAR_FIELD, form((state, form) -> Step.to(state.with(form.with(TextLine.EMPTY)))));
        handlers.put(Command.KEEP, form(Forms::keep));
        handlers.put(Command.DISCARD, form(Choosing::discard));

        handlers.put(Command.HELP_DOWN, help((state, help) -> readFrom(state, help.top() + 1)));
        handlers.put(Command.HELP_UP, help((state, help) -> readFrom(state, help.top() - 1)));
        handlers.put(
                Command.HELP_PAGE_DOWN, help((state, help) -> readFrom(state, help.top() + HelpView.room(state) - 1)));
        handlers.put(
                Command.HELP_PAGE_UP, help((state, help) -> readFrom(state, help.top() - HelpView.room(state) + 1)));
        handlers.put(Command.CLOSE_HELP, help((state, help) -> Step.to(state.closed())));
    }

    @FunctionalInterface
    private interface OnPanel<P> {
        Step on(State state, P panel);
    }

    private static Handler chooser(OnPanel<Panel.Chooser> handler) {
        return state -> state.panel() instanceof Panel.Chooser chooser ? handler.on(state, chooser) : Step.to(state);
    }

    private static Handler form(OnPanel<Panel.Form> handler) {
        return state -> state.panel() instanceof Panel.Form form ? handler.on(state, form) : Step.to(state);
    }

    private static Handler help(OnPanel<Panel.Help> handler) {
        return state -> state.panel() instanceof Panel.Help help ? handler.on(state, help) : Step.to(state);
    }

    private static Step toRow(State state, Panel.Chooser chooser, int row) {
        int last = Math.max(0, chooser.fitting().size() - 1);
        int at = Math.max(0, Math.min(row, last));
        return Step.to(
                state.with(new Panel.Chooser(chooser.title(), chooser.rows(), chooser.filter(), at, chooser.choice())));
    }

    /** After a key or a paste that narrows the list; the caret alone leaves the row that is marked. */
    static Step typed(State state, Panel.Chooser chooser, TextLine line) {
        int at = line.text().equals(chooser.filter().text()) ? chooser.at() : 0;
        return Step.to(state.with(new Panel.Chooser(chooser.title(), chooser.rows(), line, at, chooser.choice())));
    }

    private static Step choose(State state, Panel.Chooser chooser) {
        List<Panel.Row> fitting = chooser.fitting();
        if (fitting.isEmpty()) {
            return Step.says(state, "Nothing in the list fits what was typed.");
        }
        String id = fitting.get(chooser.at()).id();
        if (chooser.choice() instanceof Panel.Choice.OfStopText list) {
            return Pasting.named(state, list);
        }
        if (chooser.choice() instanceof Panel.Choice.HymnOf from) {
            return Step.to(state, new Effect.BringHymn(from.plan(), Integer.parseInt(id)));
        }
        return chooser.choice() instanceof Panel.Choice.Organ
                ? Step.to(state.with(ServiceForm.ofNewPlan(state, id)))
                : Step.to(state.closed());
    }

    private static Step close(State state, Panel.Chooser chooser) {
        if (chooser.choice() instanceof Panel.Choice.OfStopText list) {
            return Step.to(state.with(list.back()));
        }
        if (state.work().isPresent()) {
            return Step.to(state.closed());
        }
        return Shelving.open(state);
    }

    /** Back to the plan, the findings or the library; where none is open, back to the plans there are. */
    private static Step discard(State state, Panel.Form form) {
        if (form.purpose() instanceof Purpose.Rename rename) {
            return Step.to(state.with(rename.back()));
        }
        if (form.purpose() instanceof Purpose.Silence silence) {
            return Heeding.back(state, silence.people());
        }
        if (form.purpose() instanceof Purpose.OrganOfList list) {
            return Step.to(state.with(list.back()));
        }
        return state.work().isPresent() || state.bench().isPresent() ? Step.to(state.closed()) : Shelving.open(state);
    }

    private static Step toField(State state, Panel.Form form, int field) {
        return Step.to(state.with(form.at(Math.floorMod(field, form.fields().size()))));
    }

    private static Step readFrom(State state, int top) {
        int last = Math.max(0, HelpView.shown(state).size() - HelpView.room(state));
        return Step.to(state.with(new Panel.Help(Math.max(0, Math.min(top, last)))));
    }
}
