package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import versewind.Shipped;
import versewind.screen.plan.FileEvent;
import versewind.screen.state.Event;
import versewind.screen.state.State;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Key;
import versewind.screen.toolkit.Marks;
import versewind.store.OpenPlan;

/** The parts of the README that are made from the program say what the program says. */
class ReadmeTest {

    private static final Path README = Path.of("README.md");

    private static final List<String> MOST_USED = List.of(
            "Space", "/", "n", "]", "Tab", "1", "+", "#", "<", ">", "h", "e", "P", "f", "I", "u", "s", "W", "K", "?");

    private static final int LONGEST_BYTES = 12_000;

    @Test
    void the_keys_are_those_of_the_help() throws Exception {
        check("<!-- keys: made by the tests from the tables of keys; do not edit -->", "<!-- end of keys -->", keys());
    }

    @Test
    void the_readme_is_short() throws Exception {
        assertThat(Files.size(README)).isLessThanOrEqualTo(LONGEST_BYTES);
    }

    @Test
    void the_picture_is_the_screen_of_a_shipped_plan() throws Exception {
        check("<!-- screen: made by the tests; do not edit -->", "<!-- end of screen -->", picture());
    }

    private static String keys() {
        List<HelpScreen.Line> lines = HelpScreen.keyLines();
        return MOST_USED.stream()
                .map(key -> lines.stream()
                        .filter(line -> List.of(line.keys().split(", ", -1)).contains(key))
                        .findFirst()
                        .orElseThrow(() -> new AssertionError("the help does not have " + key)))
                .map(line -> "| " + names(line.keys()) + " | " + line.does() + " |\n")
                .collect(Collectors.joining("", "\n| key | what it does |\n| --- | --- |\n", "\n"));
    }

    private static String names(String keys) {
        return Stream.of(keys.split(", ", -1)).map(key -> "`" + key + "`").collect(Collectors.joining(", "));
    }

    private static String picture() throws Exception {
        OpenPlan open = Shipped.plan("harvest-festival");
        State state = Update.empty(80, 24, Marks.UNICODE, LocalDate.of(2026, 9, 28));
        Event opened = new FileEvent.PlanOpened(
                "harvest-festival", open.plan(), open.instrument(), open.organ().calibrated(), Optional.empty());
        state = Update.step(state, opened).state();
        for (char key : List.of('n', 'n', 'n', 'n', 'n')) {
            state = Update.step(state, new Event.Press(Key.of(key))).state();
        }
        Frame frame = View.paint(state);
        return IntStream.range(0, frame.height())
                .mapToObj(frame::row)
                .collect(Collectors.joining("\n", "\n```text\n", "\n```\n\n"));
    }

    private static void check(String start, String end, String wanted) throws Exception {
        String readme = Files.readString(README);
        int from = readme.indexOf(start) + start.length() + 1;
        int to = readme.indexOf(end);
        assertThat(to).as("the README has its marks").isGreaterThanOrEqualTo(from);
        if (Boolean.getBoolean("golden.update")) {
            assertThat(System.getenv("CI")).isNotEqualTo("true");
            readme = readme.substring(0, from) + wanted + readme.substring(to);
            Files.writeString(README, readme);
            to = readme.indexOf(end);
        }
        assertThat(readme.substring(from, to)).isEqualTo(wanted);
    }
}
