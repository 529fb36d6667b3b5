package versewind.screen;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import versewind.advice.Ladder;
import versewind.plan.Place;

/** The desk during a service: turning to the next verse, the number present, a step stronger or softer. */
final class Desking {

    private Desking() {}

    static void into(Map<Command, Handler> handlers) {
        handlers.put(Command.AT_DESK, Handler.work(Desking::open));
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
        handlers.put(Command.CLOSE_DESK, desk(Desking::leave));
    }

    @FunctionalInterface
    interface OnNotes {
        Step on(State state, Work work, DeskNotes notes);
    }

    static Handler desk(OnNotes handler) {
        return Handler.work((state, work) -> state.panel() instanceof Panel.Desk desk
                ? handler.on(state.with(new Panel.Desk(desk.notes().with(DeskNotes.Leaving.NO))), work, desk.notes())
                : Step.to(state));
    }

    private static Step open(State state, Work work) {
        return open(
                state, work, work.history().isUnsaved() ? DeskNotes.Opened.FROM_UNSAVED : DeskNotes.Opened.FROM_SAVED);
    }

    /** The plan that has just been opened, or what is asked about it, with the desk instead of the editor under it. */
    static Step alone(State state) {
        if (state.work().isEmpty()) {
            return Step.to(state);
        }
        Step desk = open(state, state.work().get(), DeskNotes.Opened.ALONE);
        return state.panel() instanceof Panel.Question question
                ? Step.to(state.with(new Panel.Question(
                        question.text(), question.answers(), desk.state().panel())))
                : desk;
    }

    private static Step open(State state, Work work, DeskNotes.Opened opened) {
        Optional<Place> place = ServiceOrder.nearest(work.plan(), work.place());
        if (place.isEmpty() && opened != DeskNotes.Opened.ALONE) {
            return Step.says(state, "There is no verse to play yet.");
        }
        return at(state, work.at(place.orElse(Place.START)), DeskNotes.of(opened));
    }

    /** The desk at the verse where we are; what is not known of its ladder and the next one's is asked for. */
    private static Step at(State state, Work work, DeskNotes notes) {
        Place here = work.place();
        List<Effect.LadderOf> wanted = work.verse().isEmpty()
                ? List.of()
                : Stream.concat(Stream.of(here), ServiceOrder.further(work.plan(), here, 1).stream())
                        .filter(place -> notes.ladder(work, place).isEmpty())
                        .map(place -> notes.ladderOf(work, place))
                        .toList();
        State next = state.with(work).with(new Panel.Desk(notes));
        return wanted.isEmpty() ? Step.to(next) : Step.to(next, new Effect.FindLadders(wanted));
    }

    private static Step turn(State state, Work work, DeskNotes notes, int step) {
        Optional<Place> next = ServiceOrder.further(work.plan(), work.place(), step);
        if (next.isPresent()) {
            return at(state, work.at(next.get()), notes.with(DeskNotes.Leaving.NO));
        }
        return step > 0 && work.verse().isPresent()
                ? Afterwards.open(state, work, notes)
                : Step.says(state, "This is where the service begins.");
    }

    private static Step count(State state, Work work, DeskNotes notes, int people) {
        return at(state, work, notes.with(DeskNotes.Leaving.NO).counting(people));
    }

    private static Step step(State state, Work work, DeskNotes notes, int step) {
        if (work.verse().isEmpty()) {
            return Step.to(state);
        }
        Optional<Ladder> ladder = notes.ladder(work, work.place());
        if (ladder.isEmpty()) {
            Step asking = at(state, work, notes.with(DeskNotes.Leaving.NO));
            return asking.saying("What to draw is still being found. Press again.");
        }
        int steps = notes.steps(work.place()) + step;
        if (!DeskNotes.reaches(ladder.get(), steps)) {
            return Step.says(state, step > 0 ? "The ladder goes no higher." : "The ladder goes no lower.");
        }
        return at(state, work, notes.with(DeskNotes.Leaving.NO).stepping(work.place(), steps, ladder.get()));
    }

    /** Back to the plan; where the desk was opened alone, the program is left when this is pressed twice. */
    private static Step leave(State state, Work work, DeskNotes notes) {
        if (notes.opened() != DeskNotes.Opened.ALONE) {
            return Step.to(state.closed());
        }
        if (state.isUnsaved() || notes.leaving() == DeskNotes.Leaving.ASKED) {
            Step left = Filing.afterAsking(state, new Effect.Quit());
            return left.effects().isEmpty() ? left : Step.to(state, new Effect.Quit());
        }
        return Step.says(
                state.with(new Panel.Desk(notes.with(DeskNotes.Leaving.ASKED))),
                "Once more leaves; any other key stays.");
    }

    /** A ladder has been found; it is kept for as long as the desk is open. */
    static Step found(State state, Input.LadderFound found) {
        DeskNotes.Found ladder = new DeskNotes.Found(found.of(), found.ladder());
        if (state.panel() instanceof Panel.Desk desk) {
            return Step.to(state.with(new Panel.Desk(desk.notes().with(ladder))));
        }
        return Step.to(state);
    }
}
