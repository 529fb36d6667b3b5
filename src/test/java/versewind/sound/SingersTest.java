package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import versewind.acoustics.DiffuseField;
import versewind.acoustics.ThirdOctaves;
import versewind.plan.Share;
import versewind.plan.Singing;
import versewind.plan.Sung;
import versewind.plan.SungBy;

class SingersTest {

    /** 5000 m3 with a reverberation time of 2.5 s. */
    private static final double REVERBERANT_PER_M2 = DiffuseField.reverberantPerM2(322);

    private static final int BAND_1_KHZ = 16;

    private static double[] voice(Singing singing) {
        return new Singers(0).voice(SungBy.CONGREGATION, singing);
    }

    private static double[] soloist(Singing singing) {
        return new Singers(0).voice(SungBy.SOLO_VOICE, singing);
    }

    private static double dbA(double[] voice, double share) {
        return ThirdOctaves.dbA(voice) + ThirdOctaves.powerToDb(share);
    }

    private static double octaveDb(double[] voice, int octave) {
        double sum = 0;
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            sum += ThirdOctaves.octaveOf(band) == octave ? voice[band] : 0;
        }
        return ThirdOctaves.powerToDb(sum);
    }

    /** ANSI S3.5-1997, levels at 1 m of the octave of 1 kHz, and 8 dB; strong is the mean of raised and loud. */
    @ParameterizedTest
    @CsvSource({"GENTLE, 53.49", "ORDINARY, 62.34", "STRONG, 66.49", "FULL_VOICE, 70.64"})
    void a_voice_has_the_spectrum_of_its_effort(Singing singing, double levelDb) {
        int octave = ThirdOctaves.octaveOf(BAND_1_KHZ);
        assertThat(octaveDb(voice(singing), octave)).isCloseTo(levelDb + 8, within(0.001));
    }

    @Test
    void a_soloist_who_sings_strongly_is_10_dB_above_loud() {
        double[] loud = voice(Singing.FULL_VOICE);
        double[] soloist = soloist(Singing.STRONG);
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            assertThat(soloist[band]).isCloseTo(loud[band] * ThirdOctaves.dbToPower(10), within(1e-6 * loud[band]));
        }
    }

    @ParameterizedTest
    @EnumSource(Singing.class)
    void a_soloist_is_stronger_than_one_of_the_people_and_every_strength_than_the_one_before(Singing singing) {
        double soloistDba = ThirdOctaves.dbA(soloist(singing));
        assertThat(soloistDba).isGreaterThan(ThirdOctaves.dbA(voice(singing)) + 4);
        if (singing != Singing.FULL_VOICE) {
            Singing next = Singing.values()[singing.ordinal() + 1];
            assertThat(ThirdOctaves.dbA(voice(next))).isGreaterThan(ThirdOctaves.dbA(voice(singing)) + 3);
            assertThat(ThirdOctaves.dbA(soloist(next))).isGreaterThan(soloistDba + 3);
        }
    }

    @Test
    void a_voice_has_nothing_below_its_lowest_and_above_its_highest_octave() {
        double[] voice = voice(Singing.FULL_VOICE);
        assertThat(voice[ThirdOctaves.bandOf(80).orElseThrow()]).isZero();
        assertThat(voice[ThirdOctaves.bandOf(100).orElseThrow()]).isPositive();
        assertThat(voice[ThirdOctaves.bandOf(10_000).orElseThrow()]).isPositive();
        assertThat(voice[ThirdOctaves.bandOf(12_500).orElseThrow()]).isZero();
        assertThat(octaveDb(voice, 2)).isCloseTo(octaveDb(voice, 3), within(1e-9));
    }

    /** Estimates of another hand: 100 singers raised 78 dB(A), loud 86; 300 singers 81 and 89. */
    @ParameterizedTest
    @CsvSource({"100, ORDINARY, 78", "100, FULL_VOICE, 86", "300, ORDINARY, 81", "300, FULL_VOICE, 89"})
    void singing_is_as_loud_as_expected(int singers, Singing singing, double dba) {
        double[] voice = voice(singing);
        assertThat(dbA(voice, Singers.amongPerM2(singers, REVERBERANT_PER_M2))).isCloseTo(dba, within(1.5));
    }

    @Test
    void the_diffuse_field_of_the_others_grows_by_3_01_dB_when_they_are_twice_as_many() {
        double neighbours = Singers.amongPerM2(1001, 0);
        double once = Singers.amongPerM2(1001, REVERBERANT_PER_M2) - neighbours;
        double twice = Singers.amongPerM2(2001, REVERBERANT_PER_M2) - Singers.amongPerM2(2001, 0);
        assertThat(ThirdOctaves.powerToDb(twice / once)).isCloseTo(3.0103, within(0.0001));
    }

    /** The integral of n/(4 pi r^2) over a disc of singers around the seat, summed ring by ring. */
    @Test
    void the_neighbours_direct_sound_is_that_of_a_disc_of_singers() {
        int singers = 200;
        double edgeM = Math.sqrt(singers / (Math.PI * 1.1));
        double step = 1e-4;
        double sum = 0;
        for (double r = 0.7 + step / 2; r < edgeM; r += step) {
            sum += 1.1 * 2 * Math.PI * r * step / (4 * Math.PI * r * r);
        }
        assertThat(Singers.amongPerM2(singers, 0)).isCloseTo(sum, within(1e-4));
    }

    @Test
    void one_who_sings_alone_hears_as_much_as_one_of_two() {
        assertThat(Singers.amongPerM2(1, REVERBERANT_PER_M2)).isEqualTo(Singers.amongPerM2(2, REVERBERANT_PER_M2));
        assertThat(Singers.amongPerM2(0, REVERBERANT_PER_M2)).isZero();
        assertThat(Singers.amongPerM2(2, REVERBERANT_PER_M2)).isPositive();
    }

    @ParameterizedTest
    @CsvSource({
        "100, 8, CONGREGATION, 80",
        "101, 8, CONGREGATION, 81",
        "1, 8, CONGREGATION, 1",
        "170, 3, CONGREGATION, 51",
        "100, 10, DESCANT, 100",
        "100, 8, ALTERNATION, 40"
    })
    void so_many_in_ten_sing_and_in_alternation_half_of_them_at_a_time(int present, int inTen, SungBy by, int singers) {
        Share share = new Share(OptionalInt.of(inTen), Share.USUAL_IN_TEN);
        assertThat(Singers.singing(present, new Sung(by, Singing.ORDINARY, OptionalInt.empty(), share)))
                .isEqualTo(singers);
    }

    @Test
    void a_treble_has_half_the_power() {
        double ratio = new Singers(0).voice(SungBy.TREBLES, Singing.ORDINARY)[BAND_1_KHZ]
                / voice(Singing.ORDINARY)[BAND_1_KHZ];
        assertThat(ratio).isCloseTo(0.5, within(0.01));
    }
}
