package versewind.terminal;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import versewind.screen.Update;
import versewind.screen.View;
import versewind.screen.state.Effect;
import versewind.screen.state.Event;
import versewind.screen.state.State;
import versewind.screen.state.Transition;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Key;
import versewind.screen.toolkit.Letters;
import versewind.screen.toolkit.Marks;
import versewind.store.Library;
import versewind.store.OpenPlan;

/** Runs the full-screen editor: keys in, frames out, effects done in between. */
public final class Editor {

    /** How long the first screen waits for the first plans. Reading goes on while it is painted without them. */
    private static final Duration FIRST_PLANS = Duration.ofMillis(100);

    /** A search that ends within this is not seen to begin. */
    private static final Duration SHORT_SEARCH = Duration.ofMillis(150);

    private static final List<Key> REHEARSED = List.of(Key.of(' '), Key.of('n'), Key.of(' '), Key.of(']'));

    private final Display display;
    private final EffectRunner outside;
    private State state;

    private Editor(Display display, EffectRunner outside, State state) {
        this.display = display;
        this.outside = outside;
        this.state = state;
    }

    /** Has another thread make ready what the first screen of a plan needs, while the plan is read. */
    public static void warmUp(LocalDate today) {
        Warmup.begin(today);
    }

    /**
     * Runs until it is left.
     *
     * @param library where plans and instruments are
     * @param plan the plan to be worked on; without one, one is chosen from a list
     * @param today the day
     * @param place where it opens
     * @param letters how large stops and verses are written
     * @return the status to end with: 128 and the number of the signal that ended it, or 0
     * @throws NoTerminalException if there is no terminal to run in
     */
    public static int run(Library library, Optional<OpenPlan> plan, LocalDate today, Place place, Letters letters)
            throws NoTerminalException {
        Optional<LookAhead> ahead = plan.isPresent()
                ? Optional.empty()
                : Optional.of(LookAhead.begin(library.catalogue(), Browsing.FIRST_PLANS));
        return run(library, today, place, letters, ahead, editor -> editor.start(plan));
    }

    /**
     * Runs at the desk until that is left.
     *
     * @param library where plans and instruments are
     * @param plan the plan to be played from
     * @param today the day
     * @param place where it opens
     * @param letters how large stops and verses are written
     * @return the status to end with: 128 and the number of the signal that ended it, or 0
     * @throws NoTerminalException if there is no terminal to run in
     */
    public static int runDesk(Library library, OpenPlan plan, LocalDate today, Place place, Letters letters)
            throws NoTerminalException {
        return run(library, today, place, letters, Optional.empty(), editor -> {
            editor.settle(editor.outside.read(plan));
            editor.settle(editor.outside.begun(plan));
            editor.settle(Update.desk(editor.state));
        });
    }

    private static int run(
            Library library,
            LocalDate today,
            Place place,
            Letters letters,
            Optional<LookAhead> ahead,
            Consumer<Editor> start)
            throws NoTerminalException {
        try (Display display = place.open(letters);
                JournalWriter journal = new JournalWriter(library, display.inbox()::add);
                Browsing browsing = new Browsing(library, display.inbox()::add);
                BackgroundSearch proposing = new BackgroundSearch(display.inbox()::add)) {
            ahead.ifPresent(browsing::lookedAhead);
            Event.Resize size = display.size();
            Marks marks = display.utf8() ? Marks.UNICODE : Marks.ASCII;
            State state =
                    Update.empty(size.columns(), size.rows(), marks, today).lettered(letters);
            new Editor(
                            display,
                            new EffectRunner(
                                    library, journal, browsing, proposing, display.inbox()::add, display::repaint),
                            state)
                    .loop(start);
            return display.status();
        }
    }

    private void start(Optional<OpenPlan> plan) {
        if (plan.isPresent()) {
            settle(outside.read(plan.get()));
            display.paint(View.paint(state, Frame.Extent.AT_ONCE));
            settle(outside.begun(plan.get()));
        } else {
            settle(Update.start(state));
            display.inbox().next(FIRST_PLANS).ifPresent(input -> settle(Update.step(state, input)));
        }
    }

    private void loop(Consumer<Editor> start) {
        start.accept(this);
        display.paint(View.paint(state));
        rehearse();
        while (!outside.hasEnded()) {
            handle(display.inbox().next());
        }
    }

    /** Handles an event and all that wait behind it, as keys typed ahead do, and paints one frame for them. */
    private void handle(Event event) {
        settle(Update.step(state, event));
        for (Optional<Event> more = waiting(); more.isPresent(); more = waiting()) {
            settle(Update.step(state, more.get()));
        }
        if (Update.isSearching(state)) {
            display.inbox().next(SHORT_SEARCH).ifPresent(soon -> settle(Update.step(state, soon)));
        }
        if (!outside.hasEnded()) {
            display.paint(View.paint(state));
        }
    }

    private Optional<Event> waiting() {
        return outside.hasEnded() ? Optional.empty() : display.inbox().next(Duration.ZERO);
    }

    /**
     * Goes through an edit, another verse and another hymn, whose outcomes nobody sees: the first of each loads much
     * that later ones find loaded, and now the player is still reading the screen. A key that is pressed meanwhile ends
     * it.
     */
    private void rehearse() {
        State seen = state;
        for (Key key : REHEARSED) {
            Optional<Event> pressed = waiting();
            if (pressed.isPresent()) {
                handle(pressed.get());
                return;
            }
            seen = Update.step(seen, new Event.Press(key)).state();
            View.paint(seen);
        }
    }

    private void settle(List<Event> events) {
        events.forEach(event -> settle(Update.step(state, event)));
    }

    /** Does the effects of a step, and those of what comes of them. */
    private void settle(Transition step) {
        Deque<Effect> todo = new ArrayDeque<>(step.effects());
        state = step.state();
        while (!todo.isEmpty() && !outside.hasEnded()) {
            for (Event event : todo.removeFirst().by(outside)) {
                Transition next = Update.step(state, event);
                state = next.state();
                todo.addAll(next.effects());
            }
        }
    }
}
