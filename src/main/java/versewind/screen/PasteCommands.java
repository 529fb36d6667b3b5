package versewind.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import versewind.stoplist.NewInstrument;
import versewind.stoplist.ReadDivision;
import versewind.stoplist.ReadStop;
import versewind.stoplist.StopList;
import versewind.stoplist.Unread;
import versewind.workshop.ReadOrgan;

/** A stop list pasted into a box, what was understood of it, and the organ that is made of it. */
final class PasteCommands {

    private PasteCommands() {}

    static void into(Map<Command, Handler> handlers) {
        handlers.put(Command.READ_STOP_TEXT, box(PasteCommands::read));
        handlers.put(Command.CLEAR_STOP_TEXT, box((state, box) -> Transition.to(state.with(new Panel.StopText("")))));
        handlers.put(Command.CLOSE_STOP_TEXT, box((state, box) -> LibraryCommands.organs(state)));
    }

    private static Handler box(BiFunction<State, Panel.StopText, Transition> handler) {
        return state -> state.panel() instanceof Panel.StopText box ? handler.apply(state, box) : Transition.to(state);
    }

    static Transition open(State state) {
        return Transition.to(state.with(new Panel.StopText("")));
    }

    /** Pasted text keeps its lines. */
    static Transition pasted(State state, Panel.StopText box, String text) {
        Panel.StopText more = box.typed(text);
        return more.equals(box) && !text.isEmpty()
                ? Transition.says(state, "That is too long: the box takes " + Panel.StopText.LONGEST + " characters.")
                : Transition.to(state.with(more));
    }

    /** What was understood, and what was not and why. */
    private static Transition read(State state, Panel.StopText box) {
        if (box.text().isBlank()) {
            return Transition.says(state, "Paste or type a stop list first.");
        }
        StopList list = ReadOrgan.of(box.text()).list();
        int doubts = list.doubts().size();
        String title = counted(list.stops().count(), "stop") + ", "
                + counted(list.couplers().size(), "coupler") + "; "
                + (doubts == 0 ? "nothing is in doubt" : counted(doubts, "line") + " not understood");
        return Transition.to(state.with(
                new Panel.Chooser(title, rows(list), TextLine.EMPTY, 0, new Panel.Choice.OfStopText(box.text(), box))));
    }

    private static String counted(long count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    private static List<Panel.Row> rows(StopList list) {
        List<Panel.Row> rows = new ArrayList<>();
        list.doubts().forEach(unread -> addUnread(rows, unread, "not understood"));
        for (ReadDivision division : list.divisions()) {
            String manual =
                    division.isPedal() ? "pedal" : "manual " + division.manual().getAsInt();
            rows.add(row(rows, division.name(), manual + (division.enclosed() ? ", in a box" : "")));
            division.stops()
                    .forEach(stop -> rows.add(row(
                            rows,
                            "  " + stop.name() + " " + pitch(stop),
                            stop.family().word() + ", " + stop.how().word())));
        }
        list.couplers()
                .forEach(coupler -> rows.add(row(
                        rows,
                        coupler.name(),
                        coupler.isWhole()
                                ? coupler.source() + " on " + coupler.keyboard()
                                : "its divisions are not here")));
        list.tremulants().forEach(tremulant -> rows.add(row(rows, tremulant.name(), tremulant.division())));
        list.notUnderstood().stream()
                .filter(unread -> unread.weight() == Unread.Weight.NOTE)
                .forEach(unread -> addUnread(rows, unread, "taken for a note"));
        return rows;
    }

    private static String pitch(ReadStop stop) {
        String ranks = stop.family().isCompound() ? stop.ranks() + " ranks" : "";
        return (stop.feet() + (stop.supposed() ? "? " : " ") + ranks).strip();
    }

    private static void addUnread(List<Panel.Row> rows, Unread unread, String what) {
        rows.add(row(rows, "Line " + unread.line() + ": " + unread.text(), what));
        rows.add(row(rows, "    " + unread.why(), ""));
    }

    private static Panel.Row row(List<Panel.Row> rows, String first, String second) {
        return new Panel.Row(Integer.toString(rows.size()), first, second);
    }

    /** Asks what the organ is called. */
    static Transition named(State state, Panel.Choice.OfStopText list) {
        ReadOrgan read = ReadOrgan.of(list.text());
        if (read.made("New organ").isEmpty()) {
            String why = read.objections().stream()
                    .findFirst()
                    .orElse("The list has no manual with a stop, so no organ can be made of it.");
            return Transition.to(state.with(list.back()).with(Notice.warns(why)));
        }
        return Transition.to(state.with(new Panel.Form(
                "A new organ",
                List.of(Panel.Field.of(
                        "Name", read.heading(), "what the organ is called, after which its file is named; needed")),
                0,
                new FormAction.OrganOfList(list.text(), list.back()),
                "")));
    }

    static Transition made(State state, FormAction.OrganOfList list, String name) {
        if (name.isEmpty() && state.panel() instanceof Panel.Form form) {
            return Transition.to(state.with(form.complaining(0, "An organ needs a name.")));
        }
        Optional<NewInstrument> made = ReadOrgan.of(list.text()).made(name);
        return made.map(organ -> FileCommands.afterAsking(state, new Effect.MakeOrgan(organ.instrument())))
                .orElseGet(() -> Transition.to(state.with(list.back())));
    }
}
