package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static versewind.cli.Typing.typed;
import static versewind.cli.Typing.typedIn;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import versewind.Golden;
import versewind.Shipped;
import versewind.plan.Hymn;
import versewind.plan.Verse;
import versewind.screen.toolkit.Text;
import versewind.store.OpenPlan;

class SheetCommandTest {

    private static final String ODD = """
        {"format": 1, "title": "\\u001b[2J<b>\\u8b9a\\u7f8e</b> Vespers", "instrument": "st-tethwin", "people": 1,
         "hymns": [
          {"number": "",
           "title": "Ch\\u0153ur c\\u00e9leste, whose first line is so long that it goes on and on over the edge",
           "verses": [
            {"kind": "verse", "label": "\\u8b9a\\u7f8e\\u8b9a\\u7f8e", "mode": "congregation", "singing": "gentle",
             "hands": "four parts", "right": "Great", "left": "Great", "drawn": {}}]},
          {"number": "7", "title": "Re\\u0301cit\\r\\nwith a line end", "verses": []}]}
        """;

    @TempDir
    private Path folder;

    @Test
    void a_sheet_reads_as_before() {
        Golden.check(
                "sheet-text/ash-wednesday.txt",
                typed("sheet", "ash-wednesday", "--ladder").results());
    }

    @ParameterizedTest
    @MethodSource("versewind.Shipped#plans")
    void every_stop_that_a_shipped_plan_draws_stands_on_its_sheet_within_eighty_columns(String id) {
        OpenPlan open = Shipped.plan(id);
        Reply reply = typed("sheet", id);
        assertThat(reply.words()).isEmpty();
        assertThat(reply.results().lines()).allMatch(line -> Text.columns(line) <= 80);
        String joined = reply.results().replaceAll("\n {18}(?=\\S)", " ");
        for (Hymn hymn : open.plan().hymns()) {
            String page = joined.substring(joined.indexOf("\n" + (hymn.number() + "  " + hymn.title()).strip() + "\n"));
            for (Verse verse : hymn.verses()) {
                for (int stop : verse.registration().stops().stream().toArray()) {
                    String label = open.instrument().stops().get(stop).stop().label();
                    String division = open.instrument().stops().get(stop).name().division();
                    assertThat(page.lines())
                            .as(verse.label() + ": " + division + ": " + label)
                            .anyMatch(row -> (row.strip().startsWith(Text.fit(division, 9, "~"))
                                            || row.contains(division + ": "))
                                    && (row + ",").contains(" " + label));
                }
            }
        }
    }

    @Test
    void a_folder_that_is_not_there_is_not_made(@TempDir Path folder) throws IOException {
        Typing.makeLibrary(folder, Files.readString(Path.of("plans/harvest-festival.json")));
        Reply reply = typedIn(folder, StandardCharsets.UTF_8, "sheet", "odd", "-o", "no/such/x.txt");

        assertThat(reply.status()).isEqualTo(Reply.BAD);
        assertThat(reply.words())
                .isEqualTo("versewind: There is no folder " + folder.resolve("no/such")
                        + " for \"no/such/x.txt\". Create it first, or choose another name.\n");
        assertThat(folder.resolve("no")).doesNotExist();
    }

    @Test
    void only_what_changes_is_shorter_and_in_ascii_nothing_else_is_left() {
        String changes =
                typed("sheet", "harvest-festival", "--changes-only", "--ascii").results();
        assertThat(changes.length())
                .isLessThan(typed("sheet", "harvest-festival").results().length());
        assertThat(changes).matches("[ -~\\n]+").contains("+ draw    Swell: Fagotto 16; Swell to Pedal");
    }

    @Test
    void odd_words_are_shown_harmlessly_within_80_columns() throws IOException {
        Typing.makeLibrary(folder, ODD);
        for (String option : List.of("--ladder", "--ascii")) {
            String text = typedIn(folder, StandardCharsets.UTF_8, "sheet", "odd", option)
                    .results();
            assertThat(text.lines()).allMatch(line -> Text.columns(line) <= 80);
            assertThat(text).doesNotContain("\u001b").contains("<b>");
        }
        String html = typedIn(folder, StandardCharsets.US_ASCII, "sheet", "odd", "--format", "html")
                .results();
        assertThat(html).doesNotContain("</b> Vespers").contains("&#65533;[2J&lt;b&gt;&#35738;");
    }

    @Test
    void a_file_named_html_becomes_html_and_its_place_is_told() throws IOException {
        Typing.makeLibrary(folder, ODD);
        Reply reply = typedIn(folder, StandardCharsets.UTF_8, "sheet", "odd", "-o", "desk.html");
        assertThat(reply.results()).isEmpty();
        assertThat(reply.words()).isEqualTo("versewind: Sheet written to desk.html.\n");
        assertThat(Files.readString(folder.resolve("desk.html"))).startsWith("<!DOCTYPE html>");
        typedIn(folder, StandardCharsets.UTF_8, "sheet", "odd", "-o", "desk.html", "--large");
        assertThat(Files.readString(folder.resolve("desk.html"))).contains("<html lang=\"en\" class=\"large\">");
    }

    @Test
    void a_text_sheet_is_replaced_by_a_text_sheet() throws IOException {
        Typing.makeLibrary(folder, ODD);
        for (int i = 0; i < 2; i++) {
            Reply reply = typedIn(folder, StandardCharsets.US_ASCII, "sheet", "odd", "-o", "desk.txt");
            assertThat(reply.status()).isNotEqualTo(Reply.BAD);
        }
        assertThat(Files.readString(folder.resolve("desk.txt")))
                .contains("Ch\u0153ur")
                .endsWith("Made by Versewind.\n");
    }

    @Test
    void a_plan_is_never_written_over() throws IOException {
        Typing.makeLibrary(folder, ODD);
        for (String format : List.of("text", "html")) {
            Reply reply =
                    typedIn(folder, StandardCharsets.UTF_8, "sheet", "odd", "--format", format, "-o", "plans/odd.json");
            assertThat(reply)
                    .isEqualTo(Reply.bad("The sheet was not written to plans/odd.json: A file of another kind has this"
                            + " name. Choose another name."));
        }
        assertThat(Files.readString(folder.resolve("plans/odd.json"))).isEqualTo(ODD);
    }

    @Test
    void a_folder_is_no_file() throws IOException {
        Typing.makeLibrary(folder, ODD);
        Reply reply = typedIn(folder, StandardCharsets.UTF_8, "sheet", "odd", "-o", "plans");
        assertThat(reply.status()).isEqualTo(Reply.BAD);
        assertThat(reply.words()).contains("It cannot be replaced: this is a folder.");
    }

    @Test
    void a_format_that_there_is_not_is_told() {
        assertThat(typed("sheet", "wedding", "--format", "pdf").words())
                .isEqualTo("versewind: A sheet has no format \"pdf\". The formats are \"text\", \"html\".\n");
        assertThat(typed("sheet", "wedding", "-o", "a\u0000b").words())
                .startsWith("versewind: No file can be called \"a");
    }

    @Test
    void the_exit_status_is_that_of_the_assessment() {
        for (String plan : List.of("harvest-festival", "wedding")) {
            assertThat(typed("sheet", plan).status())
                    .isEqualTo(typed("assess", plan).status());
        }
    }

    @Test
    void a_sheet_is_not_written_as_what_it_is_not() {
        Reply reply = typed("sheet", "wedding", "-o", "sheet.pdf");

        assertThat(reply.status()).isEqualTo(Reply.BAD);
        assertThat(reply.words())
                .isEqualTo(
                        "versewind: A sheet is written as .html or as text. Write .html, and print that as .pdf from a"
                                + " browser.\n");
    }

    @Test
    void a_narrow_sheet_has_the_same_words_on_shorter_lines() {
        String usual = typed("sheet", "harvest-festival").results();
        String narrow = typed("sheet", "harvest-festival", "--width", "40").results();

        assertThat(narrow.lines()).allMatch(line -> Text.columns(line) <= 40);
        assertThat(words(narrow)).isEqualTo(words(usual));
        assertThat(typed("sheet", "harvest-festival", "--width", "39").words()).contains("from 40 to 200");
    }

    private static String words(String sheet) {
        return sheet.replaceAll("=+|\\s+", " ").replaceAll(" +", " ");
    }

    @Test
    void a_hyphen_for_the_file_is_the_standard_output() {
        assertThat(typed("sheet", "ash-wednesday", "-o", "-").results())
                .isEqualTo(typed("sheet", "ash-wednesday").results());
    }

    @Test
    void spoken_it_has_no_rules_columns_and_signs() {
        assertThat(typed("sheet", "harvest-festival", "--spoken", "--ladder").results())
                .contains("\nV1: fff 81 decibels, leads, 8 in 10\n", "\nV1: piston G4; congregation of 480; ")
                .contains(
                        "\ndraw: Swell: Fagotto 16; Swell to Pedal\n",
                        "\nNote: Fagotto and Swell to Pedal in the breath.")
                .doesNotContain("\u00b1", "==", "+ ", "\u2212", "[G", "   ");
    }
}
