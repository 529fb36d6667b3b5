package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.calibration.HeardRegistration;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.screen.desk.DeskScreen;
import versewind.screen.desk.FeedbackScreen;
import versewind.screen.plan.PlanScreen;
import versewind.screen.state.Event;
import versewind.screen.state.KeyTable;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Key;

class AtDeskTest {

    private static Desk harvest() {
        return Desk.with("harvest-festival", 80, 24);
    }

    private static String screen(Desk desk) {
        Frame frame = desk.frame();
        return String.join(
                "\n", IntStream.range(0, frame.height()).mapToObj(frame::row).toList());
    }

    private static VersePlace place(Desk desk) {
        return desk.work().place();
    }

    @ParameterizedTest
    @ValueSource(strings = {" ", "<Enter>", "<PageDown>", "<Down>", "<Right>"})
    void every_key_of_a_page_turning_pedal_goes_on(String key) {
        assertThat(place(harvest().press("K", key))).isEqualTo(new VersePlace(0, 1));
    }

    @Test
    void what_is_drawn_and_not_heard_in_a_verse_is_said_apart() {
        Desk desk = harvest()
                .press("n", "h", "/", "'swell to great'", "<Enter>", " ", "e", "<Tab>", "<Tab>", "<Tab>")
                .press("<Backspace>", "<Enter>");
        assertThat(screen(desk)).contains("Coup. \u22121  not heard here: Swell +2\n Pedal +2");
        assertThat(screen(desk.press("K")))
                .contains("draw Great Twelfth 2 2/3, Mixture III\n")
                .contains("draw, not heard here: Swell Mixture III, Cornopean 8;")
                .contains("Swell, box open, not heard here: ");
    }

    @Test
    void on_a_small_screen_the_row_of_a_note_that_there_is_not_is_for_what_is_drawn() {
        Desk desk = Desk.with("ordinary-sunday", 60, 18).press("n", "n", "n", "g", "K");
        assertThat(screen(desk))
                .contains("V3 congregation of 140, gently; four parts on Great")
                .contains("            Couplers: Swell to Great, Great to Pedal\n");
    }

    @Test
    void a_piston_that_holds_something_else_by_now_is_not_to_be_pressed() {
        Desk desk = harvest().press("n", "K");
        assertThat(screen(desk)).contains("Now        piston G4").doesNotContain("holds something else");
        desk = harvest().press("/", "'great: mixture'", "<Enter>", " ", "n", "n", "n", "K");
        assertThat(screen(desk))
                .contains("Now        Piston G3 holds something else since Intro.")
                .contains("put in")
                .doesNotContain("piston G3");
        desk = harvest().press("/", "'great: mixture'", "<Enter>", " ", "n", "n", "K");
        assertThat(screen(desk)).contains("Piston G3 holds something else since Intro.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"<Backspace>", "<PageUp>", "<Up>", "<Left>"})
    void others_go_back(String key) {
        assertThat(place(harvest().press("n", "n", "K", key))).isEqualTo(new VersePlace(0, 1));
    }

    @Test
    void turning_passes_from_hymn_to_hymn_and_stops_at_the_first_verse() {
        Desk desk = harvest().press("]", "K", "<Backspace>");
        assertThat(place(desk)).isEqualTo(new VersePlace(0, 6));
        assertThat(place(desk.press(" "))).isEqualTo(new VersePlace(1, 0));

        desk = harvest().press("K", "<Backspace>");
        assertThat(place(desk)).isEqualTo(VersePlace.START);
        assertThat(desk.said()).isEqualTo("This is the start of the service.");
    }

    @Test
    void after_the_last_verse_it_is_asked_how_it_was() {
        Desk desk = harvest().press("]", "]", "]", "]", "K");
        IntStream.range(0, 30).forEach(i -> desk.press("<PageDown>"));
        assertThat(desk.state().top()).isInstanceOf(FeedbackScreen.class);
        assertThat(desk.work().history().isUnsaved()).isFalse();
    }

    @Test
    void no_key_that_changes_the_plan_elsewhere_changes_it_here() {
        Desk desk = harvest().press("K");
        Plan before = desk.plan();
        for (KeyTable.Row<?> row : new PlanScreen().keys().rows()) {
            for (Key key : row.keys()) {
                Where here = new Where(desk);
                if (!here.leaves(key)) {
                    desk.answer(new Event.Press(key));
                }
            }
        }
        desk.answer(new Event.Paste("xx"));
        assertThat(desk.plan()).isSameAs(before);
        assertThat(desk.effects()).noneMatch(effect -> effect.is("save") || effect.is("keepDraft"));
    }

    /** Whether a key closes what is open, which would put the next one elsewhere, or answers. */
    private record Where(Desk desk) {
        boolean leaves(Key key) {
            List<Key> leaving = Key.all("Esc, q, y, Ctrl-C, ?, F1, :");
            return leaving.contains(key) && desk.state().top() instanceof DeskScreen;
        }
    }

    @Test
    void escape_comes_back_to_the_editor_at_the_verse_that_was_played() {
        Desk desk = harvest().press("K", " ", " ", "<Esc>");
        assertThat(desk.state().top()).isEqualTo(new PlanScreen());
        assertThat(place(desk)).isEqualTo(new VersePlace(0, 2));
    }

    @Test
    void from_its_own_command_it_is_left_by_the_same_key_twice() {
        Desk desk = harvest().alone().press("q");
        assertThat(desk.effects()).noneMatch(wanted -> wanted.is("quit"));
        assertThat(desk.said()).isEqualTo("Press Esc or q again to leave; any other key stays.");
        desk.press(" ", "q");
        assertThat(desk.effects()).noneMatch(wanted -> wanted.is("quit"));
        desk.press("<Esc>");
        assertThat(desk.effects()).contains(Wanted.of("quit"));
    }

    @Test
    void the_number_present_changes_what_is_shown_and_nothing_that_is_kept() {
        Desk desk = harvest().press("n", "K");
        String before = screen(desk);
        desk.press("-", "-", "-", "-", "-");
        assertThat(screen(desk)).contains("250 present (480 planned)", "congregation of 250");
        assertThat(desk.plan().heading().people()).isEqualTo(480);
        assertThat(screen(desk.press("+", "+", "+", "+", "+"))).isEqualTo(before);
    }

    @Test
    void the_ladder_is_asked_for_here_and_for_the_next_verse_and_shown_once_it_is_found() {
        Desk desk = harvest().press("n", "n", "K");
        assertThat(screen(desk)).contains("< louder   \u2026", "> softer   \u2026");
        assertThat(desk.press("<").said()).isEqualTo("Still working out what to draw. Press again.");
        desk.climb();
        assertThat(screen(desk.press(" ", "<Backspace>")))
                .containsPattern("< louder   \\+ [A-Z].*")
                .containsPattern("> softer   [A-Z].*");
        assertThat(screen(desk.press(" "))).doesNotContain("< louder   \u2026");
    }

    @Test
    void a_ladder_for_another_number_of_people_is_not_shown() {
        Desk desk = harvest().press("n", "K").climb().press("-");
        assertThat(screen(desk)).contains("< louder   \u2026");
        assertThat(screen(desk.climb())).doesNotContain("< louder   \u2026");
    }

    @Test
    void a_step_stronger_is_what_is_drawn_from_then_on_and_a_step_softer_takes_it_back() {
        Desk desk = harvest().press("n", "n", "K").climb();
        String before = screen(desk);
        desk.press("<");
        assertThat(screen(desk)).contains("1 step louder").contains("draw Swell Fagotto 16");
        assertThat(desk.verse()).isEqualTo(harvest().press("n", "n").verse());
        assertThat(screen(desk.press(">"))).isEqualTo(before);
    }

    @Test
    void the_moves_to_the_next_verse_start_from_what_is_drawn_now() {
        Desk desk = Desk.with("advent-candlelight", 80, 24).press("K").climb();
        while (!screen(desk).contains("Now        No changes.")) {
            desk.press(" ").climb();
        }
        desk.press("<Backspace>").climb().press("<", " ");
        assertThat(screen(desk)).containsPattern("Now        put in [A-Z]");
    }

    /** The harvest with its second and third verse unaccompanied, in which the plan holds other stops. */
    private static Desk unaccompaniedTwice() {
        return harvest().press("n", "n", "8", "n", "8", "n", "n", "p", "p");
    }

    @Test
    void where_nobody_plays_that_is_drawn_which_was_before_and_the_next_verse_is_set_once() {
        Desk desk = unaccompaniedTwice();
        assertThat(screen(desk)).contains("Next, Inter, no changes.");
        desk.press("/", "'great: trumpet'", "<Enter>", " ", "n", "/", "'great: bourdon'", "<Enter>", " ", "p", "K");
        String there = screen(desk);
        assertThat(there)
                .contains("Now        Nobody plays: set the next verse now.")
                .contains("Next       Inter")
                .contains("draw Great Bourdon 16");
        String drawn = there.substring(there.indexOf("Drawn"), there.indexOf("Next"));
        assertThat(drawn).contains("Mixture III").doesNotContain("Great: Bourdon", "Trumpet", "not heard here");
        String before = screen(desk.press("<Backspace>"));
        assertThat(before).contains("Now        Nobody plays.\n").contains("Next       V3 unaccompanied");
        assertThat(before.substring(before.indexOf("Drawn"), before.indexOf("Next")))
                .isEqualTo(drawn);
    }

    @Test
    void the_ladder_ends() {
        Desk desk = harvest().press("n", "n", "K").climb();
        int steps = 0;
        while (!desk.press(">").said().equals("There is no softer step.")) {
            steps++;
        }
        assertThat(steps).isGreaterThan(5);
        assertThat(screen(desk)).contains(steps + " steps softer");
    }

    @Test
    void answers_are_written_at_once_with_the_number_present_and_the_next_verse_is_asked() {
        Desk desk = harvest().alone().press("-", "y");
        Clerk clerk = Clerk.at(desk).serve().press("1", "2", "3");
        Plan written = clerk.written().orElseThrow();
        assertThat(written.hymns().get(0).verses().subList(0, 4))
                .extracting(verse -> verse.answer()
                        .map(answer -> answer.heard().word() + " " + answer.present())
                        .orElse("-"))
                .containsExactly("-", "too soft 450", "right 450", "too strong 450");
        assertThat(clerk.kept()).isEmpty();
        assertThat(desk.work().history().isUnsaved()).isFalse();
    }

    @Test
    void feedback_is_on_what_was_played_and_not_on_what_was_planned() {
        Desk desk = harvest().press("n", "n", "K").climb().press("<", "y", "<Down>");
        assertThat(screen(desk)).contains("as played, 1 step louder than planned");
        Plan written = Clerk.at(desk).serve().press("2").written().orElseThrow();
        Verse verse = written.hymns().get(0).verses().get(2);
        assertThat(verse.answer().orElseThrow().played()).hasValueSatisfying(played -> assertThat(
                        played.stops().minus(verse.registration().stops()).isEmpty())
                .isFalse());
        assertThat(HeardRegistration.of(written).get(0).registration())
                .isEqualTo(verse.answer().orElseThrow().played().orElseThrow());
    }

    @Test
    void a_hymn_without_a_number_is_asked_about_by_its_title() {
        Desk desk = Desk.with(
                "harvest-festival",
                plan -> plan.withHymn(0, Desk.unnumbered(plan.hymns().get(0))));
        assertThat(screen(desk.press("K", "y")))
                .containsPattern("Come, carry in.* V1 ")
                .contains("  V2 ");
        assertThat(screen(desk)).contains(" 211 ");
    }

    @Test
    void an_answer_can_be_taken_back() {
        Desk desk = harvest().press("K", "y");
        Clerk clerk = Clerk.at(desk).serve().press("1", "<Up>", "x");
        assertThat(clerk.written()).contains(harvest().plan());
    }

    @Test
    void with_other_changes_unsaved_answers_are_kept_with_them_and_nothing_is_written() {
        Desk desk = harvest();
        Clerk clerk = Clerk.at(desk).press(" ", "K", "y", "2");
        assertThat(clerk.written()).isEmpty();
        assertThat(clerk.kept()).contains(desk.plan());
        assertThat(desk.said()).isEqualTo("Kept with the plan's other unsaved changes; press s in the plan to save.");
    }

    @Test
    void a_full_disk_loses_no_answer() {
        Desk desk = harvest().alone();
        Clerk clerk =
                Clerk.at(desk).serve().press("y").saving(Clerk.Saving.DISK_FULL).press("1");
        assertThat(desk.said()).contains("The disk is full");
        clerk.press("<Esc>", "<Esc>", "q");
        assertThat(desk.question()).isEqualTo("This plan has unsaved changes.");
        clerk.saving(Clerk.Saving.WRITTEN).press("s");
        assertThat(clerk.written()).contains(desk.plan());
        assertThat(clerk.hasLeft()).isTrue();
    }

    @Test
    void a_dropped_line_keeps_what_could_not_be_written() {
        Desk desk = harvest().alone();
        Clerk clerk =
                Clerk.at(desk).serve().press("y").saving(Clerk.Saving.DISK_FULL).press("1");
        desk.answer(new Event.Hangup());
        clerk.serve();
        assertThat(clerk.kept()).contains(desk.plan());
        assertThat(clerk.hasLeft()).isTrue();
    }

    @Test
    void unsaved_work_that_was_found_is_asked_about_before_the_desk() {
        Desk desk = Desk.withDraft(
                        "harvest-festival", plan -> plan.withHymns(plan.hymns().subList(1, 2)))
                .alone();
        assertThat(desk.question()).isNotEmpty();
        desk.press(" ", "<Enter>");
        assertThat(desk.state().top()).isInstanceOf(DeskScreen.class);
        assertThat(screen(desk)).contains("1 of 5");
    }

    @Test
    void a_plan_without_verses_has_no_desk() {
        assertThat(Desk.blank().press("K").said()).isEqualTo("There is no verse to play yet.");
        Desk alone = Desk.blank().alone().press(" ", "<", "+", "y");
        assertThat(screen(alone)).contains("This plan has no verse to play yet.");
    }

    @Test
    void where_there_are_rows_enough_everything_lies_in_the_same_ones_for_every_verse() {
        Desk desk = Desk.with("easter-cathedral", 200, 60).press("K").climb();
        List<Integer> first = rows(desk);
        for (int i = 0; i < 28; i++) {
            assertThat(rows(desk.press(" ").climb())).isEqualTo(first);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"easter-cathedral", "harvest-festival", "wedding"})
    void on_a_low_screen_nothing_is_left_out_while_a_row_is_blank(String plan) {
        Desk desk = Desk.with(plan, 80, 24).press("K").climb();
        for (int i = 0; i < 19; i++) {
            List<String> blocks = screen(desk).lines().skip(9).toList();
            if (blocks.stream().anyMatch(row -> row.matches(".*\u2026\\d+ more.*"))) {
                assertThat(blocks).noneMatch(String::isBlank);
            }
            desk.press(" ").climb();
        }
    }

    private static List<Integer> rows(Desk desk) {
        List<String> rows = screen(desk).lines().toList();
        return IntStream.range(0, rows.size())
                .filter(i -> rows.get(i).matches(" (Now|Drawn|Next|< louder|> softer) .*"))
                .boxed()
                .toList();
    }
}
