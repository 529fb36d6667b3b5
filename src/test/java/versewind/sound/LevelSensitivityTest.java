package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import versewind.Shipped;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.Trims;
import versewind.plan.HandsAndFeet;
import versewind.plan.Singing;
import versewind.plan.Verse;

class LevelSensitivityTest {

    private static final double STEP_DB = 0.01;

    private final Instrument organ;
    private final List<Verse> verses = new ArrayList<>();
    private final OrganSound sound;
    private final Parameters parameters;

    LevelSensitivityTest() throws Exception {
        var open = Shipped.plan("harvest-festival");
        organ = open.instrument();
        open.plan().hymns().forEach(hymn -> verses.addAll(hymn.verses()));
        sound = OrganSound.open(organ);
        parameters = sound.parameters();
    }

    @Test
    void the_derivative_of_a_level_is_its_numerical_derivative_by_every_parameter() {
        RandomOrgans random = new RandomOrgans(11);
        for (Seat seat : Seat.values()) {
            Registration drawn = random.registration(organ);
            HandsAndFeet hands = random.hands(organ);
            assertDerivative((other, gradient) -> other.organDba(seat, 200, drawn, hands, gradient));
        }
        assertDerivative((other, gradient) -> other.singingDba(200, 90, Singing.ORDINARY, gradient));
    }

    private void assertDerivative(BiFunction<OrganSound, double[], OptionalDouble> level) {
        double[] gradient = new double[parameters.count()];
        double levelDba = level.apply(sound, gradient).orElseThrow();
        for (int index = 0; index < parameters.count(); index++) {
            if (isBorrowed(index)) {
                continue;
            }
            double[] off = new double[parameters.count()];
            off[index] = STEP_DB;
            OrganSound moved = sound.with(parameters.trims(Trims.of(organ), off), parameters.offsets(off));
            double movedDba = level.apply(moved, new double[parameters.count()]).orElseThrow();
            assertThat((movedDba - levelDba) / STEP_DB).isCloseTo(gradient[index], within(0.02));
        }
    }

    /** Borrowed pipes have no trim of their own. */
    private boolean isBorrowed(int index) {
        int stop = index - parameters.rank(0);
        return stop >= 0
                && stop < organ.stops().size()
                && organ.stops().get(stop).stop().borrowed().isPresent();
    }

    @Test
    void a_difference_is_far_surer_than_a_level() {
        Verse soft = verses.get(3);
        Verse loud = verses.get(6);
        double level =
                sound.estimate(loud, 180, OptionalInt.empty()).plusMinus().organDb();
        OrganSound.LevelStep step = sound.step(soft, loud, 180).orElseThrow();
        assertThat(level).isBetween(4.0, 5.0);
        assertThat(step.plusMinusDb()).isLessThan(level * 2 / 3);
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
        OrganSound.LevelStep step =
                sound.step(verses.get(3), verses.get(3), 180).orElseThrow();
        assertThat(step.db()).isZero();
        assertThat(step.plusMinusDb()).isZero();
    }

    @Test
    void the_prior_is_that_of_a_measured_room() {
        assertThat(parameters.sdDb(parameters.room())).isEqualTo(1);
        assertThat(parameters.sdDb(parameters.singers())).isEqualTo(3);
        assertThat(parameters.sdDb(parameters.box(0))).isEqualTo(4);
        assertThat(Math.hypot(parameters.sdDb(parameters.rank(0)), parameters.sdDb(parameters.recipe(0))))
                .isCloseTo(3, within(1e-9));
        assertThat(parameters.sdDb(Parameters.ORGAN)).isEqualTo(4);
    }

    @Test
    void an_observation_narrows_every_level_that_shares_its_errors() {
        double[] gradient = new double[parameters.count()];
        sound.organDba(Seat.NAVE, 0, Registration.full(organ), verses.get(6).hands(), gradient);
        OrganSound observed = sound.with(sound.covariance().after(gradient, 2));
        assertThat(plusMinusDb(observed)).isLessThan(plusMinusDb(sound) / 2);
    }

    private double plusMinusDb(OrganSound other) {
        return other.estimate(verses.get(6), 180, OptionalInt.empty())
                .plusMinus()
                .organDb();
    }
}
