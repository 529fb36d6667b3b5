package versewind.terminal;

import java.util.Map;
import java.util.Set;

/** The kinds of terminal, by TERM, with the sequences that begin and end a full screen on each. */
enum TerminalType {
    /** Terminals with an alternate screen: xterm and most others. */
    WINDOW("\033[?1049h\033[?2004h\033[?7l\033[?25l", "\033[m\033[?7h\033[?25h\033[?2004l\033[?1049l"),

    /** The Linux console: one screen, cleared at the end. */
    CONSOLE("\033[?2004h\033[?7l\033[?25l", "\033[m\033[?7h\033[?25h\033[?2004l\033[H\033[2J"),

    /** The VT100 and its successors: one screen, no colours. */
    VIDEO_TERMINAL("\033[?7l\033[?25l", "\033[m\033[?7h\033[?25h\033[H\033[2J");

    /** Terminals of eight colours, to which the number of another colour would mean blinking. */
    private static final Set<String> OF_EIGHT_COLOURS =
            Set.of("ansi", "pcansi", "cygwin", "sun", "sun-color", "cons25", "hurd", "rxvt", "Eterm");

    private final String enter;
    private final String leave;

    TerminalType(String enter, String leave) {
        this.enter = enter;
        this.leave = leave;
    }

    /**
     * Begins a full screen: alternate screen, bracketed paste, no caret, no wrapping at the right margin (so that a
     * character wider than expected spoils the end of its row only).
     */
    String enter() {
        return enter;
    }

    /** Undoes {@link #enter()}. */
    String leave() {
        return leave;
    }

    /** The terminal that TERM names. */
    static TerminalType of(Map<String, String> environment) throws NoTerminalException {
        String term = environment.getOrDefault("TERM", "");
        if (term.isEmpty()) {
            throw new NoTerminalException("TERM is not set");
        }
        if (term.equals("dumb") || term.equals("unknown")) {
            throw new NoTerminalException("TERM is " + term + ", and on that nothing can be placed");
        }
        if (term.startsWith("vt")) {
            return VIDEO_TERMINAL;
        }
        return term.equals("linux") || term.startsWith("linux-") ? CONSOLE : WINDOW;
    }

    /** Colour, unless the terminal has none or few, or NO_COLOR is set and not empty (no-color.org). */
    Palette palette(Map<String, String> environment) {
        boolean unwanted = !environment.getOrDefault("NO_COLOR", "").isEmpty();
        boolean hasFew = OF_EIGHT_COLOURS.contains(environment.getOrDefault("TERM", ""));
        return unwanted || hasFew || this == VIDEO_TERMINAL ? Palette.MONOCHROME : Palette.COLOUR;
    }
}
