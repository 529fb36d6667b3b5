package versewind.terminal;

import versewind.screen.Event;
import versewind.store.SaveOutcome;

/** Why a file was not written, as the editor is told. */
final class Refusal {

    private Refusal() {}

    static Event of(SaveOutcome.NotSaved failed) {
        return new Event.Failed("Not saved to " + failed.path() + ": " + failed.why());
    }
}
