package versewind.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import versewind.plan.Plan;
import versewind.plan.SungBy;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.sound.Verdict;

/** Verses that nobody accompanies, that may be left out, or that only some of the people sing. */
class SpecialVersesTest {

    private static final Loft CATHEDRAL = Loft.CATHEDRAL;
    private static final int PEOPLE = 400;

    private static Verse soft() {
        return CATHEDRAL.verse("Great", "Great: Stopped Diap 8");
    }

    private static Verse full() {
        return CATHEDRAL.verse(
                "Great",
                "Great: Diapason I 8",
                "Great: Octave 4",
                "Great: Twelfth 2 2/3",
                "Great: Fifteenth 2",
                "Great: Mixture IV",
                "Great: Trumpet 8",
                "Swell: Cornopean 8",
                "Swell to Great");
    }

    private static List<String> changes(Verse... verses) {
        return CATHEDRAL.says(ChangeRule.TOO_MANY_MOVES, PEOPLE, verses);
    }

    @Test
    void where_nobody_plays_nothing_is_amiss_and_nothing_sounds() {
        Verse silent = full().withSungBy(SungBy.UNACCOMPANIED);
        Plan plan = CATHEDRAL.plan(PEOPLE, silent, silent.withRegistration(CATHEDRAL.draw()));

        assertThat(CATHEDRAL.advice().findings(plan)).isEmpty();
        Assessment.of(plan, CATHEDRAL.sound()).hymns().get(0).verses().forEach(verse -> {
            assertThat(verse.estimate().isSilent()).isTrue();
            assertThat(verse.estimate().balance().verdict()).isEqualTo(Verdict.UNACCOMPANIED);
        });
    }

    @Test
    void in_an_unaccompanied_verse_there_is_time_to_prepare_the_next() {
        assertThat(changes(soft(), full())).hasSize(1);
        assertThat(changes(soft(), soft().withSungBy(SungBy.UNACCOMPANIED), full()))
                .isEmpty();
    }

    @Test
    void the_changes_are_checked_with_a_verse_and_without_it() {
        Verse between = full().withLabel("V2").withOptional(true);
        List<String> said = changes(soft(), between, full().withPiston(""));

        assertThat(changes(full(), between, full())).isEmpty();
        assertThat(changes(soft().withPiston("G1"), between.withPiston("G2"), full()))
                .singleElement()
                .asString()
                .startsWith("With V2 left out: 8 changes from V1 need ");
        assertThat(said).hasSize(2);
    }

    @Test
    void a_silence_that_may_be_left_out_gives_no_time() {
        Verse silence = soft().withSungBy(SungBy.UNACCOMPANIED).withLabel("V2");
        assertThat(changes(soft(), silence.withOptional(true), full()))
                .singleElement()
                .asString()
                .startsWith("With V2 left out: ");
    }

    @ParameterizedTest
    @EnumSource(
            value = SungBy.class,
            names = {"CONGREGATION", "DESCANT", "ALTERNATION"})
    void the_fewer_sing_the_more_the_organ_leads(SungBy by) {
        Verse verse = soft().withSungBy(by);
        double ofEight = share(verse);
        double ofThree = share(verse.withShare(OptionalInt.of(3)));
        assertThat(ofThree).isGreaterThan(ofEight * 1.1);
    }

    @Test
    void in_alternation_half_as_many_have_to_be_led() {
        assertThat(share(soft().withSungBy(SungBy.ALTERNATION))).isEqualTo(share(soft().withShare(OptionalInt.of(4))));
    }

    @Test
    void the_share_of_the_service_holds_for_every_verse_without_its_own() {
        Plan plan = CATHEDRAL.plan(PEOPLE, soft(), soft().withShare(OptionalInt.of(8)));
        Plan wedding = plan.withHeading(plan.heading().withInTen(3));
        assertThat(wedding.verse(new VersePlace(0, 0)).sung().share().inTen()).isEqualTo(3);
        assertThat(wedding.verse(new VersePlace(0, 1)).sung().share().inTen()).isEqualTo(8);
    }

    private static double share(Verse verse) {
        return CATHEDRAL
                .sound()
                .estimate(verse, PEOPLE, OptionalInt.empty())
                .balance()
                .share()
                .orElseThrow();
    }
}
