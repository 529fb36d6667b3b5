package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.Room;

/** A room of 6000 m3; numbers by hand from A = 0.1611 V/T, 966.7 m2 for 1 s. */
class TimedOctavesTest {

    private static final double[] NO_AIR = new double[7];
    private static final double[] AIR = {1, 5, 13, 22, 42, 119, 416};
    private static final int AT_125 = 0;
    private static final int AT_500 = 2;
    private static final int AT_1000 = 3;
    private static final int AT_4000 = 5;
    private static final int AT_8000 = 6;

    private static double[] absorptionM2(Map<Integer, Double> octaveS, Optional<double[]> surfacesM2, double[] airM2) {
        SortedMap<Integer, Double> times = new TreeMap<>(octaveS);
        return new TimedOctaves(6000, times, surfacesM2, airM2).absorptionM2();
    }

    @Test
    void a_timed_octave_is_as_it_was_timed() {
        double[] absorption = absorptionM2(Map.of(500, 3.0, 2000, 2.5), Optional.empty(), AIR);

        assertThat(absorption[AT_500]).isEqualTo(966.68 / 3.0, within(0.01));
        assertThat(absorption[AT_500 + 2]).isEqualTo(966.68 / 2.5, within(0.01));
    }

    @Test
    void beyond_the_timed_octaves_the_walls_stay_and_the_air_grows() {
        double[] absorption = absorptionM2(Map.of(500, 3.0, 1000, 2.8), Optional.empty(), AIR);

        assertThat(absorption[AT_125]).isEqualTo(966.68 / 3.0 - 13 + 1, within(0.01));
        assertThat(absorption[AT_4000]).isEqualTo(966.68 / 2.8 - 22 + 119, within(0.01));
        assertThat(absorption[AT_8000]).isEqualTo(absorption[AT_4000] + 416 - 119, within(1e-9));
    }

    @Test
    void between_two_timed_octaves_the_walls_go_along_a_line_of_logarithms() {
        double[] absorption = absorptionM2(Map.of(250, 4.0, 1000, 1.0), Optional.empty(), NO_AIR);

        assertThat(absorption[AT_500]).isEqualTo(966.68 / 2.0, within(0.01));
    }

    @Test
    void known_surfaces_keep_their_shape_and_take_the_timed_level() {
        double[] surfaces = {100, 110, 120, 150, 180, 200, 200};
        double[] absorption = absorptionM2(Map.of(500, 966.68 / 240), Optional.of(surfaces), NO_AIR);

        assertThat(absorption[AT_125]).isEqualTo(200, within(0.01));
        assertThat(absorption[AT_1000]).isEqualTo(300, within(0.01));
    }

    /** A time so long that the air alone would have shortened it still leaves the walls something. */
    @Test
    void the_walls_never_add_sound() {
        double[] absorption = absorptionM2(Map.of(4000, 9.0), Optional.empty(), AIR);

        assertThat(absorption[AT_4000]).isEqualTo(966.68 / 9, within(0.01));
        assertThat(absorption[AT_125]).isEqualTo(1 + 0.05 * 966.68 / 9, within(0.01));
    }

    /** One clap: its octave is exact, and the level in the others is within a decibel or two. */
    @Test
    void a_clap_in_two_octaves_gives_nearly_what_six_measured_octaves_give() {
        List<Double> measured = List.of(3.4, 3.3, 3.1, 2.9, 2.6, 2.1);
        SortedMap<Integer, Double> clap = new TreeMap<>(Map.of(500, 3.1, 1000, 2.9));
        RoomSound whole = sound(new Room.MeasuredTimes(measured));
        RoomSound clapped = sound(new Room.MeasuredTimes(clap, Optional.empty()));
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            double offDb = 10 * Math.log10(clapped.absorptionM2(band, 100) / whole.absorptionM2(band, 100));
            assertThat(offDb).as("band %d", band).isBetween(-1.0, 1.0);
        }
    }

    private static RoomSound sound(Room.Reverberation reverberation) {
        return new RoomSound(new Room(6000, 300, reverberation, new Room.Distances(20, 35, 12, 12, 3)), 0);
    }
}
