package versewind.terminal;

import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Function;
import versewind.calibration.RightShare;
import versewind.plan.Plan;
import versewind.plan.VersePlace;
import versewind.proposal.RegistrationProposer;
import versewind.proposal.SearchProgress;
import versewind.proposal.ServiceProposal;
import versewind.schema.KnownOrgan;
import versewind.screen.plan.PlanEvent;
import versewind.screen.state.Event;
import versewind.sound.OrganSound;

/** Searches for registrations in a thread of its own, and tells how far it is and what it found as events. */
final class BackgroundSearch implements AutoCloseable {

    private final Consumer<Event> tell;
    private final AtomicBoolean goesOn = new AtomicBoolean();
    private final ExecutorService searcher = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "proposals");
        thread.setDaemon(true);
        return thread;
    });

    BackgroundSearch(Consumer<Event> tell) {
        this.tell = tell;
    }

    /** Begins a search for one verse. */
    void forVerse(KnownOrgan organ, Plan plan, VersePlace place) {
        start(
                organ,
                proposer -> new PlanEvent.VerseProposed(plan, proposer.forVerse(plan, place, goesOn::get)),
                new PlanEvent.VerseProposed(plan, new RegistrationProposer.OfVerse(place, List.of())));
    }

    /** Begins a search for the verses of a hymn, or of the whole service. */
    void forService(KnownOrgan organ, Plan plan, OptionalInt hymn) {
        start(
                organ,
                proposer -> new PlanEvent.Proposed(
                        plan,
                        hymn.isPresent()
                                ? proposer.forHymn(plan, hymn.getAsInt(), watcher())
                                : proposer.forService(plan, watcher())),
                new PlanEvent.Proposed(plan, ServiceProposal.NOTHING));
    }

    /** Begins a search; its outcome is told, even if it fails. A sound belongs to one thread, so it makes its own. */
    private void start(KnownOrgan organ, Function<RegistrationProposer, Event> search, Event nothing) {
        goesOn.set(true);
        searcher.execute(() -> {
            try {
                OrganSound own = organ.sound();
                tell.accept(search.apply(RegistrationProposer.of(
                        own,
                        new RightShare(organ.experience(), own)::of,
                        organ.experience().usualStops())));
            } catch (RuntimeException mistake) {
                tell.accept(nothing);
                tell.accept(new Event.Failed("The search has failed: " + mistake));
            }
        });
    }

    private SearchProgress watcher() {
        return new SearchProgress() {
            @Override
            public boolean goesOn() {
                return goesOn.get();
            }

            @Override
            public void searched(int verses, int of) {
                tell.accept(new PlanEvent.Searched(verses, of));
            }
        };
    }

    /** Ends a search with what it has. */
    void stop() {
        goesOn.set(false);
    }

    @Override
    public void close() {
        stop();
        searcher.shutdownNow();
    }
}
