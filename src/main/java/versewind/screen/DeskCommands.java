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
        Transition on(State state, PlanEdit work, DeskNotes notes);
    }

    static Handler desk(OnNotes handler) {
        return Handler.work((state, work) -> state.panel() instanceof Panel.Desk desk
                ? handler.on(state.with(new Panel.Desk(desk.notes().with(DeskNotes.Leaving.NO))), work, desk.notes())
                : Transition.to(state));
    }

    private static Transition open(State state, PlanEdit work) {
        return open(
                state, work, work.history().isUnsaved() ? DeskNotes.Opened.FROM_UNSAVED : DeskNotes.Opened.FROM_SAVED);
    }

    /** The plan that has just been opened, or what is asked about it, with the desk instead of the editor under it. */
    static Transition alone(State state) {
        if (state.work().isEmpty()) {
            return Transition.to(state);
        }
        Transition desk = open(state, state.work().get(), DeskNotes.Opened.ALONE);
        return state.panel() instanceof Panel.Question question
                ? Transition.to(state.with(new Panel.Question(
                        question.text(), question.answers(), desk.state().panel())))
                : desk;
    }

    private static Transition open(State state, PlanEdit work, DeskNotes.Opened opened) {
        Optional<VersePlace> place = ServiceOrder.nearest(work.plan(), work.place());
        if (place.isEmpty() && opened != DeskNotes.Opened.ALONE) {
            return Transition.says(state, "There is no verse to play yet.");
        }
        return at(state, work.at(place.orElse(VersePlace.START)), DeskNotes.of(opened));
    }

    /** The desk at the verse where we are; what is not known of its ladder and the next one's is asked for. */
    private static Transition at(State state, PlanEdit work, DeskNotes notes) {
        VersePlace here = work.place();
        List<Effect.LadderOf> wanted = work.verse().isEmpty()
                ? List.of()
                : Stream.concat(Stream.of(here), ServiceOrder.further(work.plan(), here, 1).stream())
                        .filter(place -> notes.ladder(work, place).isEmpty())
                        .map(place -> notes.ladderOf(work, place))
                        .toList();
        State next = state.with(work).with(new Panel.Desk(notes));
        return wanted.isEmpty() ? Transition.to(next) : Transition.to(next, new Effect.FindLadders(wanted));
    }

    private static Transition turn(State state, PlanEdit work, DeskNotes notes, int step) {
        Optional<VersePlace> next = ServiceOrder.further(work.plan(), work.place(), step);
        if (next.isPresent()) {
            return at(state, work.at(next.get()), notes.with(DeskNotes.Leaving.NO));
        }
        return step > 0 && work.verse().isPresent()
                ? FeedbackCommands.open(state, work, notes)
                : Transition.says(state, "This is where the service begins.");
    }

    private static Transition count(State state, PlanEdit work, DeskNotes notes, int people) {
        return at(state, work, notes.with(DeskNotes.Leaving.NO).counting(people));
    }

    private static Transition step(State state, PlanEdit work, DeskNotes notes, int step) {
        if (work.verse().isEmpty()) {
            return Transition.to(state);
        }
        Optional<DynamicSteps> ladder = notes.ladder(work, work.place());
        if (ladder.isEmpty()) {
            Transition asking = at(state, work, notes.with(DeskNotes.Leaving.NO));
            return asking.saying("What to draw is still being found. Press again.");
        }
        int steps = notes.steps(work.place()) + step;
        if (!DeskNotes.reaches(ladder.get(), steps)) {
            return Transition.says(state, step > 0 ? "The ladder goes no higher." : "The ladder goes no lower.");
        }
        return at(state, work, notes.with(DeskNotes.Leaving.NO).stepping(work.place(), steps, ladder.get()));
    }

    /** Back to the plan; where the desk was opened alone, the program is left when this is pressed twice. */
    private static Transition leave(State state, PlanEdit work, DeskNotes notes) {
        if (notes.opened() != DeskNotes.Opened.ALONE) {
            return Transition.to(state.closed());
        }
        if (state.isUnsaved() || notes.leaving() == DeskNotes.Leaving.ASKED) {
            Transition left = FileCommands.afterAsking(state, new Effect.Quit());
            return left.effects().isEmpty() ? left : Transition.to(state, new Effect.Quit());
        }
        return Transition.says(
                state.with(new Panel.Desk(notes.with(DeskNotes.Leaving.ASKED))),
                "Once more leaves; any other key stays.");
    }

    /** A ladder has been found; it is kept for as long as the desk is open. */
    static Transition found(State state, Event.LadderFound found) {
        DeskNotes.Found ladder = new DeskNotes.Found(found.of(), found.ladder());
        if (state.panel() instanceof Panel.Desk desk) {
            return Transition.to(state.with(new Panel.Desk(desk.notes().with(ladder))));
        }
        return Transition.to(state);
    }
}
