package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.screen.library.LibraryEvent;
import versewind.screen.plan.FileEvent;
import versewind.screen.state.Event;
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
        assertThat(desk.press("n").said()).startsWith("V1: congregation of 480; fff, 81 dB, leads, ");
        assertThat(desk.press("3").said()).startsWith("V1: soloist; ").contains("words covered");
        assertThat(desk.press("<Tab>", "<Down>").said()).startsWith("V2: congregation of 480");
    }

    @Test
    void another_hymn_is_named_and_a_lock_is_said() {
        assertThat(desk.press("]").said()).startsWith("211 For rain upon the furrow. Intro: the melody soloed; ");
        assertThat(desk.press("v", "<Down>", "<Up>").said()).endsWith(", in; proposals never draw it.");
    }

    @Test
    void the_command_that_is_marked_stands_on_the_line_of_the_caret() {
        String screen = desk.press(":", "'hymn'", "<Down>").screen();
        assertThat(screen.lines().filter(line -> line.startsWith(" : hymn")))
                .singleElement()
                .asString()
                .containsPattern("  .+, ., .*2 of \\d+");
    }

    @Test
    void a_row_holds_one_stop_or_one_verse_and_the_caret_stands_on_the_one_that_is_chosen() {
        String stops = desk.press("<Down>").screen();
        assertThat(stops.lines())
                .contains(" Stops of Intro, Swell box open", "  Great: Open Diapason 8, drawn")
                .contains("  Great: Principal 4, drawn");
        assertThat(desk.press("<Tab>").screen().lines())
                .contains("  V3: congregation of 480, singing gently; ff, 77 dB, leads, 7 in 10");
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
        assertThat(at.said()).startsWith("Verse 1 of 5. Piston G4. Congregation of 480.");
        assertThat(at.screen().lines().toList().get(23)).startsWith(" Verse 1 of 5. Piston G4.");
    }

    @Test
    void a_finding_is_heard_whole_in_the_rows_under_the_caret_and_in_what_is_said() {
        Desk at = Desk.with("easter-cathedral", 80, 24).lettered(Letters.SPOKEN).press("f", "<Down>");
        assertThat(at.characters())
                .contains(
                        "  remark, 1 V3: All 6 verses have a heavy 16 ft in the pedal; this one could\n  do without.\n")
                .doesNotContain("...");
        assertThat(at.said())
                .isEqualTo("remark, 1 V3: All 6 verses have a heavy 16 ft in the pedal; this one could do without."
                        + " Fix: Put in Pedal: Open Metal 16. Set it on piston G2. 2 of 4.");
        int caret = at.frame().caretY();
        assertThat(at.frame().row(caret)).startsWith("  remark, 1 V3: ");
    }

    @Test
    void a_list_stays_where_it_is_until_the_mark_leaves_the_page() {
        Desk at = Desk.with("easter-cathedral", 80, 24).lettered(Letters.SPOKEN).press("f");
        int first = at.frame().caretY();
        assertThat(at.press("<Down>").frame().caretY()).isEqualTo(first + 2);
        assertThat(at.press("<End>", "<Home>").frame().caretY()).isEqualTo(first);
    }

    @ParameterizedTest
    @CsvSource({
        "'f,<End>,<Down>', The last finding.",
        "'f,<Home>,<Up>', The first finding.",
        "'M,<Down>', There is no reading here."
    })
    void at_the_end_of_a_list_a_key_says_that_it_is_the_end(String keys, String said) {
        assertThat(desk.press(keys.split(",")).said()).isEqualTo(said);
        Desk seen = Desk.with("harvest-festival", 80, 24).press(keys.split(","));
        assertThat(seen.frame().row(23)).isEqualTo(" " + said);
    }

    @Test
    void the_first_and_the_last_row_of_a_chooser_are_a_key_away() {
        desk.press("W").press("<End>");
        assertThat(desk.said()).endsWith(", 6 of 6.");
        assertThat(desk.press("<Home>").said()).endsWith(", 1 of 6.");
    }

    @Test
    void the_library_is_in_words_and_its_ends_are_said() {
        desk.library(
                Desk.listed(
                        "a", "A service with a title that is far too long for the column it stands in", "2026-10-04"),
                Desk.listed("b", "Another plan", ""));
        assertThat(desk.press("<Down>", "<Up>").said())
                .isEqualTo("A service with a title that is far too long for the column it stands in, Sun 4 Oct 2026;"
                        + " file a, organ st-tethwin, 1 of 2.");
        assertThat(desk.characters())
                .contains(
                        " A service with a title that is far too long for the column it stands in, Sun 4\n Oct 2026\n");
        assertThat(desk.press("<Down>", "<Down>").said()).isEqualTo("The last plan.");
    }

    @Test
    void the_library_is_named_when_the_program_begins_with_it() {
        Desk empty = Desk.empty(80, 24).lettered(Letters.SPOKEN).library(Desk.listed("a", "Wedding", "2026-10-04"));
        assertThat(empty.said())
                .startsWith("Library, plans. Wedding, Sun 4 Oct 2026; ")
                .endsWith("F1 lists the keys.");
        assertThat(empty.press("<Up>", "'x'", "<Backspace>").said()).doesNotContain("F1");
    }

    @Test
    void what_is_typed_into_a_filter_is_said_before_what_it_leaves() {
        desk.library(Desk.listed("a", "Harvest", "2026-10-04"), Desk.listed("b", "Easter", ""));
        assertThat(desk.press("'ea'").said()).startsWith("Filter: ea. Easter, ").endsWith(", 1 of 1.");
        assertThat(desk.press("'x'").said()).isEqualTo("Filter: eax. Nothing matches the filter.");
        assertThat(desk.press("<Backspace>", "<Backspace>", "<Backspace>").said())
                .startsWith("Filter empty. ")
                .endsWith(" of 2.");
        assertThat(desk.press("<Down>", "<Up>").said()).doesNotContain("Filter");
    }

    @Test
    void a_question_and_a_form_are_said_when_they_open() {
        assertThat(desk.press(" ", "q").said())
                .startsWith("This plan has unsaved changes. s: save")
                .endsWith("; Esc: stay here.");
        assertThat(desk.press("<Esc>", "e").said()).startsWith("Verse. Label: Intro; what stands before the verse");
        assertThat(desk.press("<Tab>").said()).startsWith("People: blank; ");
    }

    @Test
    void a_field_is_said_with_what_it_holds_and_what_is_typed_in_it_alone() {
        desk.press("S", "<Tab>", "<Tab>", "<Tab>");
        assertThat(desk.said()).startsWith("People: 480; how many people are expected");
        assertThat(desk.press("'9'").said()).isEqualTo("People: 9");
        assertThat(desk.press("^U").said()).isEqualTo("People: blank");
        assertThat(desk.press("<Enter>").said()).startsWith("People: ").contains("whole number");
        assertThat(desk.press("<Up>", "<Up>", "^U", "'4 oct 2026'").said())
                .startsWith("Date: 4 oct 2026; Sun 4 Oct 2026");
    }

    @ParameterizedTest
    @ValueSource(strings = {"n", "f", "P", "R", "M", "W", "C", "K", "K,y", "?", ":", "e", "B", "/", "v"})
    void no_screen_has_a_sign_where_a_word_should_stand(String keys) {
        String screen = desk.press("n", "n").press(keys.split(",")).characters();
        assertThat(screen.codePoints().filter(point -> point >= 0x2190 || point == '\u2212' || point == '\u00b1'))
                .isEmpty();
        assertThat(screen).doesNotContain(" # ", " | ", "---");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        C | Curve of the service. 20 of 21 verses lead; words clear: 214, V2. Softest:
        f | Findings. remark,
        M | Readings of St Tethwin. No readings yet;
        P | Proposed for V2, the best first.
        R | What do you draw for an ordinary hymn, and for how many? Name:
        ? | Help. Up:
        K | At the desk. Hymn 208 Come, carry in the harvest, tune CORVENING. Verse 2 of 5. Draw Swell Fagotto 16
        o | Library, plans.
        """)
    void a_screen_that_opens_is_named_stands_alone_and_on_the_way_back_the_verse_is(String key, String said) {
        desk.press("n", "n", key);
        assertThat(desk.said()).startsWith(said);
        assertThat(desk.characters()).doesNotContain("Stops of V2");
        assertThat(desk.frame().caretY()).isGreaterThanOrEqualTo(0);
        assertThat(desk.press("<Esc>").said()).endsWith("Hymn 208, verse 2 of 5. Great: Bourdon 16, in.");
    }

    @Test
    void the_first_hymn_of_a_service_is_said() {
        Desk blank = Desk.blank().lettered(Letters.SPOKEN);
        assertThat(blank.press("I", "<Tab>", "'Lantern'", "<Enter>").said()).contains("Lantern. Intro: organ alone.");
        assertThat(blank.press("u", "f").said()).isEqualTo("Findings. No remarks.");
        assertThat(blank.press("<Esc>", "U", "u").said()).contains("Undid: ").doesNotContain("..", "; .");
    }

    @Test
    void an_answer_is_said_in_a_plan_with_unsaved_changes_too() {
        assertThat(desk.press(" ", "K", "y", "2").said())
                .startsWith("208 V1 was right. 208 V2: no feedback, ")
                .endsWith("press s in the plan to save.");
    }

    @Test
    void the_curve_is_said_in_one_sentence_and_the_figures_stand_beneath() {
        assertThat(desk.press("C").said())
                .matches("Curve of the service\\. .*verses lead.*\\. Softest: 2\\d+, V\\d\\. Strongest: 2\\d+, \\w+\\."
                        + " Esc closes; then f lists \\d+ findings\\.");
        assertThat(desk.press("<Down>").said()).doesNotContain("Softest");
    }

    @Test
    void the_findings_begin_with_the_first_and_tell_their_keys() {
        Desk at = Desk.with("easter-cathedral", 80, 24).lettered(Letters.SPOKEN).press("]", "n", "f");
        assertThat(at.said()).contains(" 1 of ").contains("Enter goes there, x ignores it, T says how to play it.");
        assertThat(at.press("T").said()).contains("of the beat");
        assertThat(at.press("<Down>").said()).contains(" 2 of ").doesNotContain("Enter");
    }

    @Test
    void a_proposal_is_said_by_what_it_moves_and_in_full_on_a_key() {
        assertThat(desk.press("n", "n", "P").said())
                .startsWith("Proposed for V2, the best first. ")
                .containsPattern(
                        "(draw|push in) [^.]*: f+, \\d\\d dB, leads, \\d in 10, 1 of \\d+\\. Enter takes it, P ")
                .doesNotContain("Great chorus");
        assertThat(desk.press("<Down>").said()).containsPattern(" in 10, 2 of \\d+\\.$");
        assertThat(desk.press("<Up>", "T").said())
                .containsOnlyOnce("Great chorus with")
                .contains(" Draws Great: all but Bourdon 16, ");
    }

    @Test
    void the_other_side_is_named_and_a_stop_that_is_wrong_there_is_said_to_be() {
        assertThat(desk.press("n", "<Tab>").said()).startsWith("Verses. V1: ");
        assertThat(desk.press("<Tab>").said()).startsWith("Stops. Great: ");
        assertThat(desk.press("/", "'celeste'", "<Enter>", " ").said())
                .startsWith("Swell: Celeste 8, drawn; ")
                .contains(" Caution: Swell Celeste 8 wavers under a congregation.");
        assertThat(desk.press("<Down>", "<Up>").said()).isEqualTo("Swell: Celeste 8, drawn.");
    }

    @Test
    void what_is_found_in_the_library_is_said_when_it_is_there() {
        desk.press("o");
        desk.answer(new LibraryEvent.PlansListed(
                List.of(Desk.listed("a", "A plan", "")), 1, LibraryEvent.PlansListed.Part.FIRST));
        assertThat(desk.said())
                .isEqualTo("Library, plans. A plan, no date; file a, organ st-tethwin, 1 of 1."
                        + " Enter opens it, Ctrl-N makes a new one, Tab shows the organs, F1 lists the keys.");
        assertThat(desk.press("<Tab>").said()).isEqualTo("Library, organs.");
    }

    @Test
    void after_the_service_the_answer_is_said_and_then_the_next_verse() {
        assertThat(desk.press("K", "y").said())
                .startsWith("How was the organ for the singers? 1 too soft, 2 right, 3 too strong."
                        + " 208 V1: no feedback; congregation of 480, 1 of ");
        assertThat(desk.press("3").said()).matches("208 V1 was too strong\\. 208 V2: no feedback, 2 of \\d+\\.");
        String said = desk.said();
        assertThat(desk.answer(new FileEvent.Saved(desk.plan(), List.of(), true))
                        .said())
                .isEqualTo(said);
        assertThat(desk.press("3").said()).contains("208 V3: no feedback; congregation of 480, singing gently, 3 of ");
        while (!desk.said().contains("All answered")) {
            desk.press("2");
        }
        assertThat(desk.said()).isEqualTo("219 Last was right. All answered; Esc goes back to the desk.");
    }

    @Test
    void at_the_desk_of_a_large_organ_all_that_is_drawn_is_heard() {
        Desk at = Desk.with("easter-cathedral", 80, 24).lettered(Letters.SPOKEN).alone();
        assertThat(at.said())
                .isEqualTo("At the desk. Hymn 1 Ring from the towers the morning, tune ST ORRIN. Intro. Set this before"
                        + " the service: piston G9. Melody soloed, right hand Solo, left hand Great.");
        for (int verse = 0; verse < 7; verse++) {
            at.press(" ").climb();
        }
        assertThat(at.characters())
                .contains("Drawn      Great: Double Diapason 16, Bourdon 16, Diapason I 8, Diapason II 8,\n")
                .contains("Couplers: Great to Pedal, Swell to Pedal,\n"
                        + "            Swell to Great, Positive to Gt, Solo to")
                .contains("Next       2 The stone, the folded cloth");
        assertThat(at.press("<").climb().characters())
                .contains("Pedal Violone 16, Fagotto 16\n Drawn      Great: ")
                .containsPattern("(?s)Great: .*Swell, box open: .*Solo, box open: .*Pedal: .*Couplers: .*Next  ");
    }

    @Test
    void where_not_all_that_is_drawn_has_room_a_full_division_is_told_by_what_is_not() {
        Desk at = Desk.with("easter-cathedral", 80, 19).lettered(Letters.SPOKEN).alone();
        for (int verse = 0; verse < 7; verse++) {
            at.press(" ");
        }
        assertThat(at.characters())
                .contains("Drawn ", "Great: all but Harmonic Flute 8,", "Next ")
                .contains("all but Sub Bourdon 32, ", "Solo to Great\n Next ");
    }

    @Test
    void what_is_said_at_the_desk_begins_on_the_line_of_the_caret() {
        Desk at = Desk.with("easter-cathedral", 80, 24).lettered(Letters.SPOKEN).press("]", "K");
        assertThat(at.frame().row(at.frame().caretY())).startsWith(" At the desk. Hymn 2 The stone,");
        assertThat(at.press(" ", "<Up>").frame().row(at.frame().caretY()))
                .startsWith(" Intro. Piston G10; Swell box three quarters open;");
        assertThat(at.frame().caretY()).isEqualTo(22);
    }

    @Test
    void what_is_advised_and_moved_is_heard_whole_under_the_stops() {
        Desk at = Desk.with("easter-cathedral", 80, 24).lettered(Letters.SPOKEN).press("n", "n", "<Down>");
        assertThat(at.characters())
                .containsPattern("\\n remark: [^.]+\\n [^.]+\\.\\n From V1, about ")
                .contains("Pedal draw Fagotto 16, put in Trombone 16,")
                .doesNotContain("...");
    }

    @Test
    void the_key_of_large_letters_does_not_end_what_is_spoken() {
        assertThat(desk.press("L").said()).isEqualTo("There are no large letters where everything is spoken.");
        assertThat(desk.state().isSpoken()).isTrue();
    }

    @Test
    void on_arriving_at_a_verse_the_changes_are_said_after_the_verdict_and_then_the_finding() {
        assertThat(desk.press("n").said()).containsPattern("leads, \\d in 10\\. Piston G4, or 6 by hand\\.");
        assertThat(desk.press("n").said()).endsWith(" 2 changes: draw Swell Fagotto 16; draw Swell to Pedal.");
        assertThat(desk.press("p", "0", "n").said())
                .contains(". 18 changes: draw Great Open Diapason 8, ")
                .endsWith(" and 13 more.");
        assertThat(desk.press("u", "c", "/", "'celeste'", "<Enter>", " ", "p", "n")
                        .said())
                .endsWith(". Piston G4, or 1 by hand. Caution: Swell Celeste 8 wavers under a congregation.");
    }

    @Test
    void a_key_says_all_that_is_drawn_and_how_it_is_played() {
        assertThat(desk.press("n", "j").said())
                .startsWith("V1: Great Open Diapason 8, Principal 4, Twelfth 2 2/3, ")
                .contains("; Swell box open; Pedal Open Wood 16, ")
                .endsWith("; Swell to Great, Great to Pedal; four parts, on the Great; piston G4.");
        assertThat(desk.press("8", "j").said()).isEqualTo("V1: nobody plays; piston G4.");
    }

    @Test
    void hands_and_feet_are_said_first() {
        assertThat(desk.press("n", "h").said()).startsWith("Manuals only, on the Great. V1: congregation of 480; ");
        assertThat(desk.press("r").said()).startsWith("Right hand Swell, left hand Great. V1: ");
        assertThat(desk.press("l").said()).startsWith("Both hands on the Swell. V1: ");
    }

    @Test
    void a_piston_of_the_form_is_said_and_a_form_that_is_left_changes_nothing() {
        assertThat(desk.press("n", "e", "<Tab>", "<Tab>", "<Tab>", "'2/G6'", "<Enter>")
                        .said())
                .startsWith("Piston 2/G6. Hymn 208, verse 1 of 5. V1: ");
        assertThat(desk.press("e", "<Esc>").said()).startsWith("Nothing changed. Hymn 208, verse 1 of 5. Great: ");
    }

    @Test
    void what_came_of_a_key_is_said_before_where_it_is() {
        assertThat(desk.press("n", ">").said()).startsWith("Swell box three quarters open. Now fff, ");
        assertThat(desk.press("u").said()).startsWith("Undid: V1, Swell box three quarters open. Now fff, ");
        assertThat(desk.press("0").said()).startsWith("Everything put in. ");
        assertThat(desk.press("u", "n", "c").said()).startsWith("Copied from V1. Now ");
        assertThat(desk.press("i").said()).startsWith("V3 added. V3: ");
        assertThat(desk.press("d").said()).startsWith("V3 duplicated. V4: ");
        assertThat(desk.press("x").said())
                .startsWith("Deleted V4; u to undo. V5: ")
                .endsWith(" by hand.");
        assertThat(desk.press("I", "'12'", "<Tab>", "'Lantern'", "<Enter>").said())
                .startsWith("Hymn 12 added, 4 verses and 1 introduction. Hymn 12 Lantern. Intro: organ alone. ");
    }

    @Test
    void until_it_is_saved_nothing_is_said_and_then_that_it_is() {
        assertThat(desk.press(" ", "s").said()).isEmpty();
        assertThat(desk.answer(new Event.Done("Saved.")).said()).isEqualTo("Saved.");
    }

    @Test
    void a_plan_that_is_opened_is_named_with_its_hymn_and_verse_and_an_empty_one_says_what_to_do() {
        Desk opened = Desk.openedSpoken("harvest-festival");
        assertThat(opened.said())
                .endsWith("Plan Harvest Festival. Hymn 208 Come, carry in the harvest, Intro. Great: Bourdon 16, in.");
        Desk blank = Desk.blank().lettered(Letters.SPOKEN);
        assertThat(blank.press("?", "<Esc>").said()).isEqualTo("No hymns yet. Press I to add one.");
    }

    @Test
    void sideways_one_comes_to_the_next_division() {
        assertThat(desk.press("<Right>").said()).startsWith("Swell: Open Diapason 8, ");
        assertThat(desk.press("<Right>", "<Right>").said()).startsWith("Swell to Great, ");
        assertThat(desk.press("<Right>").said()).isEqualTo("There is nothing further that way.");
        assertThat(desk.press("<Left>").said()).startsWith("Pedal: Open Wood 16, ");
    }

    @Test
    void levels_and_boxes_are_said_in_words() {
        assertThat(desk.press("n", "n", ">", ">", "<Tab>", "<Tab>", "<Down>").characters())
                .containsPattern(" From V1, about (as loud|\\d dB (louder|softer)), ")
                .contains("Swell box half open")
                .doesNotContain("plus or minus", "box 1/2");
    }

    @Test
    void at_the_desk_it_is_said_what_to_set_and_which_hymn_comes() {
        desk.press("e", "<Tab>", "<Tab>", "<Tab>", "^U", "<Enter>", "K");
        assertThat(desk.said())
                .startsWith(
                        "At the desk. Hymn 208 Come, carry in the harvest, tune CORVENING. Intro. Set this before the"
                                + " service: Great Open Diapason 8, ")
                .contains("; Swell box open; ")
                .endsWith(" Organ alone. Four parts, on the Great.");
        for (int verse = 0; verse < 7; verse++) {
            desk.press(" ");
        }
        assertThat(desk.said())
                .startsWith("Hymn 211 For rain upon the furrow, tune ")
                .contains(". Intro. Put in Great Open Diapason 8, ");
        assertThat(desk.press("j").said())
                .startsWith("Intro: ")
                .contains("; melody soloed, right hand Swell, left hand Great");
    }

    @Test
    void at_the_desk_a_step_is_said_with_what_is_done_from_what_sounds_now() {
        desk.press("n", "K").climb();
        String louder = desk.press("<").said();
        assertThat(louder).startsWith("1 step louder than planned: draw ").containsPattern("\\. Now fff, .* in 10\\.$");
        String drawn = louder.substring(louder.indexOf("draw ") + 5, louder.indexOf(". Now"));
        assertThat(desk.press(">").said())
                .startsWith("Back to the plan: put in " + drawn.replace("draw", "put in") + ". Now ");
        assertThat(desk.press("+").said()).matches("\\d+ present\\. Now .*");
        assertThat(desk.press("<Esc>", "K", "?", "<Esc>").said()).startsWith("At the desk. Hymn 208 ");
    }
}
