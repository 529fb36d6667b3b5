package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.Room;

class RoomSoundTest {

    private static final Room.Distances DISTANCES = new Room.Distances(20, 35, 12, 12, 3);

    private static Room measured(Double... octaveS) {
        return new Room(6000, 300, new Room.MeasuredTimes(List.of(octaveS)), DISTANCES);
    }

    private static int band(double frequencyHz) {
        return ThirdOctaves.bandOf(frequencyHz).orElseThrow();
    }

    private static double inNaveDb(Room room, int people, int band) {
        double[] noise = new double[ThirdOctaves.COUNT];
        Arrays.fill(noise, 1);
        double[] heard = new double[ThirdOctaves.COUNT];
        new RoomSound(room, 0).seats(people).organInNave().carry(noise, heard);
        return ThirdOctaves.powerToDb(heard[band]);
    }

    /** A = 0.161 V/T. */
    @ParameterizedTest
    @CsvSource({"100, 4.0", "125, 4.0", "200, 3.5", "500, 3.0", "1250, 2.5", "2000, 2.0", "5000, 1.5", "40, 4.0"})
    void a_measured_time_holds_for_the_thirds_of_its_octave_and_the_lowest_for_all_below(double hz, double timeS) {
        RoomSound sound = new RoomSound(measured(4.0, 3.5, 3.0, 2.5, 2.0, 1.5), 0);
        assertThat(sound.absorptionM2(band(hz), 0)).isCloseTo(0.1611 * 6000 / timeS, within(0.1));
    }

    @Test
    void above_the_highest_measured_octave_the_air_takes_more() {
        RoomSound sound = new RoomSound(measured(4.0, 3.5, 3.0, 2.5, 2.0, 1.5), 0);
        double at4kHz = sound.absorptionM2(band(4000), 0);
        assertThat(sound.absorptionM2(band(6300), 0)).isGreaterThan(at4kHz + 100);
        assertThat(sound.absorptionM2(band(12_500), 0)).isEqualTo(sound.absorptionM2(band(8000), 0));
    }

    /** Table of absorption: one who stands, 0.15 m2 at 125 Hz, 0.44 m2 at 1 kHz. */
    @Test
    void every_person_adds_the_absorption_of_one_who_stands() {
        RoomSound sound = new RoomSound(TrialOrgan.ROOM, 0);
        for (double[] row : new double[][] {{50, 0.15}, {125, 0.15}, {250, 0.37}, {1000, 0.44}, {4000, 0.43}}) {
            int band = band(row[0]);
            assertThat(sound.absorptionM2(band, 300) - sound.absorptionM2(band, 0))
                    .isCloseTo(300 * row[1], within(1e-6));
        }
    }

    /** 2000 m2 of limestone (0.03 at 500 Hz), 300 m2 of boards (0.1), 6000 m3 of air (0.00055 Np/m). */
    @Test
    void without_measured_times_the_surfaces_and_the_air_are_added_up() {
        Room room = new Room(
                6000,
                300,
                new Room.Surfaces(List.of(
                        new Room.Surface("limestone wall", 2000), new Room.Surface("floor boards on joists", 300))),
                DISTANCES);
        assertThat(new RoomSound(room, 0).absorptionM2(band(500), 0))
                .isCloseTo(2000 * 0.03 + 300 * 0.1 + 4 * 0.00055 * 6000, within(0.01));
    }

    @Test
    void a_material_that_the_table_does_not_have_is_named() {
        Room room = new Room(6000, 300, new Room.Surfaces(List.of(new Room.Surface("moss", 2000))), DISTANCES);
        assertThatThrownBy(() -> new RoomSound(room, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the room has a surface of \"moss\", which the table of absorption does not have");
    }

    /** Barron's revised theory by hand: Q 1, 20 m, 6000 m3, 3 s: d = 0.25, e + l = 31.2 * 0.5 * exp(-0.8/3). */
    @Test
    void beyond_the_critical_distance_the_level_is_barrons() {
        double expectedDb = -31 + 10 * Math.log10(0.25 + 15.6 * Math.exp(-0.8 / 3));
        assertThat(inNaveDb(TrialOrgan.ROOM, 0, band(1000))).isCloseTo(expectedDb, within(0.001));
    }

    /** Lp - LW = 10 lg(1/(4 pi) + 4/322.2) at 1 m. */
    @Test
    void within_the_critical_distance_the_level_is_the_classical_one() {
        double expectedDb = 10 * Math.log10(1 / (4 * Math.PI) + 4 / 322.23);
        assertThat(inNaveDb(TrialOrgan.room(3, 1), 0, band(1000))).isCloseTo(expectedDb, within(0.001));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 1.5, 3, 8})
    void the_level_falls_with_distance(double timeS) {
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            double before = Double.POSITIVE_INFINITY;
            for (double distanceM = 0.5; distanceM < 120; distanceM *= 1.1) {
                double level = inNaveDb(TrialOrgan.room(timeS, distanceM), 0, band);
                assertThat(level).isLessThan(before);
                before = level;
            }
        }
    }

    /** Common practice, no source: a church filled with several hundred loses several dB of organ. */
    @Test
    void a_full_church_takes_some_decibels_of_organ_away() {
        int band = band(1000);
        double lossDb = inNaveDb(TrialOrgan.ROOM, 0, band) - inNaveDb(TrialOrgan.ROOM, 500, band);
        assertThat(lossDb).isBetween(2.0, 5.0);
    }

    @Test
    void sound_needs_2_9_ms_a_metre_to_the_farthest_singers() {
        Seats seats = new RoomSound(TrialOrgan.ROOM, 0).seats(0);
        assertThat(seats.lagMs(PeoplePresent.Place.IN_THE_NAVE)).isCloseTo(35 / 0.343, within(1e-9));
        assertThat(seats.lagMs(PeoplePresent.Place.AT_THE_CHOIR)).isCloseTo(12 / 0.343, within(1e-9));
    }
}
