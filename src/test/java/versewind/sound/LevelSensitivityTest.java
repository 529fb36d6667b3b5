package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import versewind.organ.Instrument;
import versewind.organ.Trims;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.store.Library;

class LevelSensitivityTest {

    private static final double STEP_DB = 0.01;

    private final Instrument organ;
    private final List<Verse> verses = new ArrayList<>();
    private final OrganSound sound;

    LevelSensitivityTest() throws Exception {
        var open = new Library(Path.of("")).openPlan("harvest-festival");
        organ = open.instrument();
        open.plan().hymns().forEach(hymn -> verses.addAll(hymn.verses()));
        sound = OrganSound.open(organ);
    }

    @Test
    void the_derivative_of_a_level_is_its_numerical_derivative_by_every_unknown() {
        RandomOrgans random = new RandomOrgans(11);
        Parameters unknowns = sound.unknowns();
        for (int i = 0; i < 8; i++) {
            MeterReading reading = new MeterReading(
                    "",
                    random.registration(organ),
                    random.hands(organ),
                    i < 4 ? Seat.NAVE : Seat.FAR,
                    200,
                    i % 2 == 0 ? Optional.empty() : Optional.of(new MeterReading.Sung(90, Singing.ORDINARY)),
                    70);
            double[] gradient = new double[unknowns.count()];
            double level = sound.expectedDba(reading, gradient).orElseThrow();
            for (int place = 0; place < unknowns.room(); place++) {
                double[] off = new double[unknowns.count()];
                off[place] = STEP_DB;
                double moved = sound.trimmed(unknowns.trims(Trims.of(organ), off), unknowns.offsets(off))
                        .expectedDba(reading)
                        .orElseThrow();
                assertThat((moved - level) / STEP_DB).isCloseTo(gradient[place], within(0.02));
            }
        }
    }

    /** The room's absorption also moves the direct and the early sound, which its derivative leaves out. */
    @Test
    void the_derivative_by_the_room_is_near_its_numerical_derivative() {
        Parameters unknowns = sound.unknowns();
        RandomOrgans random = new RandomOrgans(12);
        MeterReading reading = new MeterReading(
                "", random.registration(organ), random.hands(organ), Seat.NAVE, 200, Optional.empty(), 70);
        double[] gradient = new double[unknowns.count()];
        double level = sound.expectedDba(reading, gradient).orElseThrow();
        double moved = sound.trimmed(Trims.of(organ), new Offsets(0, 0.5))
                .expectedDba(reading)
                .orElseThrow();
        assertThat((moved - level) / 0.5).isCloseTo(gradient[unknowns.room()], within(0.4));
    }

    @Test
    void a_difference_is_far_surer_than_a_level() {
        Verse soft = verses.get(3);
        Verse loud = verses.get(6);
        double level =
                sound.estimate(loud, 180, OptionalInt.empty()).plusMinus().organDb();
        LevelStep step = sound.step(soft, loud, 180).orElseThrow();
        assertThat(level).isBetween(6.0, 7.0);
        assertThat(step.plusMinusDb()).isLessThan(level / 2);
        assertThat(step.db())
                .isCloseTo(
                        sound.estimate(loud, 180, OptionalInt.empty())
                                        .organDba()
                                        .orElseThrow()
                                - sound.estimate(soft, 180, OptionalInt.empty())
                                        .organDba()
                                        .orElseThrow(),
                        within(1e-9));
    }

    @Test
    void the_same_registration_differs_by_nothing_for_sure() {
        LevelStep step = sound.step(verses.get(3), verses.get(3), 180).orElseThrow();
        assertThat(step.db()).isZero();
        assertThat(step.plusMinusDb()).isZero();
    }

    @Test
    void a_measured_room_is_surer_than_one_that_was_reckoned() {
        Parameters measured = new Parameters(organ);
        assertThat(measured.sdDb(measured.room())).isEqualTo(1);
        assertThat(measured.sdDb(measured.singers())).isEqualTo(4);
        assertThat(measured.sdDb(measured.box(0))).isEqualTo(4);
        assertThat(measured.sdDb(measured.rank(0))).isEqualTo(3);
        assertThat(measured.sdDb(Parameters.ORGAN)).isEqualTo(6);
    }

    @Test
    void readings_make_levels_surer() {
        MeterReading reading = ReadingDesign.allRound(sound, 1).get(0).reading();
        OrganSound taught = Fit.of(sound, List.of(reading)).after();
        double before = sound.estimate(verses.get(6), 180, OptionalInt.empty())
                .plusMinus()
                .organDb();
        double after = taught.estimate(verses.get(6), 180, OptionalInt.empty())
                .plusMinus()
                .organDb();
        assertThat(after).isLessThan(before / 2);
    }
}
