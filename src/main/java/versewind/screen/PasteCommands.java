package versewind.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
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
        handlers.put(Command.CLEAR_STOP_TEXT, box((state, box) -> state.with(new Panel.StopText(""))));
        handlers.put(Command.CLOSE_STOP_TEXT, box((state, box) -> LibraryScreen.organs(state)));
    }

    private static Handler box(BiFunction<State, Panel.StopText, State> handler) {
        return state -> state.top() instanceof Panel.StopText box ? handler.apply(state, box) : state;
    }

    static State open(State state) {
        return state.with(new Panel.StopText(""));
    }

    /** Pasted text keeps its lines. */
    static State pasted(State state, Panel.StopText box, String text) {
        Panel.StopText more = box.typed(text);
        return more.equals(box) && !text.isEmpty()
                ? state.says("That is too long: the box takes " + Panel.StopText.LONGEST + " characters.")
                : state.with(more);
    }

    /** What was understood, and what was not and why. */
    private static State read(State state, Panel.StopText box) {
        if (box.text().isBlank()) {
            return state.says("Paste or type a stop list first.");
        }
        StopList list = ReadOrgan.of(box.text()).list();
        int doubts = list.doubts().size();
        String title = counted(list.stops().count(), "stop") + ", "
                + counted(list.couplers().size(), "coupler") + "; "
                + (doubts == 0 ? "nothing is in doubt" : counted(doubts, "line") + " not understood");
        return state.open(
                Chooser.of(title, rows(list), (id, choosing) -> named(choosing, box.text()), UnaryOperator.identity()));
    }

    private static String counted(long count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    private static List<Chooser.Row> rows(StopList list) {
        List<Chooser.Row> rows = new ArrayList<>();
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

    private static void addUnread(List<Chooser.Row> rows, Unread unread, String what) {
        rows.add(row(rows, "Line " + unread.line() + ": " + unread.text(), what));
        rows.add(row(rows, "    " + unread.why(), ""));
    }

    private static Chooser.Row row(List<Chooser.Row> rows, String first, String second) {
        return new Chooser.Row(Integer.toString(rows.size()), first, second);
    }

    /** Asks what the organ is called, in the place of what was understood. */
    private static State named(State state, String text) {
        ReadOrgan read = ReadOrgan.of(text);
        if (read.made("New organ").isEmpty()) {
            return state.close()
                    .warns(read.objections().stream()
                            .findFirst()
                            .orElse("The list has no manual with a stop, so no organ can be made of it."));
        }
        return state.show(FormBox.of(
                "A new organ",
                List.of(FormBox.Field.of(
                        "Name", read.heading(), "what the organ is called, after which its file is named; needed")),
                (form, closed) -> made(form, closed, read)));
    }

    private static State made(FormBox form, State closed, ReadOrgan read) {
        if (form.isBlank(0)) {
            throw new FormBox.Wrong(0, "An organ needs a name.");
        }
        return read.made(form.text(0))
                .map(organ ->
                        FileCommands.afterAsking(closed.open(form), effects -> effects.makeOrgan(organ.instrument())))
                .orElse(closed);
    }
}
