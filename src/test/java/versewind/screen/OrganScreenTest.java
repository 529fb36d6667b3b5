package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.Shipped;
import versewind.calibration.Experience;
import versewind.organ.Action;
import versewind.organ.FormerNames;
import versewind.organ.Instrument;
import versewind.organ.Room;
import versewind.organ.StopName;
import versewind.schema.OrganDraft;
import versewind.schema.RowKind;
import versewind.screen.library.LibraryEvent;
import versewind.screen.library.LibraryScreen;
import versewind.screen.organ.OrganEvent;
import versewind.screen.organ.OrganScreen;
import versewind.screen.plan.PlanScreen;
import versewind.screen.state.Chooser;
import versewind.screen.state.Event;
import versewind.screen.toolkit.Letters;

/** An organ is changed by keys alone. */
class OrganScreenTest {

    private static Desk bench(String organ, int columns, int rows) {
        return Desk.empty(columns, rows)
                .answer(new OrganEvent.OrganOpened(
                        organ, Shipped.instrument(organ), Experience.NONE, "", Optional.empty()));
    }

    private static Desk bench() {
        return bench("st-tethwin", 80, 24);
    }

    private static OrganScreen on(Desk desk) {
        return desk.state().find(OrganScreen.class).orElseThrow();
    }

    private static OrganDraft draft(Desk desk) {
        return on(desk).draft().now();
    }

    private static Wanted last(List<Wanted> effects) {
        return effects.get(effects.size() - 1);
    }

    @ParameterizedTest
    @CsvSource({"st-tethwin, 80, 24", "ostmere-cathedral, 120, 40", "foundlings-chapel, 60, 18"})
    void its_rows_are_to_the_left_and_the_marked_one_is_in_full_to_the_right(String organ, int columns, int rows) {
        Desk desk = bench(organ, columns, rows).press("<Down>", "<Down>", "<Down>");

        String label = on(desk).line().label();
        assertThat(desk.screen().lines().limit(rows))
                .anySatisfy(row -> assertThat(row).matches(".*Stop\\s*"))
                .anySatisfy(row ->
                        assertThat(row).contains("Name      " + on(desk).line().name()))
                .anySatisfy(row -> assertThat(row).contains("Family"))
                .anySatisfy(row -> assertThat(row).contains("Enter edit  i add  s save"));
        assertThat(label).isNotBlank();
    }

    @Test
    void what_is_wrong_is_counted_marked_and_told_and_n_goes_there() {
        Desk desk = bench().press("<Down>", "<Down>", "<Down>", "d", "<Home>");

        assertThat(desk.screen())
                .contains(" 1 problem ", "Great has two stops called \"Open Diapason 8\"")
                .containsPattern("\n! +Open Diapason");
        assertThat(on(desk.press("n")).line().label()).isEqualTo("Open Diapason 8");
        assertThat(on(desk).list().marked()).isEqualTo(4);
    }

    @Test
    void what_is_wrong_is_told_while_a_row_is_typed() {
        Desk desk = bench().press("<Down>", "i", "'Mixture'", "<Tab>", "<Tab>", "'mix'");
        assertThat(desk.form().complaint()).isEqualTo("A mixture needs its number of ranks.");
        assertThat(desk.screen()).contains("Stop of Great", "A mixture needs its number of ranks.");
        desk.press("<Tab>", "<Tab>", "'iv'");
        assertThat(desk.form().complaint()).isEmpty();
        assertThat(desk.screen()).contains("Ranks: pipes a note; ");
    }

    @Test
    void a_stop_is_renamed_and_what_became_of_it_goes_with_the_organ() {
        Desk desk = bench().press("<Down>", "<Down>", "<Down>", "<Enter>", "^U", "'Montre'", "<Enter>", "s");

        Wanted save = last(desk.effects());
        Instrument next = save.argument(0, Instrument.class);
        assertThat(next.stop(new StopName("Great", "Montre 8"))).isPresent();
        assertThat(save.argument(1, FormerNames.class).stops())
                .containsOnlyKeys(new StopName("Great", "Open Diapason 8"));
        desk.answer(new OrganEvent.OrganSaved(next, "Saved.", List.of()));
        assertThat(on(desk).draft().isUnsaved()).isFalse();
    }

    @Test
    void after_saving_one_can_still_undo_and_save_again() {
        Desk desk = bench();
        Clerk clerk = Clerk.at(desk);
        clerk.press("<Down>", "<Down>", "<Down>", "<Enter>", "^U", "'Montre'", "<Enter>", "s", "u");
        assertThat(on(desk).draft().isUnsaved()).isTrue();
        desk.effects();
        desk.press("s");

        Wanted save = desk.effects().get(0);
        assertThat(save.argument(0, Instrument.class)).isEqualTo(Shipped.instrument("st-tethwin"));
        assertThat(save.argument(1, FormerNames.class).stops()).containsOnlyKeys(new StopName("Great", "Montre 8"));
    }

    @Test
    void what_is_broken_cannot_be_saved() {
        Desk desk = bench().press("<Down>", "x", "s");

        assertThat(desk.effects()).allMatch(wanted -> wanted.is("keepOrganDraft"));
        assertThat(desk.said()).isEqualTo("Not saved: 2 problems to fix first.");
        assertThat(on(desk).problems()).isNotEmpty();
        desk.press("u");
        assertThat(on(desk).problems()).isEmpty();
        assertThat(draft(desk).instrument()).contains(Shipped.instrument("st-tethwin"));
    }

    @Test
    void a_word_that_is_none_of_the_choices_is_refused_at_once_with_the_choices() {
        Desk desk = bench();
        while (on(desk).line().part() != RowKind.STOP) {
            desk.press("<Down>");
        }
        var before = draft(desk);
        desk.press("<Enter>", "<Tab>", "<Tab>");
        assertThat(desk.screen()).contains("Family: its tonal family: principal, flute, string, celeste, mutation,");
        desk.press("^U", "'diapason'", "<Enter>");
        assertThat(desk.form().complaint())
                .isEqualTo(
                        "Family: unknown value \"diapason\". Use principal, flute, string, celeste, mutation, mixture,"
                                + " cornet, chorus reed or solo reed.");
        assertThat(draft(desk.press("<Esc>"))).isEqualTo(before);
    }

    @Test
    void every_change_is_undone_and_done_again() {
        Desk desk = bench().press("<Down>", "<Down>");
        var first = draft(desk);
        desk.press(
                "d", ".", ",", "x", "x", "<Down>", ",", "I", "<Enter>", "'Echo'", "<Enter>", "I", "'coup'", "<Enter>",
                "<Tab>", "'ec'", "<Tab>");
        desk.press("'gr'", "<Enter>", "I", "'trem'", "<Enter>", "<Tab>", "'ec'", "<Enter>");
        var last = draft(desk);
        assertThat(last.lines()).anySatisfy(line -> assertThat(line.values()).contains("Echo to Great"));
        for (int i = 0; i < 12; i++) {
            desk.press("u");
        }
        assertThat(draft(desk)).isEqualTo(first);
        for (int i = 0; i < 12; i++) {
            desk.press("U");
        }
        assertThat(draft(desk)).isEqualTo(last);
    }

    @Test
    void the_name_of_a_stop_says_what_it_is() {
        Desk desk = bench().press("<Down>", "i", "'Viole de gambe'", "<Enter>");

        assertThat(on(desk).line().values()).startsWith("Viole de gambe", "8", "string");
        desk.press("T");
        assertThat(desk.question()).startsWith("Viole de gambe 8. ");
        desk.press("<Esc>");
        assertThat(desk.state().top()).isInstanceOf(OrganScreen.class);
    }

    @Test
    void in_a_plan_too_the_stop_under_the_cursor_is_told() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("n", "T");

        assertThat(desk.question()).isNotEmpty();
        desk.press("<Enter>");
        assertThat(desk.state().top()).isInstanceOf(PlanScreen.class);
    }

    @Test
    void the_help_goes_back_to_the_organ() {
        Desk desk = bench().press("d", "<Down>", "?", "<PageDown>", "<Esc>");
        assertThat(on(desk).line().label()).isEqualTo("Great");
        assertThat(desk.state().top()).isEqualTo(on(desk));
    }

    @Test
    void leaving_with_changes_asks_and_goes_back_to_the_organs() {
        Desk desk = bench();
        Clerk clerk = Clerk.at(desk);
        clerk.press("<Down>", "<Down>", "d", "x", "x", "q");
        assertThat(desk.question()).startsWith("This organ has unsaved changes.");
        clerk.press("x");
        assertThat(desk.state().find(OrganScreen.class)).isEmpty();
        assertThat(desk.state().top()).isInstanceOf(LibraryScreen.class);
        desk.answer(new LibraryEvent.InstrumentsListed(
                List.of(new Chooser.Row("another", "Another", ""), new Chooser.Row("st-tethwin", "St Tethwin", ""))));
        assertThat(desk.characters()).as("the organ that was open").contains("\u25b8St Tethwin");
    }

    @Test
    void an_organ_is_opened_from_the_library_over_a_plan_which_is_read_again_after_it_was_written() {
        Desk desk = Desk.with("ash-wednesday", 80, 24);
        Clerk clerk = Clerk.at(desk);
        clerk.press("o", "<Tab>", "^E", "<Down>", "<Down>", "<Enter>", "^U", "'Montre'", "<Enter>", "s");
        desk.effects();
        desk.press("q");
        assertThat(desk.effects()).containsExactly(Wanted.of("openPlan", "a-plan"));
    }

    @Test
    void work_that_was_kept_is_taken_up_or_forgotten() {
        OrganDraft changed = draft(bench().press("<Down>", "<Down>", "d"));
        Event opened = new OrganEvent.OrganOpened(
                "st-tethwin", Shipped.instrument("st-tethwin"), Experience.NONE, "", Optional.of(changed));

        Desk taken = Desk.empty(80, 24).answer(opened).press("<Enter>");
        assertThat(draft(taken)).isEqualTo(changed);
        assertThat(on(taken).draft().isUnsaved()).isTrue();
        Desk forgotten = Desk.empty(80, 24).answer(opened).press("x");
        assertThat(on(forgotten).draft().isUnsaved()).isFalse();
        assertThat(on(forgotten).draft().future()).isEmpty();
        assertThat(forgotten.effects()).containsExactly(Wanted.of("dropOrganDraft"));
    }

    @Test
    void every_change_is_kept_until_the_organ_is_saved_or_as_it_was() {
        Desk desk = bench().press("<Down>", "<Down>", "d");
        assertThat(desk.effects()).containsExactly(Wanted.of("keepOrganDraft", draft(desk)));
        desk.press("u");
        assertThat(desk.effects()).containsExactly(Wanted.of("dropOrganDraft"));
    }

    private static double volume(Desk desk) {
        return draft(desk).instrument().orElseThrow().room().volumeM3();
    }

    @Test
    void a_room_is_chosen_by_its_kind_size_and_sound() {
        Desk desk = bench();
        OrganDraft before = draft(desk);
        desk.press("G", "'chapel'", "<Enter>", "^U", "'22 x 9 x 8'", "<Tab>", "^U", "'carpet'");
        desk.press("<Tab>", "'a clap dies in 2 s'", "<Enter>");

        assertThat(volume(desk)).isEqualTo(1584);
        assertThat(draft(desk).instrument().orElseThrow().room().reverberation())
                .isInstanceOfSatisfying(
                        Room.MeasuredTimes.class,
                        times -> assertThat(times.octaveS().get(1000)).isEqualTo(1.9));
        assertThat(draft(desk.press("u"))).isEqualTo(before);
    }

    @Test
    void a_tracker_action_is_a_mechanical_one() {
        Desk desk = bench().press("<Enter>", "<Tab>", "<Tab>", "^U", "'tracker'", "<Enter>");
        assertThat(draft(desk).instrument().orElseThrow().action()).isEqualTo(Action.MECHANICAL);
    }

    @Test
    void the_room_that_there_is_stands_first_and_the_one_that_was_chosen_is_said() {
        Desk desk = bench();
        OrganDraft before = draft(desk);
        assertThat(desk.press("G").screen())
                .contains("\u25b8as it is", " cubic metres, ", "18 by 8 by 7 metres, 1.5 seconds");
        assertThat(draft(desk.press("<Enter>"))).isEqualTo(before);
        assertThat(desk.said()).isEqualTo("The room stays as it is.");
        assertThat(desk.press("G", "'parish'", "<Enter>", "<Enter>").said())
                .startsWith("Parish church, 30 by 14 by 10 metres. It is an estimate; ");
    }

    @ParameterizedTest
    @CsvSource({"2 x 2 x 2, pews, '', Size", "'', velvet, '', Furnished", "'', bare, 90, Clap"})
    void a_room_that_cannot_be_is_refused_with_its_field(String size, String furnishing, String clap, String field) {
        Desk desk = bench().press("G", "'chapel'", "<Enter>", "^U", "'" + size + "'", "<Tab>", "^U");
        desk.press("'" + furnishing + "'", "<Tab>", "'" + clap + "'", "<Enter>");

        assertThat(desk.form().complaint()).startsWith(field + ": ");
    }

    @Test
    void another_volume_asks_about_the_reverberation_that_no_longer_fits() {
        Desk desk = bench().press("G", "'figures'", "<Enter>", "^U", "'50000'", "<Enter>");
        Room room = Shipped.instrument("st-tethwin").room();
        assertThat(desk.question()).contains("% longer", "Change the reverberation times too?");
        Room.MeasuredTimes was = (Room.MeasuredTimes) room.reverberation();
        Room.MeasuredTimes kept = (Room.MeasuredTimes)
                draft(desk).instrument().orElseThrow().room().reverberation();
        assertThat(kept).isEqualTo(was);
        Room.MeasuredTimes changed = (Room.MeasuredTimes)
                draft(desk.press("<Enter>")).instrument().orElseThrow().room().reverberation();
        double factor = Math.cbrt(50000 / room.volumeM3());
        assertThat(changed.octaveS().get(1000)).isCloseTo(was.octaveS().get(1000) * factor, within(0.06));
        assertThat(volume(desk.press("u"))).isEqualTo(50000);
        assertThat(volume(desk.press("u"))).isEqualTo(room.volumeM3());
    }

    @Test
    void spoken_a_row_holds_all_of_one_part_and_nothing_of_another() {
        Desk desk = bench("st-tethwin", 80, 24).lettered(Letters.SPOKEN).press("<Down>", "<Down>");
        assertThat(desk.screen().lines().filter(line -> line.contains("Bourdon")))
                .contains("  Stop Bourdon: Feet 16, Family flute, Pipe stopped");
        assertThat(desk.screen()).doesNotContain("\u2502");
        assertThat(desk.press("<End>", "<Up>").said()).startsWith("Reverberation: 125 Hz ");
    }
}
