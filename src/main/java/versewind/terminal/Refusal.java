package versewind.terminal;

import versewind.screen.state.Event;
import versewind.store.SaveOutcome;

/** The event that tells the editor why a file was not saved. */
final class Refusal {

    private Refusal() {}

    static Event of(SaveOutcome.NotSaved failed) {
        return new Event.Failed("Not saved to " + failed.path() + ": " + failed.why());
    }
}
