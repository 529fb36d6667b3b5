package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SpreadsheetCommandsTest {

    @TempDir
    Path folder;

    @BeforeEach
    void a_library_with_one_plan() throws IOException {
        Typing.makeLibrary(folder, Files.readString(Path.of("plans/harvest-festival.json")));
    }

    private Reply typed(byte[] input, String... arguments) {
        Charset ascii = StandardCharsets.US_ASCII;
        return Commands.run(
                List.of(arguments),
                new Environment(
                        folder,
                        Optional.empty(),
                        Map.of(),
                        new ByteArrayInputStream(input),
                        ascii,
                        LocalDate.of(2026, 11, 1),
                        "1.2.3"));
    }

    private byte[] exported() {
        Reply reply = typed(new byte[0], "export", "odd");
        assertThat(reply.letters()).isEqualTo(Reply.Letters.UTF_8);
        return reply.results().getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void what_was_exported_is_imported_as_a_new_plan_byte_for_byte() throws IOException {
        Reply reply = typed(exported(), "import", "-");

        assertThat(reply.status()).isEqualTo(Reply.GOOD);
        Path made = Path.of(reply.results().strip());
        assertThat(made).isEqualTo(folder.resolve("plans/harvest-festival.json"));
        assertThat(made).hasSameBinaryContentAs(folder.resolve("plans/odd.json"));
    }

    @Test
    void the_option_that_names_the_format_may_be_left_out() {
        assertThat(typed(new byte[0], "export", "odd", "--csv")).isEqualTo(typed(new byte[0], "export", "odd"));
    }

    @Test
    void importing_twice_makes_two_plans_and_writes_over_none() {
        typed(exported(), "import", "-");

        assertThat(typed(exported(), "import", "-").results()).endsWith("harvest-festival-2.json\n");
    }

    @Test
    void where_a_row_is_wrong_its_line_is_told_and_nothing_is_made() throws IOException {
        String csv = new String(exported(), StandardCharsets.UTF_8).replace("Trombone 16", "Trombine 16");
        Path file = Files.writeString(folder.resolve("bad.csv"), csv);

        Reply reply = typed(new byte[0], "import", file.toString());
        assertThat(reply.status()).isEqualTo(Reply.BAD);
        assertThat(reply.words())
                .startsWith("versewind: " + file + ", line ")
                .contains("stops: Pedal has no stop \"Trombine 16\". Did you mean \"Trombone 16\"?")
                .endsWith("versewind: Nothing was imported.\n");
        assertThat(folder.resolve("plans")).isDirectoryNotContaining("glob:**harvest*");
    }

    @Test
    void a_verse_without_a_label_gets_its_usual_one() throws IOException {
        String csv = new String(exported(), StandardCharsets.UTF_8)
                .replaceAll("(?m)(,verse|,intro|,introduction),(V\\d|Intro),", "$1,,");
        assertThat(csv).contains(",verse,,");
        Reply reply = typed(csv.getBytes(StandardCharsets.UTF_8), "import", "-");

        assertThat(Path.of(reply.results().strip())).hasSameBinaryContentAs(folder.resolve("plans/odd.json"));
    }

    @Test
    void other_letters_than_utf_8_and_a_file_that_is_not_there_are_told() {
        assertThat(typed(new byte[] {'a', (byte) 0xE9}, "import", "-").words())
                .isEqualTo("versewind: standard input: this is not UTF-8. Save it as CSV in UTF-8.\n");
        assertThat(typed(new byte[0], "import", "gone.csv").words())
                .startsWith("versewind: gone.csv: there is no such file.");
    }

    @Test
    void a_plan_is_also_read_from_the_standard_input() throws IOException {
        byte[] plan = Files.readAllBytes(folder.resolve("plans/odd.json"));

        assertThat(typed(plan, "assess", "-").results())
                .isEqualTo(typed(plan, "assess", "odd").results());
        assertThat(typed("{".getBytes(StandardCharsets.UTF_8), "assess", "-").words())
                .startsWith("versewind: standard input, line 1");
    }

    @Test
    void a_corrected_table_replaces_its_plan_and_the_version_before_is_kept() throws IOException {
        String csv = new String(exported(), StandardCharsets.UTF_8).replace("Harvest Festival", "Harvest Home");

        Reply reply = typed(csv.getBytes(StandardCharsets.UTF_8), "import", "-", "--replace", "odd");

        assertThat(Path.of(reply.results().strip())).isEqualTo(folder.resolve("plans/odd.json"));
        assertThat(folder.resolve("plans/odd.json")).content().contains("Harvest Home");
        assertThat(folder.resolve("plans/.versions/odd")).isNotEmptyDirectory();
    }

    @Test
    void what_a_table_replaces_is_named_with_the_way_back_to_it() throws IOException {
        String csv = new String(exported(), StandardCharsets.UTF_8).replace("Harvest Festival", "Harvest Home");

        String words = typed(csv.getBytes(StandardCharsets.UTF_8), "import", "-", "--replace", "odd")
                .words();

        assertThat(words)
                .isEqualTo("versewind: Replaced \"Harvest Festival\" (st-tethwin, Sun 4 Oct 2026) by \"Harvest Home\""
                        + " (st-tethwin, Sun 4 Oct 2026).\nversewind: The version before is kept: Ctrl-V in the"
                        + " library restores it.\n");
    }

    @Test
    void verses_of_one_number_in_a_hymn_are_told_and_refrains_are_not() {
        String head = "service,instrument,people,hymn,title,kind,label,stops\nEvensong,st-tethwin,40,1,Dusk,";
        byte[] twice = (head + "verse,V1,\n,,,1,,verse,V1,\n").getBytes(StandardCharsets.UTF_8);
        byte[] refrains = (head + "refrain,Refr,\n,,,1,,refrain,Refr,\n").getBytes(StandardCharsets.UTF_8);

        assertThat(typed(twice, "import", "-").words()).isEqualTo("versewind: Hymn 1 has 2 verses labelled \"V1\".\n");
        assertThat(typed(refrains, "import", "-").words()).isEmpty();
    }

    @Test
    void a_table_written_by_hand_needs_few_columns_and_all_that_are_missing_are_told_at_once() {
        byte[] few = "hymn,kind\n1,verse\n".getBytes(StandardCharsets.UTF_8);
        assertThat(typed(few, "import", "-").words())
                .contains("line 1: the columns \"service\", \"instrument\", \"people\", \"title\", \"stops\" are"
                        + " missing.");

        byte[] enough = "service,instrument,people,hymn,title,kind,stops\nEvensong,st-tethwin,40,1,Dusk,introduction,\n"
                .getBytes(StandardCharsets.UTF_8);
        assertThat(typed(enough, "import", "-").results()).endsWith("evensong.json\n");
    }
}
