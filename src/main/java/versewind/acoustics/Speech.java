package versewind.acoustics;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Speech in the bands of an {@link AudibilityProcedure}: its spectrum at each vocal effort, and the importance of each
 * band for a kind of speech material.
 *
 * <p>Source: ANSI S3.5-1997, Tables 1 to 4 and Annex B, read through a public implementation named at the head of
 * {@code speech.csv}.
 *
 * <p>Differences: three cells of that implementation (octaves of words) are corrected, as they contradict its own third
 * octaves and do not sum to 1.
 *
 * <p>Checked against: {@code SpeechTest}.
 */
public final class Speech {

    private static final String SPECTRA = "effort";
    private static final String WORTH = "importance";

    private Speech() {}

    /** Vocal effort. */
    public enum Effort {
        NORMAL("normal"),
        RAISED("raised"),
        LOUD("loud"),
        SHOUT("shout");

        private final String word;

        Effort(String word) {
            this.word = word;
        }

        /** In words. */
        public String word() {
            return word;
        }
    }

    /** Spectrum level of speech in dB by band, 1 m in front of the lips. */
    public static double[] spectrumDb(Effort effort, AudibilityProcedure procedure) {
        return Table.find(SPECTRA, effort.word(), procedure).orElseThrow();
    }

    /** Kinds of speech material with their own importance, such as "short passages". */
    public static List<String> materials() {
        return Table.WHAT.stream()
                .filter(row -> row.get(0).equals(WORTH))
                .map(row -> row.get(1))
                .distinct()
                .toList();
    }

    /**
     * Importance of the bands for a speech material; the sum is 1 within the rounding of the table.
     *
     * @param material one of {@link #materials}
     * @param procedure the bands
     * @return empty for the equally contributing bands, which exist for average speech only
     */
    public static Optional<double[]> importance(String material, AudibilityProcedure procedure) {
        return Table.find(WORTH, material, procedure);
    }

    private static final class Table {
        private static final List<List<String>> WHAT = TableResource.rows("speech.csv");
        private static final Map<String, double[]> VALUES = new TreeMap<>();

        static {
            for (List<String> row : WHAT) {
                String[] numbers = row.get(3).split(" ", -1);
                double[] values = new double[numbers.length];
                for (int band = 0; band < values.length; band++) {
                    values[band] = Double.parseDouble(numbers[band]);
                }
                VALUES.put(String.join(",", row.subList(0, 3)), values);
            }
        }

        private static Optional<double[]> find(String kind, String what, AudibilityProcedure procedure) {
            return Optional.ofNullable(VALUES.get(kind + "," + what + "," + procedure.word()))
                    .map(double[]::clone);
        }
    }
}
