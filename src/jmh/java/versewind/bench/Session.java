package versewind.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A program in a pseudo terminal of 80 by 24, made by {@code script}: what it writes, and what Linux counts of it. */
final class Session implements AutoCloseable {

    private static final long PATIENCE_NS = TimeUnit.SECONDS.toNanos(60);
    private static final double NS_PER_MS = 1e6;

    private final Process script;
    private final OutputStream keys;
    private final BlockingQueue<Piece> pieces = new LinkedBlockingQueue<>();
    private final long started = System.nanoTime();
    private final ByteArrayOutputStream shown = new ByteArrayOutputStream();
    private long last = started;

    private Session(Process script) {
        this.script = script;
        keys = script.getOutputStream();
        // a thread of its own, that sleeps until something comes and takes no time from what is measured
        Thread reader = new Thread(this::read, "screen");
        reader.setDaemon(true);
        reader.start();
    }

    /** Bytes that came together, and when; none at the end. */
    private record Piece(byte[] bytes, long ns) {}

    private void read() {
        byte[] buffer = new byte[65_536];
        try (InputStream screen = script.getInputStream()) {
            for (int count = screen.read(buffer); count >= 0; count = screen.read(buffer)) {
                pieces.add(new Piece(Arrays.copyOf(buffer, count), System.nanoTime()));
            }
        } catch (IOException closed) {
            // as at the end
        }
        pieces.add(new Piece(new byte[0], System.nanoTime()));
    }

    static Session of(Path home, List<String> command) throws IOException {
        StringBuilder line = new StringBuilder("stty rows 24 columns 80; exec");
        command.forEach(word -> line.append(" '").append(word).append('\''));
        ProcessBuilder builder = new ProcessBuilder("script", "-qefc", line.toString(), "/dev/null");
        builder.environment()
                .putAll(Map.of(
                        "HOME", home.toString(), "TERM", "xterm-256color", "LC_ALL", "C.UTF-8", "SHELL", "/bin/sh"));
        return new Session(builder.redirectErrorStream(true).start());
    }

    void type(String typed) throws IOException {
        keys.write(typed.getBytes(StandardCharsets.UTF_8));
        keys.flush();
    }

    /** Reads until a text has been shown, and returns the ms from the start to the last byte so far. */
    double msUntil(String text) throws IOException {
        while (!shown.toString(StandardCharsets.UTF_8).contains(text)) {
            if (!readWithin(PATIENCE_NS)) {
                throw new IOException("\"" + text + "\" never came, but " + shown.toString(StandardCharsets.UTF_8));
            }
        }
        return (last - started) / NS_PER_MS;
    }

    /** Bytes that come until nothing has come for so long. */
    int bytesUntilQuiet(int quietMs) throws IOException {
        int before = shown.size();
        boolean more = true;
        while (more) {
            more = readWithin(TimeUnit.MILLISECONDS.toNanos(quietMs));
        }
        return shown.size() - before;
    }

    /** Bytes so far. */
    int bytes() {
        return shown.size();
    }

    /** When the last byte came, by {@link System#nanoTime()}. */
    long lastNs() {
        return last;
    }

    private boolean readWithin(long ns) throws IOException {
        try {
            Piece piece = pieces.poll(ns, TimeUnit.NANOSECONDS);
            if (piece == null || piece.bytes().length == 0) {
                return false;
            }
            shown.write(piece.bytes());
            last = piece.ns();
            return true;
        } catch (InterruptedException ended) {
            throw new IOException(ended);
        }
    }

    /** The ms from the start to the end of the program. */
    double msUntilEnd() throws IOException, InterruptedException {
        keys.close();
        script.waitFor();
        return (System.nanoTime() - started) / NS_PER_MS;
    }

    /** The Java that runs in it. */
    private ProcessHandle java() {
        return script.descendants()
                .filter(process -> process.info().command().orElse("").endsWith("/java"))
                .findFirst()
                .orElseThrow();
    }

    /** A number that Linux keeps of the Java in a file under /proc, in the line that begins with a word. */
    long counted(String file, String word) throws IOException {
        try (Stream<String> lines = Files.lines(Path.of("/proc/" + java().pid(), file))) {
            Optional<String> line =
                    lines.filter(each -> each.startsWith(word + ":")).findFirst();
            return Long.parseLong(line.orElseThrow().replaceAll("\\D", ""));
        }
    }

    /** CPU time of the Java in ms, in steps of 10: of all its threads, also of those that have ended. */
    double cpuMs() throws IOException {
        String[] numbers =
                Files.readString(Path.of("/proc/" + java().pid(), "stat")).split(" ", -1);
        return 10.0 * (Long.parseLong(numbers[13]) + Long.parseLong(numbers[14]));
    }

    @Override
    public void close() throws IOException {
        List<ProcessHandle> all = script.descendants().toList();
        all.forEach(ProcessHandle::destroy);
        // what an editor does last is to keep its unsaved work
        all.forEach(process -> process.onExit().join());
        script.destroy();
        try {
            script.waitFor();
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }
}
