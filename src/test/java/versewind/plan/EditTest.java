package versewind.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class EditTest {

    private static final int TRIALS = 500;

    @Test
    void the_inverse_of_every_edit_gives_the_first_plan_again() {
        RandomEdits random = new RandomEdits(1);
        for (int i = 0; i < TRIALS; i++) {
            Plan before = random.plan();
            Edit edit = random.edit(before);
            assertThat(edit.inverse(before).apply(edit.apply(before)))
                    .as("%s", edit)
                    .isEqualTo(before);
        }
    }

    @Test
    void the_inverse_of_the_inverse_gives_the_changed_plan_again() {
        RandomEdits random = new RandomEdits(2);
        for (int i = 0; i < TRIALS; i++) {
            Plan before = random.plan();
            Edit edit = random.edit(before);
            Plan after = edit.apply(before);
            Edit inverse = edit.inverse(before);
            assertThat(inverse.inverse(after).apply(inverse.apply(after)))
                    .as("%s", edit)
                    .isEqualTo(after);
        }
    }

    @Test
    void every_kind_of_edit_is_drawn_by_lot() {
        RandomEdits random = new RandomEdits(3);
        Set<Class<?>> drawn = new HashSet<>();
        for (int i = 0; i < TRIALS; i++) {
            drawn.add(random.edit(random.plan()).getClass());
        }
        assertThat(drawn).containsExactlyInAnyOrder(Edit.class.getPermittedSubclasses());
    }

    @Test
    void the_place_of_an_edit_is_the_verse_that_it_changes() {
        Verse verse = SmallPlan.verse("V1");
        assertThat(new Edit.SetVerse(1, 2, verse).place()).isEqualTo(new VersePlace(1, 2));
    }

    @Test
    void swapping_hymns_changes_no_other_hymn() {
        Plan plan = SmallPlan.with(
                SmallPlan.hymn("one"), SmallPlan.hymn("two"), SmallPlan.hymn("three"), SmallPlan.hymn("four"));
        assertThat(new Edit.SwapHymns(1).apply(plan).hymns())
                .extracting(Hymn::title)
                .containsExactly("one", "three", "two", "four");
    }

    @Test
    void a_hymn_put_in_at_the_end_comes_last() {
        Plan plan = SmallPlan.with(SmallPlan.hymn("one"));
        assertThat(new Edit.InsertHymn(1, SmallPlan.hymn("two")).apply(plan).hymns())
                .extracting(Hymn::title)
                .containsExactly("one", "two");
    }
}
