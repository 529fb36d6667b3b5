package versewind.stoplist;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Organs at random, printed in every layout and language and read again. Figures: {@code target/round-trip.txt}. */
class LayoutsTest {

    private static final int SEED = Integer.getInteger("roundtrip.seed", 11);
    private static final int ORGANS = Integer.getInteger("roundtrip.organs", 1);
    private static final Path REPORT = Path.of("target/round-trip.txt");

    private static final class Sum {
        private int stops;
        private int right;
        private int invented;
        private int lists;
        private int couplers;
        private int silent;

        void add(ReadingScore score) {
            lists++;
            stops += score.stops();
            right += score.right();
            invented += score.invented();
            couplers += score.couplers() ? 1 : 0;
            silent += score.silent() ? 1 : 0;
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%5.1f %% of %5d stops, %3d invented, couplers %5.1f %%, silent %d of %d lists",
                    100.0 * right / stops,
                    stops,
                    invented,
                    100.0 * couplers / lists,
                    silent,
                    lists);
        }
    }

    @Test
    void organs_come_out_of_their_printed_lists_as_they_went_in() throws IOException {
        Map<String, Sum> sums = new LinkedHashMap<>();
        List<String> cases = new ArrayList<>();
        Sum all = new Sum();
        for (ListLayout layout : ListLayout.values()) {
            for (PrintedOrgan.Words words : PrintedOrgan.languages()) {
                Random random = new Random(SEED);
                for (int i = 0; i < ORGANS; i++) {
                    PrintedOrgan organ = PrintedOrgan.atRandom(words, 1 + (i + 1) % 3, random);
                    String text = layout.print(organ);
                    ReadingScore score = ReadingScore.of(organ, StopList.read(text));
                    all.add(score);
                    sums.computeIfAbsent(layout.name(), key -> new Sum()).add(score);
                    sums.computeIfAbsent(words.language(), key -> new Sum()).add(score);
                    if (!score.wrong().isEmpty()) {
                        cases.add(
                                "#### " + layout + " " + words.language() + " " + i + (score.silent() ? " SILENT" : "")
                                        + "\n" + text + "\n" + String.join("\n", score.wrong()) + "\n");
                    }
                }
            }
        }
        StringBuilder report = new StringBuilder(all + "\n");
        sums.forEach((name, sum) -> report.append(String.format(Locale.ROOT, "%-26s%s%n", name, sum)));
        Files.writeString(REPORT, report + "\n" + String.join("\n", cases));
        assertThat(100.0 * all.right / all.stops)
                .as("stops wholly right, of 100")
                .isGreaterThan(98);
        assertThat(all.invented).as("invented stops").isLessThanOrEqualTo(8);
        assertThat(100.0 * all.couplers / all.lists)
                .as("lists with all couplers, of 100")
                .isGreaterThan(95);
        assertThat(all.silent)
                .as("lists that are wrong, and nothing in them is said to be in doubt")
                .isZero();
    }
}
