package versewind.acoustics;

/**
 * Stationary loudness reckoned as the standard writes it, in levels, step by step; slow, and free of every shortcut.
 *
 * <p>Source: ISO 532-1:2017, Annex A, read through public implementations.
 */
final class LoudnessInLevels {

    private LoudnessInLevels() {}

    static double sone(SoundField field, double[] levelsDb) {
        return area(core(field, criticalBands(levelsDb)));
    }

    private static double[] criticalBands(double[] levelsDb) {
        double[] sums = new double[3];
        for (int band = 0; band < 11; band++) {
            int range = 0;
            while (range < 7
                    && levelsDb[band]
                            > LoudnessTables.RANGE_DB[range] - LoudnessTables.LOW_CORRECTION_DB[range][band]) {
                range++;
            }
            double corrected = levelsDb[band] + LoudnessTables.LOW_CORRECTION_DB[range][band];
            sums[band < 6 ? 0 : band < 9 ? 1 : 2] += Math.pow(10, corrected / 10);
        }
        double[] critical = new double[20];
        for (int band = 0; band < 20; band++) {
            critical[band] = band < 3 ? (sums[band] > 0 ? 10 * Math.log10(sums[band]) : 0) : levelsDb[band + 8];
        }
        return critical;
    }

    private static double[] core(SoundField field, double[] critical) {
        double[] core = new double[21];
        for (int band = 0; band < 20; band++) {
            double excitation = critical[band] - LoudnessTables.TRANSMISSION_DB[band];
            excitation += field == SoundField.DIFFUSE ? LoudnessTables.DIFFUSE_DB[band] : 0;
            double threshold = LoudnessTables.THRESHOLD_DB[band];
            if (excitation > threshold) {
                excitation -= LoudnessTables.BANDWIDTH_DB[band];
                double above = Math.pow(0.75 + 0.25 * Math.pow(10, 0.1 * (excitation - threshold)), 0.25) - 1;
                core[band] = Math.max(0, 0.0635 * Math.pow(10, 0.025 * threshold) * above);
            }
        }
        core[0] *= Math.min(1, 0.4 + 0.32 * Math.pow(core[0], 0.2));
        return core;
    }

    private static double area(double[] core) {
        double sum = 0;
        double z1 = 0;
        double n1 = 0;
        int j = 0;
        for (int i = 0; i < 21; i++) {
            double limit = LoudnessTables.UPPER_BARK[i] + 0.0001;
            while (z1 < limit) {
                double z2;
                double n2;
                if (n1 <= core[i]) {
                    if (n1 < core[i]) {
                        j = 0;
                        while (LoudnessTables.FLANK_FLOOR[j] >= core[i] && j < 17) {
                            j++;
                        }
                    }
                    z2 = limit;
                    n2 = core[i];
                    sum += n2 * (z2 - z1);
                } else {
                    double steepness = LoudnessTables.FLANK_STEEPNESS[j][Math.min(i - 1, 7)];
                    n2 = Math.max(LoudnessTables.FLANK_FLOOR[j], core[i]);
                    z2 = z1 + (n1 - n2) / steepness;
                    if (z2 > limit) {
                        z2 = limit;
                        n2 = n1 - (z2 - z1) * steepness;
                    }
                    sum += (z2 - z1) * (n1 + n2) / 2;
                }
                while (n2 <= LoudnessTables.FLANK_FLOOR[j] && j < 17) {
                    j++;
                }
                z1 = z2;
                n1 = n2;
            }
        }
        return sum;
    }
}
