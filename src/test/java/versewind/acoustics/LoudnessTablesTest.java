package versewind.acoustics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import versewind.Published;

final class LoudnessTablesTest {

    private static final Map<String, double[][]> TABLES = Map.of(
            "RAP", new double[][] {LoudnessTables.RANGE_DB},
            "DLL", LoudnessTables.LOW_CORRECTION_DB,
            "LTQ", new double[][] {LoudnessTables.THRESHOLD_DB},
            "A0", new double[][] {LoudnessTables.TRANSMISSION_DB},
            "DDF", new double[][] {LoudnessTables.DIFFUSE_DB},
            "DCB", new double[][] {LoudnessTables.BANDWIDTH_DB},
            "ZUP", new double[][] {LoudnessTables.UPPER_BARK},
            "RNS", new double[][] {LoudnessTables.FLANK_FLOOR},
            "USL", LoudnessTables.FLANK_STEEPNESS);

    /** The published signals touch only some cells, so every row is compared too. */
    @ParameterizedTest
    @CsvFileSource(resources = "/published/iso532_1_tables.csv", useHeadersInDisplayName = true)
    void every_row_is_the_standards(String table, int row, String values) {
        assertThat(TABLES.get(table)[row]).containsExactly(Published.numbers(values));
    }
}
