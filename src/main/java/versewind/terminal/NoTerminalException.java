package versewind.terminal;

/** Thrown if no terminal and no window can show the full screen; the message is a sentence for the user. */
public final class NoTerminalException extends Exception {

    private static final long serialVersionUID = 1L;

    NoTerminalException(String reason) {
        this("the full screen needs a terminal", reason);
    }

    private NoTerminalException(String what, String reason) {
        super(what + ": " + reason + "; `versewind assess PLAN` works without one.");
    }

    /** What is wanting and why, as a sentence on the screen. */
    String sentence() {
        String message = getMessage();
        return Character.toUpperCase(message.charAt(0)) + message.substring(1, message.indexOf(';')) + ".";
    }

    /** Of a window. */
    static NoTerminalException ofWindow(String reason) {
        return new NoTerminalException("a window cannot be opened", reason);
    }
}
