package versewind.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import versewind.organ.Family;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Occasion;
import versewind.plan.Plan;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;

/** How a hymn grows, as far as the day, the singers and the organ let it. Common practice, no source. */
class GrowthTest {

    private static final ProposalTrial TETHWIN = ProposalTrial.shipped("st-tethwin");
    private static final ProposalTrial VILLAGE = ProposalTrial.shipped("little-corvening");

    private static List<Verse> drawn(ProposalTrial console, Occasion occasion, int people, Singing last) {
        Verse verse = console.verse(Mode.CONGREGATION, Mood.PLAIN);
        Plan plan = ProposalTrial.plan(
                people,
                verse,
                verse,
                verse,
                verse.withKind(VerseKind.LAST_VERSE).withSinging(last));
        plan = plan.withHeading(plan.heading().withGiven(Optional.of(occasion)));
        return console.proposer()
                .forService(plan, SearchProgress.PATIENT)
                .on(plan)
                .hymns()
                .get(0)
                .verses();
    }

    private static double levelDba(Verse verse) {
        return TETHWIN.sound().levelDba(verse.registration(), verse.hands());
    }

    private static boolean draws(ProposalTrial console, Verse verse, Family family) {
        return verse.registration().stops().stream()
                .anyMatch(stop -> console.organ().stops().get(stop).stop().family() == family);
    }

    @ParameterizedTest
    @EnumSource(
            value = Occasion.class,
            names = {"ORDINARY", "PENITENTIAL", "FUNERAL"})
    void a_hymn_grows_by_a_step_on_a_day_that_is_held_back_too(Occasion occasion) {
        List<Verse> verses = drawn(TETHWIN, occasion, 150, Singing.ORDINARY);
        assertThat(levelDba(verses.get(3))).isGreaterThan(levelDba(verses.get(0)) + 0.5);
    }

    @Test
    void a_plain_verse_keeps_to_flues_where_they_are_likely_to_lead() {
        for (Verse verse : drawn(TETHWIN, Occasion.ORDINARY, 234, Singing.ORDINARY)) {
            assertThat(draws(TETHWIN, verse, Family.CHORUS_REED)).isFalse();
        }
    }

    @Test
    void a_last_verse_that_many_sing_strongly_has_the_mixture_in_lent_too() {
        Verse last = drawn(TETHWIN, Occasion.PENITENTIAL, 300, Singing.STRONG).get(3);
        assertThat(draws(TETHWIN, last, Family.MIXTURE)).isTrue();
        assertThat(last.registration()
                        .couplers()
                        .contains(TETHWIN.organ().coupler("Swell to Great").orElseThrow()))
                .isTrue();
    }

    @Test
    void a_small_organ_gives_a_full_church_all_its_flues_before_it_keeps_any_for_the_end() {
        List<Verse> verses = drawn(VILLAGE, Occasion.ORDINARY, 120, Singing.ORDINARY);
        assertThat(verses).allSatisfy(verse -> assertThat(verse.registration().stops())
                .isEqualTo(verses.get(3).registration().stops()));
        assertThat(verses.get(3).registration().stops().stream()
                        .mapToObj(
                                stop -> VILLAGE.organ().stops().get(stop).stop().label()))
                .contains("Fifteenth 2");
    }
}
