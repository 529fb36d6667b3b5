package versewind.sound;

import java.util.ArrayList;
import java.util.List;

/**
 * How much sound the air itself takes away, by octave.
 *
 * <p>Range: 10 to 20 C, 30 to 90 % relative humidity.
 *
 * <p>Source: EN 12354-6:2003, Table 1, read through a public implementation.
 *
 * <p>Differences: between 10 and 20 C the table is read along a straight line.
 *
 * <p>Checked against: {@code AirTableTest}.
 */
final class AirTable {

    /** Number of octaves, 125 Hz to 8 kHz. */
    static final int OCTAVES = AbsorptionTable.OCTAVES_HZ.size();

    private static final int FIRST_VALUE = 3;
    private static final double COLD_C = 10;
    private static final double WARM_C = 20;

    private final List<Row> rows;

    private AirTable(List<Row> rows) {
        this.rows = rows;
    }

    private record Row(double temperatureC, double humidityTo, List<Double> perKm) {}

    /** Reads the table. */
    static AirTable load() {
        List<Row> rows = new ArrayList<>();
        for (List<String> written : TableResource.rows("air.csv")) {
            List<Double> numbers = new ArrayList<>();
            for (String number : written) {
                numbers.add(Double.valueOf(number));
            }
            List<Double> perKm = List.copyOf(numbers.subList(FIRST_VALUE, numbers.size()));
            rows.add(new Row(numbers.get(0), numbers.get(2), perKm));
        }
        return new AirTable(List.copyOf(rows));
    }

    /**
     * Power attenuation m in Np/m for each octave from 125 Hz to 8 kHz.
     *
     * @param temperatureC temperature in C, 10 to 20
     * @param humidityPercent relative humidity in percent, 30 to 90
     */
    double[] attenuationPerM(double temperatureC, double humidityPercent) {
        if (!(temperatureC >= COLD_C && temperatureC <= WARM_C && humidityPercent >= 30 && humidityPercent <= 90)) {
            throw new IllegalArgumentException(
                    "the table of air goes from 10 to 20 C and from 30 to 90 % humidity, not " + temperatureC + " C at "
                            + humidityPercent + " %");
        }
        Row cold = row(COLD_C, humidityPercent);
        Row warm = row(WARM_C, humidityPercent);
        double warmth = (temperatureC - COLD_C) / (WARM_C - COLD_C);
        double[] attenuation = new double[OCTAVES];
        for (int octave = 0; octave < OCTAVES; octave++) {
            double perKm = (1 - warmth) * cold.perKm.get(octave) + warmth * warm.perKm.get(octave);
            attenuation[octave] = perKm / 1000;
        }
        return attenuation;
    }

    private Row row(double temperatureC, double humidityPercent) {
        for (Row row : rows) {
            if (row.temperatureC == temperatureC && humidityPercent <= row.humidityTo) {
                return row;
            }
        }
        throw new IllegalStateException("the table of air has no row for " + temperatureC + " C");
    }
}
