package versewind.terminal;

import java.util.Map;
import versewind.screen.state.Event;
import versewind.screen.toolkit.Letters;

/** Where the full screen opens. */
public enum Place {
    /** In the terminal that the program was started in; in a window where there is none. */
    HERE {
        @Override
        Display open(Letters letters) throws NoTerminalException {
            try {
                return Console.open();
            } catch (NoTerminalException none) {
                if (!mayHaveWindows(System.getProperty("os.name", ""), System.getenv())) {
                    throw none;
                }
                return WindowDisplay.open(letters);
            }
        }
    },
    /** In a window of its own; where none can be opened, in the terminal, which says why. */
    WINDOW {
        @Override
        Display open(Letters letters) throws NoTerminalException {
            try {
                return WindowDisplay.open(letters);
            } catch (NoTerminalException noWindow) {
                return inTerminal(noWindow);
            }
        }
    };

    private static Display inTerminal(NoTerminalException noWindow) throws NoTerminalException {
        try {
            Display terminal = Console.open();
            terminal.inbox().add(new Event.Done(noWindow.sentence()));
            return terminal;
        } catch (NoTerminalException noTerminal) {
            throw noWindow;
        }
    }

    /** Opens it, with room for letters of a size where it can make room. */
    abstract Display open(Letters letters) throws NoTerminalException;

    /** Asked before anything of a window is loaded. X11 and Wayland name the place of the screen in a variable. */
    static boolean mayHaveWindows(String system, Map<String, String> environment) {
        boolean isUnix = !system.startsWith("Windows") && !system.startsWith("Mac");
        return !isUnix
                || !environment.getOrDefault("DISPLAY", "").isEmpty()
                || !environment.getOrDefault("WAYLAND_DISPLAY", "").isEmpty();
    }
}
