package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.organ.BoxPosition;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mode;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;
import versewind.screen.state.Event;
import versewind.screen.state.FormBox;

class EditingTest {

    private final Desk desk = Desk.with("harvest-festival", 80, 24).press("n");

    @Test
    void the_space_bar_draws_a_stop_and_puts_it_in_again() {
        assertThat(desk.press("<Home>", " ").drawn()).contains("Great: Bourdon 16");
        assertThat(desk.press(" ").drawn()).doesNotContain("Great: Bourdon 16");
    }

    @ParameterizedTest
    @CsvSource({
        "cornop, Swell: Cornopean 8",
        "gedackt, Swell: Gedackt 8",
        "tr great, Great: Trumpet 8",
        "PEDAL 16, Pedal: Open Wood 16",
        "swell to p, Swell to Pedal",
        "trem, Swell: Tremulant"
    })
    void typing_part_of_a_name_jumps_to_the_stop(String typed, String knob) {
        assertThat(desk.press("/", "'" + typed + "'", "<Enter>").knob()).isEqualTo(knob);
    }

    @Test
    void accents_need_not_be_typed() {
        assertThat(Desk.with("wedding", 80, 24)
                        .press("/", "'flute harm'", "<Enter>")
                        .knob())
                .isEqualTo("Grand-Orgue: Flûte harm. 8");
    }

    @Test
    void the_search_goes_on_to_the_next_that_fits_and_back() {
        desk.press("/", "'trumpet'");
        assertThat(desk.knob()).isEqualTo("Great: Trumpet 8");
        desk.press("<Backspace>", "<Backspace>", "<Backspace>", "<Backspace>", "<Backspace>");
        assertThat(desk.press("<Tab>").knob()).isNotEqualTo("Great: Trumpet 8");
    }

    @Test
    void leaving_the_search_goes_back_to_where_it_began() {
        String before = desk.press("<Down>").knob();
        assertThat(desk.press("/", "'oboe'", "<Esc>").knob()).isEqualTo(before);
    }

    @ParameterizedTest
    @CsvSource({"1, CONGREGATION", "2, SMALL_CHOIR", "3, SOLO_VOICE", "4, MELODY_SOLOED"})
    void one_key_says_who_sings(String key, Mode mode) {
        assertThat(desk.press(key).verse().mode()).isEqualTo(mode);
    }

    @Test
    void a_soloed_melody_brings_its_way_of_playing_and_takes_it_away_again() {
        Verse soloed = desk.press("4").verse();
        assertThat(soloed.hands().layout()).isEqualTo(Layout.MELODY_SOLOED);
        assertThat(soloed.hands().right()).isNotEqualTo(soloed.hands().left());
        assertThat(desk.press("1").verse().hands().layout()).isEqualTo(Layout.FOUR_PARTS);
    }

    @Test
    void they_sing_as_strongly_as_can_be_and_no_more() {
        desk.press("+", "+", "+", "+");
        assertThat(desk.verse().singing()).isEqualTo(Singing.FULL_VOICE);
        assertThat(desk.said()).isEqualTo("Stronger singing is not possible.");
        desk.press("-", "-", "-", "-");
        assertThat(desk.verse().singing()).isEqualTo(Singing.GENTLE);
    }

    @Test
    void the_hairpins_close_and_open_the_box() {
        int swell = desk.work().instrument().division("Swell").orElseThrow();
        desk.press(">");
        assertThat(desk.verse().registration().boxes().get(swell)).isEqualTo(BoxPosition.THREE_QUARTERS);
        assertThat(desk.said()).isEqualTo("Swell box three quarters open.");
        desk.press(">", ">", ">", ">");
        assertThat(desk.said()).isEqualTo("Swell box closed already.");
        assertThat(desk.press("<").verse().registration().boxes().get(swell)).isEqualTo(BoxPosition.QUARTER);
    }

    @Test
    void the_box_of_the_division_where_we_are_moves() {
        Desk cathedral = Desk.with("easter-cathedral", 80, 24).press("/", "'solo clarinet'", "<Enter>", ">");
        assertThat(cathedral.said()).isEqualTo("Solo box three quarters open.");
    }

    @Test
    void hands_go_from_manual_to_manual_and_layout_to_layout() {
        int great = desk.verse().hands().right();
        assertThat(desk.press("r").verse().hands().right()).isNotEqualTo(great);
        assertThat(desk.press("r").verse().hands().right()).isEqualTo(great);
        assertThat(desk.press("l").verse().hands().left()).isNotEqualTo(great);
        assertThat(desk.press("h").verse().hands().layout()).isEqualTo(Layout.MANUALS_ONLY);
        assertThat(desk.press("h").verse().hands().layout()).isEqualTo(Layout.PEDAL_BY_COUPLER);
    }

    @Test
    void going_once_round_the_ways_to_play_leaves_the_hands_where_they_were() {
        var before = desk.verse().hands();
        assertThat(desk.press("h", "h", "h", "h", "h").verse().hands()).isEqualTo(before);
    }

    @Test
    void a_silent_right_hand_leads_nobody() {
        desk.press("0", "/", "'swell open'", "<Enter>", " ", "h", "l");
        assertThat(desk.work().estimate(desk.verse()).balance().verdict()).isEqualTo(versewind.sound.Verdict.NO_TUNE);
    }

    @Test
    void a_number_for_one_verse_is_typed_and_taken_away() {
        desk.press("#", "'40'", "<Enter>");
        assertThat(desk.verse().people()).isEqualTo(OptionalInt.of(40));
        desk.press("#", "^U", "<Enter>");
        assertThat(desk.verse().people()).isEmpty();
    }

    @Test
    void what_the_verse_before_has_is_copied_with_its_hands() {
        desk.press("0", "h", "n", "c");
        assertThat(desk.drawn()).isEmpty();
        assertThat(desk.verse().hands().layout()).isEqualTo(Layout.MANUALS_ONLY);
    }

    @Test
    void a_registration_is_carried_on_to_all_verses_after() {
        desk.press("0", "<Home>", " ", "&", "<Enter>");
        assertThat(desk.said()).isEqualTo("Carried on to the 5 verses after.");
        assertThat(desk.press("n", "n", "n", "n", "n").drawn()).containsExactly("Great: Bourdon 16");
        assertThat(desk.press("&").said()).isEqualTo("This is the last verse of the hymn.");
    }

    @Test
    void a_registration_is_not_carried_on_to_a_verse_that_others_sing() {
        desk.press("n", "2", "p", "0", "<Home>", " ", "&", "<Enter>");
        assertThat(desk.said())
                .isEqualTo("Carried on to the 4 verses after; 1 with other singers or hands is unchanged.");
        assertThat(desk.press("n").drawn()).doesNotContain("Great: Bourdon 16");
        assertThat(desk.press("n").drawn()).containsExactly("Great: Bourdon 16");
    }

    @Test
    void where_only_others_sing_after_nothing_is_carried_on() {
        var before = desk.press("n", "n", "n", "n", "3").plan();
        assertThat(desk.press("&").plan()).isEqualTo(before);
        assertThat(desk.said()).isEqualTo("The following verses have other singers or hands; they are unchanged.");
    }

    @Test
    void a_new_verse_is_numbered_and_those_after_it_again() {
        assertThat(desk.labels()).containsExactly("Intro", "V1", "V2", "V3", "Inter", "V4", "Last");
        assertThat(desk.press("i").labels()).containsExactly("Intro", "V1", "V2", "V3", "V4", "Inter", "V5", "Last");
        assertThat(desk.work().place().verse()).isEqualTo(2);
        assertThat(desk.drawn()).isEmpty();
    }

    @Test
    void labels_of_ones_own_stay() {
        desk.press("e", "^U", "'1st'", "<Enter>");
        assertThat(desk.press("i").labels()).containsExactly("Intro", "1st", "V2", "V3", "V4", "Inter", "V5", "Last");
    }

    @Test
    void a_verse_taken_out_leaves_the_labels_of_the_others() {
        assertThat(desk.press("x").labels()).containsExactly("Intro", "V2", "V3", "Inter", "V4", "Last");
        assertThat(desk.said()).isEqualTo("Deleted V1; u to undo.");
    }

    @Test
    void a_verse_is_moved_with_all_it_has() {
        Verse first = desk.verse();
        desk.press(".");
        assertThat(desk.work().place().verse()).isEqualTo(2);
        assertThat(desk.verse().registration()).isEqualTo(first.registration());
        assertThat(desk.labels()).startsWith("Intro", "V1", "V2");
    }

    @Test
    void a_kind_brings_its_usual_label() {
        desk.press("k");
        assertThat(desk.verse().kind()).isEqualTo(VerseKind.REFRAIN);
        assertThat(desk.labels()).startsWith("Intro", "Refr", "V1", "V2");
    }

    @Test
    void a_new_hymn_has_an_introduction_and_its_verses() {
        desk.press("I", "'12'", "<Tab>", "'Fields of barley'", "<Tab>", "<Tab>", "<Backspace>", "'4'", "<Enter>");
        assertThat(desk.hymn().title()).isEqualTo("Fields of barley");
        assertThat(desk.hymn().number()).isEqualTo("12");
        assertThat(desk.labels()).containsExactly("Intro", "V1", "V2", "V3", "Last");
        assertThat(desk.work().place().hymn()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "E | <Tab> <Tab> <Tab> <Tab> <Tab> ^U '7' | Tempo: 7 is out of range. Enter a whole number from 20 to"
                        + " 300.",
                "E | <Tab> ^U | A hymn needs a title.",
                "S | <Tab> ^U '4.10.26' | Enter a date, such as 20 Dec 2026 or 2026-12-20.",
                "S | <Tab> <Tab> <Tab> ^U 'many' | is not a number. Enter a whole number from 1 to 50000.",
                "S | <Tab> <Tab> <Tab> ^U '0' | People: 0 is out of range. Enter a whole number from 1 to 50000.",
                "S | ^U | A service needs a title.",
                "e | <Tab> ^U '-3' | People: -3 is out of range. Enter a whole number from 1 to 50000."
            })
    void what_cannot_be_kept_is_said_and_the_form_stays(String form, String keys, String sentence) {
        desk.press(form).press(keys.split(" ", -1)).press("<Enter>");
        assertThat(desk.state().top()).isInstanceOfSatisfying(FormBox.class, open -> assertThat(open.complaint())
                .endsWith(sentence));
    }

    @Test
    void a_form_left_with_escape_changes_nothing() {
        var before = desk.plan();
        assertThat(desk.press("e", "'xyz'", "<Esc>").plan()).isEqualTo(before);
    }

    @Test
    void pasted_text_goes_into_the_field_as_one_line() {
        desk.press("e", "<Tab>", "<Tab>", "<Tab>", "<Tab>", "^U")
                .answer(new Event.Paste("one\ntwo\r\nthree"))
                .press("<Enter>");
        assertThat(desk.verse().note()).isEqualTo("one two three");
    }

    @Test
    void pasted_text_is_never_taken_for_keys() {
        var before = desk.plan();
        desk.answer(new Event.Paste("xXq0"));
        assertThat(desk.plan()).isEqualTo(before);
        assertThat(desk.said()).isEqualTo("There is no field here to paste text into.");
    }

    @Test
    void the_next_verse_and_the_one_before_are_of_the_same_hymn() {
        desk.press("]", "p");
        assertThat(desk.work().place()).isEqualTo(new VersePlace(1, 0));
        assertThat(desk.said()).isEqualTo("This is the start of the hymn; [ for the previous hymn.");
        desk.press("[", "n", "n", "n", "n", "n", "n", "n");
        assertThat(desk.work().place()).isEqualTo(new VersePlace(0, 6));
        assertThat(desk.said()).isEqualTo("This is the end of the hymn; ] for the next hymn.");
        assertThat(desk.press("p", "p", "p", "p", "p", "p", "p").said()).isEqualTo("This is the start of the service.");
    }

    @Test
    void among_the_verses_the_arrows_go_on_into_the_next_hymn() {
        desk.press("<Tab>", "<Down>", "<Down>", "<Down>", "<Down>", "<Down>", "<Down>");
        assertThat(desk.work().place()).isEqualTo(new VersePlace(1, 0));
        assertThat(desk.press("<Up>").work().place()).isEqualTo(new VersePlace(0, 6));
    }

    @Test
    void a_smaller_window_keeps_the_place() {
        desk.press("<End>");
        String knob = desk.knob();
        desk.answer(new Event.Resize(40, 10)).answer(new Event.Resize(60, 18));
        assertThat(desk.knob()).isEqualTo(knob);
    }

    @Test
    void a_stop_on_a_manual_that_is_neither_played_nor_coupled_is_drawn_and_not_heard() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("n");
        assertThat(desk.screen()).contains("\u25cf Cornopean");
        assertThat(desk.press("/", "'swell to great'", "<Enter>", " ").screen()).contains("\u25cb Cornopean");
        assertThat(desk.press("K").screen()).contains("Swell, box open, not heard here:");
    }
}
