package versewind.terminal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import versewind.screen.state.Event;

/**
 * Modes and size of the terminal device, by {@code stty}.
 *
 * <p>The launcher sets the modes before Java starts, since a shell starts {@code stty} ten times as fast and can
 * restore them even if Java is killed. Without the launcher it is done here.
 */
final class Tty {

    /**
     * Raw input: no echo, no line editing, no signals, no flow control. Output modes stay, so that a message after the
     * end has its line ends. The launcher sets the same.
     */
    static final String MODES = "-icanon -echo -isig -iexten -ixon -icrnl -inlcr -igncr min 1 time 0";

    /** Set by the launcher to what {@code stty size} printed, once it has set the modes. */
    static final String SIZE_PROPERTY = "versewind.terminal.size";

    /** Set by the launcher to what {@code stty -g} printed before it set the modes. */
    private static final String MODES_PROPERTY = "versewind.terminal.modes";

    /** Where systems have it; never one that stands earlier on the path. The launcher looks at the same places. */
    private static final String STTY = Stream.of("/bin/stty", "/usr/bin/stty")
            .filter(path -> Files.isExecutable(Path.of(path)))
            .findFirst()
            .orElse("stty");

    private static final String SHELL = "/bin/sh";
    private static final String OPENING = "[ -t 0 ] && [ -t 1 ] || exit 3; { " + STTY + " -g && " + STTY + " size && "
            + STTY + " " + MODES + "; } >&2";
    private static final int NOT_A_TERMINAL = 3;
    private static final int PATIENCE_S = 2;
    private static final int USUAL_COLUMNS = 80;
    private static final int USUAL_ROWS = 24;

    private final Optional<String> found;
    private final Optional<ProcessHandle> launcher;
    private final Event.Resize first;

    private Tty(Optional<String> found, Optional<ProcessHandle> launcher, Event.Resize first) {
        this.found = found;
        this.launcher = launcher;
        this.first = first;
    }

    /** Sets the modes. */
    static Tty open(Map<String, String> environment) throws NoTerminalException {
        String fromLauncher = System.getProperty(SIZE_PROPERTY, "");
        if (!fromLauncher.isEmpty()) {
            String modes = System.getProperty(MODES_PROPERTY, "");
            Optional<ProcessHandle> launcher =
                    modes.isEmpty() ? Optional.empty() : ProcessHandle.current().parent();
            return new Tty(Optional.of(modes), launcher, size(fromLauncher, environment));
        }
        try {
            Process shell = new ProcessBuilder(SHELL, "-c", OPENING)
                    .redirectInput(ProcessBuilder.Redirect.INHERIT)
                    .redirectOutput(ProcessBuilder.Redirect.INHERIT)
                    .start();
            List<String> answer = lines(shell.getErrorStream().readAllBytes());
            int status = shell.waitFor();
            if (status == NOT_A_TERMINAL) {
                throw new NoTerminalException("its input or its output is something else");
            }
            if (status != 0 || answer.size() < 2) {
                throw new NoTerminalException("its modes cannot be set (" + String.join(" ", answer) + ")");
            }
            return new Tty(Optional.of(answer.get(0)), Optional.empty(), size(answer.get(1), environment));
        } catch (IOException e) {
            throw new NoTerminalException("its modes cannot be set (" + e.getMessage() + ")");
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new NoTerminalException("setting its modes was interrupted");
        }
    }

    /** The size at the time of opening. */
    Event.Resize firstSize() {
        return first;
    }

    /** The size now, if {@code stty} can tell. */
    Optional<Event.Resize> size() {
        return stty("size").flatMap(Tty::size);
    }

    /** Sets the modes again, after something else has changed them. */
    void setModes() {
        stty(MODES.split(" ", -1));
    }

    /** True if the launcher, which would restore the terminal, is there no more. */
    boolean isAlone() {
        return launcher.isPresent() && !ProcessHandle.current().parent().equals(launcher);
    }

    /** Waits for the launcher to end, which it does before the program only if it is killed; true if it was there. */
    boolean outlivesLauncher() {
        launcher.ifPresent(process -> process.onExit().join());
        return launcher.isPresent();
    }

    /**
     * Restores the modes, unless the launcher set them and will restore them itself. Where it has gone, the program is
     * in the background, and may set the modes only if it does not hear that it must not.
     */
    void restoreModes() {
        if (launcher.isEmpty()) {
            found.filter(modes -> !modes.isEmpty()).ifPresent(this::stty);
        } else if (isAlone()) {
            run(List.of(SHELL, "-c", "trap '' TTOU; " + STTY + " " + found.orElseThrow()));
        }
    }

    private Optional<String> stty(String... words) {
        List<String> command = new ArrayList<>(List.of(words));
        command.add(0, STTY);
        return run(command);
    }

    private static Optional<String> run(List<String> command) {
        try {
            Process stty = new ProcessBuilder(command)
                    .redirectInput(ProcessBuilder.Redirect.INHERIT)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            if (!stty.waitFor(PATIENCE_S, TimeUnit.SECONDS)) {
                // In the background it is stopped, and would stay so.
                stty.destroyForcibly();
                return Optional.empty();
            }
            List<String> answer = lines(stty.getInputStream().readAllBytes());
            return stty.exitValue() == 0 ? answer.stream().findFirst() : Optional.empty();
        } catch (IOException lineBroken) {
            return Optional.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }

    private static List<String> lines(byte[] answer) {
        return new String(answer, StandardCharsets.US_ASCII).lines().toList();
    }

    private static Event.Resize size(String answer, Map<String, String> environment) {
        Optional<Event.Resize> said = size(answer);
        if (said.isPresent()) {
            return said.get();
        }
        int columns = number(environment.getOrDefault("COLUMNS", ""));
        int rows = number(environment.getOrDefault("LINES", ""));
        return new Event.Resize(columns > 0 ? columns : USUAL_COLUMNS, rows > 0 ? rows : USUAL_ROWS);
    }

    /** Parses what {@code stty size} prints, rows and columns; a serial line has 0 0, which is unknown. */
    static Optional<Event.Resize> size(String answer) {
        String[] words = answer.strip().split(" ", 2);
        int rows = number(words[0]);
        int columns = words.length == 2 ? number(words[1]) : 0;
        return rows > 0 && columns > 0 ? Optional.of(new Event.Resize(columns, rows)) : Optional.empty();
    }

    /** A number of up to four digits, 0 for anything else. */
    private static int number(String word) {
        int number = 0;
        for (int i = 0; i < word.length(); i++) {
            int digit = word.charAt(i) - '0';
            if (digit < 0 || digit > 9 || i > 3) {
                return 0;
            }
            number = number * 10 + digit;
        }
        return number;
    }
}
