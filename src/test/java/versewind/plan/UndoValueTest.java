package versewind.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

class UndoValueTest {

    @Test
    void any_changes_are_undone_to_the_first_and_redone_to_the_last() {
        Random random = new Random(7);
        Undo<Integer> undo = Undo.of(0);
        for (int i = 0; i < 200; i++) {
            undo = undo.to(random.nextInt(3));
        }
        int last = undo.now();
        Undo<Integer> first = undo;
        while (!first.past().isEmpty()) {
            first = first.undo();
        }
        assertThat(first.now()).isZero();
        assertThat(first.isUnsaved()).isFalse();
        Undo<Integer> again = first;
        while (!again.future().isEmpty()) {
            again = again.redo();
        }
        assertThat(again).isEqualTo(undo);
        assertThat(again.now()).isEqualTo(last);
    }

    @Test
    void a_change_after_undoing_leaves_nothing_to_redo_and_no_change_leaves_all_as_it_is() {
        Undo<String> undone = Undo.of("a").to("b").undo();

        assertThat(undone.to("c").future()).isEmpty();
        assertThat(undone.to("a")).isSameAs(undone);
        assertThat(undone.redo().redo().now()).isEqualTo("b");
    }

    @Test
    void what_was_before_saving_can_still_be_undone() {
        Undo<String> saved = Undo.of("a").to("b").savedAs("B", String::toUpperCase);

        assertThat(saved.isUnsaved()).isFalse();
        assertThat(saved.undo().now()).isEqualTo("A");
        assertThat(saved.undo().isUnsaved()).isTrue();
    }
}
