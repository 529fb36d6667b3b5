package versewind.acoustics;

/**
 * How much of one sound can be heard beside another, band by band: the speech intelligibility index and what leads to
 * it.
 *
 * <p>A calculator to be used again and again by one thread: a compute method sets what the others read; none of these
 * allocates. All levels are spectrum levels in dB: band level minus 10 lg of the bandwidth in Hz.
 *
 * <p>For target levels E and noise levels N (third octaves): B = max(N, E - 24); C = -80 + 0.6 (B + 10 lg f - 6.353);
 * Z_i = 10 lg{10^(0.1 N_i) + sum over k below i of 10^(0.1 (B_k + 3.32 C_k lg(0.89 f_i / f_k)))}, Z_1 = B_1; in critical
 * bands from l to h Hz C = -80 + 0.6 (B + 10 lg(h - l)) and the ratio is f_i / h_k; in octaves Z = N. D = max(Z, X + T) with the internal noise X and a hearing threshold T; audibility K = (E - D + 15)/30 between 0
 * and 1; level distortion L = 1 - (E - U - 10)/160 between 0 and 1 with U normal speech. The index is the sum of I K L
 * with the importance I.
 *
 * <p>Source: ANSI S3.5-1997, 4 to 6, read through public implementations.
 *
 * <p>Differences: none for the index. {@link #shareAudible} is the same audibility with other weights and without L, for
 * music, where the standard says nothing: an estimate.
 *
 * <p>Checked against: {@code BandAudibilityTest}, the published answers of Annex C and of the standard's test files.
 */
public final class BandAudibility {

    /** The band of {@link ThirdOctaves} that the third-octave procedure begins with, 160 Hz. */
    public static final int FIRST_THIRD_OCTAVE = 8;

    /** A target masks itself as noise of this much less would. */
    private static final double SELF_MASKING_DB = 24;

    private static final double SELF_MASKING = ThirdOctaves.dbToPower(-SELF_MASKING_DB);

    /** Below this spectrum level nothing masks anything; it keeps the powers of frequencies within range. */
    private static final double NO_MASKING_DB = -150;

    /** 10^(0.1 * 3.32 C lg x) is x^(0.332 C). */
    private static final double EXPONENT = 0.332;

    /** So far above normal speech nothing is distorted. */
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
    private final double[] selfPower;
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
        selfPower = new double[bands];
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
     * @param target E, spectrum level in dB of what should be heard; negative infinity for none
     * @param noise N, spectrum level in dB of what disturbs; negative infinity for none
     */
    public void compute(double[] target, double[] noise) {
        requireBands(target);
        requireBands(noise);
        for (int band = 0; band < bands; band++) {
            targetPower[band] = ThirdOctaves.dbToPower(target[band]);
            noisePower[band] = ThirdOctaves.dbToPower(noise[band]);
            selfPower[band] = targetPower[band];
        }
        judge();
    }

    /**
     * Computes from band powers of {@link ThirdOctaves}; only for the third-octave procedure.
     *
     * @param target power of what should be heard in each of the 28 bands
     * @param masker power of what disturbs in each of the 28 bands
     */
    public void computePower(double[] target, double[] masker) {
        computePower(target, masker, target);
    }

    /**
     * The same where not all of what is listened to, or more, masks itself: to find between what bounds audibility lies.
     *
     * @param target power of what should be heard in each of the 28 bands
     * @param masker power of what disturbs in each of the 28 bands
     * @param self power of what masks as a target masks itself in each of the 28 bands
     */
    public void computePower(double[] target, double[] masker, double[] self) {
        ThirdOctaves.requireSpectrum(target);
        ThirdOctaves.requireSpectrum(masker);
        requireThirdOctaves();
        for (int band = 0; band < bands; band++) {
            int third = band + FIRST_THIRD_OCTAVE;
            double perHz = 1 / ThirdOctaves.bandwidthHz(third);
            targetPower[band] = target[third] * perHz;
            noisePower[band] = masker[third] * perHz;
            selfPower[band] = self[third] * perHz;
        }
        judge();
    }

    private void judge() {
        System.arraycopy(noisePower, 0, maskingPower, 0, bands);
        switch (procedure.masking()) {
            case WITHIN_BAND -> {}
            case UPWARD_FROM_CENTRES -> spreadFromCentres();
            case UPWARD_FROM_EDGES -> spreadFromEdges();
        }
        for (int band = 0; band < bands; band++) {
            audibility[band] = share(targetPower[band] / Math.max(maskingPower[band], internalPower[band]));
        }
    }

    /** (10 lg(ratio) + 15)/30 between 0 and 1; no logarithm where the bounds decide. */
    private static double share(double ratio) {
        if (ratio <= COVERED) {
            return 0;
        }
        return ratio >= CLEAR ? 1 : (ThirdOctaves.powerToDb(ratio) + PEAK_DB) / RANGE_DB;
    }

    /** B as a power: the greater of the noise and what the target masks of itself. */
    private double maskerPower(int band) {
        return Math.max(noisePower[band], selfPower[band] * SELF_MASKING);
    }

    private void spreadFromCentres() {
        maskingPower[0] = maskerPower(0);
        for (int masker = 0; masker < bands - 1; masker++) {
            double power = maskerPower(masker);
            double levelDb = ThirdOctaves.powerToDb(power);
            if (levelDb < NO_MASKING_DB) {
                continue;
            }
            double exponent = EXPONENT * (-80 + 0.6 * (levelDb + frequencyDb[masker] - 6.353));
            raiseFrequencies(exponent);
            double start = power * Math.exp(exponent * LN_0_89) / raised[masker];
            for (int band = masker + 1; band < bands; band++) {
                maskingPower[band] += start * raised[band];
            }
        }
    }

    private void spreadFromEdges() {
        maskingPower[0] = maskerPower(0);
        for (int masker = 0; masker < bands - 1; masker++) {
            double power = maskerPower(masker);
            double levelDb = ThirdOctaves.powerToDb(power);
            if (levelDb < NO_MASKING_DB) {
                continue;
            }
            double edgeHz = procedure.upperEdgeHz(masker);
            double bandwidthDb = ThirdOctaves.powerToDb(edgeHz - procedure.lowerEdgeHz(masker));
            double exponent = EXPONENT * (-80 + 0.6 * (levelDb + bandwidthDb));
            for (int band = masker + 1; band < bands; band++) {
                maskingPower[band] += power * Math.pow(procedure.centreHz(band) / edgeHz, exponent);
            }
        }
    }

    /**
     * Raises every centre frequency to an exponent. The nominal frequencies are products of 2, 5 and 315, so three
     * exponentials do for all eighteen.
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

    /** Z, equivalent masking spectrum level in dB; negative infinity where nothing masks. */
    public double maskingDb(int band) {
        return ThirdOctaves.powerToDb(maskingPower[band]);
    }

    /** X', equivalent internal noise spectrum level in dB: the standard's, raised by the hearing threshold. */
    public double internalNoiseDb(int band) {
        return internalNoiseDb[band];
    }

    /** D, equivalent disturbance spectrum level in dB: the greater of masking and internal noise. */
    public double disturbanceDb(int band) {
        return Math.max(maskingDb(band), internalNoiseDb[band]);
    }

    /** K, 0 where the band is wholly covered, 1 where it stands clear. */
    public double audibility(int band) {
        return audibility[band];
    }

    /** L, level distortion factor: less than 1 where the target is more than 10 dB above normal speech. */
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

    /**
     * Estimate: the share of a sound that can be heard, sum of w K over sum of w, without level distortion; 0 to 1, and 0
     * if nothing has weight.
     *
     * @param weights weight of each of the 28 bands of {@link ThirdOctaves}, 0 or more; what lies outside 160 Hz to 8 kHz
     *     does not count
     */
    public double shareAudible(double[] weights) {
        ThirdOctaves.requireSpectrum(weights);
        requireThirdOctaves();
        double heard = 0;
        double all = 0;
        for (int band = 0; band < bands; band++) {
            double weight = weights[band + FIRST_THIRD_OCTAVE];
            heard += weight * audibility[band];
            all += weight;
        }
        return all > 0 ? heard / all : 0;
    }

    /**
     * The greatest {@link #shareAudible} that weights between two bounds can make: the bands that are heard better than the
     * share count with the most, the others with the least.
     */
    public double greatestShareAudible(double[] least, double[] most) {
        double share = 0;
        double next = shareAudible(share, most, least);
        while (next > share) {
            share = next;
            next = shareAudible(share, most, least);
        }
        return share;
    }

    /** The least {@link #shareAudible} that weights between two bounds can make; 0 where they may all be nothing. */
    public double leastShareAudible(double[] least, double[] most) {
        double share = 1;
        double next = shareAudible(share, least, most);
        while (next < share) {
            share = next;
            next = shareAudible(share, least, most);
        }
        return share;
    }

    /** The share where bands that are heard better than so count with some weights, the others with other weights. */
    private double shareAudible(double than, double[] better, double[] worse) {
        double heard = 0;
        double all = 0;
        for (int band = 0; band < bands; band++) {
            double weight = (audibility[band] > than ? better : worse)[band + FIRST_THIRD_OCTAVE];
            heard += weight * audibility[band];
            all += weight;
        }
        return all > 0 ? heard / all : 0;
    }

    /** Margin in dB of a share, 30 share - 15, as K solved for E - D: 0 is even, 15 wholly clear, -15 wholly covered. */
    public static double marginDb(double share) {
        return RANGE_DB * share - PEAK_DB;
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
