package versewind.acoustics;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What is known of speech in the bands of an {@link AudibilityProcedure}: how strong it is at each vocal effort, and what
 * each band is worth for a kind of speech.
 *
 * <p>Source: ANSI S3.5-1997, Tables 1 to 4 and Annex B, named at the head of {@code speech.csv}.
 *
 * <p>Differences: three cells of the implementation's octaves of words are corrected, for they agree neither with its own
 * third octaves nor with a sum of 1.
 *
 * <p>Checked against: {@code SpeechTest}.
 */
public final class Speech {

    private static final String SPECTRA = "effort";
    private static final String WORTH = "importance";

    private Speech() {}

    /** How strongly somebody speaks. */
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

    /** Spectrum level in dB of speech of some effort, 1 m in front of the lips, one a band. */
    public static double[] spectrumDb(Effort effort, AudibilityProcedure procedure) {
        return Table.find(SPECTRA, effort.word(), procedure).orElseThrow();
    }

    /** Kinds of speech whose importance is given besides that of average speech: "short passages". */
    public static List<String> materials() {
        return Table.WHAT.stream()
                .filter(row -> row.get(0).equals(WORTH))
                .map(row -> row.get(1))
                .distinct()
                .toList();
    }

    /**
     * Importance of the bands for a kind of speech, summing to 1 to the table's rounding.
     *
     * @param material one of {@link #materials}
     * @param procedure empty is given for the equally contributing bands, which are made for average speech alone
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
