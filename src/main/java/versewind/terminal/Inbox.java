package versewind.terminal;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import versewind.screen.state.Event;

/** Keys, pastes, resizes, outcomes and the hangup, in the order in which they happened. Any thread may add to it. */
final class Inbox {

    private static final Duration FOREVER = Duration.ofDays(10_000);

    private final BlockingQueue<Event> events = new LinkedBlockingQueue<>();
    private final AtomicBoolean hungUp = new AtomicBoolean();

    /** Blocks until the next event; of several resizes in a row, the last. After a hangup every call returns one. */
    Event next() {
        return next(FOREVER).orElseGet(Event.Hangup::new);
    }

    /** As above, but returns nothing when this time has passed. */
    Optional<Event> next(Duration longest) {
        try {
            Event event = events.poll(longest.toMillis(), TimeUnit.MILLISECONDS);
            while (event instanceof Event.Resize && events.peek() instanceof Event.Resize) {
                event = events.take();
            }
            if (event instanceof Event.Hangup) {
                events.add(event);
            }
            return Optional.ofNullable(event);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.of(new Event.Hangup());
        }
    }

    /** Adds an event. */
    void add(Event event) {
        events.add(event);
    }

    /** Adds a hangup, once. */
    void hangUp() {
        if (hungUp.compareAndSet(false, true)) {
            events.add(new Event.Hangup());
        }
    }
}
