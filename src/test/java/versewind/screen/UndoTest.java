package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.plan.Plan;
import versewind.plan.VersePlace;
import versewind.screen.plan.FileEvent;
import versewind.screen.state.FormBox;

class UndoTest {

    private static final List<String> EDITS = List.of(
            " ", " ", " ", "0", "<", ">", "c", "&", "1", "2", "3", "4", "+", "-", "h", "r", "l", "k", "i", "d", "x",
            ",", ".", "D", "^X", "<Enter>", "{", "}", "e", "E", "S", "I", "#");
    private static final List<String> MOVES =
            List.of("<Up>", "<Down>", "<Left>", "<Right>", "n", "p", "[", "]", "<Tab>", "<End>", "<Home>");

    /** Moves about, and makes one edit; forms are filled in with a title that they need and kept. */
    private static void edit(Desk desk, Random random) {
        for (int move = random.nextInt(4); move > 0; move--) {
            desk.press(MOVES.get(random.nextInt(MOVES.size())));
        }
        desk.press(EDITS.get(random.nextInt(EDITS.size())));
        if (desk.state().top() instanceof FormBox) {
            desk.press("'7'", "<Tab>", "'5'", "<Enter>", "<Esc>");
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void two_hundred_random_edits_are_undone_to_the_exact_start_and_done_again_to_the_exact_end(long seed) {
        Random random = new Random(seed);
        Desk desk = Desk.with("ordinary-sunday", 80, 24);
        Plan start = desk.plan();
        while (desk.work().history().past().size() < 200) {
            edit(desk, random);
        }
        Plan end = desk.plan();
        assertThat(end).isNotEqualTo(start);

        for (int i = 0; i < 200; i++) {
            desk.press("u");
        }
        assertThat(desk.plan()).isEqualTo(start);
        assertThat(desk.state().isUnsaved()).isFalse();
        assertThat(desk.press("u").said()).isEqualTo("Nothing to undo.");

        for (int i = 0; i < 200; i++) {
            desk.press("U");
        }
        assertThat(desk.plan()).isEqualTo(end);
        assertThat(desk.press("U").said()).isEqualTo("Nothing to redo.");
    }

    @Test
    void an_edit_after_an_undo_forgets_what_was_undone() {
        Desk desk = Desk.with("ordinary-sunday", 80, 24).press(" ", "u", "<Down>", " ");
        assertThat(desk.press("U").said()).isEqualTo("Nothing to redo.");
    }

    @Test
    void undo_goes_to_where_the_edit_was() {
        Desk desk = Desk.with("ordinary-sunday", 80, 24).press("n", "n", " ", "]", "]", "u");
        assertThat(desk.work().place()).isEqualTo(new VersePlace(0, 2));
    }

    @Test
    void undone_behind_a_save_the_plan_is_unsaved() {
        Desk desk = Desk.with("ordinary-sunday", 80, 24).press(" ");
        desk.answer(new FileEvent.Saved(desk.plan(), List.of(), true));
        assertThat(desk.state().isUnsaved()).isFalse();
        assertThat(desk.press("u").state().isUnsaved()).isTrue();
        assertThat(desk.press("U").state().isUnsaved()).isFalse();
    }

    @Test
    void undo_says_what_it_undid() {
        Desk desk = Desk.with("ordinary-sunday", 80, 24).press("n");
        assertThat(desk.press(" ", "u").said()).isEqualTo("Undid: V1, draw Great Bourdon 16.");
        assertThat(desk.press("U").said()).isEqualTo("Redid: V1, draw Great Bourdon 16.");
        assertThat(desk.press("x", "u").said()).isEqualTo("Undid: deleted V1.");
        assertThat(desk.press("^X", "<Enter>", "u").said())
                .startsWith("Undid: deleted hymn \"Wide is the gate")
                .endsWith("\".");
    }
}
