package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import versewind.screen.toolkit.Letters;

/** The screens in words, for who hears them. */
class SpokenTest {

    private final Desk desk = Desk.with("harvest-festival", 80, 24).lettered(Letters.SPOKEN);

    @Test
    void after_every_key_it_is_said_which_stop_it_is_and_whether_it_is_drawn() {
        assertThat(desk.press("<Down>").said()).isEqualTo("Great: Open Diapason 8, drawn.");
        assertThat(desk.press(" ").said()).isEqualTo("Great: Open Diapason 8, in; f, 75 dB.");
        assertThat(desk.press("n", "/", "'swell to great'", "<Enter>", " ").said())
                .startsWith("Swell to Great, in; ff, ")
                .contains(" dB, leads, ");
        assertThat(desk.press("/", "'cornopean'", "<Enter>", "<Up>", "<Down>").said())
                .isEqualTo("Swell: Cornopean 8, drawn, not heard here.");
    }

    @Test
    void another_verse_is_said_with_its_singers_and_the_verdict() {
        assertThat(desk.press("n").said()).startsWith("V1: congregation of 480, ordinary; fff, 81 dB, leads, ");
        assertThat(desk.press("3").said()).startsWith("V1: soloist, ordinary; ").contains("words covered");
        assertThat(desk.press("<Tab>", "<Down>").said()).startsWith("V2: congregation of 480");
    }

    @Test
    void another_hymn_is_named_and_a_lock_is_said() {
        assertThat(desk.press("]").said()).startsWith("211 For rain upon the furrow. Intro: the melody soloed; ");
        assertThat(desk.press("v", "<Down>", "<Up>").said()).endsWith(", in, locked, always drawn.");
    }

    @Test
    void the_command_that_is_marked_stands_on_the_line_of_the_caret() {
        String screen = desk.press(":", "'hymn'", "<Down>").screen();
        assertThat(screen.lines().filter(line -> line.startsWith(" : hymn")))
                .singleElement()
                .asString()
                .containsPattern("2 of \\d+ commands: .+, .");
    }

    @Test
    void a_row_holds_one_stop_or_one_verse_and_the_caret_stands_on_the_one_that_is_chosen() {
        String stops = desk.press("<Down>").screen();
        assertThat(stops.lines())
                .contains(" Stops of Intro, Swell box open", " \u25b8Great: Open Diapason 8, drawn")
                .contains("  Great: Principal 4, drawn");
        assertThat(desk.press("<Tab>").screen().lines())
                .contains("  V3: congregation of 480, gentle; ff, 77 dB, leads, 7 in 10");
    }

    @Test
    void the_curve_is_in_words_and_the_desk_has_no_big_letters() {
        assertThat(desk.press("C").screen()).contains("208: Intro ff 7").doesNotContain("\u2584");
        assertThat(desk.press("<Esc>", "K").screen()).doesNotContain("\u2588").contains("Now ");
    }

    @Test
    void a_high_screen_has_no_picture_either() {
        Desk high =
                Desk.with("harvest-festival", 200, 60).lettered(Letters.SPOKEN).press("n");
        assertThat(high.screen()).contains("Great: Open Diapason 8, drawn").doesNotContain("\u2584", "where it leads");
    }

    @Test
    void at_the_desk_every_verse_is_said_with_what_is_moved_on_the_line_of_the_caret() {
        Desk at = desk.press("K", " ");
        assertThat(at.said()).startsWith("V1: piston G4. Congregation of 480, ordinary.");
        assertThat(at.screen().lines().toList().get(23)).startsWith(" V1: piston G4.");
    }

    @Test
    void the_key_of_large_letters_does_not_end_what_is_spoken() {
        assertThat(desk.press("L").said()).isEqualTo("There are no large letters where everything is spoken.");
        assertThat(desk.state().isSpoken()).isTrue();
    }
}
