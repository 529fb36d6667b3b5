package versewind.acoustics;

/**
 * Specific loudness over the critical-band rate: it rises at once to the core loudness of each band and falls along the
 * upper flank of the band below. Kept as straight segments, so that it can be sampled afterwards.
 *
 * <p>Source: ISO 532-1:2017, 5.6 and Annex A, read through public implementations; clause number from memory.
 *
 * <p>Checked against: {@code StationaryLoudnessTest}.
 */
final class LoudnessFlanks {

    private static final double SAMPLES_PER_BARK = 10;
    private static final int FLANK_ROWS = LoudnessTables.FLANK_FLOOR.length;
    private static final int LAST_COLUMN = LoudnessTables.FLANK_STEEPNESS[0].length - 1;

    private final double[] upperBark;
    private final double[] endBark;
    private final double[] endLoudness;
    private final double[] steepness;
    private int pieces;
    private double area;

    LoudnessFlanks(double[] upperBark) {
        this.upperBark = upperBark;
        // in each band a flank can cross every floor once, meet the core loudness and reach the limit of the band
        int most = upperBark.length * (FLANK_ROWS + 2);
        this.endBark = new double[most];
        this.endLoudness = new double[most];
        this.steepness = new double[most];
    }

    /** Area in sone under the curve of these core loudnesses. */
    double area(double[] core) {
        pieces = 0;
        area = 0;
        double bark = 0;
        double loudness = 0;
        int row = 0;
        for (int band = 0; band < core.length; band++) {
            double target = core[band];
            double limit = upperBark[band];
            while (bark < limit) {
                if (loudness <= target) {
                    row = loudness < target ? rowBelow(target) : row;
                    loudness = target;
                    add(bark, limit, target, 0);
                } else {
                    double slope = LoudnessTables.FLANK_STEEPNESS[row][Math.min(band - 1, LAST_COLUMN)];
                    double floor = Math.max(LoudnessTables.FLANK_FLOOR[row], target);
                    double end = bark + (loudness - floor) / slope;
                    boolean beyond = end > limit;
                    loudness = beyond ? loudness - (limit - bark) * slope : floor;
                    add(bark, beyond ? limit : end, loudness, slope);
                }
                bark = endBark[pieces - 1];
                while (row < FLANK_ROWS - 1 && loudness <= LoudnessTables.FLANK_FLOOR[row]) {
                    row++;
                }
            }
        }
        return area;
    }

    private static int rowBelow(double loudness) {
        int row = 0;
        while (row < FLANK_ROWS - 1 && LoudnessTables.FLANK_FLOOR[row] >= loudness) {
            row++;
        }
        return row;
    }

    private void add(double fromBark, double toBark, double toLoudness, double slope) {
        double width = toBark - fromBark;
        area += width * (toLoudness + 0.5 * slope * width);
        endBark[pieces] = toBark;
        endLoudness[pieces] = toLoudness;
        steepness[pieces] = slope;
        pieces++;
    }

    /** The curve at 0.1, 0.2, 0.3 Bark and so on. */
    double[] samples(int count) {
        double[] samples = new double[count];
        int piece = 0;
        for (int sample = 0; sample < count && pieces > 0; sample++) {
            double bark = (sample + 1) / SAMPLES_PER_BARK;
            while (endBark[piece] < bark) {
                piece++;
            }
            samples[sample] = endLoudness[piece] + (endBark[piece] - bark) * steepness[piece];
        }
        return samples;
    }
}
