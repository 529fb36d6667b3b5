package versewind.terminal;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;

/** A shell in a terminal of tmux, on a server of its own, into which can be typed and whose screen can be read. */
final class Pane implements AutoCloseable {

    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private static final AtomicInteger SERVERS = new AtomicInteger();

    private final Path folder;

    /** A server that is going away must not be met by the next one. */
    private final String socket = "tmux" + SERVERS.incrementAndGet();

    /** Opens a terminal of 80 columns and 24 rows with an interactive shell in a folder. */
    Pane(Path folder) throws IOException {
        this.folder = folder;
        tmux("new-session", "-d", "-x", "80", "-y", "24", "env PS1='$ ' LC_ALL=C.UTF-8 sh -i");
        await(screen -> screen.startsWith("$"));
    }

    static boolean isPossible() {
        try {
            return run(Path.of("."), List.of("tmux", "-V")).startsWith("tmux");
        } catch (IOException none) {
            return false;
        }
    }

    /** Types keys by tmux's names for them. */
    void type(String... keys) throws IOException {
        List<String> words = new ArrayList<>(List.of("send-keys"));
        words.addAll(List.of(keys));
        tmux(words.toArray(String[]::new));
    }

    /** Types a text letter by letter and then Enter. */
    void command(String text) throws IOException {
        tmux("send-keys", "-l", text);
        type("Enter");
    }

    void paste(String text) throws IOException {
        tmux("set-buffer", text);
        tmux("paste-buffer", "-p");
    }

    void resize(int columns, int rows) throws IOException {
        tmux("resize-window", "-x", Integer.toString(columns), "-y", Integer.toString(rows));
    }

    String screen() throws IOException {
        return tmux("capture-pane", "-p");
    }

    /** What tmux knows of the terminal: alternate_on, cursor_flag, wrap_flag. */
    String state(String name) throws IOException {
        return tmux("display-message", "-p", "#{" + name + "}").strip();
    }

    /** Looks at what tmux knows until it is as wanted: a shell may tell of a stop before tmux has read all. */
    void awaitState(String name, String wanted) throws IOException {
        long start = System.nanoTime();
        while (!state(name).equals(wanted)) {
            if (System.nanoTime() - start > PATIENCE.toNanos()) {
                throw new AssertionError(name + " is " + state(name) + "; the screen is\n" + screen());
            }
        }
    }

    void await(String words) throws IOException {
        await(screen -> screen.contains(words));
    }

    /** Looks at the screen until it is as wanted. */
    void await(Predicate<String> wanted) throws IOException {
        long start = System.nanoTime();
        String screen = screen();
        while (!wanted.test(screen)) {
            if (System.nanoTime() - start > PATIENCE.toNanos()) {
                throw new AssertionError("never came; the screen is\n" + screen);
            }
            screen = screen();
        }
    }

    /** Cuts the line, as a terminal's window does that is closed. */
    @Override
    public void close() throws IOException {
        tmux("kill-server");
    }

    private String tmux(String... words) throws IOException {
        List<String> command = new ArrayList<>(List.of("tmux", "-u", "-f", "/dev/null", "-S", socket));
        command.addAll(List.of(words));
        return run(folder, command);
    }

    private static String run(Path folder, List<String> command) throws IOException {
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        try {
            process.getOutputStream().close();
            String answer = new String(process.getInputStream().readAllBytes(), UTF_8);
            if (!process.waitFor(10, TimeUnit.SECONDS)) {
                throw new IOException("does not end: " + command);
            }
            return answer;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException(e);
        }
    }
}
