package versewind.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.Shipped;
import versewind.organ.Instrument;
import versewind.organ.NotationException;
import versewind.organ.RegistrationText;
import versewind.plan.Feedback;
import versewind.plan.HeardAs;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.Singing;
import versewind.plan.SungBy;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;
import versewind.sound.Balance;
import versewind.sound.ClearShare;
import versewind.sound.Estimate;
import versewind.sound.NormalDistribution;
import versewind.sound.OrganSound;
import versewind.sound.RandomOrgans;
import versewind.sound.Verdict;

class FeedbackUpdateTest {

    private static final int PEOPLE = 180;

    private final Plan harvest;
    private final Verse led;
    private final Verse choir;
    private final OrganSound sound;

    FeedbackUpdateTest() throws Exception {
        var open = Shipped.plan("harvest-festival");
        Instrument organ = open.instrument();
        harvest = open.plan();
        led = harvest.hymns().get(0).verses().get(1);
        choir = harvest.hymns().get(2).verses().get(2);
        sound = OrganSound.open(organ);
    }

    private static Verse soft(Instrument organ, Verse verse) throws NotationException {
        return verse.withRegistration(new RegistrationText(organ).parse("Great: Stopped Flute 8"));
    }

    private double share(OrganSound organ, Verse verse) {
        return organ.estimate(verse, PEOPLE, OptionalInt.empty())
                .balance()
                .share()
                .orElseThrow();
    }

    private OrganSound after(Verse verse, HeardAs... heard) {
        return new FeedbackUpdate(
                        sound,
                        Stream.of(heard)
                                .map(each -> HeardRegistration.of("ordinary", verse, new Feedback(each, PEOPLE)))
                                .toList())
                .sound();
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
        return plusMinus(organ, led);
    }

    private static double plusMinus(OrganSound organ, Verse verse) {
        return plusMinus(organ, verse, PEOPLE);
    }

    private static double plusMinus(OrganSound organ, Verse verse, int people) {
        double[] gradient = new double[organ.parameters().count()];
        organ.gradient(verse, people, gradient);
        return organ.covariance().sdDb(gradient);
    }

    /**
     * One registration that is judged again and again depends on three unknowns alone: the level of the organ over the
     * singing, the taste of the organist, and the error of its own; and on whether each answer is a slip, and all are
     * random. Source: Bayes' rule, summed over a grid.
     */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "RIGHT",
                "TOO_SOFT",
                "TOO_STRONG",
                "RIGHT RIGHT",
                "TOO_SOFT TOO_SOFT",
                "TOO_STRONG TOO_STRONG TOO_STRONG",
                "RIGHT TOO_SOFT RIGHT RIGHT",
                "TOO_SOFT TOO_STRONG",
                "TOO_STRONG TOO_SOFT TOO_SOFT"
            })
    void what_is_believed_is_what_the_rule_of_bayes_gives(String judgements) {
        HeardAs[] heard = Stream.of(judgements.split(" ")).map(HeardAs::valueOf).toArray(HeardAs[]::new);
        OrganSound after = after(led, heard);
        ClearShare.RightBand before = sound.rightBand(led, PEOPLE).orElseThrow();
        ClearShare.RightBand now = after.rightBand(led, PEOPLE).orElseThrow();
        NormalDistribution.Moments exact = exact(plusMinus(sound), before, heard);

        assertThat(plusMinus(after)).isCloseTo(Math.sqrt(exact.variance()), within(0.3));
        assertThat(before.fromDb() - now.fromDb()).isCloseTo(exact.mean(), within(0.3));
    }

    private static NormalDistribution.Moments exact(double sdDb, ClearShare.RightBand right, HeardAs... heard) {
        double[] sums = new double[3];
        for (double levelDb = -5 * sdDb; levelDb <= 5 * sdDb; levelDb += 0.5) {
            double all = 0;
            double weights = 0;
            // taste of 2 dB and an error of 2.6 dB are felt as one
            double feltSdDb = Math.hypot(2, 2.6);
            for (double moreDb = -5 * feltSdDb; moreDb <= 5 * feltSdDb; moreDb += 0.1) {
                double weight = Math.exp(-moreDb * moreDb / (2 * feltSdDb * feltSdDb));
                weights += weight;
                for (HeardAs each : heard) {
                    weight *= 0.98 * meant(each, levelDb + moreDb, right) + 0.02 / 3;
                }
                all += weight;
            }
            double ofAnswers = 0.98 * all / weights + 0.02 * Math.pow(1.0 / 3, heard.length);
            double weight = ofAnswers * Math.exp(-levelDb * levelDb / (2 * sdDb * sdDb));
            sums[0] += weight;
            sums[1] += weight * levelDb;
            sums[2] += weight * levelDb * levelDb;
        }
        double mean = sums[1] / sums[0];
        return new NormalDistribution.Moments(mean, sums[2] / sums[0] - mean * mean);
    }

    private static double meant(HeardAs heard, double feltDb, ClearShare.RightBand right) {
        double fromDb = heard == HeardAs.TOO_SOFT
                ? Double.NEGATIVE_INFINITY
                : heard == HeardAs.RIGHT ? right.fromDb() : right.toDb();
        double toDb = heard == HeardAs.TOO_SOFT
                ? right.fromDb()
                : heard == HeardAs.RIGHT ? right.toDb() : Double.POSITIVE_INFINITY;
        return NormalDistribution.between(feltDb, 1.5, fromDb, toDb);
    }

    /**
     * On every shipped plan, with and without what is usual on its organ: the same verse once too soft and once too
     * strong, or a verse too soft that leads by more than another that is too strong. The certainty is that of either
     * answer alone, to the accuracy of the approximation, 0.2 dB.
     */
    @Test
    void answers_that_contradict_each_other_neither_move_the_organ_nor_make_it_more_certain() throws Exception {
        Random random = new Random(5);
        for (String id : Shipped.plans()) {
            var open = Shipped.plan(id);
            int people = open.plan().heading().people();
            for (Experience known : List.of(Experience.NONE, open.organ().experience())) {
                OrganSound before = open.organ().with(known).sound();
                List<Verse> verses = open.plan().hymns().stream()
                        .flatMap(hymn -> hymn.verses().stream())
                        .filter(verse -> verse.sungBy() == SungBy.CONGREGATION && verse.isSung())
                        .toList();
                for (int i = 0; i < 10; i++) {
                    Verse one = verses.get(random.nextInt(verses.size()));
                    Verse other = random.nextBoolean() ? one : verses.get(random.nextInt(verses.size()));
                    boolean leadsMore = before.rightBand(one, people)
                                    .orElseThrow()
                                    .fromDb()
                            < before.rightBand(other, people).orElseThrow().fromDb();
                    HeardRegistration soft = HeardRegistration.of(
                            "soft", leadsMore ? one : other, new Feedback(HeardAs.TOO_SOFT, people));
                    HeardRegistration strong = HeardRegistration.of(
                            "strong", leadsMore ? other : one, new Feedback(HeardAs.TOO_STRONG, people));
                    OrganSound both = new FeedbackUpdate(before, List.of(soft, strong)).sound();
                    OrganSound backward = new FeedbackUpdate(before, List.of(strong, soft)).sound();

                    assertThat(levelDb(both, one)).isCloseTo(levelDb(before, one), within(2.0));
                    assertThat(levelDb(backward, one)).isCloseTo(levelDb(both, one), within(0.05));
                    assertThat(plusMinus(both, one, people))
                            .isGreaterThan(Math.min(
                                            plusMinus(after(before, soft), one, people),
                                            plusMinus(after(before, strong), one, people))
                                    - 0.2);
                }
            }
        }
    }

    private static OrganSound after(OrganSound before, HeardRegistration heard) {
        return new FeedbackUpdate(before, List.of(heard)).sound();
    }

    private static double levelDb(OrganSound organ, Verse verse) {
        return organ.levelDba(verse.registration(), verse.hands());
    }

    /** On every shipped plan, where the organ leads as estimated: the verse, answered as it is not. */
    @ParameterizedTest
    @CsvSource({"1, TOO_SOFT", "1, TOO_STRONG", "3, TOO_SOFT", "3, TOO_STRONG"})
    void a_verse_that_is_played_again_gets_the_verdict_that_was_heard(int times, HeardAs heard) throws Exception {
        for (String id : Shipped.plans()) {
            var open = Shipped.plan(id);
            Plan plan = open.plan();
            int people = plan.heading().people();
            List<HeardRegistration> usual = open.organ().experience().usual();
            OrganSound before = open.organ().with(Experience.NONE).sound();
            for (VersePlace place : plan.places()) {
                Verse verse = plan.verse(place);
                boolean isUsual = usual.stream().anyMatch(each -> each.isAlike(before, verse, people));
                if (verse.mode() == Mode.CONGREGATION && verse.isSung() && !isUsual) {
                    Feedback answer = new Feedback(heard, people);
                    List<HeardRegistration> last =
                            HeardRegistration.of(plan.withVerse(place, verse.withAnswer(Optional.of(answer))));
                    Balance balance = new FeedbackUpdate(
                                    before,
                                    Stream.concat(usual.stream(), Collections.nCopies(times, last.get(0)).stream())
                                            .toList())
                            .sound()
                            .estimate(verse, people, OptionalInt.empty())
                            .balance();
                    double odds = heard == HeardAs.TOO_STRONG
                            ? balance.odds().of(Verdict.TOO_STRONG)
                            : balance.odds().of(Verdict.LOST) + balance.odds().of(Verdict.LEAD_ONLY_JUST);

                    assertThat(odds).isGreaterThan(times == 1 ? 0.65 : 0.85);
                    assertThat(balance.estimated().way())
                            .isEqualTo(heard == HeardAs.TOO_STRONG ? Verdict.Way.SOFTER : Verdict.Way.STRONGER);
                    assertThat(Verdict.of(verse.mode(), balance.share().orElseThrow()))
                            .isEqualTo(balance.estimated());
                }
            }
        }
    }

    @Test
    void alike_are_verses_that_are_sung_by_about_as_many_as_strongly_to_the_same_stops() {
        HeardRegistration kept = heard("kept", led, HeardAs.RIGHT);

        assertThat(kept.isAlike(sound, led, PEOPLE)).isTrue();
        assertThat(kept.isAlike(sound, led, 145)).isTrue();
        assertThat(kept.isAlike(sound, led, 140)).isFalse();
        assertThat(kept.isAlike(sound, led.withSinging(Singing.STRONG), PEOPLE)).isFalse();
        assertThat(kept.isAlike(sound, led.withKind(VerseKind.INTRODUCTION), PEOPLE))
                .isFalse();
        assertThat(kept.isAlike(sound, led.withMode(Mode.SMALL_CHOIR), PEOPLE)).isFalse();
        assertThat(kept.isAlike(sound, led.withRegistration(choir.registration()), PEOPLE))
                .isFalse();
    }

    /** Ten trebles, not a choir of 16 and stronger voices. */
    @Test
    void an_answer_on_trebles_is_one_on_trebles() {
        Verse trebles = choir.withSungBy(SungBy.TREBLES)
                .withPeople(OptionalInt.empty())
                .withAnswer(Optional.of(new Feedback(HeardAs.RIGHT, PEOPLE)));
        Plan plan = harvest.withHymns(List.of(harvest.hymns().get(2).withVerses(List.of(trebles))));
        HeardRegistration kept = HeardRegistration.of(plan).get(0);

        assertThat(sound.rightBand(kept.verse(), kept.people())).isEqualTo(sound.rightBand(trebles, PEOPLE));
        assertThat(kept.isAlike(sound, trebles, PEOPLE)).isTrue();
        assertThat(kept.isAlike(sound, choir, PEOPLE)).isFalse();
    }

    /** Of 300 of those expected so many as came to the service, of whom three in ten sing in turns. */
    @Test
    void an_answer_is_that_of_those_who_sang() {
        Verse few = led.withPeople(OptionalInt.of(300))
                .withSungBy(SungBy.ALTERNATION)
                .withShare(OptionalInt.of(3))
                .withAnswer(Optional.of(new Feedback(HeardAs.RIGHT, PEOPLE)));
        int expected = harvest.heading().people();
        Plan plan = harvest.withHymns(List.of(harvest.hymns().get(0).withVerses(List.of(few))));
        assertThat(HeardRegistration.of(plan).get(0).people())
                .isEqualTo((int) Math.round(300.0 * PEOPLE / expected * 0.3 / 2 / 0.8));
    }

    @Test
    void a_search_is_told_the_share_that_was_heard() {
        OrganSound taught = after(led, HeardAs.TOO_STRONG);
        assertThat(taught.clearShare(led, PEOPLE).of(led.registration(), led.hands()))
                .isEqualTo(share(taught, led))
                .isGreaterThan(Verdict.TOO_STRONG.from(led.mode()));
    }

    /**
     * Errors of 3 dB in each judgement and of 2 dB in taste leave 3.0 dB of 5.2 even where the felt level is known
     * exactly, 2.5 dB after two judgements and 1.9 dB after any number. A judgement tells less, only on which side of
     * two edges the level was felt, which lie 13 dB apart. Without taste, felt levels would leave 2.6 and 2.0 dB.
     */
    @Test
    void one_usual_registration_takes_the_lead_from_5_to_4_decibels_and_a_second_nearer_to_3()
            throws NotationException {
        Instrument organ = sound.organ();
        Verse ordinary = drawing(
                organ,
                "Great: Open Diapason 8, Principal 4, Fifteenth 2; Swell: Open Diapason 8, Principal 4, Fifteenth 2;"
                        + " Pedal: Bourdon 16, Principal 8; couplers: Swell to Great, Great to Pedal");
        Verse smaller = drawing(
                organ,
                "Great: Open Diapason 8, Principal 4; Swell: Open Diapason 8, Principal 4; Pedal: Bourdon 16; couplers:"
                        + " Swell to Great, Great to Pedal");
        HeardRegistration right = HeardRegistration.of("ordinary", ordinary, new Feedback(HeardAs.RIGHT, 150));
        HeardRegistration soft = HeardRegistration.of("smaller", smaller, new Feedback(HeardAs.TOO_SOFT, 150));

        double before = plusMinus(sound, ordinary);
        assertThat(before).isBetween(4.8, 5.6);
        assertThat(plusMinus(new FeedbackUpdate(sound, List.of(right)).sound(), ordinary))
                .isBetween(leftByFeltLevels(before, 1), 4.0);
        assertThat(plusMinus(new FeedbackUpdate(sound, List.of(right, soft)).sound(), ordinary))
                .isBetween(leftByFeltLevels(before, 2), 3.5);
    }

    /** What is left in dB where the felt level itself is known so many times. Source: Bayes' rule. */
    private static double leftByFeltLevels(double beforeDb, int times) {
        double variance = beforeDb * beforeDb;
        double ofFelt = 2 * 2 + 3 * 3 / (double) times;
        return Math.sqrt(variance * ofFelt / (variance + ofFelt));
    }

    private Verse drawing(Instrument organ, String drawn) throws NotationException {
        return led.withRegistration(new RegistrationText(organ).parse(drawn)).withSinging(Singing.ORDINARY);
    }

    private HeardRegistration heard(String name, Verse verse, HeardAs heard) {
        return HeardRegistration.of(name, verse, new Feedback(heard, PEOPLE));
    }

    @Test
    void what_contradicts_all_the_rest_is_found_with_what_it_contradicts() throws NotationException {
        HeardRegistration odd = heard("odd", soft(sound.organ(), led), HeardAs.TOO_STRONG);
        List<HeardRegistration> right = Stream.of("a", "b", "c")
                .map(name -> heard(name, led, HeardAs.RIGHT))
                .toList();
        List<HeardRegistration> all =
                Stream.concat(right.stream(), Stream.of(odd)).toList();
        assertThat(new FeedbackUpdate(sound, all).contradictions()).containsExactly(new Contradiction(odd, right));
        assertThat(new FeedbackUpdate(sound, right).contradictions()).isEmpty();
    }

    @Test
    void of_two_answers_that_deny_each_other_it_is_told_which_and_with_which() {
        HeardRegistration soft = heard("2026-11-15, 208 V1", led, HeardAs.TOO_SOFT);
        HeardRegistration strong = heard("2026-11-22, 208 V1", led, HeardAs.TOO_STRONG);
        HeardRegistration apart = heard("2026-11-22, 214 V2", choir, HeardAs.RIGHT);
        List<Contradiction> found = new FeedbackUpdate(sound, List.of(soft, strong, apart)).contradictions();

        assertThat(found).isNotEmpty().allSatisfy(each -> assertThat(
                        Stream.concat(Stream.of(each.answer()), each.others().stream()))
                .containsExactlyInAnyOrder(soft, strong));
    }

    /** What suits a choir, or gentle singing, says nothing against what suits people who sing as usual. */
    @Test
    void other_singers_led_too_softly_contradict_nothing_that_was_too_strong_for_the_people() {
        Stream.of(choir, led.withSinging(Singing.GENTLE)).forEach(other -> {
            List<HeardRegistration> all = Stream.concat(
                            Stream.of("a", "b", "c", "d").map(name -> heard(name, led, HeardAs.TOO_STRONG)),
                            Stream.of(heard("e", other, HeardAs.TOO_SOFT)))
                    .toList();
            assertThat(new FeedbackUpdate(sound, all).contradictions()).isEmpty();
        });
    }

    /** An answer that a neighbour in strength may well have. */
    @Test
    void right_once_and_too_strong_once_is_no_contradiction() {
        assertThat(new FeedbackUpdate(
                                sound, List.of(heard("a", led, HeardAs.RIGHT), heard("b", led, HeardAs.TOO_STRONG)))
                        .contradictions())
                .isEmpty();
    }

    @Test
    void what_the_last_service_changed_is_told_in_a_sentence() {
        Experience before = new Experience(
                List.of(heard("ordinary", led, HeardAs.RIGHT)),
                List.of(heard("2026-11-15, 208 V1", led, HeardAs.RIGHT)));
        Experience after = new Experience(
                before.usual(),
                Stream.concat(
                                before.answers().stream(),
                                Stream.of(heard("2026-11-22, Come, ye V1", choir, HeardAs.TOO_STRONG)))
                        .toList());
        CalibratedOrgan organ = CalibratedOrgan.of(sound, Calibration.NONE, after);
        OrganSound then = CalibratedOrgan.of(sound, Calibration.NONE, before).sound();

        double changedDb = organ.lastHeard().orElseThrow().organ().db();
        assertThat(changedDb)
                .isCloseTo(
                        estimate(organ.sound(), choir).organDba().orElseThrow()
                                - estimate(then, choir).organDba().orElseThrow(),
                        within(1e-9))
                .isGreaterThan(0.5);
        assertThat(organ.lastHeard().orElseThrow().sentence().orElseThrow())
                .startsWith("Since the answers of Sun 22 Nov 2026, the organ is taken to be " + Math.round(changedDb)
                        + " dB stronger, ±");
    }

    private static Estimate estimate(OrganSound organ, Verse verse) {
        return organ.estimate(verse, PEOPLE, OptionalInt.empty());
    }

    @Test
    void where_nothing_changed_nothing_is_told() {
        HeardEffect.Change none = new HeardEffect.Change(-0.49, 3);

        assertThat(new HeardEffect("2026-11-22", sound, none, none).sentence()).isEmpty();
        assertThat(new HeardEffect("2026-11-22", sound, none, new HeardEffect.Change(-0.5, 0.3)).sentence())
                .contains("Since the answers of Sun 22 Nov 2026, the singing is taken to be 1 dB softer, ±1.");
        assertThat(CalibratedOrgan.of(sound, Calibration.NONE, Experience.NONE).lastHeard())
                .isEmpty();
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
        assertThat(new FeedbackUpdate(sound, List.of()).sound()).isSameAs(sound);
    }

    /**
     * Organs drawn at random from what is expected, and organists of different tastes who judge every verse; the level
     * of the organ over the singing that is believed afterwards, beside the true one. Of a normal distribution 68 and
     * 95 of 100 lie within one and two standard deviations; of 60 organs, each with its own mean error, the share is
     * known to about 6 in 100.
     */
    @ParameterizedTest
    @ValueSource(ints = {4, 13})
    void what_is_believed_after_a_service_is_as_far_off_as_it_says(int answers) {
        RandomOrgans random = new RandomOrgans(answers);
        List<Verse> verses = harvest.hymns().stream()
                .flatMap(hymn -> hymn.verses().stream())
                .filter(verse -> verse.isSung() && verse.mode() == Mode.CONGREGATION)
                .toList();
        int within = 0;
        int withinTwo = 0;
        int all = 0;
        for (int i = 0; i < 60; i++) {
            OrganSound truth = random.truth(sound);
            double tasteDb = sound.parameters().sdDb(sound.parameters().taste()) * random.gaussian();
            List<HeardRegistration> heard = verses.subList(0, answers).stream()
                    .map(verse -> judged(truth, verse, tasteDb + 3 * random.gaussian()))
                    .toList();
            OrganSound believed = new FeedbackUpdate(sound, heard).sound();
            for (Verse verse : List.of(verses.get(0), verses.get(2))) {
                double errorDb = truth.rightBand(verse, PEOPLE).orElseThrow().fromDb()
                        - believed.rightBand(verse, PEOPLE).orElseThrow().fromDb();
                double sds = Math.abs(errorDb) / plusMinus(believed, verse);
                within += sds < 1 ? 1 : 0;
                withinTwo += sds < 2 ? 1 : 0;
                all++;
            }
        }
        assertThat(100.0 * within / all).isBetween(56.0, 80.0);
        assertThat(100.0 * withinTwo / all).isBetween(89.0, 100.0);
    }

    private static HeardRegistration judged(OrganSound truth, Verse verse, double feltDb) {
        ClearShare.RightBand right = truth.rightBand(verse, PEOPLE).orElseThrow();
        HeardAs heard =
                feltDb < right.fromDb() ? HeardAs.TOO_SOFT : feltDb > right.toDb() ? HeardAs.TOO_STRONG : HeardAs.RIGHT;
        return HeardRegistration.of("verse", verse, new Feedback(heard, PEOPLE));
    }
}
