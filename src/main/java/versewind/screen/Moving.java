package versewind.screen;

import java.util.List;
import java.util.Map;
import versewind.plan.Place;

/** Moving about: knobs, verses, hymns, and the search for a knob by its name. */
final class Moving {
    private Moving() {}

    static void into(Map<Command, Handler> handlers) {
        handlers.put(Command.STOP_ABOVE, Handler.work((state, work) -> toItem(state, work, work.item() - 1)));
        handlers.put(Command.STOP_BELOW, Handler.work((state, work) -> toItem(state, work, work.item() + 1)));
        handlers.put(Command.STOP_LEFT, Handler.work((state, work) -> beside(state, work, -1)));
        handlers.put(Command.STOP_RIGHT, Handler.work((state, work) -> beside(state, work, 1)));
        handlers.put(Command.FIRST_STOP, Handler.work((state, work) -> toItem(state, work, 0)));
        handlers.put(Command.LAST_STOP, Handler.work((state, work) -> toItem(state, work, Integer.MAX_VALUE)));
        handlers.put(Command.VERSE_ABOVE, Handler.work((state, work) -> toVerse(state, work, -1)));
        handlers.put(Command.VERSE_BELOW, Handler.work((state, work) -> toVerse(state, work, 1)));
        handlers.put(Command.NEXT_VERSE, Handler.work((state, work) -> withinHymn(state, work, 1)));
        handlers.put(Command.PREVIOUS_VERSE, Handler.work((state, work) -> withinHymn(state, work, -1)));
        handlers.put(Command.NEXT_HYMN, Handler.work((state, work) -> toHymn(state, work, 1)));
        handlers.put(Command.PREVIOUS_HYMN, Handler.work((state, work) -> toHymn(state, work, -1)));
        handlers.put(Command.OTHER_SIDE, Handler.work(Moving::toOtherSide));
        handlers.put(
                Command.FIND,
                Handler.work((state, work) -> Step.to(state.with(work.on(Work.Side.STOPS))
                        .with(new Panel.Find(TextLine.EMPTY, work.item(), work.side())))));
        handlers.put(Command.FIND_NEXT, Handler.work((state, work) -> findFurther(state, work, 1)));
        handlers.put(Command.FIND_PREVIOUS, Handler.work((state, work) -> findFurther(state, work, -1)));
        handlers.put(Command.FIND_STAY, state -> Step.to(state.closed()));
        handlers.put(Command.FIND_BACK, Handler.work(Moving::findBack));
    }

    private static Step toItem(State state, Work work, int item) {
        int last = Layout.jamb(state, work).items().size() - 1;
        return arrive(state, work, Math.max(0, Math.min(item, last)));
    }

    private static Step beside(State state, Work work, int step) {
        return arrive(state, work, Layout.jamb(state, work).beside(work.item(), step));
    }

    private static Step arrive(State state, Work work, int item) {
        return item == work.item()
                ? Step.says(state, "There is no knob further that way.")
                : Step.to(state.with(work.at(item)));
    }

    /** The verse so many further on, as long as it is one of this hymn. */
    private static Step withinHymn(State state, Work work, int step) {
        Place place = work.place();
        int verse = place.verse() + step;
        int hymn = place.hymn() + step;
        boolean isInHymn = verse >= 0 && verse < work.verses().size();
        if (isInHymn || hymn < 0 || hymn >= work.plan().hymns().size()) {
            return toVerse(state, work, step);
        }
        return Step.says(
                state,
                step < 0
                        ? "This is where the hymn begins; "
                                + Command.PREVIOUS_HYMN.keys().get(0).name() + " goes to the hymn before."
                        : "This is where the hymn ends; "
                                + Command.NEXT_HYMN.keys().get(0).name() + " goes to the next hymn.");
    }

    /** The verse so many further on; past the end of a hymn, in the next hymn. */
    private static Step toVerse(State state, Work work, int step) {
        Place place = work.place();
        int verse = place.verse() + step;
        if (verse < 0 && place.hymn() > 0) {
            return Step.to(state.with(work.at(new Place(place.hymn() - 1, Integer.MAX_VALUE))));
        }
        if (verse < 0) {
            return Step.says(state, "This is where the service begins.");
        }
        if (verse < work.verses().size()) {
            return Step.to(state.with(work.at(new Place(place.hymn(), verse))));
        }
        if (place.hymn() + 1 < work.plan().hymns().size()) {
            return Step.to(state.with(work.at(new Place(place.hymn() + 1, 0))));
        }
        return Step.says(state, "This is where the service ends.");
    }

    private static Step toHymn(State state, Work work, int step) {
        int hymn = work.place().hymn() + step;
        if (hymn < 0 || hymn >= work.plan().hymns().size()) {
            return Step.says(state, step < 0 ? "This is the first hymn." : "This is the last hymn.");
        }
        return Step.to(state.with(work.at(new Place(hymn, 0))));
    }

    private static Step toOtherSide(State state, Work work) {
        Work.Side other = work.side() == Work.Side.STOPS ? Work.Side.VERSES : Work.Side.STOPS;
        return Step.to(state.with(work.on(other)));
    }

    /** After a key or a paste in the search: the first knob that fits; the caret alone leaves the knob. */
    static Step typed(State state, Panel.Find find, TextLine line) {
        State next = state.with(new Panel.Find(line, find.from(), find.side()));
        if (line.text().equals(find.text().text())) {
            return Step.to(next);
        }
        return state.work()
                .map(work -> {
                    List<Integer> fitting = Finder.fitting(
                            work.instrument(), Layout.jamb(state, work).items(), line.text());
                    int item = fitting.isEmpty() ? find.from() : fitting.get(0);
                    return Step.to(next.with(work.at(item)));
                })
                .orElse(Step.to(next));
    }

    private static Step findFurther(State state, Work work, int step) {
        if (!(state.panel() instanceof Panel.Find find)) {
            return Step.to(state);
        }
        List<Integer> fitting = Finder.fitting(
                work.instrument(), Layout.jamb(state, work).items(), find.text().text());
        if (fitting.isEmpty()) {
            return Step.to(state);
        }
        int next = Math.floorMod(fitting.indexOf(work.item()) + step, fitting.size());
        return Step.to(state.with(work.at(fitting.get(next))));
    }

    private static Step findBack(State state, Work work) {
        Work before =
                state.panel() instanceof Panel.Find find ? work.at(find.from()).on(find.side()) : work;
        return Step.to(state.closed().with(before));
    }
}
