package versewind.terminal;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import versewind.calibration.FeedbackUpdate;
import versewind.proposal.RegistrationProposer;
import versewind.proposal.SearchProgress;
import versewind.proposal.ServiceProposal;
import versewind.screen.Effect;
import versewind.screen.Event;
import versewind.sound.OrganSound;
import versewind.store.OpenPlan;

/** Searches for a hymn's or a service's registrations in a thread of its own, and tells how far it is as of keys. */
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

    /** Begins a search; its outcome is told, even if it fails. */
    void start(OpenPlan open, Effect.Propose wanted) {
        goesOn.set(true);
        searcher.execute(() -> {
            try {
                tell.accept(new Event.Proposed(wanted.plan(), found(open, wanted)));
            } catch (RuntimeException mistake) {
                tell.accept(new Event.Proposed(wanted.plan(), ServiceProposal.NOTHING));
                tell.accept(new Event.Failed("The search has failed: " + mistake));
            }
        });
    }

    private ServiceProposal found(OpenPlan open, Effect.Propose wanted) {
        // a sound belongs to one thread: this is another than the editor's
        OrganSound own = open.organ().sound();
        OrganSound sound = wanted.heard()
                .map(plan -> FeedbackUpdate.withFeedback(own, plan))
                .orElse(own);
        RegistrationProposer registrant = RegistrationProposer.of(sound);
        return wanted.hymn().isPresent()
                ? registrant.forHymn(wanted.plan(), wanted.hymn().getAsInt(), watcher())
                : registrant.forService(wanted.plan(), watcher());
    }

    private SearchProgress watcher() {
        return new SearchProgress() {
            @Override
            public boolean goesOn() {
                return goesOn.get();
            }

            @Override
            public void searched(int verses, int of) {
                tell.accept(new Event.Searched(verses, of));
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
