package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static versewind.plan.HeardAs.RIGHT;
import static versewind.plan.HeardAs.TOO_SOFT;
import static versewind.plan.HeardAs.TOO_STRONG;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import versewind.Shipped;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.NotationException;
import versewind.organ.RegistrationText;
import versewind.plan.HandsAndFeet;
import versewind.plan.HeardAs;
import versewind.plan.Singing;
import versewind.plan.SungBy;
import versewind.plan.Verse;

/** Verses beside others that were heard: in order of strength, for as many singers or fewer. */
class HeardSharesTest {

    private static final int PEOPLE = 60;
    private static final String SOFT = "Great: Stopped Flute 8, Open Flute 4";
    private static final String MIDDLE = "Great: Open Diapason 8, Principal 4";
    private static final String STRONG = "Great: Open Diapason 8, Principal 4, Fifteenth 2, Mixture III";
    private static final String FULL = STRONG + ", Trumpet 8";

    private final OrganSound sound;
    private final Verse sung;

    HeardSharesTest() throws Exception {
        var open = Shipped.plan("harvest-festival");
        sound = OrganSound.open(open.instrument());
        sung = open.plan().hymns().get(0).verses().get(1).withPeople(OptionalInt.empty());
    }

    private Verse drawn(String stops) {
        try {
            return sung.withRegistration(new RegistrationText(sound.organ()).parse(stops));
        } catch (NotationException e) {
            throw new IllegalArgumentException(stops, e);
        }
    }

    private Felt after(String stops, HeardAs... answers) {
        return new Felt(FeltVerses.NONE).and(stops, answers);
    }

    /** The organ after some verses were heard, whose levels nothing else has moved. */
    private final class Felt {

        private final FeltVerses felt;
        private final OrganSound organ;

        Felt(FeltVerses felt) {
            this.felt = felt;
            organ = sound.with(sound.covariance(), felt);
        }

        Felt and(String stops, HeardAs... answers) {
            return new Felt(felt.and(drawn(stops), PEOPLE, List.of(answers)));
        }

        double odds(Verdict verdict, Verse verse, int people) {
            return organ.estimate(verse, people, OptionalInt.empty())
                    .balance()
                    .odds()
                    .of(verdict);
        }

        double odds(Verdict verdict, String stops) {
            return odds(verdict, drawn(stops), PEOPLE);
        }

        double share(String stops) {
            return organ.clearShare(sung, PEOPLE).of(drawn(stops).registration(), sung.hands());
        }
    }

    @Test
    void what_is_stronger_than_one_that_was_too_strong_is_too_strong_as_well() {
        Felt none = new Felt(FeltVerses.NONE);
        Felt after = after(MIDDLE, TOO_STRONG);

        assertThat(none.odds(Verdict.TOO_STRONG, STRONG)).isLessThan(0.3);
        assertThat(after.odds(Verdict.TOO_STRONG, STRONG)).isGreaterThan(0.65);
        assertThat(after.odds(Verdict.TOO_STRONG, SOFT)).isEqualTo(none.odds(Verdict.TOO_STRONG, SOFT));
        assertThat(after.share(STRONG)).isGreaterThan(Verdict.TOO_STRONG.from(sung.mode()));
        assertThat(after.share(SOFT)).isEqualTo(none.share(SOFT));
    }

    @Test
    void what_is_softer_than_one_that_was_too_soft_is_too_soft_as_well() {
        Felt none = new Felt(FeltVerses.NONE);
        Felt after = after(FULL, TOO_SOFT);

        assertThat(none.share(STRONG)).isGreaterThan(Verdict.LEADS.from(sung.mode()));
        assertThat(after.odds(Verdict.LEADS, STRONG)).isLessThan(0.35);
        assertThat(after.share(STRONG)).isLessThan(Verdict.LEADS.from(sung.mode()));
        assertThat(after.share(MIDDLE)).isLessThan(after.share(STRONG));
        assertThat(after.share(SOFT)).isLessThan(after.share(MIDDLE));
    }

    @Test
    void too_strong_holds_for_fewer_and_gentler_singers_and_not_for_more_or_stronger_ones() {
        Felt after = after(MIDDLE, TOO_STRONG);
        Verse strong = drawn(STRONG);

        assertThat(after.odds(Verdict.TOO_STRONG, strong, PEOPLE / 2)).isGreaterThan(0.65);
        assertThat(after.odds(Verdict.TOO_STRONG, strong.withSinging(Singing.GENTLE), PEOPLE))
                .isGreaterThan(0.65);
        assertThat(after.odds(Verdict.TOO_STRONG, strong, PEOPLE * 2)).isLessThan(0.3);
        assertThat(after.odds(Verdict.TOO_STRONG, strong.withSinging(Singing.FULL_VOICE), PEOPLE))
                .isLessThan(0.3);
        assertThat(after.odds(Verdict.TOO_STRONG, strong.withSungBy(SungBy.TREBLES), PEOPLE))
                .isLessThan(0.3);
    }

    @Test
    void right_though_it_was_stronger_leaves_it_open_and_answers_that_deny_each_other_say_nothing() {
        Felt none = new Felt(FeltVerses.NONE);

        assertThat(after(SOFT, TOO_STRONG).and(STRONG, RIGHT).odds(Verdict.TOO_STRONG, MIDDLE))
                .isBetween(0.35, 0.6);
        assertThat(after(SOFT, TOO_STRONG).and(STRONG, RIGHT).share(MIDDLE)).isEqualTo(none.share(MIDDLE));
        assertThat(after(SOFT, TOO_STRONG).and(STRONG, TOO_SOFT).odds(Verdict.LEADS, MIDDLE))
                .isEqualTo(none.odds(Verdict.LEADS, MIDDLE));
    }

    @Test
    void a_verse_that_sounds_the_same_is_the_same_whatever_waits_or_stands_behind_a_box_unheard() {
        Verse played = drawn(MIDDLE);
        Verse waiting = drawn(MIDDLE + "; Swell: Cornopean 8");
        Verse boxed = waiting.withRegistration(waiting.registration()
                .withBox(1, BoxPosition.CLOSED)
                .withCouplers(IndexSet.of(coupler("Swell to Pedal"))));
        Verse coupled =
                waiting.withRegistration(waiting.registration().withCouplers(IndexSet.of(coupler("Swell to Great"))));

        assertThat(sound.heard(waiting).registration())
                .isEqualTo(sound.heard(played).registration());
        assertThat(sound.heard(boxed.withHands(HandsAndFeet.on(HandsAndFeet.Layout.MANUALS_ONLY, 0)))
                        .registration())
                .isEqualTo(sound.heard(played).registration());
        assertThat(sound.heard(coupled).registration())
                .isNotEqualTo(sound.heard(played).registration());
    }

    private int coupler(String name) {
        return IntStream.range(0, sound.organ().couplers().size())
                .filter(each -> sound.organ().couplers().get(each).name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_choir_that_was_covered_is_covered_by_what_is_stronger() {
        Verse choir = sung.withSungBy(SungBy.SMALL_CHOIR);
        FeltVerses felt =
                FeltVerses.NONE.and(choir.withRegistration(drawn(SOFT).registration()), PEOPLE, List.of(TOO_STRONG));
        OrganSound after = sound.with(sound.covariance(), felt);
        Verse middle = choir.withRegistration(drawn(MIDDLE).registration());

        assertThat(after.clearShare(choir, PEOPLE).of(middle.registration(), choir.hands()))
                .isLessThan(Verdict.CLEAR.from(choir.mode()));
    }
}
