package versewind.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import versewind.stoplist.Lexicon;
import versewind.workshop.Completion;
import versewind.workshop.DraftLine;
import versewind.workshop.OrganDraft;
import versewind.workshop.Part;
import versewind.workshop.Problem;
import versewind.workshop.Slot;

/** Changing an organ: its lines put in, taken out, moved and filled in; undoing. */
final class Benching {

    private Benching() {}

    static void into(Map<Command, Handler> handlers) {
        handlers.put(Command.LINE_BELOW, bench((state, bench) -> to(state, bench, bench.at() + 1)));
        handlers.put(Command.LINE_ABOVE, bench((state, bench) -> to(state, bench, bench.at() - 1)));
        handlers.put(
                Command.LINE_PAGE_BELOW, bench((state, bench) -> to(state, bench, bench.at() + BenchView.room(state))));
        handlers.put(
                Command.LINE_PAGE_ABOVE, bench((state, bench) -> to(state, bench, bench.at() - BenchView.room(state))));
        handlers.put(Command.FIRST_LINE, bench((state, bench) -> to(state, bench, 0)));
        handlers.put(Command.LAST_LINE, bench((state, bench) -> to(state, bench, Integer.MAX_VALUE)));
        handlers.put(Command.NEXT_PROBLEM, bench(Benching::nextProblem));
        handlers.put(Command.ABOUT_LINE, bench(Benching::about));
        handlers.put(Command.EDIT_LINE, bench((state, bench) -> edit(state, bench.draft(), bench.at(), bench)));
        handlers.put(Command.INSERT_LINE, bench(Benching::insertAlike));
        handlers.put(Command.INSERT_DIVISION, bench((state, bench) -> insert(state, bench, Part.DIVISION)));
        handlers.put(Command.INSERT_COUPLER, bench((state, bench) -> insert(state, bench, Part.COUPLER)));
        handlers.put(Command.INSERT_TREMULANT, bench((state, bench) -> insert(state, bench, Part.TREMULANT)));
        handlers.put(Command.INSERT_SURFACE, bench((state, bench) -> insert(state, bench, Part.SURFACE)));
        handlers.put(Command.DUPLICATE_LINE, bench(Benching::duplicate));
        handlers.put(Command.REMOVE_LINE, bench(Benching::remove));
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
        handlers.put(Command.ORGAN_HELP, state -> Step.to(state.with(new Panel.Help(0))));
        handlers.put(Command.ABOUT_STOP, Handler.work(Benching::aboutKnob));
    }

    /** A command that needs an organ on the bench. */
    static Handler bench(BiFunction<State, Bench, Step> handler) {
        return state -> state.bench().map(bench -> handler.apply(state, bench)).orElseGet(() -> Step.to(state));
    }

    /** The state with a changed draft, which is kept beside the file until it is saved. */
    private static Step keeping(State state, Bench bench) {
        return Step.to(
                state.with(Optional.of(bench)),
                bench.history().isUnsaved() ? new Effect.KeepOrganDraft(bench.draft()) : new Effect.DropOrganDraft());
    }

    private static Step to(State state, Bench bench, int line) {
        return Step.to(state.with(Optional.of(bench.at(line))));
    }

    private static Step change(State state, Bench before, Bench after, String nothing) {
        return after.draft().equals(before.draft()) ? Step.says(state, nothing) : keeping(state, after);
    }

    private static Step nextProblem(State state, Bench bench) {
        List<Problem> problems = bench.problems();
        if (problems.isEmpty()) {
            return Step.says(state, "Nothing is wrong.");
        }
        Problem next = problems.stream()
                .filter(problem -> problem.line() > bench.at())
                .findFirst()
                .orElse(problems.get(0));
        return to(state, bench, next.line());
    }

    private static Step about(State state, Bench bench) {
        return bench.line().part() == Part.STOP
                ? described(state, bench.line().label(), bench.line().at(Slot.NAME))
                : Step.says(state, "Mark a stop: what it is can be told of stops.");
    }

    /** What the stop under the cursor of a plan is. */
    private static Step aboutKnob(State state, Work work) {
        List<Item> items = Layout.jamb(state, work).items();
        boolean isStop = work.item() < items.size() && items.get(work.item()) instanceof Item.StopItem;
        if (!isStop) {
            return Step.says(state, "Mark a stop: what it is can be told of stops.");
        }
        int index = ((Item.StopItem) items.get(work.item())).stop();
        var stop = work.instrument().stops().get(index).stop();
        return described(state, stop.label(), stop.name());
    }

    private static Step described(State state, String label, String name) {
        String said = Lexicon.describe(name).orElse("Nothing is known of a stop of this name.");
        Panel.Answer back = new Panel.Answer(Key.of(Key.Named.ENTER), "good", List.of(), Panel.Reply.BACK);
        Panel.Answer escape = new Panel.Answer(Key.of(Key.Named.ESCAPE), "back", List.of(), Panel.Reply.BACK);
        return Step.to(state.with(new Panel.Question(label + ": " + said, List.of(back, escape), state.panel())));
    }

    private static Step insertAlike(State state, Bench bench) {
        return switch (bench.line().part()) {
            case ORGAN -> insert(state, bench, Part.DIVISION);
            case DIVISION, STOP -> insert(state, bench, Part.STOP);
            case COUPLER -> insert(state, bench, Part.COUPLER);
            case TREMULANT -> insert(state, bench, Part.TREMULANT);
            case PISTONS, ROOM, TIMES, DISTANCES, SURFACE -> insert(state, bench, Part.SURFACE);
        };
    }

    private static Step insert(State state, Bench bench, Part part) {
        int at = bench.draft().placeFor(part, bench.at());
        DraftLine blank = DraftLine.blank(part);
        DraftLine line = part == Part.DIVISION
                ? blank.with(
                                Slot.MANUAL,
                                Integer.toString(bench.draft().divisions().size()))
                        .with(Slot.KEYS, "58")
                : blank;
        return edit(state, bench.draft().inserted(at, line), at, bench);
    }

    private static Step edit(State state, OrganDraft draft, int at, Bench bench) {
        DraftLine line = draft.lines().get(at);
        List<Panel.Field> fields = new ArrayList<>();
        for (Slot slot : line.part().slots()) {
            fields.add(Panel.Field.of(slot.word(), line.at(slot), slot.hint()));
        }
        String of = line.part() == Part.STOP
                ? " of " + draft.divisionOf(at).map(each -> each.at(Slot.NAME)).orElse("")
                : "";
        Panel.Form form =
                new Panel.Form(line.part().word() + of, fields, 0, new Purpose.OrganLine(draft, at, bench.organ()), "");
        return Step.to(state.with(checked(form)));
    }

    /** A form of a line with what is wrong with it as it is typed; any other form as it is. */
    static Panel.Form checked(Panel.Form form) {
        if (!(form.purpose() instanceof Purpose.OrganLine line)) {
            return form;
        }
        OrganDraft draft = line.draft().with(line.line(), values(form, line));
        String complaint = Bench.problems(line.organ(), draft).stream()
                .filter(problem -> problem.line() == line.line())
                .map(Problem::sentence)
                .findFirst()
                .orElse("");
        return form.complaining(form.at(), complaint);
    }

    private static List<String> values(Panel.Form form, Purpose.OrganLine line) {
        return Completion.of(
                line.draft(),
                line.line(),
                form.fields().stream().map(field -> field.line().text()).toList());
    }

    /** What was typed becomes part of the draft, right or wrong. */
    static Step kept(State state, Panel.Form form, Purpose.OrganLine line) {
        return state.bench()
                .map(bench -> {
                    OrganDraft draft = line.draft().with(line.line(), values(form, line));
                    return keeping(
                            state, bench.with(bench.history().after(draft)).at(line.line()));
                })
                .orElseGet(() -> Step.to(state));
    }

    private static Step duplicate(State state, Bench bench) {
        if (!bench.line().part().isRepeated()) {
            return saysOnlyOne(state, bench);
        }
        return edited(state, bench, bench.draft().duplicated(bench.at()), bench.at() + 1);
    }

    private static Step saysOnlyOne(State state, Bench bench) {
        return Step.says(
                state,
                "An organ has one line of this kind: "
                        + bench.line().part().word().toLowerCase(Locale.ROOT) + ".");
    }

    private static Step remove(State state, Bench bench) {
        if (!bench.line().part().isRepeated()) {
            return saysOnlyOne(state, bench);
        }
        Step step = edited(state, bench, bench.draft().without(bench.at()), bench.at());
        return step.saying("Taken out; u puts it in again.");
    }

    private static Step edited(State state, Bench bench, OrganDraft draft, int at) {
        return keeping(state, bench.with(bench.history().after(draft)).at(at));
    }

    private static Step moved(State state, Bench bench, Optional<OrganDraft.Moved> moved) {
        return moved.map(to -> edited(state, bench, to.draft(), to.at()))
                .orElseGet(() -> Step.says(state, "It cannot go further."));
    }
}
