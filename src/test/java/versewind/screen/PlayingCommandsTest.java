package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Occasion;
import versewind.plan.Singing;
import versewind.plan.SungBy;
import versewind.plan.Verse;
import versewind.screen.plan.VerseForm;

/** Who sings, with which strength, and how hands and feet follow. */
class PlayingCommandsTest {

    private static final String NOBODY = "The organ plays alone in this verse.";

    private final Desk desk = Desk.with("harvest-festival", 80, 24).press("n");

    @ParameterizedTest
    @ValueSource(strings = {"+", "=", "-"})
    void where_nobody_sings_nobody_sings_more_or_less(String key) {
        assertThat(desk.press("p", key).said()).isEqualTo(NOBODY);
    }

    @Test
    void where_nobody_sings_the_strength_stays() {
        Singing before = desk.press("p").verse().singing();
        assertThat(desk.press("+").verse().singing()).isEqualTo(before);
    }

    @Test
    void who_is_to_sing_in_an_introduction_is_told_that_nobody_does() {
        assertThat(desk.press("p", "2").said()).isEqualTo(NOBODY);
    }

    @Test
    void an_introduction_can_be_soloed() {
        assertThat(desk.press("p", "4").said()).isEmpty();
    }

    @Test
    void singing_as_they_do_already_is_said_to_be_so() {
        assertThat(desk.press("1").said()).isEqualTo("No change: it is the same already.");
    }

    @Test
    void they_sing_as_gently_as_can_be_and_no_less() {
        assertThat(desk.press("-", "-", "-", "-").said()).isEqualTo("Gentler singing is not possible.");
    }

    @Test
    void other_singers_leave_hands_and_feet() {
        HandsAndFeet before = desk.press("h", "r").verse().hands();
        assertThat(desk.press("2", "3", "1").verse().hands()).isEqualTo(before);
    }

    @Test
    void a_soloed_melody_lies_on_another_manual_than_its_accompaniment() {
        Verse soloed = desk.press("4").verse();
        assertThat(soloed.hands().right()).isNotEqualTo(soloed.hands().left());
    }

    @Test
    void hands_that_are_apart_already_stay_where_they_are() {
        HandsAndFeet apart = desk.press("l").verse().hands();
        assertThat(desk.press("4").verse().hands()).isEqualTo(apart.withLayout(Layout.MELODY_SOLOED));
    }

    @Test
    void a_melody_that_is_played_alone_already_keeps_its_hands() {
        HandsAndFeet soloed = desk.press("h", "h", "h").verse().hands();
        assertThat(desk.press("4").verse().hands()).isEqualTo(soloed);
    }

    @Test
    void after_a_soloed_melody_both_hands_are_on_the_main_manual() {
        int great = desk.work().instrument().mainDivision();
        assertThat(desk.press("4", "2").verse().hands()).isEqualTo(HandsAndFeet.on(Layout.FOUR_PARTS, great));
    }

    @Test
    void a_melody_played_alone_under_singers_stays_so_for_other_singers() {
        assertThat(desk.press("h", "h", "h", "2").verse().hands().layout()).isEqualTo(Layout.MELODY_SOLOED);
    }

    @Test
    void all_ways_to_play_come_in_turn() {
        Layout before = desk.verse().hands().layout();
        assertThat(desk.press("h", "h", "h", "h", "h").verse().hands().layout()).isEqualTo(before);
    }

    @ParameterizedTest
    @CsvSource({
        "5, DESCANT, 'descant over a congregation of 480', desc.",
        "6, TREBLES, '10 trebles', treb.",
        "7, ALTERNATION, 'congregation of 480 in alternation', sides",
        "8, UNACCOMPANIED, 'unaccompanied', unacc"
    })
    void a_key_says_who_sings(String key, SungBy by, String words, String shortWord) {
        desk.press(key);
        assertThat(desk.verse().sungBy()).isEqualTo(by);
        assertThat(desk.screen()).contains("V1 \u2500 " + words, "V1      " + shortWord);
    }

    @Test
    void where_nobody_plays_no_balance_is_asked_and_nothing_is_proposed_to_be_wrong() {
        assertThat(desk.press("8").screen()).contains("Nobody plays").doesNotContain("organ alone", "remark");
        assertThat(desk.press("8").verse().isPlayed()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"3, 8", "8, 3"})
    void a_soloist_sings_unaccompanied_whichever_is_said_first(String one, String other) {
        desk.press("n", one, other);
        assertThat(desk.verse().sungBy()).isEqualTo(SungBy.ONE_ALONE);
        assertThat(desk.screen()).contains("solo voice, unaccompanied");
        assertThat(desk.press("8").verse().sungBy()).isEqualTo(SungBy.SOLO_VOICE);
    }

    @Test
    void a_verse_may_be_left_out_and_not() {
        assertThat(desk.press("O").verse().isOptional()).isTrue();
        assertThat(desk.said()).isEqualTo("V1 may be left out.");
        assertThat(desk.press("O").verse().isOptional()).isFalse();
        assertThat(desk.said()).isEqualTo("V1 is always sung.");
    }

    @Test
    void a_verse_and_a_service_have_the_share_of_those_who_sing() {
        desk.press("S", "<Tab>", "<Tab>", "'wedding'", "<Tab>", "<Tab>", "'3'", "<Enter>");
        assertThat(desk.screen()).contains("congregation of 480, 3 in 10 singing");
        desk.press("#", "<Tab>", "'9'", "<Enter>");
        assertThat(desk.screen()).contains("congregation of 480, 9 in 10 singing");
        assertThat(desk.plan().heading().occasion()).isEqualTo(Occasion.WEDDING);
    }

    @Test
    void a_player_without_pedals_goes_between_the_hands_together_and_the_melody_alone() {
        desk.press("S", "<Tab>", "<Tab>", "<Tab>", "<Tab>", "<Tab>", "'manuals only'", "<Enter>");
        assertThat(desk.verse().hands().layout()).isEqualTo(Layout.MANUALS_ONLY);
        assertThat(desk.press("h").verse().hands().layout()).isEqualTo(Layout.SOLOED_WITHOUT_PEDAL);
        assertThat(desk.press("h").verse().hands().layout()).isEqualTo(Layout.MANUALS_ONLY);
        assertThat(desk.press("4").verse().hands().layout()).isEqualTo(Layout.SOLOED_WITHOUT_PEDAL);
        assertThat(desk.press("1").verse().hands().layout()).isEqualTo(Layout.MANUALS_ONLY);
        assertThat(desk.press("u", "u", "u", "u", "u").verse().hands().layout()).isEqualTo(Layout.FOUR_PARTS);
    }

    @ParameterizedTest
    @CsvSource({"r", "l"})
    void on_one_manual_the_hands_have_nowhere_to_go(String key) {
        assertThat(Desk.with("ash-wednesday", 80, 24).press(key).said()).isEqualTo("This organ has only one manual.");
    }

    @Test
    void on_one_manual_a_melody_can_still_be_soloed() {
        Verse soloed = Desk.with("ash-wednesday", 80, 24).press("n", "4").verse();
        assertThat(soloed.hands()).isEqualTo(HandsAndFeet.on(Layout.MELODY_SOLOED, 0));
    }

    @ParameterizedTest
    @ValueSource(strings = {"r", "l"})
    void a_hand_never_goes_to_the_pedal(String key) {
        Desk cathedral = Desk.with("easter-cathedral", 80, 24);
        for (int i = 0; i < 7; i++) {
            Verse verse = cathedral.press(key).verse();
            int hand = key.equals("r") ? verse.hands().right() : verse.hands().left();
            assertThat(cathedral.work().instrument().manualDivisions()).contains(hand);
        }
    }

    @Test
    void the_people_key_opens_the_form_at_the_people() {
        assertThat(desk.press("#").form().at()).isEqualTo(VerseForm.PEOPLE);
    }

    @Test
    void the_first_verse_of_a_service_has_none_before_it_to_copy() {
        assertThat(desk.press("p", "c").said()).isEqualTo("This is the first verse of the service.");
    }

    @Test
    void the_first_verse_of_a_hymn_copies_the_last_of_the_hymn_before() {
        List<String> drawn = desk.press("]", "<Tab>", "<Up>").drawn();
        assertThat(desk.press("<Down>").work().place().verse()).isZero();
        assertThat(desk.press("c").drawn()).isEqualTo(drawn);
    }

    @Test
    void a_soloed_melody_takes_stops_but_not_hands_from_the_verse_before() {
        HandsAndFeet soloed = desk.press("n", "4").verse().hands();
        assertThat(desk.press("c").verse().hands()).isEqualTo(soloed);
    }

    @Test
    void a_registration_carried_on_leaves_who_sings() {
        Singing before = desk.plan().hymns().get(0).verses().get(6).singing();
        desk.press("&", "<Enter>");
        assertThat(desk.plan().hymns().get(0).verses().get(6).singing()).isEqualTo(before);
    }

    @Test
    void a_registration_carried_on_leaves_the_verses_before() {
        Verse before = desk.plan().hymns().get(0).verses().get(0);
        assertThat(desk.press("0", "&", "<Enter>")
                        .plan()
                        .hymns()
                        .get(0)
                        .verses()
                        .get(0))
                .isEqualTo(before);
    }

    @Test
    void a_registration_carried_on_to_one_verse_is_told_in_the_singular() {
        assertThat(desk.press("n", "n", "n", "n", "0", "&").said()).isEqualTo("Carried on to the verse after.");
    }

    @Test
    void a_registration_carried_on_is_taken_back_in_one_step() {
        var before = desk.press("0").plan();
        assertThat(desk.press("&", "<Enter>", "u").plan()).isEqualTo(before);
    }

    @Test
    void the_box_of_a_tremulant_is_that_of_its_division() {
        Desk cathedral = Desk.with("easter-cathedral", 80, 24).press("/", "'solo trem'", "<Enter>", ">");
        assertThat(cathedral.said()).isEqualTo("Solo box three quarters open.");
    }

    @Test
    void from_a_division_without_a_box_that_of_a_hand_moves() {
        Desk cathedral = Desk.with("easter-cathedral", 80, 24).press("n", "<Home>", "r");
        int right = cathedral.verse().hands().right();
        while (!cathedral.work().instrument().divisions().get(right).isEnclosed()) {
            right = cathedral.press("r").verse().hands().right();
        }
        String name = cathedral.work().instrument().divisions().get(right).name();
        assertThat(cathedral.press(">").said()).startsWith(name + " box ");
    }

    @Test
    void a_box_that_is_open_cannot_be_opened_further() {
        assertThat(desk.press("<").said()).isEqualTo("Swell box open already.");
    }

    @Test
    void putting_everything_in_moves_no_box() {
        var boxes = desk.press(">").verse().registration().boxes();
        assertThat(desk.press("0").verse().registration().boxes()).isEqualTo(boxes);
    }

    @Test
    void putting_everything_in_puts_in_couplers_and_tremulants_too() {
        assertThat(desk.press("/", "'trem'", "<Enter>", " ", "0").drawn()).isEmpty();
    }

    @Test
    void an_organ_without_a_box_says_so() {
        assertThat(Desk.with("advent-candlelight", 80, 24).press(">").said()).isEqualTo("This organ has no swell box.");
    }

    @Test
    void an_organ_without_stops_says_so() {
        Desk silent = silent().press("I", "<Tab>", "'A tune'", "<Enter>");
        assertThat(silent.press(" ").said()).isEqualTo("This organ has no stops.");
    }

    private static Desk silent() {
        return Desk.with(Desk.blank().plan(), OddOrgans.withoutStops(), Desk.ORDINARY, Optional.empty());
    }

    @ParameterizedTest
    @ValueSource(strings = {" ", "0", "<", ">", "c", "&", "1", "2", "3", "4", "+", "-", "#", "h", "r", "l", "k", "x"})
    void in_an_empty_service_what_needs_a_verse_says_so(String key) {
        assertThat(Desk.blank().press(key).said()).isEqualTo("No hymns yet. Press I to add one.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"i", "E", "D", "^X", "{", "}"})
    void in_an_empty_service_what_needs_a_hymn_says_so(String key) {
        assertThat(Desk.blank().press(key).said()).isEqualTo("No hymns yet. Press I to add one.");
    }

    @ParameterizedTest
    @ValueSource(strings = {" ", "1", "h", "k", "d", "x", ",", "."})
    void in_a_hymn_without_verses_what_needs_one_says_so(String key) {
        Desk empty = Desk.blank().press("I", "<Tab>", "'A tune'", "<Tab>", "<Tab>", "^U", "'0'", "<Enter>", "x");
        assertThat(empty.press(key).said()).isEqualTo("No verses yet. Press i to add one.");
    }
}
