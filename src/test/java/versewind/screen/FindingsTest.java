package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import versewind.plan.Plan;
import versewind.plan.Silenced;
import versewind.plan.VersePlace;
import versewind.rules.Advice;
import versewind.rules.ChangeRule;
import versewind.rules.Finding;
import versewind.rules.Severity;
import versewind.screen.plan.FindingsScreen;
import versewind.screen.plan.PlanScreen;
import versewind.screen.state.State;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.ListBox;

/** Reading what a colleague would say, mending it and silencing it. */
class FindingsTest {

    private static FindingsScreen panel(Desk desk) {
        return (FindingsScreen) desk.state().top();
    }

    private static Finding marked(Desk desk) {
        return mended(desk, panel(desk).list().current().orElseThrow());
    }

    /** A finding of the list with its mend. */
    private static Finding mended(Desk desk, Finding finding) {
        OptionalInt people = panel(desk).people();
        Plan before = people.isPresent() ? desk.plan().withPeople(people.getAsInt()) : desk.plan();
        return Advice.on(desk.work().sound()).mended(before, finding);
    }

    /** The wedding, its first verse without 4 ft in the hands. */
    private static Desk withGap() {
        return Desk.with("ash-wednesday", plan -> plan)
                .press("n", "0", "/", "'stopped'", "<Enter>", " ", "/", "'fifteenth'", "<Enter>", " ");
    }

    @Test
    void the_findings_open_at_the_verse_where_we_are() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("]", "]", "]", "f");

        assertThat(marked(desk).place().hymn()).isEqualTo(3);
    }

    @Test
    void enter_goes_to_the_place() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("f", "<Down>");
        VersePlace place = marked(desk).place();
        desk.press("<Enter>");

        assertThat(desk.work().place()).isEqualTo(place);
        assertThat(desk.state().top()).isInstanceOf(PlanScreen.class);
    }

    @Test
    void a_finding_is_mended_and_the_mend_undone() {
        Desk desk = withGap();
        Plan before = desk.plan();
        desk.press("f");
        assertThat(marked(desk).sentence()).isEqualTo("The hands have 2 ft over 8 ft without 4 ft between them.");
        desk.press("F");

        assertThat(desk.said()).isEqualTo("Done: Draw Manual: Principal 4. u to undo.");
        assertThat(desk.drawn()).contains("Manual: Principal 4");
        assertThat(panel(desk).list().rows())
                .noneMatch(finding -> finding.sentence().contains("without 4 ft"));
        desk.press("<Esc>", "u");
        assertThat(desk.plan()).isEqualTo(before);
    }

    @Test
    void a_finding_is_silenced_with_a_note_and_heard_again() {
        Desk desk = withGap().press("f", "x", "'for the children'", "<Enter>");

        assertThat(desk.verse().silenced()).containsExactly(new Silenced("gap", "for the children"));
        assertThat(panel(desk).list().rows()).anyMatch(Finding::isSilenced);
        assertThat(desk.effects()).anyMatch(wanted -> wanted.is("keepDraft"));
        while (!marked(desk).isSilenced()) {
            desk.press("<Down>");
        }
        desk.press("x");
        assertThat(desk.verse().silenced()).isEmpty();
    }

    @Test
    void silencing_is_undone_like_any_change() {
        Desk desk = withGap();
        Plan before = desk.plan();
        desk.press("f", "x", "<Enter>", "<Esc>", "u");

        assertThat(desk.plan()).isEqualTo(before);
    }

    @Test
    void a_note_that_is_not_kept_leads_back_to_the_findings() {
        Desk desk = withGap().press("f", "x", "'no'", "<Esc>");

        assertThat(desk.state().top()).isInstanceOf(FindingsScreen.class);
        assertThat(desk.verse().silenced()).isEmpty();
    }

    @Test
    void the_mend_of_a_long_finding_is_seen_on_every_screen() {
        State open = Desk.with("harvest-festival", 60, 18).state();
        Finding mended = Advice.on(Desk.with("harvest-festival", 60, 18).work().sound())
                .findings(open.work().orElseThrow().plan())
                .stream()
                .filter(found -> found.mend().isPresent())
                .findFirst()
                .orElseThrow();
        Finding finding = new Finding(
                Severity.CAUTION,
                ChangeRule.TOO_MANY_MOVES,
                mended.place(),
                List.of(),
                "Many movements, " + "Great: Open Diapason 8, ".repeat(20) + "all of them.",
                mended.mend(),
                Optional.empty());
        FindingsScreen panel =
                new FindingsScreen(ListBox.of(List.of(finding)), OptionalInt.empty(), FindingsScreen.Shown.PLAN);

        for (int rows : List.of(18, 24, 40)) {
            Frame frame = View.paint(open.sized(80, rows).open(panel));
            assertThat(IntStream.range(0, rows).mapToObj(frame::row))
                    .anyMatch(row -> row.contains(
                            "Fix: " + mended.mend().orElseThrow().words().substring(0, 20)));
        }
    }

    @Test
    void where_nothing_is_found_there_is_nothing_to_say() {
        Desk desk = Desk.with("ash-wednesday", 80, 24).press("f", "F");

        assertThat(desk.said()).isEqualTo("No remarks.");
        assertThat(desk.screen()).contains("No remarks.");
    }

    @Test
    void what_no_single_change_mends_is_told_so() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("a", "'3000'", "<Enter>");
        int rows = panel(desk).list().rows().size();
        for (int row = 0; row < rows && marked(desk).mend().isPresent(); row++) {
            desk.press("<Down>");
        }
        desk.press("F");

        assertThat(desk.said()).isEqualTo("There is no single change that fixes it.");
    }

    @Test
    void the_weightiest_finding_and_the_touch_have_a_row_of_the_screen() {
        assertThat(Desk.with("ash-wednesday", 80, 24).screen()).contains("legato, the whole beat");
        assertThat(Desk.with("harvest-festival", 120, 40).press("n", "0").screen())
                .contains(" beat │ caution: Nothing is drawn");
    }

    @Test
    void a_long_finding_is_told_to_its_end_before_the_touch_is() {
        assertThat(withGap().screen()).contains(" caution: The hands have 2 ft over 8 ft without 4 ft between them.");
        assertThat(Desk.with("harvest-festival", 80, 24).press("n", "0").screen())
                .contains(" caution: Nothing is drawn that sounds: the people sing without a lead.\n");
    }

    @Test
    void a_small_screen_has_a_row_for_them_where_one_is_blank() {
        assertThat(Desk.with("ash-wednesday", 80, 23).screen()).contains("legato");
        assertThat(Desk.with("easter-cathedral", 80, 23).screen()).doesNotContain("legato");
    }

    @Test
    void a_finding_is_said_to_its_end_where_rows_are_blank() {
        Desk desk = Desk.with("ash-wednesday", 60, 24).press("n", "0");
        assertThat(desk.screen().lines().limit(24).map(String::strip).collect(Collectors.joining(" ")))
                .contains("caution: Nothing is drawn that sounds: the people sing without a lead.");
    }

    @Test
    void the_weightiest_finding_comes_first_and_fixing_goes_on_to_the_next_that_has_a_fix() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("a", "'3000'", "<Enter>");
        assertThat(panel(desk).list().rows()).extracting(Finding::severity).isSorted();
        Plan before = desk.plan();
        for (int i = 0; i < 5; i++) {
            desk.press("F");
            boolean isFixable = panel(desk).list().rows().stream()
                    .anyMatch(finding -> mended(desk, finding).mend().isPresent());
            assertThat(marked(desk).mend().isPresent()).isEqualTo(isFixable);
        }
        assertThat(desk.plan()).isNotEqualTo(before);
    }

    @Test
    void what_fails_if_fewer_come_is_found_and_mended_before_them() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("a", "'8'", "<Enter>");

        assertThat(desk.screen()).contains("Findings, if 8 come", "overpowers gentle singing");
        while (!marked(desk).sentence().contains("overpowers")) {
            desk.press("<Down>");
        }
        assertThat(marked(desk).mend().orElseThrow().words()).isEqualTo("Close the box of the Swell to half.");
        int before = panel(desk).list().rows().size();
        desk.press("F");
        assertThat(panel(desk).list().rows()).hasSizeLessThan(before);
        assertThat(desk.screen()).contains("Findings, if 8 come");
        assertThat(desk.plan().heading().people()).isEqualTo(480);
    }

    @Test
    void a_hymn_in_which_nothing_is_drawn_yet_is_told_that_and_no_more() {
        Desk desk = Desk.blank().press("I", "<Tab>", "'Fields of barley'", "<Enter>", "f");

        assertThat(panel(desk).list().rows())
                .extracting(Finding::sentence)
                .containsOnly("Nothing is drawn that sounds: the people sing without a lead.");
    }

    @Test
    void nobody_is_no_number_to_look_before() {
        assertThat(Desk.with("harvest-festival", 80, 24)
                        .press("a", "'0'", "<Enter>")
                        .screen())
                .contains("1 to 50000");
    }
}
