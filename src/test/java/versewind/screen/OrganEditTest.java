package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.Golden;
import versewind.organ.FormerNames;
import versewind.organ.Instrument;
import versewind.organ.StopName;

/** An organ is changed by keys alone. */
class OrganEditTest {

    private static final String LIST = """
        GREAT
        Open Diapason 8
        Principal 4
        Wibblophone of the nether regions
        SWELL (enclosed)
        Gedackt 8
        PEDAL
        Bourdon 16
        Swell to Great
        """;

    private static Desk bench(String organ, int columns, int rows) {
        return Desk.empty(columns, rows)
                .answer(new Event.OrganOpened(organ, Desk.instrument(organ), "", Optional.empty()));
    }

    private static Desk bench() {
        return bench("st-tethwin", 80, 24);
    }

    private static OrganEdit on(Desk desk) {
        return desk.state().bench().orElseThrow();
    }

    private static Wanted last(List<Wanted> effects) {
        return effects.get(effects.size() - 1);
    }

    private static List<String> sentences(Desk desk) {
        return on(desk).problems().stream().map(problem -> problem.sentence()).toList();
    }

    @ParameterizedTest
    @CsvSource({
        "organ-80x24, st-tethwin, 80, 24",
        "organ-120x40, ostmere-cathedral, 120, 40",
        "organ-60x18, foundlings-chapel, 60, 18",
    })
    void an_organ_is_seen(String name, String organ, int columns, int rows) {
        Desk desk = bench(organ, columns, rows).press("<Down>", "<Down>", "<Down>");
        Golden.check("organ/" + name + ".txt", desk.screen());
    }

    @ParameterizedTest
    @CsvSource({"organ-wrong-80x24, 80, 24", "organ-wrong-120x40, 120, 40", "organ-wrong-60x18, 60, 18"})
    void what_is_wrong_is_seen(String name, int columns, int rows) {
        Desk desk = bench("st-tethwin", columns, rows).press("<Down>", "<Down>", "<Down>", "d", "<End>", "x", "n");
        Golden.check("organ/" + name + ".txt", desk.screen());
    }

    @ParameterizedTest
    @CsvSource({"organ-line-80x24, 80, 24", "organ-line-120x40, 120, 40", "organ-line-60x18, 60, 18"})
    void what_is_wrong_is_seen_while_a_line_is_typed(String name, int columns, int rows) {
        Desk desk = bench("st-tethwin", columns, rows).press("<Down>", "i", "'Mixture'", "<Tab>", "<Tab>", "'mix'");
        Golden.check("organ/" + name + ".txt", desk.screen());
        assertThat(desk.form().complaint()).isEqualTo("The number of ranks is missing: a mixture needs it.");
        desk.press("<Tab>", "<Tab>", "'iv'");
        assertThat(desk.form().complaint()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"stop-text-80x24, 80, 24", "stop-text-120x40, 120, 40", "stop-text-60x18, 60, 18"})
    void a_pasted_list_is_seen_and_what_was_understood_of_it(String name, int columns, int rows) {
        Desk desk = Desk.empty(columns, rows).library().press("<Tab>", "^N");
        Golden.check("organ/" + name + "-empty.txt", desk.screen());
        desk.answer(new Event.Paste(LIST));
        Golden.check("organ/" + name + ".txt", desk.screen());
        desk.press("^S");
        Golden.check("organ/" + name + "-read.txt", desk.screen());
    }

    @Test
    void every_recorded_screen_is_of_a_size_that_is_looked_at() {
        assertThat(Golden.names("organ")).hasSize(18).allSatisfy(name -> assertThat(name)
                .matches(".*-(?:80x24|120x40|60x18)(?:-empty|-read)?\\.txt"));
    }

    @Test
    void a_stop_is_renamed_and_what_became_of_it_goes_with_the_organ() {
        Desk desk = bench().press("<Down>", "<Down>", "<Down>", "<Enter>", "^U", "'Montre'", "<Enter>", "s");

        Wanted save = last(desk.effects());
        Instrument next = save.argument(0, Instrument.class);
        assertThat(next.stop(new StopName("Great", "Montre 8"))).isPresent();
        assertThat(save.argument(1, FormerNames.class).stops())
                .containsOnlyKeys(new StopName("Great", "Open Diapason 8"));
        desk.answer(new Event.OrganSaved(next, "Saved.", List.of()));
        assertThat(on(desk).history().isUnsaved()).isFalse();
    }

    @Test
    void after_saving_one_can_still_undo_and_save_again() {
        Desk desk = bench();
        Clerk clerk = Clerk.at(desk);
        clerk.press("<Down>", "<Down>", "<Down>", "<Enter>", "^U", "'Montre'", "<Enter>", "s", "u");
        assertThat(on(desk).history().isUnsaved()).isTrue();
        desk.effects();
        desk.press("s");

        Wanted save = desk.effects().get(0);
        assertThat(save.argument(0, Instrument.class)).isEqualTo(Desk.instrument("st-tethwin"));
        assertThat(save.argument(1, FormerNames.class).stops()).containsOnlyKeys(new StopName("Great", "Montre 8"));
    }

    @Test
    void what_is_broken_cannot_be_saved() {
        Desk desk = bench().press("<Down>", "x", "s");

        assertThat(desk.effects()).allMatch(wanted -> wanted.is("keepOrganDraft"));
        assertThat(desk.said()).startsWith("Not saved. ");
        assertThat(sentences(desk)).isNotEmpty();
        desk.press("u");
        assertThat(sentences(desk)).isEmpty();
        assertThat(on(desk).draft().instrument()).contains(Desk.instrument("st-tethwin"));
    }

    @Test
    void every_change_is_undone_and_done_again() {
        Desk desk = bench().press("<Down>", "<Down>");
        var first = on(desk).draft();
        desk.press("d", ".", ",", "x", "x", "<Down>", ",", "I", "'Echo'", "<Enter>", "c", "<Tab>", "'ec'", "<Tab>");
        desk.press("'gr'", "<Enter>", "t", "<Tab>", "'ec'", "<Enter>");
        var last = on(desk).draft();
        assertThat(last.lines()).anySatisfy(line -> assertThat(line.values()).contains("Echo to Great"));
        for (int i = 0; i < 12; i++) {
            desk.press("u");
        }
        assertThat(on(desk).draft()).isEqualTo(first);
        for (int i = 0; i < 12; i++) {
            desk.press("U");
        }
        assertThat(on(desk).draft()).isEqualTo(last);
    }

    @Test
    void the_name_of_a_stop_says_what_it_is() {
        Desk desk = bench().press("<Down>", "i", "'Viole de gambe'", "<Enter>");

        assertThat(on(desk).line().values()).startsWith("Viole de gambe", "8", "string");
        desk.press("T");
        assertThat(desk.question()).startsWith("Viole de gambe 8: ");
        desk.press("<Esc>");
        assertThat(desk.state().bench()).isPresent();
    }

    @Test
    void in_a_plan_too_the_stop_under_the_cursor_is_told() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("n", "T");

        assertThat(desk.question()).isNotEmpty();
        desk.press("<Enter>");
        assertThat(desk.state().top()).isEqualTo(new PlanScreen());
    }

    @Test
    void leaving_with_changes_asks_and_goes_back_to_the_organs() {
        Desk desk = bench();
        Clerk clerk = Clerk.at(desk);
        clerk.press("<Down>", "<Down>", "d", "x", "x", "q");
        assertThat(desk.question()).startsWith("This organ has changes that are not saved.");
        clerk.press("d");
        assertThat(desk.state().bench()).isEmpty();
        assertThat(desk.state().top()).isInstanceOf(LibraryScreen.class);
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
    void an_organ_is_made_of_a_pasted_list() {
        Desk desk = Desk.empty(80, 24).library();
        Clerk clerk = Clerk.at(desk);
        clerk.press("<Tab>", "^N");
        desk.answer(new Event.Paste(LIST));
        clerk.press("^S", "<Enter>", "<Enter>");
        assertThat(desk.form().complaint()).isEqualTo("An organ needs a name.");
        clerk.press("'Trial Chapel'", "<Enter>");

        Instrument organ = on(desk).organ();
        assertThat(organ.name()).isEqualTo("Trial Chapel");
        assertThat(organ.divisions()).extracting(each -> each.name()).containsExactly("Great", "Swell", "Pedal");
        assertThat(organ.couplers()).hasSize(1);
    }

    @Test
    void work_that_was_kept_is_taken_up_or_forgotten() {
        OrganEdit changed = on(bench().press("<Down>", "<Down>", "d"));
        Event opened =
                new Event.OrganOpened("st-tethwin", Desk.instrument("st-tethwin"), "", Optional.of(changed.draft()));

        Desk taken = Desk.empty(80, 24).answer(opened).press("t");
        assertThat(on(taken).draft()).isEqualTo(changed.draft());
        assertThat(on(taken).history().isUnsaved()).isTrue();
        Desk forgotten = Desk.empty(80, 24).answer(opened).press("f");
        assertThat(on(forgotten).history().isUnsaved()).isFalse();
        assertThat(on(forgotten).history().undone()).isEmpty();
        assertThat(forgotten.effects()).containsExactly(Wanted.of("dropOrganDraft"));
    }

    @Test
    void every_change_is_kept_until_the_organ_is_saved_or_as_it_was() {
        Desk desk = bench().press("<Down>", "<Down>", "d");
        assertThat(desk.effects()).containsExactly(Wanted.of("keepOrganDraft", on(desk).draft()));
        desk.press("u");
        assertThat(desk.effects()).containsExactly(Wanted.of("dropOrganDraft"));
    }

    @Test
    void what_was_pasted_is_there_again_after_it_was_read() {
        Desk desk = Desk.empty(80, 24).library().press("<Tab>", "^N");
        desk.answer(new Event.Paste(LIST)).press("^S", "<Esc>");
        assertThat(desk.state().top()).isEqualTo(new Panel.StopText(LIST));
    }
}
