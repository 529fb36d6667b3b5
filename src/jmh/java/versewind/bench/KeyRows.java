package versewind.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import versewind.screen.state.State;
import versewind.screen.toolkit.Key;
import versewind.store.BadFile;
import versewind.store.Library;
import versewind.store.OpenPlan;

/** Bytes, writes and time of a key, beside an ncurses program that paints the same screens; and of no key at all. */
final class KeyRows {

    private static final int QUIET_MS = 400;
    private static final int QUIET_KEY_MS = 12;
    private static final int IDLE_S = 60;
    private static final int KEYS = 300;
    private static final int ROUND_TRIP_MS = 200;
    private static final double LOST = 0.02;

    private record Step(String what, String typed, Key key, double goal, String limit) {}

    private static final List<Step> STEPS = List.of(
            new Step("bytes for a toggle, all that changes with it", " ", Key.of(' '), 0.8, ", 150 bytes"),
            new Step("bytes for the cursor one down", "\033[B", Key.of(Key.Named.DOWN), 0.6, ""),
            new Step("bytes for the next verse", "n", Key.of('n'), 0.9, ""));

    private final Programs programs;
    private final ResultTable table;

    KeyRows(Programs programs, ResultTable table) {
        this.programs = programs;
        this.table = table;
    }

    void print() throws IOException, InterruptedException, BadFile {
        bytes();
        writes();
        latency("key to its last byte, 102 stops, first 50 keys", "median under 10 ms", 50, 0);
        latency("key to its last byte, 102 stops, warm", "median 1, 99 % 4 ms", KEYS, 2 * KEYS);
        slowLine();
        idle();
    }

    private void bytes() throws IOException, InterruptedException, BadFile {
        List<Integer> reference = ncurses();
        try (Session editor = programs.editor(Programs.SMALL)) {
            editor.msUntil("help");
            editor.bytesUntilQuiet(2 * QUIET_MS);
            row("bytes of the first screen", reference, 0, editor.bytes(), 1.0, "");
            for (int i = 0; i < STEPS.size(); i++) {
                Step step = STEPS.get(i);
                editor.type(step.typed());
                row(step.what(), reference, i + 1, editor.bytesUntilQuiet(QUIET_MS), step.goal(), step.limit());
            }
            // to the first stop, then the sentence that there is none before it, then nothing new
            for (int i = 0; i < 2; i++) {
                editor.type("\033[H");
                editor.bytesUntilQuiet(QUIET_MS);
            }
            editor.type("\033[H");
            table.row(
                    "bytes of a key that changes nothing",
                    "",
                    Integer.toString(editor.bytesUntilQuiet(QUIET_MS)),
                    "0",
                    "0");
        }
    }

    private void row(String what, List<Integer> reference, int index, int ours, double goal, String limit) {
        boolean isThere = index < reference.size();
        table.row(
                what,
                isThere ? "ncurses " + reference.get(index) : "",
                isThere ? String.format("%d = %.2f x", ours, (double) ours / reference.get(index)) : "" + ours,
                String.format("at most %.1f x%s", goal, limit),
                "");
    }

    /** Bytes of an ncurses program that paints the screens of the same keys; nothing where there is no compiler. */
    private List<Integer> ncurses() throws IOException, InterruptedException, BadFile {
        Path program = programs.scratch().resolve("screens");
        Process compiler;
        try {
            compiler = new ProcessBuilder(
                            "cc", "-O2", "-o", program.toString(), "src/jmh/c/screens.c", "-lncursesw", "-ltinfo")
                    .redirectErrorStream(true)
                    .start();
        } catch (IOException absent) {
            table.missing("Without a C compiler (Debian: gcc) no bytes are compared with those of ncurses.");
            return List.of();
        }
        compiler.getInputStream().readAllBytes();
        if (compiler.waitFor() != 0) {
            table.missing("Without ncurses (Debian: libncurses-dev) no bytes are compared with its own.");
            return List.of();
        }
        Path screens = programs.scratch().resolve("screens.txt");
        Files.writeString(screens, screens());
        List<Integer> bytes = new ArrayList<>();
        try (Session session = Session.of(programs.scratch(), List.of(program.toString(), screens.toString()))) {
            session.msUntil("Space");
            session.bytesUntilQuiet(QUIET_MS);
            bytes.add(session.bytes());
            for (int i = 0; i < STEPS.size(); i++) {
                session.type(" ");
                bytes.add(session.bytesUntilQuiet(QUIET_MS));
            }
        }
        return bytes;
    }

    /** The screens before and after each step, as the ncurses program reads them. */
    private String screens() throws IOException, BadFile {
        Library library = new Library(programs.scratch());
        OpenPlan plan =
                library.openPlan(programs.scratch().resolve(Programs.SMALL).toString());
        State state = Screens.opened(plan);
        StringBuilder screens = new StringBuilder(Screens.text(state));
        for (Step step : STEPS) {
            state = Screens.after(state, step.key());
            screens.append(Screens.text(state));
        }
        return screens.toString();
    }

    private void writes() throws IOException {
        try (Session editor = programs.editor(Programs.SMALL)) {
            editor.msUntil("help");
            editor.bytesUntilQuiet(3 * QUIET_MS);
            long before = editor.counted("io", "syscw");
            int keys = 20;
            for (int i = 0; i < keys; i++) {
                editor.type(i % 2 == 0 ? "\033[B" : "n");
                editor.bytesUntilQuiet(QUIET_MS / 4);
            }
            table.row(
                    "write(2) calls a key",
                    "",
                    String.format("%.2f", (editor.counted("io", "syscw") - before) / (double) keys),
                    "exactly 1",
                    "1");
        }
    }

    private void latency(String what, String goal, int keys, int warming) throws IOException, InterruptedException {
        Times times = new Times();
        Times echo = new Times();
        double cpuMs;
        // what the terminal takes there and back, and how busy the machine is, is seen from a program that only echoes
        try (Session editor = programs.editor(Programs.LARGE);
                Session cat = Session.of(programs.scratch(), List.of("sh", "-c", "stty raw -echo; exec cat"))) {
            editor.msUntil("help");
            editor.bytesUntilQuiet(3 * QUIET_MS);
            String[] typed = {" ", "\033[B", " ", "n"};
            for (int i = 0; i < warming; i++) {
                editor.type(typed[i % typed.length]);
                editor.bytesUntilQuiet(QUIET_KEY_MS);
            }
            double before = editor.cpuMs();
            for (int i = 0; i < keys; i++) {
                key(editor, typed[i % typed.length], times);
                key(cat, "x", echo);
            }
            cpuMs = (editor.cpuMs() - before) / keys;
        }
        table.row(
                what,
                "an echo " + echo,
                String.format("%s, 99 %% %.1f, CPU %.1f", times, times.quantile(0.99), cpuMs),
                goal,
                "");
    }

    private static void key(Session session, String typed, Times times) throws IOException {
        long start = System.nanoTime();
        session.type(typed);
        if (session.bytesUntilQuiet(QUIET_KEY_MS) > 0) {
            times.add((session.lastNs() - start) / 1e6);
        }
    }

    /** Keys typed ahead over a line that delays and now and then sends again. */
    private void slowLine() throws IOException, InterruptedException {
        Random random = new Random(1);
        try (Session editor = programs.editor(Programs.SMALL)) {
            editor.msUntil("help");
            editor.bytesUntilQuiet(2 * QUIET_MS);
            Deque<Long> arrivals = new ArrayDeque<>();
            long start = System.nanoTime();
            long typed = 0;
            for (int i = 0; i < 50; i++) {
                typed = start + TimeUnit.MILLISECONDS.toNanos(40L * i);
                long lost = random.nextDouble() < LOST ? ROUND_TRIP_MS : 0;
                long arrives = typed + TimeUnit.MILLISECONDS.toNanos(ROUND_TRIP_MS / 2 + lost);
                arrivals.add(Math.max(arrives, arrivals.isEmpty() ? 0 : arrivals.getLast()));
            }
            for (long arrives : arrivals) {
                TimeUnit.NANOSECONDS.sleep(arrives - System.nanoTime());
                editor.type(" ");
            }
            editor.bytesUntilQuiet(QUIET_MS);
            double ms = (editor.lastNs() - typed) / 1e6 + ROUND_TRIP_MS / 2.0;
            table.row(
                    "50 keys in 2 s, 200 ms round trip, 2 % lost: right after",
                    "", String.format("%.0f ms", ms), "one round trip", ROUND_TRIP_MS + " ms");
        }
    }

    private void idle() throws IOException, InterruptedException {
        try (Session editor = programs.editor(Programs.SMALL)) {
            editor.msUntil("help");
            editor.bytesUntilQuiet(5 * QUIET_MS);
            double before = editor.cpuMs();
            TimeUnit.SECONDS.sleep(IDLE_S);
            table.row(
                    "CPU in " + IDLE_S + " s without a key",
                    "",
                    String.format("%.1f ms", editor.cpuMs() - before),
                    "under 20 ms",
                    "0 ms");
        }
    }
}
