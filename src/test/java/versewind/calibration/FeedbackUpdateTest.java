package versewind.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import versewind.organ.Instrument;
import versewind.plan.Feedback;
import versewind.plan.HeardAs;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.sound.OrganSound;
import versewind.sound.Verdict;
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
        choir = harvest.hymns().get(2).verses().get(2);
        sound = OrganSound.open(organ);
    }

    private double share(OrganSound organ, Verse verse) {
        return organ.estimate(verse, PEOPLE, OptionalInt.empty())
                .balance()
                .share()
                .orElseThrow();
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
        assertThat(share(after(led, HeardAs.TOO_SOFT), led)).isLessThan(share(sound, led) * 0.9);
    }

    @Test
    void too_strong_makes_the_organ_expected_stronger_against_the_singers() {
        assertThat(share(after(led, HeardAs.TOO_STRONG), led)).isGreaterThan(share(sound, led) * 1.1);
    }

    @Test
    void an_organ_too_strong_for_a_choir_is_one_that_covers_its_words() {
        assertThat(share(after(choir, HeardAs.TOO_STRONG), choir)).isLessThan(share(sound, choir));
    }

    @Test
    void right_draws_the_share_into_the_band_that_is_right() {
        assertThat(share(after(led, HeardAs.RIGHT, HeardAs.RIGHT, HeardAs.RIGHT), led))
                .isBetween(Verdict.LEADS.from(led.mode()), Verdict.TOO_STRONG.from(led.mode()));
    }

    @Test
    void every_answer_makes_the_balance_more_certain() {
        double before = plusMinus(sound);
        double one = plusMinus(after(led, HeardAs.RIGHT));
        double three = plusMinus(after(led, HeardAs.RIGHT, HeardAs.RIGHT, HeardAs.RIGHT));
        assertThat(one).isLessThan(before);
        assertThat(three).isLessThan(one);
    }

    private double plusMinus(OrganSound organ) {
        double[] gradient = new double[organ.parameters().count()];
        organ.gradient(led, PEOPLE, gradient);
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
