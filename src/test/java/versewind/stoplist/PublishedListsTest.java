package versewind.stoplist;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import versewind.organ.Coupler;

/**
 * Lists after the manner of published ones, places and people replaced; the kind of source stands in the first line of
 * each, and below it what is meant, by the knowledge of organs alone; "boxed" names the divisions in a box. Figures:
 * {@code target/published-lists.txt}.
 */
class PublishedListsTest {

    private static final Path LISTS =
            Path.of(System.getProperty("published.lists", "src/test/resources/stoplists/published"));
    private static final Path REPORT = Path.of("target/published-lists.txt");
    private static final String MEANT = "=== meant";
    private static final String BOXED = "boxed";

    private static PrintedOrgan meant(List<String> lines) {
        List<PrintedOrgan.KnownDivision> divisions = new ArrayList<>();
        List<PrintedOrgan.KnownCoupler> couplers = new ArrayList<>();
        for (String line : lines) {
            String head = line.substring(0, line.indexOf(": "));
            String rest = line.substring(line.indexOf(": ") + 2);
            if (head.equals(BOXED)) {
                continue;
            }
            if (!head.equals("couplers")) {
                boolean isPedal = DivisionHeading.read(head + ": -", "")
                        .filter(each -> each.word().isPedal())
                        .isPresent();
                divisions.add(new PrintedOrgan.KnownDivision(
                        divisions.size(),
                        isPedal,
                        Stream.of(rest.split("; ", -1))
                                .map(PrintedOrgan.KnownStop::of)
                                .toList()));
            } else if (!rest.equals("none")) {
                Stream.of(rest.split(", ", -1)).forEach(each -> couplers.add(coupler(each)));
            }
        }
        return new PrintedOrgan(new PrintedOrgan.Words("", Map.of()), divisions, couplers);
    }

    /** "2>1 4": the second division listed sounds an octave up on the first. */
    private static PrintedOrgan.KnownCoupler coupler(String text) {
        Coupler.Kind kind = text.endsWith(" 16")
                ? Coupler.Kind.SUB_OCTAVE
                : text.endsWith(" 4")
                        ? Coupler.Kind.OCTAVE
                        : text.endsWith(" off") ? Coupler.Kind.UNISON_OFF : Coupler.Kind.UNISON;
        return new PrintedOrgan.KnownCoupler(text.charAt(0) - '1', text.charAt(2) - '1', kind);
    }

    /** The divisions that stand in a box, by their places, and what is meant to; blank where that is not said. */
    private static String boxes(List<String> meant, StopList list) {
        Optional<String> said =
                meant.stream().filter(line -> line.startsWith(BOXED)).findFirst();
        String read = IntStream.range(0, list.divisions().size())
                .filter(i -> list.divisions().get(i).enclosed()
                        || list.divisions().get(i).stops().stream()
                                .anyMatch(stop -> stop.isBoxed().orElse(false)))
                .mapToObj(i -> Integer.toString(i + 1))
                .collect(Collectors.joining(", ", BOXED + ": ", ""));
        return said.filter(each -> !each.equals(read))
                .map(each -> each + ", read as " + read)
                .orElse("");
    }

    @Test
    void published_lists_come_out_as_they_are_meant() throws IOException {
        List<Path> files;
        try (Stream<Path> listed = Files.list(LISTS)) {
            files = listed.sorted().toList();
        }
        int stops = 0;
        int right = 0;
        int invented = 0;
        int couplers = 0;
        int silent = 0;
        List<String> boxed = new ArrayList<>();
        StringBuilder report = new StringBuilder();
        for (Path file : files) {
            List<String> lines = Files.readAllLines(file);
            int end = lines.indexOf(MEANT);
            StopList list = StopList.read(String.join("\n", lines.subList(1, end)));
            List<String> meant = lines.subList(end + 1, lines.size());
            ReadingScore score = ReadingScore.of(meant(meant), list);
            String boxes = boxes(meant, list);
            if (!boxes.isEmpty()) {
                boxed.add(file.getFileName() + ": " + boxes);
            }
            stops += score.stops();
            right += score.right();
            invented += score.invented();
            couplers += score.couplers() ? 1 : 0;
            silent += score.silent() ? 1 : 0;
            report.append(String.format(
                    Locale.ROOT,
                    "%-28s%3d of %3d stops, %d invented, couplers %s%s%n",
                    file.getFileName(),
                    score.right(),
                    score.stops(),
                    score.invented(),
                    score.couplers() ? "right" : "WRONG",
                    score.silent() ? ", SILENT" : ""));
            score.wrong().forEach(each -> report.append("    ").append(each).append('\n'));
            if (!score.wrong().isEmpty()) {
                list.doubts()
                        .forEach(
                                each -> report.append("    doubt ").append(each).append('\n'));
            }
        }
        String sum = String.format(
                Locale.ROOT,
                "%d lists: %.1f %% of %d stops, %d invented, all couplers in %d, silent %d%n",
                files.size(),
                100.0 * right / stops,
                stops,
                invented,
                couplers,
                silent);
        Files.writeString(REPORT, sum + report);
        assertThat(100.0 * right / stops).as("stops wholly right, of 100").isGreaterThan(97);
        assertThat(invented).as("invented stops").isLessThanOrEqualTo(8);
        assertThat(10 * couplers).as("lists with all couplers, tenfold").isGreaterThanOrEqualTo(9 * files.size());
        assertThat(boxed).as("boxes that are not as they are meant").isEmpty();
        assertThat(silent)
                .as("lists that are wrong, and nothing in them is said to be in doubt")
                .isZero();
    }
}
