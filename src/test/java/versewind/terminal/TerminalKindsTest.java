package versewind.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
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

/** The built program on terminals of several kinds, in two locales and three sizes: its screens, and what it leaves. */
@Tag("slow")
class TerminalKindsTest {

    private static final Path PROGRAM =
            Path.of("target/versewind/bin/versewind").toAbsolutePath();
    private static final String NAME = "ash-wednesday";
    private static final List<int[]> SIZES = List.of(new int[] {60, 18}, new int[] {80, 24}, new int[] {200, 60});

    @TempDir
    private Path folder;

    @BeforeAll
    static void package_first() {
        assumeTrue(Files.isExecutable(PROGRAM), "mvn package makes the program");
        assumeTrue(Pane.isPossible(), "tmux is not here, so no terminal can be played");
    }

    private static List<String> rows(State state) {
        Frame frame = View.paint(state);
        return IntStream.range(0, frame.height())
                .mapToObj(row -> frame.row(row).stripTrailing())
                .toList();
    }

    /** The program as it should be when the plan was opened. */
    private static State opened(OpenPlan open, int[] size, Marks marks) {
        State empty = Update.empty(size[0], size[1], marks, LocalDate.now(ZoneId.systemDefault()));
        return Update.step(
                        empty,
                        new FileEvent.PlanOpened(
                                NAME,
                                open.plan(),
                                open.instrument(),
                                open.organ().calibrated(),
                                Optional.empty()))
                .state();
    }

    /** True if a screen is as expected; without UTF-8, letters beyond ASCII stand as others do. */
    private static boolean shows(String screen, List<String> rows, boolean isUtf8) {
        List<String> lines = screen.lines().map(String::stripTrailing).toList();
        if (isUtf8 || lines.size() != rows.size()) {
            return lines.equals(rows);
        }
        return IntStream.range(0, rows.size())
                .allMatch(row -> lines.get(row).matches("\\p{ASCII}*") && isAlike(lines.get(row), rows.get(row)));
    }

    private static boolean isAlike(String line, String row) {
        return line.length() == row.length()
                && IntStream.range(0, row.length())
                        .allMatch(i -> row.charAt(i) > '~' || row.charAt(i) == line.charAt(i));
    }

    @ParameterizedTest
    @ValueSource(strings = {"xterm", "xterm-256color", "screen", "tmux", "linux", "vt100"})
    void screens_are_as_expected_and_the_terminal_is_left_as_it_was_found(String term) throws IOException, BadFile {
        OpenPlan open = new Library(Path.of("")).openPlan(NAME);
        for (int[] size : SIZES) {
            for (boolean isUtf8 : new boolean[] {true, false}) {
                State first = opened(open, size, isUtf8 ? Marks.UNICODE : Marks.ASCII);
                State next = Update.step(first, new Event.Press(Key.of('n'))).state();
                try (Pane pane = new Pane(folder)) {
                    pane.resize(size[0], size[1]);
                    pane.command("stty -a >before; echo be''fore");
                    pane.await("before\n$");
                    String found = pane.screen();
                    String words = "TERM=" + term + " LC_ALL=" + (isUtf8 ? "C.UTF-8" : "C") + " '" + PROGRAM
                            + "' --library '" + Path.of("").toAbsolutePath() + "' " + NAME;
                    pane.command("clear; " + words + "; echo status=$?; stty -a >after; echo af''ter");
                    pane.await(screen -> shows(screen, rows(first), isUtf8));
                    pane.type("n");
                    pane.await(screen -> shows(screen, rows(next), isUtf8));
                    pane.type("q");
                    pane.await("status=0\nafter\n$");
                    assertThat(Files.readString(folder.resolve("after")))
                            .isEqualTo(Files.readString(folder.resolve("before")));
                    assertThat(found).contains("stty -a");
                    for (String flag : List.of("cursor_flag", "wrap_flag")) {
                        assertThat(pane.state(flag)).as(flag).isEqualTo("1");
                    }
                    for (String flag : List.of("alternate_on", "keypad_flag", "mouse_any_flag", "origin_flag")) {
                        assertThat(pane.state(flag)).as(flag).isEqualTo("0");
                    }
                    assertThat(pane.screen())
                            .doesNotContain(open.plan().hymns().get(0).title());
                }
            }
        }
    }
}
