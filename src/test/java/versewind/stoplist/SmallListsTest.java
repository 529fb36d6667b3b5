package versewind.stoplist;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import versewind.Golden;

/**
 * Small lists of invented organs, each below a sentence that says what it shows, and above what is read of it. A line
 * "+ The English organ" stands for the list of that name. What names mean is common practice, no source.
 */
class SmallListsTest {

    private static final String NAME = "small-stop-lists.txt";
    private static final Pattern CASE =
            Pattern.compile("^## (.+)\n((?:(?!=== read$).*\n)*)=== read\n(?:.+\n)*", Pattern.MULTILINE);
    private static final Pattern NAMED = Pattern.compile("^\\+ (.+)\n", Pattern.MULTILINE);

    @Test
    void small_lists_are_read_as_it_says_below_them() throws IOException {
        String text = Files.readString(Path.of("src/test/resources/golden", NAME));
        Map<String, String> named = new HashMap<>();
        StringBuilder read = new StringBuilder();
        Matcher each = CASE.matcher(text);
        while (each.find()) {
            String list = NAMED.matcher(each.group(2)).replaceFirst(name -> named.get(name.group(1)));
            named.put(each.group(1), list);
            StopList reading = StopList.read(list);
            assertThat(NewInstrument.of(reading, "New").isPresent())
                    .as(each.group(1))
                    .isEqualTo(reading.divisions().stream()
                            .anyMatch(division ->
                                    !division.isPedal() && !division.stops().isEmpty()));
            read.append(read.isEmpty() ? "## " : "\n## ")
                    .append(each.group(1))
                    .append('\n')
                    .append(each.group(2))
                    .append("=== read\n")
                    .append(ReadingText.brief(reading));
        }
        Golden.check(NAME, read.toString());
    }
}
