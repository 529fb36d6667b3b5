package versewind.screen;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import versewind.plan.VersePlace;
import versewind.rules.DynamicSteps;

/** The desk during a service: turning to the next verse, the number present, a step stronger or softer. */
final class DeskCommands {

    private DeskCommands() {}

    static void into(Map<Command, Handler> handlers) {
        handlers.put(Command.AT_DESK, Handler.work(DeskCommands::open));
        Handler on = desk((state, work, notes) -> turn(state, work, notes, 1));
        Handler back = desk((state, work, notes) -> turn(state, work, notes, -1));
        handlers.put(Command.TURN_ON, on);
        handlers.put(Command.TURN_ON_BY_ARROW, on);
        handlers.put(Command.TURN_BACK, back);
        handlers.put(Command.TURN_BACK_BY_ARROW, back);
        handlers.put(
                Command.MORE_PRESENT,
                desk((state, work, notes) -> count(
                        state,
                        work,
                        notes,
                        Present.more(notes.people(work), work.plan().heading().people()))));
        handlers.put(
                Command.FEWER_PRESENT,
                desk((state, work, notes) -> count(
                        state,
                        work,
                        notes,
                        Present.fewer(notes.people(work), work.plan().heading().people()))));
        handlers.put(Command.PLAY_STRONGER, desk((state, work, notes) -> step(state, work, notes, 1)));
        handlers.put(Command.PLAY_SOFTER, desk((state, work, notes) -> step(state, work, notes, -1)));
        handlers.put(Command.CLOSE_DESK, desk(DeskCommands::leave));
    }

    @FunctionalInterface
    interface OnNotes {
        State on(State state, PlanEdit work, DeskNotes notes);
    }

    static Handler desk(OnNotes handler) {
        return Handler.work((state, work) -> state.panel() instanceof Panel.Desk desk
                ? handler.on(state.with(new Panel.Desk(desk.notes().with(DeskNotes.Leaving.NO))), work, desk.notes())
                : state);
    }

    private static State open(State state, PlanEdit work) {
        return open(
                state, work, work.history().isUnsaved() ? DeskNotes.Opened.FROM_UNSAVED : DeskNotes.Opened.FROM_SAVED);
    }

    /** The plan that has just been opened, or what is asked about it, with the desk instead of the editor under it. */
    static State alone(State state) {
        if (state.work().isEmpty()) {
            return state;
        }
        State desk = open(state, state.work().get(), DeskNotes.Opened.ALONE);
        return state.top() instanceof Question question ? desk.open(question) : desk;
    }

    private static State open(State state, PlanEdit work, DeskNotes.Opened opened) {
        Optional<VersePlace> place = ServiceOrder.nearest(work.plan(), work.place());
        if (place.isEmpty() && opened != DeskNotes.Opened.ALONE) {
            return state.says("There is no verse to play yet.");
        }
        return at(state, work.at(place.orElse(VersePlace.START)), DeskNotes.of(opened));
    }

    /** The desk at the verse where we are; what is not known of its ladder and the next one's is asked for. */
    private static State at(State state, PlanEdit work, DeskNotes notes) {
        VersePlace here = work.place();
        List<Effect.LadderOf> wanted = work.verse().isEmpty()
                ? List.of()
                : Stream.concat(Stream.of(here), ServiceOrder.further(work.plan(), here, 1).stream())
                        .filter(place -> notes.ladder(work, place).isEmpty())
                        .map(place -> notes.ladderOf(work, place))
                        .toList();
        State next = state.with(work).with(new Panel.Desk(notes));
        return wanted.isEmpty() ? next : next.wants(new Effect.FindLadders(wanted));
    }

    private static State turn(State state, PlanEdit work, DeskNotes notes, int step) {
        Optional<VersePlace> next = ServiceOrder.further(work.plan(), work.place(), step);
        if (next.isPresent()) {
            return at(state, work.at(next.get()), notes.with(DeskNotes.Leaving.NO));
        }
        return step > 0 && work.verse().isPresent()
                ? FeedbackCommands.open(state, work, notes)
                : state.says("This is where the service begins.");
    }

    private static State count(State state, PlanEdit work, DeskNotes notes, int people) {
        return at(state, work, notes.with(DeskNotes.Leaving.NO).counting(people));
    }

    private static State step(State state, PlanEdit work, DeskNotes notes, int step) {
        if (work.verse().isEmpty()) {
            return state;
        }
        Optional<DynamicSteps> ladder = notes.ladder(work, work.place());
        if (ladder.isEmpty()) {
            State asking = at(state, work, notes.with(DeskNotes.Leaving.NO));
            return asking.says("What to draw is still being found. Press again.");
        }
        int steps = notes.steps(work.place()) + step;
        if (!DeskNotes.reaches(ladder.get(), steps)) {
            return state.says(step > 0 ? "The ladder goes no higher." : "The ladder goes no lower.");
        }
        return at(state, work, notes.with(DeskNotes.Leaving.NO).stepping(work.place(), steps, ladder.get()));
    }

    /** Back to the plan; where the desk was opened alone, the program is left when this is pressed twice. */
    private static State leave(State state, PlanEdit work, DeskNotes notes) {
        if (notes.opened() != DeskNotes.Opened.ALONE) {
            return state.closed();
        }
        if (state.isUnsaved() || notes.leaving() == DeskNotes.Leaving.ASKED) {
            State left = FileCommands.afterAsking(state, new Effect.Quit());
            return left.wanted().isEmpty() ? left : state.wants(new Effect.Quit());
        }
        return state.with(new Panel.Desk(notes.with(DeskNotes.Leaving.ASKED)))
                .says("Once more leaves; any other key stays.");
    }

    /** A ladder has been found; it is kept for as long as the desk is open. */
    static State found(State state, Event.LadderFound found) {
        DeskNotes.Found ladder = new DeskNotes.Found(found.of(), found.ladder());
        if (state.panel() instanceof Panel.Desk desk) {
            return state.with(new Panel.Desk(desk.notes().with(ladder)));
        }
        return state;
    }
}
