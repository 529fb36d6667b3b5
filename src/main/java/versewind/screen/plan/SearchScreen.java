package versewind.screen.plan;

import java.util.stream.Stream;
import versewind.organ.Count;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.Verses;
import versewind.proposal.ServiceProposal;
import versewind.screen.state.Effects;
import versewind.screen.state.KeyTable;
import versewind.screen.state.PlanChanges;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.Screen;
import versewind.screen.state.State;
import versewind.screen.toolkit.Box;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Style;

/**
 * A search for registrations that goes on in the background.
 *
 * @param verses how many have been searched
 * @param of how many there are
 */
public record SearchScreen(int verses, int of) implements Screen {

    public static final KeyTable<SearchScreen> KEYS = KeyTable.<SearchScreen>under("Among the proposals")
            .key("Esc, q", "stop, and keep the best so far", (screen, state) -> state.wants(Effects::stopProposing));

    private static final String TITLE = "Searching";
    private static final int WIDTH = 76;

    /** The search for a verse has ended. */
    static State found(State state, PlanEvent.VerseProposed proposed) {
        boolean isAwaited = state.top() instanceof SearchScreen
                && state.work()
                        .filter(work -> work.plan().equals(proposed.plan())
                                && work.place().equals(proposed.found().place()))
                        .isPresent();
        if (!isAwaited) {
            return state;
        }
        return proposed.found()
                .none(proposed.plan())
                .map(none -> state.close().says(none))
                .orElseGet(() -> state.onWork(work -> state.show(ProposalsScreen.of(work, proposed.found()))));
    }

    /** The search for many verses has ended: what it found becomes one edit. */
    static State found(State state, PlanEvent.Proposed proposed) {
        return state.work()
                .filter(work ->
                        state.top() instanceof SearchScreen && work.plan().equals(proposed.plan()))
                .map(work -> found(state.close(), work, proposed.found()))
                .orElse(state);
    }

    private static State found(State state, PlanEdit work, ServiceProposal found) {
        if (found.verses().isEmpty()) {
            return state.says("Nothing is proposed.");
        }
        Plan proposed = found.on(work.plan());
        if (proposed.equals(work.plan())) {
            return state.says("Nothing to change: what is drawn is what is proposed.");
        }
        State after = PlanChanges.edit(state, work, proposed, work.place());
        boolean isOfService = found.verses().stream()
                        .map(each -> each.place().hymn())
                        .distinct()
                        .count()
                > 1;
        return after.onWork(now -> isOfService ? FindingsScreen.underCurve(after, now) : after)
                .says(
                        state.isSpoken() && isOfService
                                ? "Done" + left(found) + "."
                                : words(found, Verses.counted(changed(work.plan(), proposed))));
    }

    private static Stream<Verse> changed(Plan before, Plan after) {
        return before.places().stream()
                .filter(place -> !before.verse(place).equals(after.verse(place)))
                .map(before::verse);
    }

    private static String words(ServiceProposal found, String verses) {
        String pistons = found.pistons() == 0 ? "" : ", using " + Count.of(found.pistons(), "piston");
        return "Changed " + verses + pistons + left(found) + " (u to undo).";
    }

    private static String left(ServiceProposal found) {
        return found.unsearched() == 0 ? "" : "; " + found.unsearched() + " were not reached";
    }

    @Override
    public KeyTable<?> keys() {
        return KEYS;
    }

    @Override
    public String name(State state) {
        return TITLE;
    }

    @Override
    public void paint(Frame frame, State state) {
        Box box = Box.open(frame, TITLE, WIDTH, 4);
        String progress = verses + " of " + of + (of == 1 ? " verse is" : " verses are") + " searched.";
        frame.write(box.x(), box.y() + 1, progress, Style.TEXT);
        KEYS.hints(frame, box, "Esc");
    }
}
