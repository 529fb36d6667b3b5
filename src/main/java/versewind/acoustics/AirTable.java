package versewind.acoustics;

import java.util.List;

/**
 * Sound attenuation of the air itself, by octave.
 *
 * <p>Range: 10 to 20 C, 30 to 90 % relative humidity.
 *
 * <p>Source: EN 12354-6:2003, Table 1, read through a public implementation.
 *
 * <p>Differences: linear interpolation between the rows of 10 and 20 C.
 *
 * <p>Checked against: {@code AirTableTest}.
 */
public final class AirTable {

    /** Number of octaves, 125 Hz to 8 kHz. */
    static final int OCTAVES = AbsorptionTable.OCTAVES_HZ.size();

    private static final int MOST_HUMIDITY = 2;
    private static final int FIRST_VALUE = 3;
    private static final double COLD_C = 10;
    private static final double WARM_C = 20;

    /** Temperature, lower and upper humidity, then the values by octave. */
    private final double[][] rows;

    private AirTable(double[][] rows) {
        this.rows = rows;
    }

    /** The table, read at first use. */
    public static AirTable load() {
        return Once.TABLE;
    }

    private static final class Once {
        private static final AirTable TABLE = read();
    }

    private static AirTable read() {
        List<List<String>> written = TableResource.rows("air.csv");
        double[][] rows = new double[written.size()][FIRST_VALUE + OCTAVES];
        for (int row = 0; row < rows.length; row++) {
            for (int column = 0; column < rows[row].length; column++) {
                rows[row][column] = Double.parseDouble(written.get(row).get(column));
            }
        }
        return new AirTable(rows);
    }

    /**
     * Power attenuation m in Np/m for each octave from 125 Hz to 8 kHz.
     *
     * @param temperatureC temperature in C, 10 to 20
     * @param humidityPercent relative humidity in percent, 30 to 90
     */
    public double[] attenuationPerM(double temperatureC, double humidityPercent) {
        if (!(temperatureC >= COLD_C && temperatureC <= WARM_C && humidityPercent >= 30 && humidityPercent <= 90)) {
            throw new IllegalArgumentException(
                    "the table of air goes from 10 to 20 C and from 30 to 90 % humidity, not " + temperatureC + " C at "
                            + humidityPercent + " %");
        }
        double[] cold = row(COLD_C, humidityPercent);
        double[] warm = row(WARM_C, humidityPercent);
        double warmth = (temperatureC - COLD_C) / (WARM_C - COLD_C);
        double[] attenuation = new double[OCTAVES];
        for (int octave = 0; octave < OCTAVES; octave++) {
            double perKm = (1 - warmth) * cold[FIRST_VALUE + octave] + warmth * warm[FIRST_VALUE + octave];
            attenuation[octave] = perKm / 1000;
        }
        return attenuation;
    }

    private double[] row(double temperatureC, double humidityPercent) {
        for (double[] row : rows) {
            if (row[0] == temperatureC && humidityPercent <= row[MOST_HUMIDITY]) {
                return row;
            }
        }
        throw new IllegalStateException("the table of air has no row for " + temperatureC + " C");
    }
}
