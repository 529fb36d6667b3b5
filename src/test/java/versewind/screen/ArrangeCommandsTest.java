package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;

/** Putting in, taking out and moving verses and hymns, and where one is afterwards. */
class ArrangeCommandsTest {

    /** At V1 of the first of four hymns: Intro V1 V2 V3 Inter V4 Last. */
    private final Desk desk = Desk.with("harvest-festival", 80, 24).press("n");

    private List<String> titles() {
        return desk.plan().hymns().stream().map(Hymn::title).toList();
    }

    @Test
    void a_new_verse_is_sung_as_the_one_before() {
        desk.press("2", "+", "i");
        assertThat(desk.verse().mode() + " " + desk.verse().singing())
                .isEqualTo(Mode.SMALL_CHOIR + " " + Singing.STRONG);
    }

    @Test
    void a_new_verse_after_the_introduction_is_sung_by_the_congregation() {
        assertThat(Desk.with("easter-cathedral", 80, 24).press("i").verse().mode())
                .isEqualTo(Mode.CONGREGATION);
    }

    @Test
    void a_verse_once_more_has_all_that_the_first_has() {
        Verse first = desk.verse();
        assertThat(desk.press("d").verse()).isEqualTo(first.withLabel("V2"));
    }

    @Test
    void the_verses_after_one_that_is_there_once_more_count_on() {
        assertThat(desk.press("d").labels()).containsExactly("Intro", "V1", "V2", "V3", "V4", "Inter", "V5", "Last");
    }

    @Test
    void a_refrain_once_more_keeps_its_label() {
        Desk cathedral = Desk.with("easter-cathedral", 80, 24).press("]", "n", "n", "d");
        assertThat(cathedral.labels()).startsWith("Intro", "V1", "Refrain", "Refrain", "V2");
    }

    @Test
    void after_a_verse_is_taken_out_one_is_at_the_next() {
        assertThat(desk.press("x").verse().label()).isEqualTo("V2");
    }

    @Test
    void after_the_last_verse_is_taken_out_one_is_at_the_one_before() {
        assertThat(desk.press("]", "<Tab>", "<Up>", "<Tab>", "x").verse().label())
                .isEqualTo("V4");
    }

    @Test
    void a_verse_brought_back_is_gone_to() {
        assertThat(desk.press("x", "]", "]", "u").work().place()).isEqualTo(new VersePlace(0, 1));
    }

    @ParameterizedTest
    @CsvSource({"p, ',', This is the first verse of the hymn.", "], '.', ''"})
    void the_first_verse_cannot_be_moved_up(String to, String key, String said) {
        assertThat(desk.press(to, key).said()).isEqualTo(said);
    }

    @Test
    void the_last_verse_cannot_be_moved_down() {
        assertThat(desk.press("]", "<Tab>", "<Up>", "<Tab>", ".").said())
                .isEqualTo("This is the last verse of the hymn.");
    }

    @Test
    void moving_a_verse_down_and_up_again_changes_nothing() {
        Plan before = desk.plan();
        assertThat(desk.press(".", ",").plan()).isEqualTo(before);
    }

    @Test
    void an_interlude_moved_up_leaves_the_verses_numbered() {
        assertThat(desk.press("n", "n", "n", ",").labels())
                .containsExactly("Intro", "V1", "V2", "Inter", "V3", "V4", "Last");
    }

    @Test
    void the_kinds_come_in_turn() {
        Verse before = desk.verse();
        assertThat(desk.press("k", "k", "k", "k", "k", "k").verse()).isEqualTo(before);
    }

    @Test
    void after_a_last_verse_comes_an_amen() {
        assertThat(desk.press("]", "<Tab>", "<Up>", "<Tab>", "k").verse().kind())
                .isEqualTo(VerseKind.AMEN);
    }

    @Test
    void a_hymn_once_more_follows_the_first() {
        desk.press("D");
        assertThat(desk.plan().hymns().get(1)).isEqualTo(desk.plan().hymns().get(0));
    }

    @Test
    void the_copy_of_a_hymn_is_gone_to() {
        assertThat(desk.press("D").work().place()).isEqualTo(new VersePlace(1, 0));
    }

    @Test
    void a_hymn_taken_out_is_told_by_its_title() {
        assertThat(desk.press("^X", "<Enter>").said())
                .isEqualTo("Deleted the hymn \"Come, carry in the harvest\"; u to undo.");
    }

    @Test
    void the_last_hymn_taken_out_leads_to_the_one_before() {
        assertThat(desk.press("]", "]", "]", "^X", "<Enter>").work().place().hymn())
                .isEqualTo(2);
    }

    @Test
    void a_service_whose_hymns_are_all_taken_out_can_be_brought_back() {
        Plan before = desk.plan();
        assertThat(desk.press("^X", "<Enter>", "^X", "<Enter>", "^X", "<Enter>", "^X", "<Enter>", "u", "u", "u", "u")
                        .plan())
                .isEqualTo(before);
    }

    @Test
    void in_a_service_without_hymns_a_new_one_is_the_first() {
        desk.press(
                "^X",
                "<Enter>",
                "^X",
                "<Enter>",
                "^X",
                "<Enter>",
                "^X",
                "<Enter>",
                "I",
                "<Tab>",
                "'Begin again'",
                "<Enter>");
        assertThat(titles()).containsExactly("Begin again");
    }

    @Test
    void a_hymn_moved_back_changes_places_with_the_next() {
        List<String> before = titles();
        desk.press("}");
        assertThat(titles()).containsExactly(before.get(1), before.get(0), before.get(2), before.get(3));
    }

    @Test
    void one_goes_with_the_hymn_that_is_moved_and_stays_at_its_verse() {
        assertThat(desk.press("}").work().place()).isEqualTo(new VersePlace(1, 1));
    }

    @Test
    void the_first_hymn_cannot_be_moved_forward() {
        assertThat(desk.press("{").said()).isEqualTo("This is the first hymn.");
    }

    @Test
    void the_last_hymn_cannot_be_moved_back() {
        assertThat(desk.press("]", "]", "]", "}").said()).isEqualTo("This is the last hymn.");
    }

    @Test
    void there_is_no_hymn_after_the_last() {
        assertThat(desk.press("]", "]", "]", "]").said()).isEqualTo("This is the last hymn.");
    }

    @Test
    void there_is_no_hymn_before_the_first() {
        assertThat(desk.press("[").said()).isEqualTo("This is the first hymn.");
    }

    @Test
    void there_is_no_verse_before_the_first() {
        assertThat(desk.press("p", "p").said()).isEqualTo("This is the start of the service.");
    }

    @Test
    void there_is_no_verse_after_the_last() {
        assertThat(desk.press("]", "]", "]", "n", "n", "n", "n", "n", "n", "n").said())
                .isEqualTo("This is the end of the service.");
    }

    @Test
    void undoing_says_what() {
        assertThat(desk.press(" ", "u").said()).isEqualTo("Undid: V1, draw Great Bourdon 16.");
    }

    @Test
    void doing_again_says_what() {
        assertThat(desk.press(" ", "u", "U").said()).isEqualTo("Redid: V1, draw Great Bourdon 16.");
    }

    @Test
    void undoing_another_heading_leaves_one_where_one_is() {
        desk.press("S", "^U", "'Lammas'", "<Enter>", "]", "n");
        assertThat(desk.press("u").work().place()).isEqualTo(new VersePlace(1, 1));
    }

    @Test
    void undoing_another_heading_says_that_it_was_the_service() {
        assertThat(desk.press("S", "^U", "'Lammas'", "<Enter>", "u").said())
                .isEqualTo("Undid: the details of the service.");
    }

    @Test
    void control_z_undoes_too() {
        Plan before = desk.plan();
        assertThat(desk.press(" ", "^Z").plan()).isEqualTo(before);
    }
}
