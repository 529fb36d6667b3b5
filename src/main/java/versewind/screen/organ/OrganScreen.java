package versewind.screen.organ;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import versewind.organ.Count;
import versewind.organ.Instrument;
import versewind.organ.Room;
import versewind.plan.Undo;
import versewind.schema.DraftChange;
import versewind.schema.DraftLine;
import versewind.schema.OrganDraft;
import versewind.schema.Problem;
import versewind.schema.RowKind;
import versewind.screen.state.Effect;
import versewind.screen.state.Effects;
import versewind.screen.state.FormBox;
import versewind.screen.state.KeyTable;
import versewind.screen.state.Listing;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.Question;
import versewind.screen.state.RowForm;
import versewind.screen.state.Screen;
import versewind.screen.state.State;
import versewind.screen.toolkit.Box;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.ListBox;
import versewind.screen.toolkit.Mark;
import versewind.screen.toolkit.Marks;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;
import versewind.stoplist.Autofill;

/**
 * An organ that is being changed: its rows to the left, the marked one in full to the right, below what is wrong.
 *
 * @param id name of its file without the ending
 * @param organ as it lies saved
 * @param draft its draft
 * @param list the rows of the draft
 * @param problems what is wrong with the draft, and what would have plans take one thing for another
 * @param isWritten whether its file was written since it was opened, so that a plan that is open has to be read again
 */
public record OrganScreen(
        String id,
        Instrument organ,
        Undo<OrganDraft> draft,
        ListBox<DraftLine> list,
        List<Problem> problems,
        boolean isWritten)
        implements Listing<DraftLine> {

    public static final KeyTable<OrganScreen> KEYS = KeyTable.<OrganScreen>under("Changing an organ")
            .list("line", OrganScreen::room)
            .key("n", "the next problem", OrganScreen::nextProblem)
            .key("T", "describe the stop", OrganScreen::describe)
            .key("Enter, e", "edit the line", OrganScreen::edit)
            .key("G", "the room by the kind of church, its size and how it sounds", OrganScreen::byChoice)
            .key(
                    "i",
                    "add one like this",
                    (s, state) -> s.insert(state, NewLine.alike(s.line().part())))
            .key("I", "add a division, coupler, tremulant or surface", OrganScreen::insertOther)
            .key("d", "duplicate the line", OrganScreen::duplicate)
            .key("x, Delete", "delete the line", OrganScreen::remove)
            .key(
                    ",",
                    "move the line up",
                    (screen, state) -> screen.moved(state, screen.draft.now().movedUp(screen.at())))
            .key(
                    ".",
                    "move the line down",
                    (screen, state) -> screen.moved(state, screen.draft.now().movedDown(screen.at())))
            .key("u, Ctrl-Z", "undo", (screen, state) -> screen.undone(state, Undo::undo, "Nothing to undo."))
            .key("U, Ctrl-Y", "redo", (screen, state) -> screen.undone(state, Undo::redo, "Nothing to redo."))
            .key("R", "usual registrations", (screen, state) -> state.wants(Effects::openUsual))
            .key("s, Ctrl-S", "save", OrganScreen::save)
            .key("Esc, q, Ctrl-Q", "close", OrganScreen::close);

    private static final int TOP = 2;
    private static final int FOOT = 5;
    private static final int PROBLEM_ROWS = 2;
    private static final String ESTIMATE = " It is an estimate; Enter on a line below changes a figure, u to undo.";

    static OrganScreen of(String id, Instrument organ) {
        Undo<OrganDraft> draft = Undo.of(OrganDraft.of(organ));
        return new OrganScreen(id, organ, draft, ListBox.of(draft.now().lines()), List.of(), /* isWritten= */ false);
    }

    private OrganScreen with(Undo<OrganDraft> other) {
        ListBox<DraftLine> rows = new ListBox<>(other.now().lines(), at());
        return new OrganScreen(id, organ, other, rows, problems(other.now()), isWritten);
    }

    private List<Problem> problems(OrganDraft other) {
        List<Problem> all = new ArrayList<>(other.problems());
        all.addAll(DraftChange.of(organ, other).problems());
        all.sort(Comparator.comparingInt(Problem::line));
        return List.copyOf(all);
    }

    @Override
    public String words(DraftLine line, State state) {
        return DraftLineText.spoken(line);
    }

    @Override
    public OrganScreen marking(int row) {
        return new OrganScreen(id, organ, draft, list.mark(row), problems, isWritten);
    }

    private int at() {
        return list.marked();
    }

    public DraftLine line() {
        return list.rows().get(at());
    }

    static State opened(State state, OrganEvent.OrganOpened opened) {
        OrganScreen screen = of(opened.id(), opened.organ());
        State next = state.closed().says((opened.sentence() + " " + PlanEdit.usualAsked(opened.known())).strip());
        // What is to become of work that was kept is asked; until then it stands as what could be done again.
        return opened.draft()
                .map(kept ->
                        next.open(screen.with(screen.draft.to(kept).undo())).open(aboutDraft()))
                .orElseGet(() -> next.open(screen));
    }

    /** Asks for the room, saves the organ, and then asks what is usually drawn on it. */
    static State made(State state, OrganEvent.OrganOpened opened) {
        State next = opened(state, opened).says(opened.sentence());
        return of(opened.id(), opened.organ()).chooseRoom(next, Optional.empty(), kept -> kept.find(OrganScreen.class)
                .map(screen -> kept.wants(screen.saving(List.of(Effects::openUsual))))
                .orElse(kept));
    }

    private static Question aboutDraft() {
        return new Question(
                "This organ has unsaved work from last time.",
                List.of(
                        new Question.Answer(
                                "Enter",
                                "restore",
                                closed -> closed.update(OrganScreen.class, screen -> screen.with(screen.draft.redo()))),
                        new Question.Answer("x", "discard", OrganScreen::dropped)));
    }

    /** With what was changed of the organ taken back. */
    private static State dropped(State state) {
        return state.update(
                        OrganScreen.class,
                        screen -> screen.with(Undo.of(screen.draft.saved().orElseThrow())))
                .wants(Effects::dropOrganDraft);
    }

    private State save(State state) {
        if (!problems.isEmpty()) {
            return state.show(marking(problems.get(0).line()))
                    .warns("Not saved: " + Count.of(problems.size(), "problem") + " to fix first.");
        }
        return isUnsaved() ? state.wants(saving(List.of())) : state.says("Already saved.");
    }

    private Effect saving(List<Effect> then) {
        Instrument next = draft.now().instrument().orElseThrow();
        return effects ->
                effects.saveOrgan(next, DraftChange.of(organ, draft.now()).names(), then);
    }

    OrganScreen written(Instrument now) {
        return new OrganScreen(id, now, draft, list, problems, /* isWritten= */ true)
                .with(draft.savedAs(OrganDraft.of(now), draft.now()::moved));
    }

    @Override
    public Optional<Screen> withFileWritten() {
        return Optional.of(new OrganScreen(id, organ, draft, list, problems, /* isWritten= */ true));
    }

    @Override
    public boolean isUnsaved() {
        return draft.isUnsaved();
    }

    @Override
    public boolean saysFailures() {
        return true;
    }

    private State close(State state) {
        return isUnsaved() ? asked(state, "close", effects -> List.of(OrganScreen::closed)) : closed(state);
    }

    /** Back to the plan, read again if its organ was written; where none is open, to its row among the organs. */
    private static State closed(State state) {
        Optional<OrganScreen> organ = state.find(OrganScreen.class);
        State next = state.closed();
        if (next.work().isEmpty()) {
            return next.doors().organs(next, organ.map(OrganScreen::id).orElse(""));
        }
        return organ.filter(OrganScreen::isWritten).isPresent()
                ? next.wants(effects -> effects.openPlan(next.work().get().id()))
                : next;
    }

    /** Asks what is to become of what was changed, before something that leaves the organ. */
    @Override
    public State asked(State state, String doing, Effect then) {
        Question.Answer drop = new Question.Answer("x", "discard the changes and " + doing, closed -> dropped(closed)
                .wants(then));
        if (!problems.isEmpty()) {
            String why = " They cannot be saved yet: " + problems.get(0).sentence();
            return state.open(
                    new Question("This organ has unsaved changes." + why, List.of(drop, Question.Answer.STAY)));
        }
        Question.Answer save =
                new Question.Answer("s", "save and " + doing, closed -> closed.wants(saving(List.of(then))));
        return state.open(new Question("This organ has unsaved changes.", List.of(save, drop, Question.Answer.STAY)));
    }

    /** The state with a changed draft, which is kept beside the file until it is saved. */
    private State keeping(State state, Undo<OrganDraft> next, int row) {
        return state.show(with(next).marking(row))
                .wants(next.isUnsaved() ? effects -> effects.keepOrganDraft(next.now()) : Effects::dropOrganDraft);
    }

    private State undone(State state, Function<Undo<OrganDraft>, Undo<OrganDraft>> step, String nothing) {
        Undo<OrganDraft> next = step.apply(draft);
        return next.equals(draft) ? state.says(nothing) : keeping(state, next, at());
    }

    private State nextProblem(State state) {
        return problems.stream()
                .filter(problem -> problem.line() > at())
                .findFirst()
                .or(() -> problems.stream().findFirst())
                .map(next -> state.show(marking(next.line())))
                .orElseGet(() -> state.says("No problems."));
    }

    private State describe(State state) {
        return line().part() == RowKind.STOP
                ? Question.ofStop(state, line().label(), line().name())
                : state.says("Select a stop to see what it is.");
    }

    /** Adds a line of a kind that is chosen. */
    private State insertOther(State state) {
        return state.open(NewLine.kinds((kind, choosing) -> insert(choosing.close(), kind)));
    }

    private State insert(State state, RowKind part) {
        OrganDraft now = draft.now();
        int place = now.placeFor(part, at());
        return edit(state, now.inserted(place, NewLine.of(part, now)), place);
    }

    /** Opens the form of a row, whose fields and hints are those of the schema. */
    private State edit(State state, OrganDraft now, int row) {
        DraftLine line = now.lines().get(row);
        List<FormBox.Field> fields = line.part().fields().stream()
                .map(field -> FormBox.Field.of(field.label(), line.at(field), field.hint()))
                .toList();
        String of = line.part() != RowKind.STOP
                ? ""
                : now.divisionOf(row).map(each -> " of " + each.name()).orElse("");
        return state.open(FormBox.of(
                        line.part().word() + of,
                        fields,
                        (form, closed) -> kept(
                                closed,
                                now,
                                typed(RowForm.withChoices(form, line.part().fields()), now, row),
                                row))
                .checkedBy(form -> problems(typed(form, now, row)).stream()
                        .filter(problem -> problem.line() == row)
                        .map(Problem::sentence)
                        .findFirst()
                        .orElse("")));
    }

    /** A room is chosen; other lines, and a room for who wants it, are typed. */
    private State edit(State state) {
        return line().part() == RowKind.ROOM ? byChoice(state) : edit(state, draft.now(), at());
    }

    private State byChoice(State state) {
        Optional<Room> now = draft.now().instrument().map(Instrument::room);
        return chooseRoom(state, now, kept -> kept.says(kept.notice().text() + ESTIMATE));
    }

    private State chooseRoom(State state, Optional<Room> now, UnaryOperator<State> then) {
        int row = draft.now().rows(RowKind.ROOM).findFirst().orElseThrow();
        return RoomChoice.open(
                state,
                now,
                closed -> edit(closed, draft.now(), row),
                (closed, room) ->
                        then.apply(keeping(closed, draft.to(draft.now().withRoom(room)), row)));
    }

    /** After a line was typed; where the volume is another, the times that no longer fit are asked about. */
    private State kept(State closed, OrganDraft now, OrganDraft next, int row) {
        Undo<OrganDraft> typed = draft.to(next);
        return RoomChoice.afterVolume(keeping(closed, typed, row), now, next, (asked, ringing) -> with(typed)
                .keeping(asked, typed.to(ringing), row));
    }

    private static OrganDraft typed(FormBox form, OrganDraft now, int row) {
        List<FormBox.Field> fields = form.fields();
        List<String> texts = fields.stream().map(each -> each.line().text()).toList();
        return now.with(row, Autofill.of(now, row, texts));
    }

    private State duplicate(State state) {
        return line().part().isRepeated()
                ? keeping(state, draft.to(draft.now().duplicated(at())), at() + 1)
                : saysOnlyOne(state);
    }

    private State remove(State state) {
        return line().part().isRepeated()
                ? keeping(state, draft.to(draft.now().without(at())), at())
                        .says("Deleted " + line().label() + " (u to undo).")
                : saysOnlyOne(state);
    }

    private State saysOnlyOne(State state) {
        return state.says(
                "An organ has one row of this kind: " + line().part().word().toLowerCase(Locale.ROOT) + ".");
    }

    private State moved(State state, Optional<OrganDraft.Moved> moved) {
        return moved.map(to -> keeping(state, draft.to(to.draft()), to.at()))
                .orElseGet(() -> state.says("It cannot move further."));
    }

    @Override
    public KeyTable<?> keys() {
        return KEYS;
    }

    @Override
    public Layer layer() {
        return Layer.GROUND;
    }

    /** How many rows are shown at once. */
    private static int room(State state) {
        return Math.max(1, state.rows() - TOP - FOOT);
    }

    @Override
    public String name(State state) {
        return "Organ " + list.rows().get(0).name();
    }

    @Override
    public void paint(Frame frame, State state) {
        paintHead(frame, state.marks());
        Set<Integer> wrong = problems.stream().map(Problem::line).collect(Collectors.toSet());
        DraftLineText.paint(frame, state, list, wrong, new Box(1, TOP, frame.width() - 2, room(state)));
        paintFoot(frame, state);
    }

    private void paintHead(Frame frame, Marks marks) {
        long stops = draft.now().rows(RowKind.STOP).count();
        String unsaved = draft.isUnsaved() ? Mark.UNSAVED.in(marks) + " unsaved changes  " : "";
        String right = unsaved + Count.of(stops, "stop");
        int x = frame.width() - Text.columns(right) - 1;
        frame.write(1, 0, frame.fit(list.rows().get(0).name(), x - 2), Style.HEADING);
        frame.write(x, 0, right, Style.FAINT);
        frame.write(0, 1, Mark.RULE.in(marks).repeat(frame.width()), Style.FAINT);
        if (!problems.isEmpty()) {
            frame.write(2, 1, " " + Count.of(problems.size(), "problem") + " ", Style.BAD);
        }
    }

    /** What is wrong with the marked row, else anywhere; what was said; keys. */
    private void paintFoot(Frame frame, State state) {
        int y = frame.height() - FOOT;
        frame.write(0, y, Mark.RULE.in(state.marks()).repeat(frame.width()), Style.FAINT);
        problems.stream()
                .filter(problem -> problem.line() == at())
                .findFirst()
                .or(() -> problems.stream().findFirst())
                .map(problem -> Text.wrapped(draft.now().sentence(problem), frame.width() - 2))
                .ifPresent(lines -> Box.write(frame, 1, y + 1, lines, PROBLEM_ROWS, Style.BAD));
        state.notice().paint(frame, frame.height() - 2);
        KEYS.hints(
                frame, "Enter edit", "i add", "s", "Esc", "x delete", "u", "? help", "I add other", "n", ": command");
    }
}
