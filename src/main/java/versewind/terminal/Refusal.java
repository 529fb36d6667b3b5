package versewind.terminal;

import versewind.screen.Input;
import versewind.store.SaveOutcome;

/** Why a file was not written, as the editor is told. */
final class Refusal {

    private Refusal() {}

    static Input of(SaveOutcome.NotSaved failed) {
        return new Input.Failed("Not saved to " + failed.path() + ": " + failed.why());
    }
}
