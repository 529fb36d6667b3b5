package versewind.acoustics;

/**
 * Audibility of one sound beside another, band by band, and the speech intelligibility index.
 *
 * <p>Not thread-safe: a compute method sets the result that the other methods read, without allocating. Levels are
 * spectrum levels in dB: band level minus 10 lg of the bandwidth in Hz.
 *
 * <p>For target levels E and noise levels N, in third octaves: B = max(N, E - 24), C = -80 + 0.6 (B + 10 lg f - 6.353),
 * Z_i = 10 lg{10^(0.1 N_i) + sum over k below i of 10^(0.1 (B_k + 3.32 C_k lg(0.89 f_i / f_k)))}, Z_1 = B_1. In
 * critical bands from l to h Hz, C = -80 + 0.6 (B + 10 lg(h - l)) and the ratio is f_i / h_k; in octaves Z = N. With
 * the internal noise X, a hearing threshold T and normal speech U: disturbance D = max(Z, X + T), audibility K = (E - D
 * + 15)/30 and level distortion L = 1 - (E - U - 10)/160, both within 0 to 1. The index is the sum of I K L with the
 * importance I.
 *
 * <p>Source: ANSI S3.5-1997, 4 to 6, read through public implementations; clause numbers from memory.
 *
 * <p>Differences: none known.
 *
 * <p>Checked against: {@code BandAudibilityTest}, the published answers of Annex C and of the test files of the
 * standard.
 */
public final class BandAudibility {

    /** First band of the third-octave procedure among {@link ThirdOctaves}, 160 Hz. */
    public static final int FIRST_THIRD_OCTAVE = 8;

    /** A target masks itself like noise this much below it. */
    private static final double SELF_MASKING_DB = 24;

    private static final double SELF_MASKING = ThirdOctaves.dbToPower(-SELF_MASKING_DB);

    /** Levels below this mask nothing; it keeps the exponents of frequencies in range. */
    private static final double NO_MASKING_DB = -150;

    /** 10^(0.1 * 3.32 C lg x) is x^(0.332 C). */
    private static final double EXPONENT = 0.332;

    /** Up to this far above normal speech there is no level distortion. */
    private static final double UNDISTORTED_DB = 10;

    private static final double RANGE_DB = 30;
    private static final double PEAK_DB = 15;
    private static final double COVERED = ThirdOctaves.dbToPower(-PEAK_DB);
    private static final double CLEAR = ThirdOctaves.dbToPower(RANGE_DB - PEAK_DB);

    private static final double LN_2 = Math.log(2);
    private static final double LN_5 = Math.log(5);
    private static final double LN_315 = Math.log(315);
    private static final double LN_0_89 = Math.log(0.89);

    private final AudibilityProcedure procedure;
    private final int bands;
    private final double[] frequencyDb;
    private final double[] internalNoiseDb;
    private final double[] internalPower;
    private final double[] undistortedPower;
    private final double[] targetPower;
    private final double[] noisePower;
    private final double[] maskingPower;
    private final double[] raised;
    private final double[] audibility;

    /** For normal hearing. */
    public BandAudibility(AudibilityProcedure procedure) {
        this(procedure, new double[procedure.bands()]);
    }

    /**
     * For a listener with raised thresholds.
     *
     * @param hearingThresholdDb T, hearing threshold level re normal in dB, one a band
     */
    public BandAudibility(AudibilityProcedure procedure, double[] hearingThresholdDb) {
        this.procedure = procedure;
        this.bands = procedure.bands();
        requireBands(hearingThresholdDb);
        frequencyDb = new double[bands];
        internalNoiseDb = new double[bands];
        internalPower = new double[bands];
        undistortedPower = new double[bands];
        targetPower = new double[bands];
        noisePower = new double[bands];
        maskingPower = new double[bands];
        raised = new double[bands];
        audibility = new double[bands];
        for (int band = 0; band < bands; band++) {
            frequencyDb[band] = ThirdOctaves.powerToDb(procedure.centreHz(band));
            internalNoiseDb[band] = procedure.internalNoiseDb(band) + hearingThresholdDb[band];
            internalPower[band] = ThirdOctaves.dbToPower(internalNoiseDb[band]);
            undistortedPower[band] = ThirdOctaves.dbToPower(procedure.normalSpeechDb(band) + UNDISTORTED_DB);
        }
    }

    /**
     * Computes from spectrum levels.
     *
     * @param target E, spectrum level of the target in dB; negative infinity for none
     * @param noise N, spectrum level of the noise in dB; negative infinity for none
     */
    public void compute(double[] target, double[] noise) {
        requireBands(target);
        requireBands(noise);
        for (int band = 0; band < bands; band++) {
            targetPower[band] = ThirdOctaves.dbToPower(target[band]);
            noisePower[band] = ThirdOctaves.dbToPower(noise[band]);
        }
        judge();
    }

    /**
     * Computes from band powers of {@link ThirdOctaves}; only for the third-octave procedure.
     *
     * @param target power of the target in each of the 28 bands
     * @param masker power of the noise in each of the 28 bands
     */
    public void computePower(double[] target, double[] masker) {
        ThirdOctaves.requireSpectrum(target);
        ThirdOctaves.requireSpectrum(masker);
        requireThirdOctaves();
        for (int band = 0; band < bands; band++) {
            int third = band + FIRST_THIRD_OCTAVE;
            double perHz = 1 / ThirdOctaves.bandwidthHz(third);
            targetPower[band] = target[third] * perHz;
            noisePower[band] = masker[third] * perHz;
        }
        judge();
    }

    private void judge() {
        System.arraycopy(noisePower, 0, maskingPower, 0, bands);
        if (procedure.masking() != AudibilityProcedure.Masking.WITHIN_BAND) {
            spread();
        }
        for (int band = 0; band < bands; band++) {
            audibility[band] = share(targetPower[band] / Math.max(maskingPower[band], internalPower[band]));
        }
    }

    /** (10 lg(ratio) + 15)/30 within 0 to 1; takes no logarithm at the bounds. */
    private static double share(double ratio) {
        if (ratio <= COVERED) {
            return 0;
        }
        return ratio >= CLEAR ? 1 : (ThirdOctaves.powerToDb(ratio) + PEAK_DB) / RANGE_DB;
    }

    /** B as a power: the greater of noise and self-masking. */
    private double maskerPower(int band) {
        return Math.max(noisePower[band], targetPower[band] * SELF_MASKING);
    }

    /** Adds to every band what the bands below it mask there. */
    private void spread() {
        maskingPower[0] = maskerPower(0);
        for (int masker = 0; masker < bands - 1; masker++) {
            double power = maskerPower(masker);
            double levelDb = ThirdOctaves.powerToDb(power);
            if (levelDb < NO_MASKING_DB) {
                continue;
            }
            switch (procedure.masking()) {
                case WITHIN_BAND -> {}
                case UPWARD_FROM_CENTRES -> spreadFromCentre(masker, power, levelDb);
                case UPWARD_FROM_EDGES -> spreadFromEdge(masker, power, levelDb);
            }
        }
    }

    private void spreadFromCentre(int masker, double power, double levelDb) {
        double exponent = EXPONENT * (-80 + 0.6 * (levelDb + frequencyDb[masker] - 6.353));
        raiseFrequencies(exponent);
        double start = power * Math.exp(exponent * LN_0_89) / raised[masker];
        for (int band = masker + 1; band < bands; band++) {
            maskingPower[band] += start * raised[band];
        }
    }

    private void spreadFromEdge(int masker, double power, double levelDb) {
        double edgeHz = procedure.upperEdgeHz(masker);
        double bandwidthDb = ThirdOctaves.powerToDb(edgeHz - procedure.lowerEdgeHz(masker));
        double exponent = EXPONENT * (-80 + 0.6 * (levelDb + bandwidthDb));
        for (int band = masker + 1; band < bands; band++) {
            maskingPower[band] += power * Math.pow(procedure.centreHz(band) / edgeHz, exponent);
        }
    }

    /**
     * Raises every centre frequency to an exponent. The nominal frequencies are products of 2, 5 and 315, so that three
     * exponentials suffice for all eighteen.
     */
    private void raiseFrequencies(double exponent) {
        double two = Math.exp(exponent * LN_2);
        double five = Math.exp(exponent * LN_5);
        double ten = two * five;
        raised[0] = ten * two * two * two * two;
        raised[1] = ten * ten * two;
        raised[2] = ten * five * five;
        raised[3] = Math.exp(exponent * LN_315);
        for (int band = 4; band < bands; band++) {
            boolean fiveTimes = band == 9 || band == 13;
            raised[band] = fiveTimes ? five * raised[band - 7] : two * raised[band - 3];
        }
    }

    /** Z, equivalent masking spectrum level in dB; negative infinity if nothing masks. */
    public double maskingDb(int band) {
        return ThirdOctaves.powerToDb(maskingPower[band]);
    }

    /** X', equivalent internal noise spectrum level in dB: that of the standard plus the hearing threshold. */
    public double internalNoiseDb(int band) {
        return internalNoiseDb[band];
    }

    /** D, equivalent disturbance spectrum level in dB: the greater of masking and internal noise. */
    public double disturbanceDb(int band) {
        return Math.max(maskingDb(band), internalNoiseDb[band]);
    }

    /** K, from 0 for a fully covered band to 1 for a clear one. */
    public double audibility(int band) {
        return audibility[band];
    }

    /** L, level distortion factor: below 1 if the target is more than 10 dB above normal speech. */
    public double levelDistortion(int band) {
        if (targetPower[band] <= undistortedPower[band]) {
            return 1;
        }
        double targetDb = ThirdOctaves.powerToDb(targetPower[band]);
        double share = 1 - (targetDb - procedure.normalSpeechDb(band) - UNDISTORTED_DB) / 160;
        return Math.max(0, Math.min(1, share));
    }

    /** The speech intelligibility index with the standard's importance for average speech, 0 to 1. */
    public double index() {
        return weighted(procedure.importance());
    }

    /** The speech intelligibility index with another importance, one a band, whose sum is 1. */
    public double index(double[] importance) {
        requireBands(importance);
        return weighted(importance);
    }

    private double weighted(double[] importance) {
        double sum = 0;
        for (int band = 0; band < bands; band++) {
            sum += importance[band] * audibility[band] * levelDistortion(band);
        }
        return sum;
    }

    private void requireThirdOctaves() {
        if (procedure != AudibilityProcedure.THIRD_OCTAVE) {
            throw new IllegalStateException("third-octave bands are judged by the third-octave procedure");
        }
    }

    private void requireBands(double[] values) {
        if (values.length != bands) {
            throw new IllegalArgumentException("this procedure has " + bands + " bands, not " + values.length);
        }
        for (double value : values) {
            if (Double.isNaN(value)) {
                throw new IllegalArgumentException("every band needs a number");
            }
        }
    }
}
