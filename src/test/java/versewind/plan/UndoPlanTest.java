package versewind.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.Deque;
import org.junit.jupiter.api.Test;

class UndoPlanTest {

    private static final int CHANGES = 200;
    private static final Plan EMPTY = SmallPlan.with();
    private static final Plan ONE = EMPTY.inserting(0, SmallPlan.hymn("one"));

    @Test
    void two_hundred_changes_are_undone_step_by_step_and_redone() {
        RandomEdits random = new RandomEdits(4);
        Undo<Plan> undo = Undo.of(random.plan());
        Deque<Plan> before = new ArrayDeque<>();
        while (before.size() < CHANGES) {
            Plan plan = undo.now();
            undo = undo.to(random.changed(plan));
            if (!undo.now().equals(plan)) {
                before.push(plan);
            }
        }
        Deque<Plan> after = new ArrayDeque<>();
        while (!before.isEmpty()) {
            after.push(undo.now());
            undo = undo.undo();
            assertThat(undo.now()).isEqualTo(before.pop());
        }
        assertThat(undo.before()).isEmpty();
        while (!after.isEmpty()) {
            undo = undo.redo();
            assertThat(undo.now()).isEqualTo(after.pop());
        }
        assertThat(undo.after()).isEmpty();
    }

    @Test
    void no_change_is_not_there_to_be_undone_and_leaves_what_was_undone() {
        assertThat(Undo.of(EMPTY).to(EMPTY).before()).isEmpty();
        assertThat(Undo.of(EMPTY).to(ONE).undo().to(EMPTY).after()).contains(ONE);
    }

    @Test
    void a_plan_is_unsaved_while_it_differs_from_what_was_saved() {
        Undo<Plan> changed = Undo.of(EMPTY).to(ONE);
        assertThat(Undo.of(EMPTY).isUnsaved()).isFalse();
        assertThat(Undo.ofUnsaved(EMPTY).isUnsaved()).isTrue();
        assertThat(changed.isUnsaved()).isTrue();
        assertThat(changed.undo().isUnsaved()).isFalse();
        assertThat(changed.savedAs(ONE).isUnsaved()).isFalse();
        assertThat(changed.savedAs(ONE).undo().isUnsaved()).isTrue();
        assertThat(changed.savedAs(ONE).undo().redo().isUnsaved()).isFalse();
    }

    @Test
    void swapping_hymns_changes_no_other_hymn() {
        Plan plan = SmallPlan.with(
                SmallPlan.hymn("one"), SmallPlan.hymn("two"), SmallPlan.hymn("three"), SmallPlan.hymn("four"));
        assertThat(plan.swapping(1).hymns()).extracting(Hymn::title).containsExactly("one", "three", "two", "four");
    }
}
