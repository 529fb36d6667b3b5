package versewind.screen.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import versewind.plan.VersePlace;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.State;

/** Moving about: knobs, verses and hymns. */
final class MoveCommands {
    private MoveCommands() {}

    static State toItem(State state, PlanEdit work, int step) {
        int last = StopGridLayout.items(work.instrument()).size() - 1;
        return arrive(state, work, Math.max(0, Math.min(work.item() + step, last)));
    }

    static State toFirstItem(State state, PlanEdit work) {
        return arrive(state, work, 0);
    }

    static State toLastItem(State state, PlanEdit work) {
        return arrive(
                state, work, Math.max(0, StopGridLayout.items(work.instrument()).size() - 1));
    }

    static State beside(State state, PlanEdit work, int step) {
        return arrive(
                state,
                work,
                state.isSpoken()
                        ? ofDivision(work, step)
                        : Layout.grid(state, work).beside(work.item(), step));
    }

    /** The first knob of the division so many further on; after the last come the couplers. */
    private static int ofDivision(PlanEdit work, int step) {
        List<Optional<Integer>> divisions = StopGridLayout.items(work.instrument()).stream()
                .map(item ->
                        StopCommands.division(work.instrument(), item).boxed().findFirst())
                .toList();
        List<Integer> firsts = IntStream.range(0, divisions.size())
                .filter(item -> divisions.indexOf(divisions.get(item)) == item)
                .boxed()
                .toList();
        int here = (int) firsts.stream().filter(first -> first <= work.item()).count() - 1 + step;
        return here < 0 || here >= firsts.size() ? work.item() : firsts.get(here);
    }

    private static State arrive(State state, PlanEdit work, int item) {
        return item == work.item() ? state.says("There is nothing further that way.") : state.with(work.at(item));
    }

    /** The verse so many further on, as long as it is one of this hymn. */
    static State withinHymn(State state, PlanEdit work, int step) {
        VersePlace place = work.place();
        int verse = place.verse() + step;
        int hymn = place.hymn() + step;
        boolean isInHymn = verse >= 0 && verse < work.verses().size();
        if (isInHymn || hymn < 0 || hymn >= work.plan().hymns().size()) {
            return toVerse(state, work, step);
        }
        return state.says(
                step < 0
                        ? "This is the start of the hymn; [ for the previous hymn."
                        : "This is the end of the hymn; ] for the next hymn.");
    }

    /** The verse so many further on; past the end of a hymn, in the next hymn. */
    static State toVerse(State state, PlanEdit work, int step) {
        VersePlace place = work.place();
        int verse = place.verse() + step;
        if (verse < 0 && place.hymn() > 0) {
            return state.with(work.at(new VersePlace(place.hymn() - 1, Integer.MAX_VALUE)));
        }
        if (verse < 0) {
            return state.says("This is the start of the service.");
        }
        if (verse < work.verses().size()) {
            return state.with(work.at(new VersePlace(place.hymn(), verse)));
        }
        if (place.hymn() + 1 < work.plan().hymns().size()) {
            return state.with(work.at(new VersePlace(place.hymn() + 1, 0)));
        }
        return state.says("This is the end of the service.");
    }

    static State toHymn(State state, PlanEdit work, int step) {
        int hymn = work.place().hymn() + step;
        if (hymn < 0 || hymn >= work.plan().hymns().size()) {
            return state.says(step < 0 ? "This is the first hymn." : "This is the last hymn.");
        }
        return state.with(work.at(new VersePlace(hymn, 0)));
    }

    static State toOtherSide(State state, PlanEdit work) {
        PlanEdit.Side other = work.side() == PlanEdit.Side.STOPS ? PlanEdit.Side.VERSES : PlanEdit.Side.STOPS;
        return state.with(work.on(other));
    }
}
