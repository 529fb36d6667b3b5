package versewind.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.lang.reflect.Proxy;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import versewind.plan.Plan;
import versewind.screen.Update;
import versewind.screen.View;
import versewind.screen.plan.FileEvent;
import versewind.screen.state.Effect;
import versewind.screen.state.Effects;
import versewind.screen.state.Event;
import versewind.screen.state.State;
import versewind.screen.state.Transition;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Key;
import versewind.screen.toolkit.Marks;
import versewind.store.Autosave;
import versewind.store.Library;
import versewind.store.OpenPlan;

/**
 * The real program in a terminal is killed or hung up at random moments while keys are typed at random, or the terminal
 * is closed, and its journal is read: of every edit whose effect had reached the screen, none is lost.
 * {@code -Dkill.count=500} does so 500 times.
 */
@Tag("slow")
class KillTest {

    private static final int COUNT = Integer.getInteger("kill.count", 25);
    private static final String KEYS = " 0123456+-npnphkdiuuUcOs";
    private static final Path SCRIPT = Path.of("/usr/bin/script");
    private static final int TYPED = 40;
    private static final long MOMENT_NS = 300_000;
    private static final LocalDate TODAY = LocalDate.of(2026, 9, 28);

    @TempDir
    private Path folder;

    /** The program as it should go on: its state after each key, the first without any. */
    private List<State> model(OpenPlan open, String keys) {
        State state = Update.empty(80, 24, Marks.UNICODE, TODAY);
        List<State> states = new ArrayList<>();
        states.add(after(
                state,
                new FileEvent.PlanOpened(
                        "ash-wednesday",
                        open.plan(),
                        open.instrument(),
                        open.organ().calibrated(),
                        Optional.empty())));
        keys.chars().forEach(key -> states.add(after(states.get(states.size() - 1), new Event.Press(Key.of(key)))));
        return states;
    }

    private static State after(State state, Event event) {
        Transition step = Update.step(state, event);
        State next = step.state();
        for (Effect effect : step.effects()) {
            for (Event answer : effect.by(SAVING)) {
                next = after(next, answer);
            }
        }
        return next;
    }

    /** Of all that is wanted, only saving has an answer. */
    @SuppressWarnings("unchecked")
    private static final Effects SAVING = (Effects) Proxy.newProxyInstance(
            Effects.class.getClassLoader(),
            new Class<?>[] {Effects.class},
            (self, method, arguments) -> method.getName().equals("save")
                    ? List.of(new FileEvent.Saved((Plan) arguments[0], (List<Effect>) arguments[1], true))
                    : List.of());

    private static List<String> rows(Frame frame) {
        return IntStream.range(0, frame.height())
                .mapToObj(row -> frame.row(row).stripTrailing())
                .toList();
    }

    private static List<String> rows(VirtualScreen screen) {
        return IntStream.range(0, 24)
                .mapToObj(row -> IntStream.range(0, 80)
                        .map(column -> screen.character(column, row))
                        .filter(character -> character != VirtualScreen.SECOND_HALF)
                        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                        .toString()
                        .stripTrailing())
                .toList();
    }

    private Path library() throws IOException {
        Path library = Files.createTempDirectory(folder, "library");
        for (String file : List.of("plans/ash-wednesday.json", "instruments/little-corvening.json")) {
            Path there = library.resolve(file);
            Files.createDirectories(there.getParent());
            Files.copy(Path.of(file), there);
        }
        return library;
    }

    /** Starts the program in a terminal, which it leads as a login shell does. */
    private static Process start(Path library) throws IOException {
        String program = String.join(
                "' '",
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Dnative.encoding=UTF-8",
                "-Dversewind.today=" + TODAY,
                "-Dversewind.terminal.size=24 80",
                "-cp",
                System.getProperty("java.class.path"),
                "versewind.Main",
                "--library",
                library.toString(),
                "ash-wednesday");
        ProcessBuilder builder = new ProcessBuilder(
                SCRIPT.toString(), "-qfc", "stty raw -echo; exec '" + program + "' 2>/dev/null", "/dev/null");
        builder.environment().putAll(Map.of("TERM", "xterm", "SHELL", "/bin/sh"));
        return builder.start();
    }

    /** Types the keys, one at a time or all at once, and kills program or terminal when so many bytes are shown. */
    private static byte[] shown(Process terminal, String keys, Random random) throws Exception {
        boolean isPasted = random.nextBoolean();
        int enough = 3000 + random.nextInt(isPasted ? 1500 : 6000);
        OutputStream in = terminal.getOutputStream();
        InputStream out = terminal.getInputStream();
        byte[] seen = out.readNBytes(2000);
        int typed = 0;
        long start = System.nanoTime();
        while (seen.length < enough && System.nanoTime() - start < TimeUnit.MILLISECONDS.toNanos(1500)) {
            if (typed < keys.length() && (isPasted || out.available() == 0)) {
                int next = isPasted ? keys.length() : typed + 1;
                in.write(keys.substring(typed, next).getBytes(StandardCharsets.UTF_8));
                in.flush();
                typed = next;
            }
            seen = joined(seen, out.readNBytes(out.available()));
            LockSupport.parkNanos(MOMENT_NS);
        }
        ProcessHandle program = terminal.children().findFirst().orElseThrow();
        switch (random.nextInt(4)) {
            case 0 -> terminal.toHandle().destroyForcibly();
            case 1 -> program.destroy();
            case 2 -> new ProcessBuilder("kill", "-s", "HUP", Long.toString(program.pid())).start();
            default -> program.destroyForcibly();
        }
        seen = joined(seen, out.readAllBytes());
        assertThat(terminal.waitFor(20, TimeUnit.SECONDS)).isTrue();
        program.onExit().get(20, TimeUnit.SECONDS);
        return seen;
    }

    private static byte[] joined(byte[] one, byte[] other) {
        byte[] both = Arrays.copyOf(one, one.length + other.length);
        System.arraycopy(other, 0, both, one.length, other.length);
        return both;
    }

    /** The screen as it was before it was left, if it was. */
    private static List<String> screen(byte[] seen) {
        TerminalType model = terminal();
        String text =
                new String(seen, StandardCharsets.UTF_8).substring(model.enter().length());
        int left = text.lastIndexOf(model.leave());
        VirtualScreen screen = new VirtualScreen(80, 24, StandardCharsets.UTF_8);
        screen.writeBytes((left < 0 ? text : text.substring(0, left)).getBytes(StandardCharsets.UTF_8));
        screen.obey();
        return rows(screen);
    }

    private static TerminalType terminal() {
        try {
            return TerminalType.of(Map.of("TERM", "xterm"));
        } catch (NoTerminalException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    @Test
    void of_every_edit_whose_effect_had_reached_the_screen_none_is_lost() throws Exception {
        assumeTrue(Files.isExecutable(SCRIPT), "needs script, which plays a terminal");
        int known = 0;
        for (int seed = 0; seed < COUNT; seed++) {
            Random random = new Random(seed);
            String keys = random.ints(TYPED, 0, KEYS.length())
                    .mapToObj(KEYS::charAt)
                    .collect(StringBuilder::new, StringBuilder::append, StringBuilder::append)
                    .toString();
            Path library = library();
            List<State> states = model(new Library(library).openPlan("ash-wednesday"), keys);
            List<String> shown = screen(shown(start(library), keys, random));

            List<Integer> possible = IntStream.range(0, states.size())
                    .filter(i -> rows(View.paint(states.get(i))).equals(shown))
                    .boxed()
                    .toList();
            OpenPlan after = new Library(library).openPlan("ash-wednesday");
            Plan kept = after.draft().map(work -> ((Autosave.Kept) work).plan()).orElse(after.plan());
            if (!possible.isEmpty()) {
                known++;
                Stream<Plan> since = states.subList(possible.get(0), states.size()).stream()
                        .map(state -> state.work().orElseThrow().plan());
                assertThat(since)
                        .as("seed %d, keys %s, shown after %s", seed, keys, possible)
                        .contains(kept);
            }
        }
        assertThat(known).isGreaterThan(COUNT * 3 / 4);
    }
}
