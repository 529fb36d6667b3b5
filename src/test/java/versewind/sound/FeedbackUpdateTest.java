package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.organ.Instrument;
import versewind.plan.Feedback;
import versewind.plan.HeardAs;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.sound.FeedbackUpdate.Band;
import versewind.sound.FeedbackUpdate.Cut;
import versewind.store.Library;

class FeedbackUpdateTest {

    private static final int PEOPLE = 180;

    private final Plan harvest;
    private final Verse led;
    private final Verse choir;
    private final OrganSound sound;

    FeedbackUpdateTest() throws Exception {
        var open = new Library(Path.of("")).openPlan("harvest-festival");
        Instrument organ = open.instrument();
        harvest = open.plan();
        led = harvest.hymns().get(0).verses().get(1);
        choir = led.withMode(Mode.SMALL_CHOIR);
        sound = OrganSound.open(organ);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 1, -Infinity, 0",
        "1.5, 2, -1, 4",
        "-3, 7.8, -1.5, 9",
        "20, 3, -Infinity, -1.5",
        "-20, 3, 9, Infinity",
        "-40, 3, -1.5, 9",
        "0, 2, -Infinity, Infinity"
    })
    void a_distribution_that_is_cut_has_the_mean_and_variance_of_numerical_integration(
            double mean, double sd, double from, double to) {
        double low = Math.max(from, mean - 40 * sd);
        double high = Math.min(to, mean + 40 * sd);
        int steps = 2_000_000;
        double nearest = Math.max(low, Math.min(high, mean));
        double all = 0;
        double first = 0;
        double second = 0;
        for (int i = 0; i < steps; i++) {
            double at = low + (high - low) * (i + 0.5) / steps;
            double keep = (nearest - mean) * (nearest - mean);
            double density = Math.exp((keep - (at - mean) * (at - mean)) / (2 * sd * sd));
            all += density;
            first += density * at;
            second += density * at * at;
        }
        Cut cut = Cut.of(mean, sd, from, to);
        assertThat(cut.mean()).isCloseTo(first / all, within(1e-3));
        assertThat(cut.variance()).isCloseTo(second / all - Math.pow(first / all, 2), within(2e-3));
    }

    private double marginDb(OrganSound organ, Verse verse) {
        return organ.estimate(verse, PEOPLE, OptionalInt.empty()).margin().db().orElseThrow();
    }

    private OrganSound after(Verse verse, HeardAs... heard) {
        return sound.heeding(
                answered(Stream.of(heard).map(each -> verse.withAnswer(Optional.of(new Feedback(each, PEOPLE))))));
    }

    private Plan answered(Stream<Verse> verses) {
        Hymn hymn = harvest.hymns().get(0).withVerses(verses.toList());
        return harvest.withHymns(List.of(hymn));
    }

    @Test
    void too_soft_makes_the_organ_expected_softer_against_the_singers() {
        assertThat(marginDb(after(led, HeardAs.TOO_SOFT), led)).isLessThan(marginDb(sound, led) - 1);
    }

    @Test
    void too_strong_makes_the_organ_expected_stronger_against_the_singers() {
        assertThat(marginDb(after(led, HeardAs.TOO_STRONG), led)).isGreaterThan(marginDb(sound, led) + 1);
    }

    @Test
    void an_organ_too_strong_for_a_choir_is_one_that_covers_its_words() {
        assertThat(marginDb(after(choir, HeardAs.TOO_STRONG), choir)).isLessThan(marginDb(sound, choir));
        assertThat(Band.of(Margin.Kind.VOICE, choir, HeardAs.TOO_STRONG).toDb()).isEqualTo(Thresholds.CHOIR_CLEAR_DB);
    }

    @Test
    void right_draws_the_margin_into_the_band_that_is_right() {
        Band right = Band.of(Margin.Kind.LEAD, led, HeardAs.RIGHT);
        assertThat(marginDb(after(led, HeardAs.RIGHT, HeardAs.RIGHT, HeardAs.RIGHT), led))
                .isBetween(right.fromDb(), right.toDb());
    }

    @Test
    void every_answer_makes_the_margin_surer() {
        double before = plusMinus(sound);
        double one = plusMinus(after(led, HeardAs.RIGHT));
        double three = plusMinus(after(led, HeardAs.RIGHT, HeardAs.RIGHT, HeardAs.RIGHT));
        assertThat(one).isLessThan(before);
        assertThat(three).isLessThan(one);
    }

    private double plusMinus(OrganSound organ) {
        double[] gradient = new double[organ.unknowns().count()];
        organ.ofVerdict(led, PEOPLE, gradient);
        return organ.known().sdDb(gradient);
    }

    @Test
    void an_organ_alone_tells_nothing() {
        Verse alone = led.withMode(Mode.CONGREGATION).withKind(VerseKind.INTERLUDE);
        assertThat(after(alone, HeardAs.TOO_STRONG).organ()).isEqualTo(sound.organ());
    }

    @Test
    void a_plan_of_which_nothing_was_said_changes_nothing() {
        assertThat(sound.heeding(harvest)).isSameAs(sound);
    }

    @Test
    void what_the_trims_rest_on_stays_what_it_was() {
        assertThat(after(led, HeardAs.TOO_SOFT).calibration()).isSameAs(sound.calibration());
    }
}
