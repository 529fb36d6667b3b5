package versewind.screen.library;

import static org.assertj.core.api.Assertions.as;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;
import versewind.Shipped;
import versewind.organ.Counterparts;
import versewind.screen.Desk;
import versewind.screen.Wanted;
import versewind.screen.plan.FileEvent;
import versewind.screen.plan.PlanScreen;
import versewind.screen.state.Chooser;
import versewind.screen.state.Effect;
import versewind.screen.state.Event;
import versewind.screen.toolkit.Key;
import versewind.store.OpenPlan;

class LibraryStateTest {

    private final Desk desk = Desk.empty(80, 24);

    private static final LibraryEvent.ListedPlan LENT = Desk.listed("lent", "Lent", "2027-02-21");
    private static final LibraryEvent.ListedPlan ADVENT = Desk.listed("advent", "Advent", "2026-11-29");
    private static final LibraryEvent.ListedPlan UNDATED = Desk.listed("undated", "Épiphanie", "");

    private List<String> rows() {
        return ((LibraryScreen) desk.state().top()).library().list().rows();
    }

    private void more(LibraryEvent.ListedPlan... plans) {
        desk.answer(new LibraryEvent.PlansListed(List.of(plans), 3, LibraryEvent.PlansListed.Part.MORE));
    }

    @Test
    void plans_come_the_latest_first_in_whatever_order_they_are_read() {
        desk.answer(new Event.Press(Key.of('o')))
                .answer(new LibraryEvent.PlansListed(List.of(UNDATED), 3, LibraryEvent.PlansListed.Part.FIRST));
        more(ADVENT);
        more(LENT);

        assertThat(rows()).containsExactly("lent", "advent", "undated");
    }

    @Test
    void of_two_services_alike_the_organ_is_seen() {
        LibraryEvent.ListedPlan other =
                LibraryEvent.ListedPlan.of("lent-2", "Lent", LENT.date(), "ambrelow", LENT.edited(), LENT.condition());
        desk.library(LENT, other, ADVENT);
        assertThat(desk.screen()).contains("Lent, st-tethwin", "Lent, ambrelow").doesNotContain("Advent, ");
    }

    @Test
    void the_marked_plan_stays_marked_when_more_are_read() {
        desk.press("o")
                .answer(new LibraryEvent.PlansListed(List.of(UNDATED, ADVENT), 3, LibraryEvent.PlansListed.Part.FIRST));
        desk.press("<Down>", "<Up>");
        more(LENT);
        desk.effects();

        assertThat(desk.press("<Enter>").effects()).containsExactly(Wanted.of("openPlan", "advent"));
    }

    @Test
    void while_plans_are_read_it_is_said_how_many_there_are() {
        assertThat(desk.press("o").screen()).contains("Reading the plans.");
        desk.answer(new LibraryEvent.PlansListed(List.of(ADVENT), 3, LibraryEvent.PlansListed.Part.FIRST));

        assertThat(desk.frame().row(0)).endsWith("1 of 3 plans read");
        assertThat(desk.press("'x'").screen()).contains("Nothing read so far matches the filter.");
    }

    @Test
    void a_plan_is_found_by_its_date_in_words_and_without_its_accents() {
        desk.library(LENT, ADVENT, UNDATED);

        assertThat(desk.press("'nov 2026'").frame().row(3)).contains("Advent");
        desk.press("<Esc>", "'epi'");
        assertThat(rows()).containsExactly("undated");
    }

    @Test
    void a_plan_is_found_by_what_stands_in_it_as_long_as_that_is_typed() {
        desk.library(LENT, ADVENT).effects();
        assertThat(desk.press("'corvening'").effects()).contains(Wanted.of("searchPlans", "corvening"));
        assertThat(rows()).isEmpty();
        desk.answer(new LibraryEvent.PlansFound("corven", Map.of("lent", "CORVENING")));
        assertThat(rows()).isEmpty();
        desk.answer(new LibraryEvent.PlansFound("corvening", Map.of("lent", "CORVENING")));

        assertThat(rows()).containsExactly("lent");
        assertThat(desk.screen()).contains("file lent, organ st-tethwin; has CORVENING");
        assertThat(desk.press("'x'").screen()).doesNotContain("has CORVENING");
    }

    @Test
    void a_plan_that_is_called_so_comes_before_one_that_only_has_it_in_a_hymn() {
        desk.library(LENT, ADVENT);
        assertThat(rows()).containsExactly("lent", "advent");
        desk.press("'advent'").answer(new LibraryEvent.PlansFound("advent", Map.of("lent", "ADVENT SONG")));

        assertThat(rows()).containsExactly("advent", "lent");
    }

    @Test
    void a_service_is_played_on_another_organ_and_told_what_is_missing_and_what_to_set_first() {
        desk.library(LENT, ADVENT)
                .press("^T")
                .answer(new LibraryEvent.InstrumentsListed(List.of(
                        new Chooser.Row("st-tethwin", "St Tethwin", ""),
                        new Chooser.Row("little-corvening", "All Hallows", ""))));
        assertThat(desk.screen())
                .contains("Play \"Lent\" on which organ?", "All Hallows")
                .doesNotContain("St Tethwin");
        desk.effects();
        assertThat(desk.press("<Enter>").effects()).contains(Wanted.of("movePlan", "lent", "little-corvening"));

        Desk moved = Desk.with("harvest-festival", 80, 24)
                .answer(new LibraryEvent.ServiceMoved(List.of(
                        new Counterparts.Replacement("Great: Trumpet 8", Optional.of("Swell: Cornopean 8")),
                        new Counterparts.Replacement("Pedal: Trombone 16", Optional.empty()))));
        assertThat(moved.characters().lines().filter(line -> line.contains("no equivalent")))
                .singleElement(as(InstanceOfAssertFactories.STRING))
                .contains("Pedal: Trombone 16");
        assertThat(moved.characters()).containsPattern("Set first: Great.* verses");
        assertThat(moved.characters().replaceAll("\\s+", " "))
                .as("the marked row stands whole under the list")
                .containsPattern("Set first: [^\u2026]*couplers: [^\u2026]*, \\d verses");
        Desk silent = Desk.blank().press("I", "<Tab>", "'A hymn'", "<Enter>");
        assertThat(silent.answer(new LibraryEvent.ServiceMoved(List.of())).characters())
                .doesNotContain("Set first");
        assertThat(moved.characters().indexOf("Trombone"))
                .isLessThan(moved.characters().indexOf("Cornopean 8"));
    }

    @Test
    void only_of_plans_that_are_seen_it_is_asked_how_they_stand_and_once() {
        LibraryEvent.ListedPlan[] many = IntStream.range(0, 100)
                .mapToObj(i -> Desk.listed("plan-" + i, "Plan", "2026-01-01"))
                .toArray(LibraryEvent.ListedPlan[]::new);
        desk.library(many);

        assertThat((List<?>) desk.effects().get(0).argument(0, List.class)).hasSize(18);
        assertThat(desk.press("<Down>").effects()).isEmpty();
        assertThat(desk.press("<PageDown>").effects()).hasSize(1);
    }

    @Test
    void the_state_of_a_plan_is_shown_as_soon_as_it_is_known() {
        desk.library(LENT, ADVENT, UNDATED)
                .answer(new LibraryEvent.PlanAssessed("lent", 9, 0, 0, ""))
                .answer(new LibraryEvent.PlanAssessed("advent", 9, 2, 1, ""))
                .answer(new LibraryEvent.PlanAssessed(
                        "undated", 0, 0, 0, "plans/undated.json, line 3: it ends. Mend it."));

        assertThat(desk.frame().row(3)).contains("ready");
        assertThat(desk.frame().row(4)).contains("2 verses need attention");
        assertThat(desk.frame().row(5)).contains("cannot be read");
        assertThat(desk.press("<Down>", "<Down>").frame().row(21)).contains("line 3: it ends. Mend it.");
    }

    @Test
    void a_plan_with_a_caution_is_not_said_to_be_all_well() {
        desk.library(LENT, ADVENT, UNDATED).answer(new LibraryEvent.PlanAssessed("lent", 9, 0, 1, ""));

        assertThat(desk.frame().row(3)).contains("1 caution").doesNotContain("well");
    }

    @Test
    void a_plan_goes_to_the_bin_and_its_neighbour_is_marked() {
        desk.library(LENT, ADVENT, UNDATED).press("<Down>").effects();

        assertThat(desk.press("^X").effects()).containsExactly(Wanted.of("binPlan", "advent"));
        desk.answer(new LibraryEvent.LibraryChanged("Moved.", Optional.empty()))
                .answer(new LibraryEvent.PlansListed(List.of(LENT, UNDATED), 2, LibraryEvent.PlansListed.Part.FIRST));
        assertThat(desk.said()).isEqualTo("Moved.");
        assertThat(desk.effects()).startsWith(Wanted.of("listPlans"));
        assertThat(desk.press("<Enter>").effects()).containsExactly(Wanted.of("openPlan", "undated"));
        assertThat(Desk.empty(80, 24).library(LENT).press("^Z").effects()).contains(Wanted.of("bringBack"));
    }

    @Test
    void a_plan_is_renamed_and_we_are_back_in_the_library_where_we_were() {
        desk.library(LENT, ADVENT, UNDATED).press("'adv'").effects();
        desk.press("^R", "^U", "'Advent Carols'", "<Enter>");

        assertThat(desk.effects()).containsExactly(Wanted.of("renamePlan", "advent", "Advent Carols"));
        assertThat(rows()).containsExactly("advent");
        assertThat(desk.press("^R", "<Esc>").state().top()).isInstanceOf(LibraryScreen.class);
    }

    @Test
    void the_plan_that_is_open_is_neither_renamed_nor_moved() {
        Desk open = Desk.with("harvest-festival", 80, 24).library(Desk.listed("a-plan", "Harvest", "2026-10-04"));
        open.effects();

        assertThat(open.press("^X").said()).startsWith("This plan is open.");
        assertThat(open.press("^R").said()).startsWith("This plan is open.");
        assertThat(open.effects()).isEmpty();
    }

    @Test
    void organs_are_looked_through_on_the_other_side_and_a_new_plan_is_made_for_one() {
        desk.library(LENT).press("<Tab>").effects();
        desk.answer(new LibraryEvent.InstrumentsListed(List.of(
                new Chooser.Row("st-tethwin", "St Tethwin", "Averstoke"),
                new Chooser.Row("little-corvening", "All Hallows", "Little Corvening"))));
        desk.press("'hallows'", "<Enter>");

        assertThat(desk.effects()).containsExactly(Wanted.of("beginPlan", "little-corvening"));
    }

    @Test
    void escape_takes_away_what_was_typed_and_then_leads_back_to_the_plan() {
        Desk open = Desk.with("harvest-festival", 80, 24).library(LENT).press("'x'", "<Esc>");
        assertThat(open.state().top()).isInstanceOf(LibraryScreen.class);
        assertThat(open.press("<Esc>").state().top()).isInstanceOf(PlanScreen.class);
    }

    @Test
    void plans_that_are_read_after_the_library_was_closed_do_not_open_it_again() {
        Desk open = Desk.with("harvest-festival", 80, 24).press("o", "<Esc>");
        open.answer(new LibraryEvent.PlansListed(List.of(LENT), 1, LibraryEvent.PlansListed.Part.FIRST));
        assertThat(open.state().top()).isInstanceOf(PlanScreen.class);
    }

    @Test
    void a_plan_is_saved_under_another_title_and_work_goes_on_there() {
        Desk open = Desk.with("harvest-festival", 80, 24).press("w", "^U", "'Harvest at noon'", "<Enter>");

        assertThat(open.plan().heading().title()).isEqualTo("Harvest at noon");
        assertThat(open.effects()).containsExactly(Wanted.of("saveUnder", open.plan()));
        open.answer(new FileEvent.SavedUnder("harvest-at-noon", open.plan()));
        assertThat(open.work().id()).isEqualTo("harvest-at-noon");
        assertThat(open.state().isUnsaved()).isFalse();
    }

    @Test
    void a_small_window_shows_the_library_as_far_as_it_goes() {
        assertThat(Desk.empty(60, 18).library(LENT, ADVENT).screen())
                .contains("Advent")
                .doesNotContain("edited");
        assertThat(Desk.empty(40, 10).library(LENT, ADVENT).screen()).contains("Versewind needs 60 columns");
    }

    @Test
    void a_hymn_is_brought_over_and_what_was_replaced_is_told() {
        OpenPlan easter = Shipped.plan("easter-cathedral");
        Desk open = Desk.with("ash-wednesday", 80, 24);
        int hymns = open.plan().hymns().size();
        open.press("b")
                .answer(new LibraryEvent.PlansListed(
                        List.of(Desk.listed("easter-cathedral", "Easter", "2027-03-28")),
                        1,
                        LibraryEvent.PlansListed.Part.FIRST));
        open.effects();
        assertThat(open.press("<Enter>").effects()).containsExactly(Wanted.of("readHymns", "easter-cathedral"));
        open.answer(new LibraryEvent.HymnsRead(
                "easter-cathedral", "Easter", List.of(new Chooser.Row("0", "100 A hymn", "TUNE"))));
        assertThat(open.press("<Enter>").effects())
                .containsExactly(Wanted.of("bringHymn", "easter-cathedral", 0, Effect.Bringing.NEW_HYMN));
        open.answer(new LibraryEvent.HymnBrought(
                easter.plan().hymns().get(0), easter.instrument(), Effect.Bringing.NEW_HYMN));

        assertThat(open.plan().hymns()).hasSize(hymns + 1);
        assertThat(open.plan().fits(open.work().instrument())).isTrue();
        assertThat(open.hymn().title()).isEqualTo(easter.plan().hymns().get(0).title());
        assertThat(open.screen()).contains("Replaced on this organ", "no equivalent on this organ");
        assertThat(open.press("<Esc>", "u").plan().hymns()).hasSize(hymns);
    }

    @Test
    void on_the_same_organ_a_hymn_comes_over_unchanged_and_nothing_is_asked() {
        OpenPlan harvest = Shipped.plan("harvest-festival");
        Desk open = Desk.with("harvest-festival", 80, 24);
        open.answer(new LibraryEvent.HymnBrought(
                harvest.plan().hymns().get(2), harvest.instrument(), Effect.Bringing.NEW_HYMN));

        assertThat(open.hymn()).isEqualTo(harvest.plan().hymns().get(2));
        assertThat(open.state().top()).isInstanceOf(PlanScreen.class);
    }
}
