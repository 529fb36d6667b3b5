package versewind.screen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.screen.Desk;
import versewind.screen.toolkit.Text;

class MovesLineTest {

    private static List<String> lines(Desk desk, int columns, int rows) {
        return MovesLine.of(desk.state(), desk.work(), columns, rows);
    }

    private static String line(Desk desk) {
        return String.join("|", lines(desk, 78, 2));
    }

    /** The parish organ, a hymn of an introduction and a verse, nothing drawn, at the verse. */
    private static Desk atVerse() {
        return Desk.blank().press("I", "<Tab>", "'A hymn'", "<Tab>", "<Tab>", "<Backspace>", "'1'", "<Enter>", "n");
    }

    @Test
    void before_the_first_verse_of_a_service_all_that_is_drawn_is_set() {
        assertThat(line(Desk.with("harvest-festival", 80, 24)))
                .isEqualTo("Stops and couplers to set before the service: 10");
    }

    @Test
    void before_a_service_for_which_nothing_is_drawn_that_is_said() {
        assertThat(line(atVerse().press("p"))).isEqualTo("Nothing is drawn yet.");
    }

    @Test
    void a_box_that_is_not_open_is_set_before_the_service() {
        assertThat(line(atVerse().press("p", ">"))).isEqualTo("Stops and couplers to set before the service: 1");
    }

    @Test
    void where_nothing_changes_nothing_moves() {
        assertThat(line(atVerse())).isEqualTo("Stops as Intro.");
    }

    @Test
    void where_nobody_plays_nothing_is_changed_but_for_the_next_verse() {
        assertThat(line(atVerse().press("<Home>", " ", "8"))).isEqualTo("Nothing to change: nobody plays.");
        assertThat(line(Desk.with("harvest-festival", 80, 24).press("n", "n", "n", "8", "p")))
                .startsWith("From V1");
        assertThat(line(Desk.with("harvest-festival", 80, 24).press("n", "n", "8")))
                .startsWith("Next, V3");
        assertThat(line(Desk.with("harvest-festival", 80, 24).press("n", "n", "n", "8", "p", "8")))
                .isEqualTo("Next, V3: nobody plays.");
    }

    @Test
    void one_stop_is_one_movement() {
        assertThat(line(atVerse().press("<Home>", " "))).isEqualTo("From Intro, 1 change:  Great + Bourdon 16");
    }

    @Test
    void a_stop_put_in_has_the_other_sign() {
        assertThat(line(atVerse().press("p", "<Home>", " ", "n")))
                .isEqualTo("From Intro, 1 change:  Great − Bourdon 16");
    }

    @Test
    void a_tremulant_is_told_with_its_division() {
        assertThat(line(atVerse().press("/", "'trem'", "<Enter>", " ")))
                .isEqualTo("From Intro, 1 change:  Swell + Tremulant");
    }

    @Test
    void couplers_are_told_together() {
        assertThat(line(atVerse().press("/", "'swell to g'", "<Enter>", " ", "<Down>", " ")))
                .isEqualTo("From Intro, 2 changes:  Couplers + Swell to Great, Swell to Pedal");
    }

    @Test
    void a_box_is_told_by_where_it_goes() {
        assertThat(line(atVerse().press(">"))).isEqualTo("From Intro, 1 change:  Swell box 3/4");
    }

    @Test
    void the_first_verse_of_a_hymn_follows_the_last_of_the_hymn_before() {
        assertThat(line(Desk.with("harvest-festival", 80, 24).press("]"))).startsWith("From 208 Last ");
    }

    @Test
    void a_hymn_without_verses_is_passed_over() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("]", "x", "x", "x", "x", "x", "]");
        assertThat(line(desk)).startsWith("From 208 Last ");
    }

    @Test
    void without_a_verse_nothing_is_said() {
        assertThat(lines(Desk.blank(), 78, 2)).isEmpty();
    }

    @Test
    void where_little_fits_how_it_is_played_or_what_is_moved_by_hand_is_left_out_first() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("n");
        assertThat(lines(desk, 57, 1)).containsExactly("From Intro, piston G4:  Great +2  Swell +2  Pedal +2");
        desk.press("n", "r", "l");
        assertThat(lines(desk, 58, 1)).containsExactly("From V1 +1±1 dB, 2 changes:  Swell +1  Coup. +1");
    }

    @Test
    void where_names_do_not_fit_knobs_are_counted() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("n");
        assertThat(lines(desk, 70, 1))
                .containsExactly("From Intro, piston G4, or 6 by hand:  Great +2  Swell +2  Pedal +2");
    }

    @Test
    void a_piston_that_leaves_everything_as_it_is_is_not_told() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("n", "n", "c", "e", "<Tab>", "<Tab>", "<Tab>", "'G4'");
        assertThat(line(desk.press("<Enter>", ">"))).isEqualTo("From V1 0±1 dB, 1 change:  Swell box 3/4");
    }

    @Test
    void hands_that_go_to_another_manual_are_told() {
        assertThat(line(atVerse().press("r", "l"))).isEqualTo("Stops as Intro; now four parts on Swell.");
    }

    @Test
    void where_not_even_numbers_fit_the_movements_are_counted() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("n");
        assertThat(lines(desk, 40, 1)).containsExactly("From Intro, piston G4, or 6 by hand");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "harvest-festival",
                "easter-cathedral",
                "wedding",
                "ash-wednesday",
                "advent-candlelight",
                "ordinary-sunday"
            })
    void the_movements_never_take_more_room_than_there_is(String plan) {
        Desk desk = Desk.with(plan, 80, 24).press("<Tab>");
        while (!desk.said().equals("This is the end of the service.")) {
            for (int columns = 58; columns < 200; columns += 4) {
                int most = columns;
                assertThat(lines(desk, columns, 2))
                        .as("%s, %d columns", desk.work().place(), columns)
                        .hasSizeLessThanOrEqualTo(2)
                        .allMatch(line -> Text.columns(line) <= most);
            }
            desk.press("<Down>");
        }
    }
}
