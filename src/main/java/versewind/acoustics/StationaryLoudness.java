package versewind.acoustics;

/**
 * Loudness of a steady sound in sone and phon from its third-octave levels, by Zwicker's method.
 *
 * <p>Not thread-safe: {@link #compute} or {@link #computePower} sets the result that the other methods read, without
 * allocating.
 *
 * <p>The core loudness of a critical band with level E above a threshold T is 0.0635 * 10^(0.025 T) * ((0.75 + 0.25 *
 * 10^(0.1 (E - T)))^0.25 - 1) sone/Bark; from each band an upper flank falls toward higher bands; the loudness N is the
 * area below, the loudness level 40 + 10 lb N phon.
 *
 * <p>Range: levels to 120 dB in the bands to 250 Hz; silence has a loudness level of 3 phon.
 *
 * <p>Source: ISO 532-1:2017, 5 (method for stationary sounds) and Annex A, read through public implementations,
 * one of whose reports names clause 5 too.
 *
 * <p>Differences: N is not rounded. Computed from powers instead of levels, with the same result to 1e-12.
 *
 * <p>Checked against: {@code StationaryLoudnessTest}, the test signals of Annex B.2 and B.3 with every sample of
 * specific loudness.
 */
public final class StationaryLoudness {

    /** Number of core loudness values; the last one is always 0. */
    public static final int CORE_BANDS = 21;

    /** Samples of specific loudness, one each 0.1 Bark from 0.1 to 24 Bark. */
    public static final int SPECIFIC_SAMPLES = 240;

    private static final double MINIMUM_PHON = 3;
    private static final double LOW_LIMIT_DB = 120;
    private static final double LOW_LIMIT_POWER = ThirdOctaves.dbToPower(LOW_LIMIT_DB);

    /** Puts samples at tenths of a Bark below the limit of a band, as the standard does. */
    private static final double LIMIT_MARGIN_BARK = 0.0001;

    private static final double[] UPPER_BARK = upperBark();
    private static final double[][] RANGE_POWER = new double[LoudnessTables.RANGE_DB.length][LoudnessTables.LOW_BANDS];
    private static final double[][] LOW_FACTOR = new double[LoudnessTables.RANGE_DB.length][LoudnessTables.LOW_BANDS];

    static {
        for (int range = 0; range < RANGE_POWER.length; range++) {
            for (int band = 0; band < LoudnessTables.LOW_BANDS; band++) {
                double correctionDb = LoudnessTables.LOW_CORRECTION_DB[range][band];
                RANGE_POWER[range][band] = ThirdOctaves.dbToPower(LoudnessTables.RANGE_DB[range] - correctionDb);
                LOW_FACTOR[range][band] = ThirdOctaves.dbToPower(correctionDb);
            }
        }
    }

    private final double[] audiblePower = new double[CORE_BANDS - 1];
    private final double[] excitation = new double[CORE_BANDS - 1];
    private final double[] scale = new double[CORE_BANDS - 1];

    private final double[] power = new double[ThirdOctaves.COUNT];
    private final double[] core = new double[CORE_BANDS];
    private final LoudnessFlanks flanks = new LoudnessFlanks(UPPER_BARK);
    private double sone;

    /** For sound in this field. */
    public StationaryLoudness(SoundField field) {
        for (int band = 0; band < CORE_BANDS - 1; band++) {
            double thresholdDb = LoudnessTables.THRESHOLD_DB[band];
            double entryDb = -LoudnessTables.TRANSMISSION_DB[band] + diffuseDb(field, band);
            audiblePower[band] = ThirdOctaves.dbToPower(thresholdDb - entryDb);
            excitation[band] = 0.25 * ThirdOctaves.dbToPower(entryDb - LoudnessTables.BANDWIDTH_DB[band] - thresholdDb);
            scale[band] = 0.0635 * Math.pow(10, 0.025 * thresholdDb);
        }
    }

    private static double diffuseDb(SoundField field, int band) {
        return switch (field) {
            case FREE -> 0;
            case DIFFUSE -> LoudnessTables.DIFFUSE_DB[band];
        };
    }

    private static double[] upperBark() {
        double[] upper = LoudnessTables.UPPER_BARK.clone();
        for (int band = 0; band < upper.length; band++) {
            upper[band] += LIMIT_MARGIN_BARK;
        }
        return upper;
    }

    /**
     * True for a sound within the range of the method: no band to 250 Hz above 120 dB, and a number in every band.
     *
     * @param bandPower mean-square pressure in each third-octave band re (20 uPa)^2
     */
    public static boolean isWithinRange(double[] bandPower) {
        ThirdOctaves.requireSpectrum(bandPower);
        for (int band = 0; band < bandPower.length; band++) {
            if (!(bandPower[band] >= 0 && bandPower[band] <= limitPower(band))) {
                return false;
            }
        }
        return true;
    }

    /** Highest power of a band within the range of the method. */
    public static double limitPower(int band) {
        return band < LoudnessTables.LOW_BANDS ? LOW_LIMIT_POWER : Double.MAX_VALUE;
    }

    /**
     * Computes from levels.
     *
     * @param bandLevelsDb level of each third-octave band in dB; negative infinity for none
     * @throws IllegalArgumentException beyond the range of the method, see {@link #isWithinRange}
     */
    public void compute(double[] bandLevelsDb) {
        ThirdOctaves.requireSpectrum(bandLevelsDb);
        for (int band = 0; band < power.length; band++) {
            power[band] = ThirdOctaves.dbToPower(bandLevelsDb[band]);
        }
        computePower(power);
    }

    /**
     * Computes from powers, faster.
     *
     * @param bandPower mean-square pressure in each third-octave band re (20 uPa)^2
     * @throws IllegalArgumentException beyond the range of the method, see {@link #isWithinRange}
     */
    public void computePower(double[] bandPower) {
        if (!isWithinRange(bandPower)) {
            throw new IllegalArgumentException(
                    "the loudness of ISO 532-1 needs a number in every band, and none above 120 dB in those to 250 Hz");
        }
        int group = 0;
        double sum = 0;
        for (int band = 0; band < LoudnessTables.LOW_BANDS; band++) {
            sum += corrected(band, bandPower[band]);
            if (band + 1 == LoudnessTables.GROUP_ENDS[group]) {
                core[group] = coreLoudness(group, sum);
                sum = 0;
                group++;
            }
        }
        for (int band = LoudnessTables.LOW_BANDS; band < ThirdOctaves.COUNT; band++) {
            int critical = coreOf(band);
            core[critical] = coreLoudness(critical, bandPower[band]);
        }
        core[0] *= Math.min(1, 0.4 + 0.32 * Math.pow(core[0], 0.2));
        sone = flanks.area(core);
    }

    /**
     * The core loudness that a third-octave band goes into: the eleven lowest share three, the others have their own.
     */
    static int coreOf(int band) {
        int group = 0;
        for (int end : LoudnessTables.GROUP_ENDS) {
            if (band < end) {
                return group;
            }
            group++;
        }
        return band - LoudnessTables.LOW_BANDS + group;
    }

    private static double corrected(int band, double bandPower) {
        int range = 0;
        while (range < RANGE_POWER.length - 1 && bandPower > RANGE_POWER[range][band]) {
            range++;
        }
        return bandPower * LOW_FACTOR[range][band];
    }

    private double coreLoudness(int band, double bandPower) {
        if (bandPower <= audiblePower[band]) {
            return 0;
        }
        double root = Math.sqrt(Math.sqrt(0.75 + excitation[band] * bandPower));
        return Math.max(0, scale[band] * (root - 1));
    }

    /** Loudness N in sone; 1 sone is a tone of 1 kHz at 40 dB. */
    public double sone() {
        return sone;
    }

    /** Loudness level in phon, 3 or more. */
    public double phon() {
        return phonOf(sone);
    }

    /** Core loudness of a critical band in sone/Bark, 0 to 20. */
    public double core(int band) {
        return core[band];
    }

    /** Specific loudness in sone/Bark at 0.1, 0.2 to 24.0 Bark: {@link #SPECIFIC_SAMPLES} new values. */
    public double[] specific() {
        return flanks.samples(SPECIFIC_SAMPLES);
    }

    /**
     * Loudness level in phon of a loudness in sone: 40 + 10 lb N from 1 sone, 40 (N + 0.0005)^0.35 below, but at least
     * 3.
     *
     * <p>Source: ISO 532-1:2017, 5.7; clause number from memory.
     */
    public static double phonOf(double sone) {
        if (sone >= 1) {
            return 40 + 10 * Math.log(sone) / Math.log(2);
        }
        return Math.max(MINIMUM_PHON, 40 * Math.pow(sone + 0.0005, 0.35));
    }

    /**
     * Specific loudness over the critical-band rate: it rises at once to the core loudness of each band and falls along
     * the upper flank of the band below. Kept as straight segments, so that it can be sampled afterwards.
     *
     * <p>Source: ISO 532-1:2017, 5.6 and Annex A, read through public implementations; clause number from memory.
     *
     * <p>Checked against: {@code StationaryLoudnessTest}.
     */
    private static final class LoudnessFlanks {

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
}
