package versewind.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import versewind.stoplist.Lexicon;
import versewind.workshop.Autofill;
import versewind.workshop.DraftField;
import versewind.workshop.DraftLine;
import versewind.workshop.OrganDraft;
import versewind.workshop.Problem;
import versewind.workshop.RowKind;

/** Changing an organ: its lines put in, taken out, moved and filled in; undoing. */
final class OrganEditCommands {

    private OrganEditCommands() {}

    static void into(Map<Command, Handler> handlers) {
        handlers.put(Command.LINE_BELOW, bench((state, bench) -> to(state, bench, bench.at() + 1)));
        handlers.put(Command.LINE_ABOVE, bench((state, bench) -> to(state, bench, bench.at() - 1)));
        handlers.put(
                Command.LINE_PAGE_BELOW,
                bench((state, bench) -> to(state, bench, bench.at() + OrganEditView.room(state))));
        handlers.put(
                Command.LINE_PAGE_ABOVE,
                bench((state, bench) -> to(state, bench, bench.at() - OrganEditView.room(state))));
        handlers.put(Command.FIRST_LINE, bench((state, bench) -> to(state, bench, 0)));
        handlers.put(Command.LAST_LINE, bench((state, bench) -> to(state, bench, Integer.MAX_VALUE)));
        handlers.put(Command.NEXT_PROBLEM, bench(OrganEditCommands::nextProblem));
        handlers.put(Command.ABOUT_LINE, bench(OrganEditCommands::about));
        handlers.put(Command.EDIT_LINE, bench((state, bench) -> edit(state, bench.draft(), bench.at(), bench)));
        handlers.put(Command.INSERT_LINE, bench(OrganEditCommands::insertAlike));
        handlers.put(Command.INSERT_DIVISION, bench((state, bench) -> insert(state, bench, RowKind.DIVISION)));
        handlers.put(Command.INSERT_COUPLER, bench((state, bench) -> insert(state, bench, RowKind.COUPLER)));
        handlers.put(Command.INSERT_TREMULANT, bench((state, bench) -> insert(state, bench, RowKind.TREMULANT)));
        handlers.put(Command.INSERT_SURFACE, bench((state, bench) -> insert(state, bench, RowKind.SURFACE)));
        handlers.put(Command.DUPLICATE_LINE, bench(OrganEditCommands::duplicate));
        handlers.put(Command.REMOVE_LINE, bench(OrganEditCommands::remove));
        handlers.put(
                Command.LINE_EARLIER,
                bench((state, bench) -> moved(state, bench, bench.draft().movedUp(bench.at()))));
        handlers.put(
                Command.LINE_LATER,
                bench((state, bench) -> moved(state, bench, bench.draft().movedDown(bench.at()))));
        handlers.put(
                Command.UNDO_LINE,
                bench((state, bench) ->
                        change(state, bench, bench.with(bench.history().undo()), "There is nothing to undo.")));
        handlers.put(
                Command.REDO_LINE,
                bench((state, bench) ->
                        change(state, bench, bench.with(bench.history().redo()), "There is nothing to do again.")));
        handlers.put(Command.ORGAN_HELP, state -> state.open(new HelpScreen(0)));
    }

    /** A command that needs an organ on the bench. */
    static Handler bench(BiFunction<State, OrganEdit, State> handler) {
        return state -> state.bench().map(bench -> handler.apply(state, bench)).orElseGet(() -> state);
    }

    /** The state with a changed draft, which is kept beside the file until it is saved. */
    private static State keeping(State state, OrganEdit bench) {
        return state.with(Optional.of(bench))
                .wants(
                        bench.history().isUnsaved()
                                ? effects -> effects.keepOrganDraft(bench.draft())
                                : Effects::dropOrganDraft);
    }

    private static State to(State state, OrganEdit bench, int line) {
        return state.with(Optional.of(bench.at(line)));
    }

    private static State change(State state, OrganEdit before, OrganEdit after, String nothing) {
        return after.draft().equals(before.draft()) ? state.says(nothing) : keeping(state, after);
    }

    private static State nextProblem(State state, OrganEdit bench) {
        List<Problem> problems = bench.problems();
        if (problems.isEmpty()) {
            return state.says("Nothing is wrong.");
        }
        Problem next = problems.stream()
                .filter(problem -> problem.line() > bench.at())
                .findFirst()
                .orElse(problems.get(0));
        return to(state, bench, next.line());
    }

    private static State about(State state, OrganEdit bench) {
        return bench.line().part() == RowKind.STOP
                ? described(state, bench.line().label(), bench.line().at(DraftField.NAME))
                : state.says("Mark a stop: what it is can be told of stops.");
    }

    /** What a stop of a name is. */
    static State described(State state, String label, String name) {
        String said = Lexicon.describe(name).orElse("Nothing is known of a stop of this name.");
        return state.open(new Question(
                label + ": " + said,
                List.of(
                        new Question.Answer("Enter", "good", closed -> closed),
                        new Question.Answer("Esc", "back", closed -> closed))));
    }

    private static State insertAlike(State state, OrganEdit bench) {
        return switch (bench.line().part()) {
            case ORGAN -> insert(state, bench, RowKind.DIVISION);
            case DIVISION, STOP -> insert(state, bench, RowKind.STOP);
            case COUPLER -> insert(state, bench, RowKind.COUPLER);
            case TREMULANT -> insert(state, bench, RowKind.TREMULANT);
            case PISTONS, ROOM, TIMES, DISTANCES, SURFACE -> insert(state, bench, RowKind.SURFACE);
        };
    }

    private static State insert(State state, OrganEdit bench, RowKind part) {
        int at = bench.draft().placeFor(part, bench.at());
        DraftLine blank = DraftLine.blank(part);
        DraftLine line = part == RowKind.DIVISION
                ? blank.with(
                                DraftField.MANUAL,
                                Integer.toString(bench.draft().divisions().size()))
                        .with(DraftField.KEYS, "58")
                : blank;
        return edit(state, bench.draft().inserted(at, line), at, bench);
    }

    private static State edit(State state, OrganDraft draft, int at, OrganEdit bench) {
        DraftLine line = draft.lines().get(at);
        List<FormBox.Field> fields = new ArrayList<>();
        for (DraftField slot : line.part().slots()) {
            fields.add(FormBox.Field.of(slot.word(), line.at(slot), slot.hint()));
        }
        String of = line.part() == RowKind.STOP
                ? " of "
                        + draft.divisionOf(at)
                                .map(each -> each.at(DraftField.NAME))
                                .orElse("")
                : "";
        return state.open(FormBox.of(
                        line.part().word() + of,
                        fields,
                        (form, closed) -> keeping(
                                closed,
                                bench.with(bench.history().after(draft.with(at, values(form, draft, at))))
                                        .at(at)))
                .checkedBy(form -> OrganEdit.problems(bench.organ(), draft.with(at, values(form, draft, at))).stream()
                        .filter(problem -> problem.line() == at)
                        .map(Problem::sentence)
                        .findFirst()
                        .orElse("")));
    }

    private static List<String> values(FormBox form, OrganDraft draft, int line) {
        return Autofill.of(
                draft,
                line,
                form.fields().stream().map(field -> field.line().text()).toList());
    }

    private static State duplicate(State state, OrganEdit bench) {
        if (!bench.line().part().isRepeated()) {
            return saysOnlyOne(state, bench);
        }
        return edited(state, bench, bench.draft().duplicated(bench.at()), bench.at() + 1);
    }

    private static State saysOnlyOne(State state, OrganEdit bench) {
        return state.says("An organ has one line of this kind: "
                + bench.line().part().word().toLowerCase(Locale.ROOT) + ".");
    }

    private static State remove(State state, OrganEdit bench) {
        if (!bench.line().part().isRepeated()) {
            return saysOnlyOne(state, bench);
        }
        State step = edited(state, bench, bench.draft().without(bench.at()), bench.at());
        return step.says("Taken out; u puts it in again.");
    }

    private static State edited(State state, OrganEdit bench, OrganDraft draft, int at) {
        return keeping(state, bench.with(bench.history().after(draft)).at(at));
    }

    private static State moved(State state, OrganEdit bench, Optional<OrganDraft.Moved> moved) {
        return moved.map(to -> edited(state, bench, to.draft(), to.at()))
                .orElseGet(() -> state.says("It cannot go further."));
    }
}
