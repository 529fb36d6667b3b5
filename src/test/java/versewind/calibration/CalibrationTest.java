package versewind.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.Shipped;
import versewind.organ.Instrument;
import versewind.sound.OrganSound;
import versewind.sound.RandomOrgans;
import versewind.sound.Seat;

/**
 * How well a few readings teach an organ, on the parish organ: the level of 200 random registrations, against what
 * organs drawn at random truly give; readings as {@link ReadingDesign} proposes them, and as many that are
 * chosen blindly, with the same noise.
 */
@Tag("slow")
class CalibrationTest {

    private static final double DEVICE_SD_DB = 2;
    private static final int ORGANS = 60;
    private static final int REGISTRATIONS = 200;
    private static final List<Integer> READINGS = List.of(0, 1, 3, 5);

    private static Instrument organ;
    private static OrganSound estimated;

    /** Root-mean-square errors in dB after so many readings, and what was stated of them. */
    private record Errors(Map<Integer, Double> db, Map<Integer, Double> statedDb) {}

    private static Errors proposed;
    private static Errors blind;

    @BeforeAll
    static void calibrate() throws Exception {
        organ = Shipped.instrument("st-tethwin");
        estimated = OrganSound.open(organ);
        RandomOrgans random = new RandomOrgans(7);
        List<MeterReading> asked = readings(random, REGISTRATIONS);
        List<MeterReading> chosen = ReadingDesign.allRound(estimated, 5, 0).stream()
                .map(ReadingDesign.Proposed::reading)
                .toList();
        proposed = new Errors(new TreeMap<>(), new TreeMap<>());
        blind = new Errors(new TreeMap<>(), new TreeMap<>());
        for (int i = 0; i < ORGANS; i++) {
            OrganSound truth = random.truth(estimated);
            add(proposed, truth, taken(truth, chosen, random), asked);
            add(blind, truth, taken(truth, readings(random, 5), random), asked);
        }
        for (Errors errors : List.of(proposed, blind)) {
            errors.db().replaceAll((readings, sum) -> Math.sqrt(sum / ORGANS));
            errors.statedDb().replaceAll((readings, sum) -> Math.sqrt(sum / ORGANS));
        }
    }

    private static void add(Errors errors, OrganSound truth, List<MeterReading> taken, List<MeterReading> asked) {
        double[] gradient = new double[estimated.parameters().count()];
        for (int number : READINGS) {
            OrganSound taught = taught(taken.subList(0, number));
            double sum = 0;
            double stated = 0;
            for (MeterReading reading : asked) {
                double error = reading.expectedDba(taught, gradient).orElseThrow()
                        - reading.expectedDba(truth).orElseThrow();
                sum += error * error / asked.size();
                stated += taught.covariance().variance(gradient) / asked.size();
            }
            errors.db().merge(number, sum, Double::sum);
            errors.statedDb().merge(number, stated, Double::sum);
        }
    }

    private static List<MeterReading> readings(RandomOrgans random, int number) {
        List<MeterReading> readings = new ArrayList<>();
        while (readings.size() < number) {
            MeterReading reading = new MeterReading(
                    "", random.registration(organ), random.hands(organ), Seat.NAVE, 0, Optional.empty(), 70);
            if (reading.expectedDba(estimated).isPresent()) {
                readings.add(reading);
            }
        }
        return readings;
    }

    private static List<MeterReading> taken(OrganSound truth, List<MeterReading> readings, RandomOrgans random) {
        double deviceDb = DEVICE_SD_DB * random.gaussian();
        return readings.stream()
                .map(reading -> new MeterReading(
                        "",
                        reading.registration(),
                        reading.hands(),
                        reading.seat(),
                        reading.present(),
                        reading.sung(),
                        reading.expectedDba(truth).orElseThrow()
                                + deviceDb
                                + MeterReading.NOISE_SD_DB * random.gaussian()))
                .toList();
    }

    private static OrganSound taught(List<MeterReading> readings) {
        return readings.isEmpty() ? estimated : Fit.of(estimated, readings).after();
    }

    @Test
    void one_reading_leaves_less_than_three_quarters_of_what_is_not_known() {
        assertThat(proposed.db().get(1)).isLessThan(0.75 * proposed.db().get(0));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 5})
    void proposed_readings_teach_more_than_blind_ones(int readings) {
        assertThat(proposed.db().get(readings)).isLessThan(blind.db().get(readings));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 3, 5})
    void the_error_is_what_is_stated(int readings) {
        assertThat(proposed.db().get(readings) / proposed.statedDb().get(readings))
                .isCloseTo(1, within(0.15));
    }
}
