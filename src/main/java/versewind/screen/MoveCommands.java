package versewind.screen;

import java.util.List;
import java.util.Map;
import versewind.plan.VersePlace;

/** Moving about: knobs, verses, hymns, and the search for a knob by its name. */
final class MoveCommands {
    private MoveCommands() {}

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
        handlers.put(Command.OTHER_SIDE, Handler.work(MoveCommands::toOtherSide));
        handlers.put(Command.FIND, Handler.work((state, work) -> state.with(work.on(PlanEdit.Side.STOPS))
                .with(new Panel.Find(TextLine.EMPTY, work.item(), work.side()))));
        handlers.put(Command.FIND_NEXT, Handler.work((state, work) -> findFurther(state, work, 1)));
        handlers.put(Command.FIND_PREVIOUS, Handler.work((state, work) -> findFurther(state, work, -1)));
        handlers.put(Command.FIND_STAY, state -> state.closed());
        handlers.put(Command.FIND_BACK, Handler.work(MoveCommands::findBack));
    }

    private static State toItem(State state, PlanEdit work, int item) {
        int last = Layout.jamb(state, work).items().size() - 1;
        return arrive(state, work, Math.max(0, Math.min(item, last)));
    }

    private static State beside(State state, PlanEdit work, int step) {
        return arrive(state, work, Layout.jamb(state, work).beside(work.item(), step));
    }

    private static State arrive(State state, PlanEdit work, int item) {
        return item == work.item() ? state.says("There is no knob further that way.") : state.with(work.at(item));
    }

    /** The verse so many further on, as long as it is one of this hymn. */
    private static State withinHymn(State state, PlanEdit work, int step) {
        VersePlace place = work.place();
        int verse = place.verse() + step;
        int hymn = place.hymn() + step;
        boolean isInHymn = verse >= 0 && verse < work.verses().size();
        if (isInHymn || hymn < 0 || hymn >= work.plan().hymns().size()) {
            return toVerse(state, work, step);
        }
        return state.says(
                step < 0
                        ? "This is where the hymn begins; "
                                + Command.PREVIOUS_HYMN.keys().get(0).name() + " goes to the hymn before."
                        : "This is where the hymn ends; "
                                + Command.NEXT_HYMN.keys().get(0).name() + " goes to the next hymn.");
    }

    /** The verse so many further on; past the end of a hymn, in the next hymn. */
    private static State toVerse(State state, PlanEdit work, int step) {
        VersePlace place = work.place();
        int verse = place.verse() + step;
        if (verse < 0 && place.hymn() > 0) {
            return state.with(work.at(new VersePlace(place.hymn() - 1, Integer.MAX_VALUE)));
        }
        if (verse < 0) {
            return state.says("This is where the service begins.");
        }
        if (verse < work.verses().size()) {
            return state.with(work.at(new VersePlace(place.hymn(), verse)));
        }
        if (place.hymn() + 1 < work.plan().hymns().size()) {
            return state.with(work.at(new VersePlace(place.hymn() + 1, 0)));
        }
        return state.says("This is where the service ends.");
    }

    private static State toHymn(State state, PlanEdit work, int step) {
        int hymn = work.place().hymn() + step;
        if (hymn < 0 || hymn >= work.plan().hymns().size()) {
            return state.says(step < 0 ? "This is the first hymn." : "This is the last hymn.");
        }
        return state.with(work.at(new VersePlace(hymn, 0)));
    }

    private static State toOtherSide(State state, PlanEdit work) {
        PlanEdit.Side other = work.side() == PlanEdit.Side.STOPS ? PlanEdit.Side.VERSES : PlanEdit.Side.STOPS;
        return state.with(work.on(other));
    }

    /** After a key or a paste in the search: the first knob that fits; the caret alone leaves the knob. */
    static State typed(State state, Panel.Find find, TextLine line) {
        State next = state.with(new Panel.Find(line, find.from(), find.side()));
        if (line.text().equals(find.text().text())) {
            return next;
        }
        return state.work()
                .map(work -> {
                    List<Integer> fitting = Finder.fitting(
                            work.instrument(), Layout.jamb(state, work).items(), line.text());
                    int item = fitting.isEmpty() ? find.from() : fitting.get(0);
                    return next.with(work.at(item));
                })
                .orElse(next);
    }

    private static State findFurther(State state, PlanEdit work, int step) {
        if (!(state.panel() instanceof Panel.Find find)) {
            return state;
        }
        List<Integer> fitting = Finder.fitting(
                work.instrument(), Layout.jamb(state, work).items(), find.text().text());
        if (fitting.isEmpty()) {
            return state;
        }
        int next = Math.floorMod(fitting.indexOf(work.item()) + step, fitting.size());
        return state.with(work.at(fitting.get(next)));
    }

    private static State findBack(State state, PlanEdit work) {
        PlanEdit before =
                state.panel() instanceof Panel.Find find ? work.at(find.from()).on(find.side()) : work;
        return state.closed().with(before);
    }
}
