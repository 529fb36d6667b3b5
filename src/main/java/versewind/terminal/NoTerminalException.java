package versewind.terminal;

/** Thrown if no terminal can show the full screen; the message is a sentence for the user. */
public final class NoTerminalException extends Exception {

    private static final long serialVersionUID = 1L;

    NoTerminalException(String reason) {
        super("the full screen needs a terminal: " + reason + "; `versewind assess PLAN` works without one.");
    }
}
