package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.organ.Instrument;
import versewind.screen.organ.OrganScreen;
import versewind.screen.organ.PasteScreen;
import versewind.screen.state.Event;
import versewind.screen.toolkit.Letters;
import versewind.screen.toolkit.TextBlock;

/** A stop list is pasted, and an organ made of it. */
class PasteScreenTest {

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

    private static Desk box(int columns, int rows) {
        return Desk.empty(columns, rows).library().press("<Tab>", "^N");
    }

    @ParameterizedTest
    @CsvSource({"80, 24", "120, 40", "60, 18"})
    void a_pasted_list_is_seen_and_what_was_understood_of_it(int columns, int rows) {
        Desk desk = box(columns, rows);
        assertThat(desk.screen()).contains("New organ from a stop list", "Paste the stop list here", "0 lines");
        desk.answer(new Event.Paste(LIST));
        assertThat(desk.screen()).contains(" GREAT", " Swell to Great", "9 lines", "Ctrl-S read the list  Esc close");
        desk.press("^S", "<Down>", "<Down>", "<Down>", "<Down>", "<Down>", "<Down>", "<Down>", "<Down>");
        assertThat(desk.screen())
                .contains("4 stops, 1 coupler; please check what is marked")
                .containsPattern("Line 4: Wibblophone .* note")
                .containsPattern("Swell +manual 2, in a swell box")
                .containsPattern("  Gedackt 8 +flute\\b");
    }

    @Test
    void an_organ_is_made_of_a_pasted_list() {
        Desk desk = Desk.empty(80, 24).library();
        Clerk clerk = Clerk.at(desk).press("<Tab>", "^N");
        desk.answer(new Event.Paste(LIST));
        clerk.press("^S", "<Enter>", "<Enter>");
        assertThat(desk.form().complaint()).isEqualTo("Enter a name.");
        clerk.press("'Trial Chapel'", "<Enter>");

        Instrument organ = desk.state().find(OrganScreen.class).orElseThrow().organ();
        assertThat(organ.name()).isEqualTo("Trial Chapel");
        assertThat(organ.divisions()).extracting(each -> each.name()).containsExactly("Great", "Swell", "Pedal");
        assertThat(organ.couplers()).hasSize(1);
    }

    @Test
    void what_was_pasted_is_there_again_after_it_was_read_and_typing_goes_on_at_its_end() {
        Desk desk = box(80, 24);
        desk.answer(new Event.Paste(LIST)).press("^S", "<Esc>");
        assertThat(desk.state().top()).isEqualTo(new PasteScreen(TextBlock.of(LIST)));
        desk.press("'ab'", "<Backspace>", "<Enter>", "<Down>");
        assertThat(desk.state().top()).isEqualTo(new PasteScreen(TextBlock.of(LIST + "a\n")));
        assertThat(desk.press("^U").screen()).contains("Clear the whole text, 10 lines?");
        desk.press("<Enter>");
        assertThat(desk.state().top()).isEqualTo(PasteScreen.EMPTY);
    }

    @Test
    void the_text_is_heard_when_it_is_pasted_cleared_and_gone_through() {
        Desk desk = box(80, 24).lettered(Letters.SPOKEN);
        desk.press("<Esc>", "^N");
        assertThat(desk.said())
                .isEqualTo("New organ from a stop list. Paste the stop list here as it was published."
                        + " Ctrl-S reads it, Esc closes.");
        assertThat(desk.answer(new Event.Paste(LIST)).said()).isEqualTo("9 lines; Ctrl-S reads them.");
        assertThat(desk.press("<Up>").said()).isEqualTo("Swell to Great");
        assertThat(desk.press("'x'").said()).isEmpty();
        assertThat(desk.press("^U").said()).startsWith("Clear the whole text, 9 lines? Enter: ");
        assertThat(desk.press("<Enter>").said()).startsWith("The text is cleared.");
    }

    @Test
    void what_was_understood_is_heard_a_statement_an_item_and_how_a_line_is_corrected() {
        Desk desk = box(80, 24).lettered(Letters.SPOKEN);
        desk.answer(new Event.Paste("Great\nOpen Diapason 8\nKettlewick\nGemshorn 4\nSwell\nOboe 8\nSwell to Great\n"))
                .press("^S");
        assertThat(desk.said())
                .startsWith("3 stops, 1 coupler; 1 line not understood. Go on as it is, 1 of ")
                .endsWith(". Enter: name the organ.");
        assertThat(desk.press("<Down>").said())
                .startsWith("Line 3: Kettlewick, not understood: ")
                .endsWith(". Enter: correct the line.");
        assertThat(desk.press("<Enter>").said()).isEqualTo("Correct line 3: Kettlewick. Ctrl-S reads the list again.");
        desk.press("^S");
        while (!desk.said().startsWith("Gemshorn 4")) {
            desk.press("<Down>");
        }
        assertThat(desk.said()).startsWith("Gemshorn 4, flute, ").doesNotContain("by its name");
        assertThat(desk.press("<Enter>").said())
                .startsWith("Correct line 4: Gemshorn 4. To count it otherwise, write behind it (principal)");
        assertThat(desk.press("<End>", "' (principal)'", "^S").screen()).contains("Gemshorn 4, principal");
        assertThat(desk.press("<End>", "<Up>").screen())
                .contains("  Swell to Great\n")
                .doesNotContain("Swell on Great");
    }

    @Test
    void the_text_is_edited_where_the_caret_is() {
        Desk desk = box(80, 24);
        desk.answer(new Event.Paste("Great\r\nFlute 8\r\nOboe 8"));
        desk.press(
                "<Up>",
                "<Home>",
                "'Open '",
                "<Tab>",
                "<Down>",
                "<End>",
                "<Backspace>",
                "'4'",
                "<Up>",
                "<Up>",
                "<Delete>");
        assertThat(desk.state().top()).isEqualTo(new PasteScreen(new TextBlock("GreatOpen \tFlute 8\nOboe 4", 5)));
    }

    @Test
    void enter_on_a_stop_whose_pitch_is_assumed_goes_to_it() {
        Desk desk = box(80, 24);
        String list = "Great\nOpen Diapason 8\nPrincipal\nFlute 4\n";
        desk.answer(new Event.Paste(list)).press("^S", "<Down>", "<Down>", "<Down>", "<Down>");
        assertThat(desk.screen())
                .contains(
                        "3 stops, 0 couplers; please check what is marked",
                        "Pitches assumed from the names: Principal 4.",
                        "pitch assumed");
        desk.press("<Enter>");
        assertThat(desk.state().top()).isEqualTo(new PasteScreen(new TextBlock(list, list.indexOf("Principal"))));
    }

    @Test
    void what_enter_does_is_said_of_every_row_and_enter_on_a_stop_goes_to_its_line() {
        Desk desk = box(80, 24);
        desk.answer(new Event.Paste(LIST)).press("^S");
        assertThat(desk.screen()).contains("Enter name the organ  Esc");
        while (!desk.screen().contains("▸  Open Diapason 8")) {
            desk.press("<Down>");
        }
        assertThat(desk.screen()).contains("Enter correct the line  Esc");
        desk.press("<Enter>");
        assertThat(desk.frame().row(desk.frame().caretY())).contains("Open Diapason 8");
    }

    @Test
    void enter_on_a_line_that_was_not_understood_goes_to_it() {
        Desk desk = box(80, 24);
        String list = "Great\nOpen Diapason 8\nKettlewick\nFlute 4\n";
        desk.answer(new Event.Paste(list)).press("^S");
        assertThat(desk.screen())
                .contains("2 stops, 0 couplers; 1 line not understood", "\u25b8Go on as it is", "Line 3: Kettlewick");
        desk.press("<Down>", "<Enter>");
        assertThat(desk.state().top()).isEqualTo(new PasteScreen(new TextBlock(list, list.indexOf("Kettlewick"))));
    }

    @Test
    void a_text_is_not_thrown_away_without_asking() {
        Desk desk = box(80, 24);
        desk.answer(new Event.Paste(LIST)).press("<Esc>");
        assertThat(desk.screen()).contains("Its text will be lost");
        desk.press("<Esc>");
        assertThat(desk.state().top()).isEqualTo(new PasteScreen(TextBlock.of(LIST)));
        desk.press("<Esc>", "d");
        assertThat(desk.state().find(PasteScreen.class)).isEmpty();
    }

    @Test
    void more_than_the_box_takes_is_refused() {
        Desk desk = box(80, 24);
        desk.answer(new Event.Paste("x".repeat(2_000_001)));
        assertThat(desk.said()).startsWith("Too long");
        assertThat(desk.state().top()).isEqualTo(PasteScreen.EMPTY);
    }
}
