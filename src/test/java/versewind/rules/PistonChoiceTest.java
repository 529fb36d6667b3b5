package versewind.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import versewind.Shipped;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.store.OpenPlan;

/** On which piston a verse comes to stand that is drawn otherwise. */
class PistonChoiceTest {

    private static final VersePlace FIRST = new VersePlace(0, 1);
    private static final VersePlace SECOND = new VersePlace(0, 2);

    private Plan plan;
    private Instrument organ;

    @BeforeEach
    void open() throws Exception {
        OpenPlan open = Shipped.plan("ordinary-sunday");
        organ = open.instrument();
        plan = open.plan();
        for (int hymn = 0; hymn < plan.hymns().size(); hymn++) {
            List<Verse> bare = plan.hymns().get(hymn).verses().stream()
                    .map(verse -> verse.withPiston(""))
                    .toList();
            plan = plan.withHymn(hymn, plan.hymns().get(hymn).withVerses(bare));
        }
    }

    private Verse at(VersePlace place) {
        return plan.hymns().get(place.hymn()).verses().get(place.verse());
    }

    private void set(VersePlace place, String piston) {
        plan = plan.withVerse(place, at(place).withPiston(piston));
    }

    private Verse redrawn() {
        Verse other = at(FIRST).withRegistration(at(FIRST).registration().withStops(IndexSet.of(1, 4, 6)));
        return PistonChoice.redrawn(plan, FIRST, other, organ);
    }

    @Test
    void its_own_piston_sets_the_new_registration() {
        set(FIRST, "G3");

        assertThat(redrawn().piston()).isEqualTo("G3");
    }

    @Test
    void a_piston_that_another_verse_has_is_left_to_it() {
        set(FIRST, "G1");
        set(SECOND, "G1");

        assertThat(redrawn().piston()).isEqualTo("G2");
    }

    @Test
    void a_piston_that_a_later_verse_has_set_otherwise_is_told_with_one_that_is_free() {
        set(SECOND, "Great 1");
        plan = plan.withVerse(
                SECOND, at(SECOND).withRegistration(at(SECOND).registration().withStops(IndexSet.of(0))));
        Verse onIt = at(FIRST).withPiston("Great 1");

        assertThat(PistonChoice.warning(plan, organ, FIRST, onIt))
                .contains("Great 1 holds something else in V2; free for V1: Great 2.");
        assertThat(PistonChoice.warning(plan, organ, FIRST, at(FIRST).withPiston("Great 2")))
                .isEmpty();
    }

    @Test
    void what_is_moved_by_hand_is_moved_by_hand() {
        assertThat(redrawn().piston()).isEmpty();
    }

    @Test
    void the_same_registration_keeps_whatever_sets_it() {
        set(FIRST, "Full Swell");

        assertThat(PistonChoice.redrawn(plan, FIRST, at(FIRST), organ).piston()).isEqualTo("Full Swell");
    }

    @Test
    void a_piston_on_which_two_settings_quarrel_is_not_taken_for_either() {
        VersePlace third = new VersePlace(1, 1);
        set(FIRST, "G2");
        set(SECOND, "G2");
        plan = plan.withVerse(third, at(third).withRegistration(redrawn().registration()));
        set(third, "G2");

        assertThat(redrawn().piston()).isEqualTo("G1");
    }
}
