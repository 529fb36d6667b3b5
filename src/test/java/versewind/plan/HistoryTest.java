package versewind.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.Deque;
import org.junit.jupiter.api.Test;

class HistoryTest {

    private static final int EDITS = 200;
    private static final Plan EMPTY = SmallPlan.with();
    private static final Edit HYMN = new Edit.InsertHymn(0, SmallPlan.hymn("one"));
    private static final Edit OTHER_HYMN = new Edit.InsertHymn(0, SmallPlan.hymn("two"));

    @Test
    void two_hundred_edits_are_undone_step_by_step_and_done_again() {
        RandomEdits random = new RandomEdits(4);
        History history = History.of(random.plan());
        Deque<Plan> before = new ArrayDeque<>();
        while (before.size() < EDITS) {
            Plan plan = history.plan();
            history = history.after(random.edit(plan));
            if (!history.plan().equals(plan)) {
                before.push(plan);
            }
        }
        Deque<Plan> after = new ArrayDeque<>();
        while (!before.isEmpty()) {
            after.push(history.plan());
            history = history.undo();
            assertThat(history.plan()).isEqualTo(before.pop());
        }
        assertThat(history.toUndo()).isEmpty();
        while (!after.isEmpty()) {
            history = history.redo();
            assertThat(history.plan()).isEqualTo(after.pop());
        }
        assertThat(history.toRedo()).isEmpty();
    }

    @Test
    void an_edit_that_changes_nothing_is_not_there_to_be_undone() {
        History history = History.of(EMPTY).after(new Edit.SetHeading(EMPTY.heading()));
        assertThat(history.toUndo()).isEmpty();
    }

    @Test
    void an_edit_that_changes_nothing_leaves_what_was_undone() {
        History history = History.of(EMPTY).after(HYMN).undo().after(new Edit.SetHeading(EMPTY.heading()));
        assertThat(history.toRedo()).contains(HYMN);
    }

    @Test
    void after_another_edit_what_was_undone_cannot_be_done_again() {
        assertThat(History.of(EMPTY).after(HYMN).undo().after(OTHER_HYMN).toRedo())
                .isEmpty();
    }

    @Test
    void undoing_at_the_start_changes_nothing() {
        History start = History.of(EMPTY);
        assertThat(start.undo()).isEqualTo(start);
    }

    @Test
    void doing_again_at_the_end_changes_nothing() {
        History end = History.of(EMPTY).after(HYMN);
        assertThat(end.redo()).isEqualTo(end);
    }

    @Test
    void a_plan_just_opened_is_saved() {
        assertThat(History.of(EMPTY).isUnsaved()).isFalse();
    }

    @Test
    void work_that_was_never_saved_is_unsaved_before_any_edit() {
        assertThat(History.ofUnsaved(EMPTY).isUnsaved()).isTrue();
    }

    @Test
    void an_edit_makes_a_plan_unsaved() {
        assertThat(History.of(EMPTY).after(HYMN).isUnsaved()).isTrue();
    }

    @Test
    void undoing_everything_makes_a_plan_saved_again() {
        assertThat(History.of(EMPTY).after(HYMN).undo().isUnsaved()).isFalse();
    }

    @Test
    void undoing_what_was_saved_makes_a_plan_unsaved() {
        History edited = History.of(EMPTY).after(HYMN);
        assertThat(edited.savedAs(edited.plan()).undo().isUnsaved()).isTrue();
    }

    @Test
    void doing_again_what_was_saved_makes_a_plan_saved_again() {
        History edited = History.of(EMPTY).after(HYMN);
        assertThat(edited.savedAs(edited.plan()).undo().redo().isUnsaved()).isFalse();
    }
}
