package versewind.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.screen.Update;
import versewind.screen.View;
import versewind.screen.plan.FileEvent;
import versewind.screen.state.Event;
import versewind.screen.state.State;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Key;
import versewind.screen.toolkit.Marks;
import versewind.store.BadFile;
import versewind.store.Library;
import versewind.store.OpenPlan;

/**
 * What a start and a key may cost, in what can be counted and is the same on every machine. A limit lies a little above
 * what was counted when it was set; it is there so that the cost does not creep.
 */
class BudgetTest {

    private static final String PLAN = "harvest-festival";
    /** What no first screen may wait for. */
    private static final List<String> NOT_YET = List.of(
            "java.lang.runtime.ObjectMethods",
            "java.time.format.",
            "java.time.zone.",
            "picocli.",
            "versewind.plan.ChurchYear",
            "versewind.proposal.Registration",
            "versewind.rules.Advice",
            "versewind.rules.Chorus",
            "versewind.stoplist.");

    private static final int COLUMNS = 80;
    private static final int ROWS = 24;

    private final VirtualScreen screen = new VirtualScreen(COLUMNS, ROWS, StandardCharsets.UTF_8);
    private final Emitter emitter = new Emitter(screen, StandardCharsets.UTF_8, Palette.COLOUR);
    private State state = Update.empty(COLUMNS, ROWS, Marks.UNICODE, LocalDate.of(2026, 10, 1));

    private void open(String plan) throws BadFile {
        OpenPlan file = new Library(Path.of("")).openPlan(plan);
        state = Update.step(
                        state,
                        new FileEvent.PlanOpened(
                                plan,
                                file.plan(),
                                file.instrument(),
                                file.organ().calibrated(),
                                Optional.empty()))
                .state();
    }

    private void press(String key) {
        Key pressed = key.length() == 1 ? Key.of(key.charAt(0)) : Key.of(Key.Named.valueOf(key));
        state = Update.step(state, new Event.Press(pressed)).state();
    }

    private int paint() throws IOException {
        emitter.paint(View.paint(state));
        return screen.obey();
    }

    @ParameterizedTest
    @CsvSource({
        "harvest-festival, 2450",
        "easter-cathedral, 2750",
    })
    void the_first_screen_costs_few_bytes(String plan, int most) throws IOException, BadFile {
        open(plan);
        emitter.paint(View.paint(state, Frame.Extent.AT_ONCE));
        assertThat(screen.obey() + paint()).isBetween(1_000, most);
    }

    @ParameterizedTest
    @CsvSource({
        "harvest-festival, ' ', 108",
        "harvest-festival, DOWN, 60",
        "harvest-festival, n, 650",
        "easter-cathedral, ' ', 122",
        "easter-cathedral, DOWN, 60",
        "easter-cathedral, n, 810",
    })
    void a_key_costs_few_bytes_in_one_write(String plan, String key, int most) throws IOException, BadFile {
        open(plan);
        paint();
        screen.writes();
        press(key);
        assertThat(paint()).isBetween(1, most);
        assertThat(screen.writes()).isEqualTo(1);
        assertThat(paint()).as("bytes where nothing changes").isZero();
        assertThat(screen.writes()).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "harvest-festival, ' ', 240000",
        "harvest-festival, DOWN, 180000",
        "easter-cathedral, ' ', 330000",
        "easter-cathedral, DOWN, 250000",
    })
    void a_key_leaves_little_to_be_swept_up(String plan, String key, long most) throws IOException, BadFile {
        open(plan);
        String back = key.equals("DOWN") ? "UP" : key;
        long before = 0;
        int times = 20;
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        for (int i = -times; i < 2 * times; i++) {
            if (i == 0) {
                before = threads.getThreadAllocatedBytes(Thread.currentThread().getId());
            }
            press(i % 2 == 0 ? key : back);
            emitter.paint(View.paint(state));
        }
        long bytes = threads.getThreadAllocatedBytes(Thread.currentThread().getId()) - before;
        assertThat(bytes / (2L * times)).isBetween(1L, most);
    }

    @Test
    void the_first_screen_needs_few_classes_and_none_that_read_clocks_commands_or_rules(@TempDir Path folder)
            throws IOException, InterruptedException {
        List<String> loaded = loadedBeforeTheFirstFrame(folder);
        assertThat(loaded.stream().filter(name -> name.startsWith("versewind.")).count())
                .isBetween(200L, 620L);
        assertThat(loaded)
                .filteredOn(name -> NOT_YET.stream().anyMatch(name::startsWith))
                .isEmpty();
    }

    /** The editor is given a size, and an input that has ended: it paints and leaves. */
    private static List<String> loadedBeforeTheFirstFrame(Path folder) throws IOException, InterruptedException {
        Path log = folder.resolve("classes");
        Process java = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xshare:auto",
                        "-Xlog:class+load:file=" + log + ":none",
                        "-Dversewind.today=2026-10-01",
                        "-D" + Tty.SIZE_PROPERTY + "=24 80",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "versewind.Main",
                        "--library",
                        Path.of("").toAbsolutePath().toString(),
                        PLAN)
                .redirectInput(ProcessBuilder.Redirect.from(
                        Files.createFile(folder.resolve("empty")).toFile()))
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        assertThat(java.waitFor(60, TimeUnit.SECONDS)).isTrue();
        List<String> names = Files.readAllLines(log).stream()
                .map(line -> line.split(" ", 2)[0])
                .toList();
        int painted = names.indexOf("versewind.terminal.Console$SignalListener");
        assertThat(painted)
                .as("the class that is loaded when the first frame is written")
                .isPositive();
        return names.subList(0, painted);
    }
}
