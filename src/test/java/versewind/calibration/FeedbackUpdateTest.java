package versewind.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import versewind.calibration.FeedbackUpdate.Band;
import versewind.organ.Instrument;
import versewind.plan.Feedback;
import versewind.plan.HeardAs;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.sound.OrganSound;
import versewind.sound.Thresholds;
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

    private double marginDb(OrganSound organ, Verse verse) {
        return organ.estimate(verse, PEOPLE, OptionalInt.empty()).margin().db().orElseThrow();
    }

    private OrganSound after(Verse verse, HeardAs... heard) {
        return FeedbackUpdate.of(
                sound,
                Stream.of(heard)
                        .map(each -> HeardRegistration.of("ordinary", verse, new Feedback(each, PEOPLE)))
                        .toList());
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
        assertThat(Band.of(choir, HeardAs.TOO_STRONG).toDb()).isEqualTo(Thresholds.CHOIR_WORDS.goodDb());
    }

    @Test
    void right_draws_the_margin_into_the_band_that_is_right() {
        Band right = Band.of(led, HeardAs.RIGHT);
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
        double[] gradient = new double[organ.parameters().count()];
        organ.margin(led, PEOPLE, gradient);
        return organ.covariance().sdDb(gradient);
    }

    @Test
    void an_organ_alone_tells_nothing() {
        Verse alone = led.withMode(Mode.CONGREGATION)
                .withKind(VerseKind.INTERLUDE)
                .withAnswer(Optional.of(new Feedback(HeardAs.TOO_STRONG, PEOPLE)));
        Hymn hymn = harvest.hymns().get(0).withVerses(List.of(alone));
        assertThat(HeardRegistration.of(harvest.withHymns(List.of(hymn)))).isEmpty();
    }

    @Test
    void nothing_heard_changes_nothing() {
        assertThat(FeedbackUpdate.of(sound, List.of())).isSameAs(sound);
    }
}
