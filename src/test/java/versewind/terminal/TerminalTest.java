package versewind.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The whole way: a shell, the launcher, Java, a terminal. */
@Tag("slow")
class TerminalTest {

    private static final Duration PATIENCE = Duration.ofSeconds(30);

    @TempDir
    static Path installation;

    private static Installed installed;

    @TempDir
    Path folder;

    private Pane pane;

    @BeforeAll
    static void install() throws IOException, URISyntaxException {
        assumeTrue(Pane.isPossible(), "tmux is not here, so no terminal can be played");
        installed = Installed.in(installation);
        archive().onExit().join();
    }

    /** Makes the archive of classes, which the first session would else make behind another test's back. */
    private static Process archive() throws IOException {
        return new ProcessBuilder(installed.link().toString(), "--archive").start();
    }

    @BeforeEach
    void open() throws IOException {
        pane = new Pane(folder);
    }

    @AfterEach
    void close() throws IOException {
        pane.close();
        installed.processes("java").forEach(TerminalTest::awaitEnd);
    }

    @Test
    void every_key_is_heard_and_also_what_was_typed_before_the_program_stood() throws IOException {
        start("");
        pane.type("a", "b", "Up");
        pane.await("Echo \u2192 UTF-8");
        pane.type("C-c", "C-z", "C-s", "C-q", "C-\\", "C-d", "C-v", "C-o", "C-y");
        pane.type("BTab", "F1", "F12", "Home", "DC", "Escape", "\u00E9");
        pane.await(keys("a", "b", "UP", "control c", "control z", "control s", "control q", "control \\"));
        pane.await(keys("control \\", "control d", "control v", "control o", "control y", "BACK_TAB"));
        pane.await(keys("BACK_TAB", "F1", "F12", "HOME", "DELETE", "ESCAPE", "\u00E9"));
    }

    private static String keys(String... names) {
        return "key<" + String.join(">\nkey<", names) + ">";
    }

    @Test
    void a_change_of_size_is_heard_without_a_key() throws IOException {
        startAndWait();
        pane.resize(70, 20);
        pane.await("size<70x20>");
    }

    @Test
    void a_paste_is_heard_as_one() throws IOException {
        startAndWait();
        pane.paste("Quintadena\n16");
        pane.await("paste<Quintadena|16>");
    }

    @Test
    void the_terminal_is_left_as_it_was_found() throws IOException {
        startAndWait();
        pane.type("Q");
        pane.await("status=0");
        assertLeftAsFound();
    }

    @Test
    void the_first_session_makes_the_archive_that_later_ones_start_from() throws IOException {
        Path stamp = installed.folder().resolve("lib/versewind.jsa.stamp");
        Files.delete(stamp);
        startAndWait();
        pane.type("Q");
        pane.await("status=0");
        assertLeftAsFound();
        pane.await(screen -> Files.exists(stamp));
        assertThat(installed.folder().resolve("lib/versewind.jsa")).exists();
    }

    @Test
    void an_error_is_told_where_it_can_be_read() throws IOException {
        start("");
        pane.await("Echo");
        pane.type("!");
        pane.await("status=1");
        assertThat(pane.screen().replace("\n", "")).contains("IllegalStateException: the bellows are empty");
        assertLeftAsFound();
    }

    @Test
    void a_killed_java_leaves_the_terminal_as_it_was_found() throws IOException {
        startAndWait();
        signal("KILL", installed.processes("java").findAny().orElseThrow().pid());
        pane.await("status=137");
        assertLeftAsFound();
    }

    @Test
    void whoever_is_told_to_end_leaves_the_terminal_and_does_the_last_work() throws IOException {
        startAndWait();
        signal("TERM", launcher());
        pane.await("status=143");
        assertThat(errors()).startsWith("kept 1 after hangup");
        assertLeftAsFound();
    }

    @Test
    void a_closed_window_gives_time_for_the_last_work() throws IOException {
        startAndWait();
        ProcessHandle java = installed.processes("java").findAny().orElseThrow();
        pane.close();
        awaitEnd(java);
        assertThat(errors()).startsWith("kept 1 after hangup");
    }

    private static void awaitEnd(ProcessHandle process) {
        process.onExit().orTimeout(PATIENCE.toSeconds(), TimeUnit.SECONDS).join();
    }

    @Test
    void a_stopped_program_comes_back_with_its_modes_and_its_screen() throws IOException {
        startAndWait();
        pane.resize(79, 24);
        pane.await("size<79x24>");
        signal("STOP", -launcher());
        pane.await("Stopped");
        // This shell has no modes of its own, and Enter is no line end to it in those that it is left with.
        pane.type("stty sane; fg", "C-j");
        pane.await(screen -> !screen.contains("Stopped"));
        pane.await("Echo");
        pane.type("C-z", "x");
        pane.await("key<control z>\nkey<x>");
        pane.type("Q");
        pane.await(screen -> !screen.contains("Echo"));
        assertThat(pane.state("alternate_on")).isEqualTo("0");
    }

    @Test
    void asked_to_stop_the_program_leaves_the_screen_and_takes_it_again_when_it_goes_on() throws IOException {
        startAndWait();
        signal("TSTP", -launcher());
        pane.await("Stopped");
        pane.awaitState("alternate_on", "0");
        pane.command("fg");
        pane.await("Echo");
        pane.type("x");
        pane.await("key<x>");
        pane.type("Q");
        pane.await(screen -> !screen.contains("Echo"));
    }

    @Test
    void whatever_signal_ends_the_program_the_terminal_is_left_and_the_status_says_which() throws IOException {
        for (Map.Entry<String, Integer> each :
                Map.of("INT", 130, "QUIT", 131, "USR1", 138, "ALRM", 142).entrySet()) {
            startAndWait();
            signal(each.getKey(), launcher());
            pane.await("status=" + each.getValue());
            assertLeftAsFound();
            pane.command("clear");
            // what is typed before the screen is cleared would be cleared with it
            pane.await(screen -> !screen.contains("over"));
        }
    }

    @Test
    void without_its_launcher_the_program_ends_and_leaves_the_terminal() throws IOException {
        startAndWait();
        ProcessHandle java = installed.processes("java").findAny().orElseThrow();
        signal("KILL", launcher());
        awaitEnd(java);
        assertThat(errors()).contains("kept 1 after hangup");
        assertThat(pane.state("alternate_on")).isEqualTo("0");
        pane.command("stty -a | grep -o '[^ ]*icanon' | sed 's/^/has /'");
        pane.await("has icanon");
    }

    @ParameterizedTest
    @ValueSource(strings = {"TERM", "HUP", "KILL"})
    void on_a_terminal_that_takes_no_more_output_the_program_ends_all_the_same(String signal) throws Exception {
        Path script = Path.of("/usr/bin/script");
        assumeTrue(Files.isExecutable(script), "needs script, which plays a terminal that is not read");
        ProcessBuilder builder = new ProcessBuilder(
                script.toString(), "-qfc", "stty rows 24 cols 80; '" + installed.link() + "'; true", "/dev/null");
        builder.environment().putAll(Map.of("TERM", "xterm", "LC_ALL", "C.UTF-8"));
        Process terminal = builder.start();
        try {
            assertThat(terminal.getInputStream().readNBytes(200)).hasSize(200);
            terminal.getOutputStream().write("abcdefghijklmno".repeat(200).getBytes(StandardCharsets.UTF_8));
            terminal.getOutputStream().flush();
            ProcessHandle java = installed.processes("java").findAny().orElseThrow();
            long idle = -1;
            for (long used = used(java); used > idle; used = used(java)) {
                idle = used;
                Thread.sleep(300);
            }

            signal(signal, launcher());

            awaitEnd(java);
            assertThat(terminal.isAlive()).isTrue();
        } finally {
            terminal.destroyForcibly();
        }
    }

    private static long used(ProcessHandle process) {
        return process.info().totalCpuDuration().orElseThrow().toMillis();
    }

    @Test
    void a_dumb_terminal_is_refused_and_left_alone() throws IOException {
        start("env TERM=dumb");
        pane.await("status=2");
        assertThat(pane.screen().replace("\n", "")).contains("the full screen needs a terminal: TERM is dumb");
        assertLeftAsFound();
    }

    @Test
    void a_command_that_prints_finds_the_terminal_as_ever_and_the_editor_finds_it_set() throws IOException {
        Path java = Files.createDirectories(folder.resolve("java/bin")).resolve("java");
        Files.writeString(java, "#!/bin/sh\nstty -a </dev/tty | grep -o '[^ ]*icanon' | sed 's/^/has /'\n");
        Files.writeString(folder.resolve("java/release"), "JAVA_VERSION=\"17\"\n");
        assertThat(java.toFile().setExecutable(true)).isTrue();
        for (String command : new String[] {"assess", "--help", "assess plan.json"}) {
            pane.command("clear; JAVA_HOME=java '" + installed.link() + "' " + command);
            pane.await("has icanon\n$");
        }
        for (String command : new String[] {"", "edit", "desk", "plan.json", "plans/plan"}) {
            pane.command("clear; JAVA_HOME=java '" + installed.link() + "' " + command);
            pane.await("has -icanon\n$");
        }
    }

    @Test
    void no_program_of_somebody_else_sets_the_terminal() throws IOException {
        Path others = Files.createDirectories(folder.resolve("others"));
        for (String name : List.of("stty", "sh")) {
            Path other = others.resolve(name);
            Files.writeString(
                    other, "#!/bin/sh\n: >'" + folder.resolve("entered") + "'\nexec /bin/" + name + " \"$@\"\n");
            assertThat(other.toFile().setExecutable(true)).isTrue();
        }
        start("env PATH='" + others + "':\"$PATH\"");
        pane.await("Echo \u2192");
        pane.type("Q");
        pane.await("status=0");
        assertThat(folder.resolve("entered")).doesNotExist();
        assertLeftAsFound();
    }

    @Test
    void without_the_launcher_the_terminal_is_left_as_found_too() throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String program = "'" + java + "' -cp '" + installed.folder() + "/lib/*' " + Echo.class.getName();
        pane.command("stty -g >before; " + program + " 2>errors; echo status=$?; stty -g >after; echo o''ver");
        pane.await("Echo \u2192");
        pane.type("C-c", "C-z");
        pane.await(keys("control c", "control z"));
        signal("TERM", installed.processes("java").findAny().orElseThrow().pid());
        pane.await("status=143");
        assertThat(errors()).startsWith("kept 3 after hangup");
        assertLeftAsFound();
    }

    @Test
    void without_colours_there_are_none_and_without_utf_8_there_is_ascii() throws IOException {
        start("env NO_COLOR=1 LC_ALL=C");
        pane.await("Echo ASCII");
        pane.type("Q");
        pane.await("status=0");
    }

    /** Starts the program behind a word or two of shell, with its errors on the screen. */
    private void start(String before) throws IOException {
        pane.command(line(before, ""));
    }

    /** Starts the program with its errors in a file and waits until it stands. */
    private void startAndWait() throws IOException {
        pane.command(line("", "2>errors"));
        pane.await("Echo");
    }

    private static String line(String before, String after) {
        return "stty -g >before; " + before + " '" + installed.link() + "' " + after
                + "; echo status=$?; stty -g >after; echo o''ver";
    }

    private void assertLeftAsFound() throws IOException {
        pane.await("over");
        assertThat(Files.readString(folder.resolve("after"))).isEqualTo(Files.readString(folder.resolve("before")));
        assertThat(pane.screen()).contains("stty -g >before").doesNotContain("Echo \u2192");
        assertThat(pane.state("alternate_on")).isEqualTo("0");
        assertThat(pane.state("cursor_flag")).isEqualTo("1");
        assertThat(pane.state("wrap_flag")).isEqualTo("1");
    }

    private String errors() throws IOException {
        return Files.readString(folder.resolve("errors"));
    }

    private static long launcher() {
        long java = installed.processes("java").findAny().orElseThrow().pid();
        return ProcessHandle.of(java)
                .flatMap(ProcessHandle::parent)
                .orElseThrow()
                .pid();
    }

    private static void signal(String name, long process) throws IOException {
        Process kill = new ProcessBuilder("kill", "-s", name, "--", Long.toString(process))
                .inheritIO()
                .start();
        assertThat(kill.onExit().join().exitValue()).isZero();
    }
}
