package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static versewind.cli.Typing.typed;
import static versewind.cli.Typing.typedIn;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.Golden;

class ReadStopsCommandTest {

    private static final String LIST = "src/test/resources/stoplists/parish-english.txt";

    @TempDir
    Path folder;

    @Test
    void a_folder_that_is_not_there_is_not_made(@TempDir Path folder) {
        Path file = folder.resolve("no/such/organ.json");

        assertThat(typed("read-stops", LIST, "-o", file.toString()).words())
                .startsWith("versewind: There is no folder " + file.getParent() + " for ");
        assertThat(folder.resolve("no")).doesNotExist();
    }

    @Test
    void a_list_reads_as_a_table() {
        Reply reply = typed("read-stops", LIST, "--name", "St Cuthwin");
        assertThat(reply.status()).isEqualTo(Reply.GOOD);
        assertThat(reply.results().lines())
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
        Golden.check("read-stops/parish-english.txt", reply.results());
    }

    @Test
    void the_json_has_divisions_couplers_tremulants_and_what_was_not_understood() throws Exception {
        JsonNode json =
                new ObjectMapper().readTree(typed("read-stops", LIST, "--json").results());
        JsonNode great = json.get("divisions").get(0);
        assertThat(great.get("name").asText()).isEqualTo("Great");
        assertThat(great.get("pedal").asBoolean()).isFalse();
        assertThat(great.get("enclosed").asBoolean()).isFalse();
        JsonNode twelfth = great.get("stops").get(6);
        assertThat(twelfth.get("name").asText()).isEqualTo("Twelfth");
        assertThat(twelfth.get("footage").asText()).isEqualTo("2 2/3");
        assertThat(twelfth.get("family").asText()).isEqualTo("mutation");
        assertThat(twelfth.get("sure").asBoolean()).isTrue();
        assertThat(twelfth.get("supposed").asBoolean()).isFalse();
        JsonNode mixture = great.get("stops").get(8);
        assertThat(mixture.get("footage").asText()).isEmpty();
        assertThat(mixture.get("ranks").asInt()).isEqualTo(3);
        assertThat(json.get("couplers")).hasSize(5);
        assertThat(json.get("tremulants")).hasSize(1);
        assertThat(json.get("notUnderstood")).allSatisfy(each -> {
            assertThat(each.get("line").asInt()).isPositive();
            assertThat(each.get("why").asText()).isNotBlank();
        });
    }

    @Test
    void an_instrument_is_written_and_can_be_played_at_once() {
        String file = folder.resolve("new.json").toString();
        Reply written = typed("read-stops", LIST, "-o", file);
        assertThat(written.words()).contains("was written").contains("room");
        Reply played =
                typed("estimate", file, "--draw", "Great: Open Diapason I 8, Principal 4; couplers: Swell to Great");
        assertThat(played.status()).isNotEqualTo(Reply.BAD);
    }

    @Test
    void a_file_that_is_there_is_left_as_it_is() throws Exception {
        Path file = folder.resolve("old.json");
        Files.writeString(file, "mine");
        Reply reply = typed("read-stops", LIST, "-o", file.toString());
        assertThat(reply.status()).isEqualTo(Reply.BAD);
        assertThat(reply.words())
                .isEqualTo("versewind: " + file
                        + " is there already and is left as it is. Write another name after -o.\n");
        assertThat(file).hasContent("mine");
    }

    @Test
    void every_list_makes_an_instrument_that_opens_again() throws Exception {
        try (var lists = Files.list(Path.of("src/test/resources/stoplists"))) {
            for (Path list : lists.filter(Files::isRegularFile).toList()) {
                Path file = folder.resolve(list.getFileName() + ".json");
                Reply reply = typed("read-stops", list.toString(), "-o", file.toString());
                assertThat(reply.words()).as(list.toString()).contains("was written");
                assertThat(typed("estimate", file.toString(), "--draw", "").status())
                        .as(list.toString())
                        .isNotEqualTo(Reply.BAD);
            }
        }
    }

    @Test
    void a_list_can_be_piped_in() {
        Environment shipped = Typing.surroundings(Typing.SHIPPED, Optional.empty(), StandardCharsets.UTF_8);
        Environment piped = new Environment(
                shipped.workingFolder(),
                Optional.empty(),
                Map.of(),
                new ByteArrayInputStream("Great\nOpen Diapason 8\n".getBytes(StandardCharsets.UTF_8)),
                StandardCharsets.UTF_8,
                shipped.today(),
                shipped.version());
        assertThat(Commands.run(List.of("read-stops", "-"), piped).results())
                .startsWith("New organ\n1 stop, 0 couplers");
    }

    @Test
    void a_page_in_older_letters_is_read_too() throws Exception {
        Path file = folder.resolve("old.txt");
        Files.write(file, "Récit\nFlûte 8\n".getBytes(Charset.forName("windows-1252")));
        assertThat(typed("read-stops", file.toString()).results()).contains("Flûte", "Récit");
    }

    @Test
    void what_may_be_a_stop_and_was_not_understood_wants_attention() throws Exception {
        Path file = folder.resolve("odd.txt");
        Files.writeString(file, "Great\nOpen Diapason 8\nKettlewick\n");
        Reply reply = typed("read-stops", file.toString());
        assertThat(reply.status()).isEqualTo(Reply.WANTS_ATTENTION);
        assertThat(reply.results()).contains("line 3: Kettlewick - no pitch, and not a known name of a stop");
        assertThat(reply.words()).contains("1 line may describe part of the organ");
    }

    @Test
    void what_cannot_be_done_is_said_in_a_sentence() throws Exception {
        assertThat(typed("read-stops", "nowhere.txt").words())
                .isEqualTo("versewind: nowhere.txt: there is no such file. Look for it in another folder, or restore it"
                        + " from a copy.\n");
        assertThat(typed("read-stops", LIST, "-o", "x.txt").words()).contains("does not end in .json");
        assertThat(typed("read-stops", LIST, "--name", " ").words()).contains("needs a name");
        Path empty = folder.resolve("empty.txt");
        Files.writeString(empty, "");
        assertThat(typedIn(folder, StandardCharsets.UTF_8, "read-stops", empty.toString(), "-o", "x.json")
                        .words())
                .contains("no manual with a stop");
        assertThat(typed("read-stops", empty.toString()).words()).contains("No stop was found");
    }

    @Test
    void a_list_in_utf_16_is_read_as_one_in_utf_8() throws Exception {
        String list = "R\u00e9cit\nFl\u00fbte 8\nHautbois 8\n";
        for (Charset charset : List.of(StandardCharsets.UTF_16, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
            Path file = Files.write(folder.resolve("list.txt"), list.getBytes(charset));
            assertThat(typed("read-stops", file.toString()).results()).contains("R\u00e9cit", "Fl\u00fbte", "Hautbois");
        }
    }

    @Test
    void what_is_no_text_or_no_list_is_refused_in_words() throws Exception {
        Path binary = Files.write(folder.resolve("photo.txt"), new byte[] {'I', 'I', 0, 1, 2, 'x', 0, 0, 7});
        assertThat(typed("read-stops", binary.toString()).words()).contains("it is not text");
        Path book = Files.writeString(folder.resolve("book.txt"), "word ".repeat(1_000_000));
        assertThat(typed("read-stops", book.toString()).words()).contains("Delete what is not part of the stop list");
    }

    @Test
    void particulars_below_a_published_list_say_what_it_leaves_out() throws Exception {
        Path list = folder.resolve("list.txt");
        String published = Files.readString(Path.of(LIST));
        Files.writeString(list, published + "\nParticulars\n  Room: Volume \"2100\", Seats \"180\"\n");
        String file = folder.resolve("osyn.json").toString();

        typed("read-stops", list.toString(), "-o", file);
        assertThat(typed("room", file).results()).startsWith("2100 m3, 180 seats, ");

        Files.writeString(list, published + "\nParticulars\n  Room: Volumen \"2100\"\n");
        assertThat(typed(
                                "read-stops",
                                list.toString(),
                                "-o",
                                folder.resolve("no.json").toString())
                        .words())
                .matches("(?s).*Line \\d+ cannot be read, for a Room has no \"Volumen\": .*");
    }

    @Test
    void an_organ_is_made_in_the_library_and_its_room_described() throws Exception {
        Typing.makeLibrary(folder, "{}");
        String library = "--library=" + folder;
        assertThat(typed("read-stops", LIST, "-o", "osyn", library).words())
                .contains("Say what its room is like: versewind room osyn ");
        assertThat(typed("room", "osyn", "village church, 90 seats", library).results())
                .startsWith("840 m3, 90 seats, ");
        assertThat(typed("room", "osyn", library).results()).startsWith("840 m3, 90 seats, ");
    }

    @Test
    void whose_pipes_were_taken_for_a_borrowed_stop_is_said() throws Exception {
        Path list = Files.writeString(folder.resolve("list.txt"), """
            Great
            Open Diapason 8
            Stopped Diapason 8
            Pedal
            Bourdon 16
            Bass Flute 8 (from Great)
            Trombone 16 (borrowed)
            """);

        assertThat(typed("read-stops", list.toString()).words())
                .isEqualTo("versewind: Pedal Bass Flute 8 is taken to use the pipes of Great: Stopped Diapason 8,"
                        + " since no stop of its name is there to lend them.\n"
                        + "versewind: Pedal Trombone 16 is borrowed, but the stop that lends its pipes was not found:"
                        + " it counts as having pipes of its own.\n");
    }

    @Test
    void a_sign_says_which_stops_stand_outside_the_box_and_a_number_which_stop_lends() throws Exception {
        Path list = Files.writeString(folder.resolve("list.txt"), """
            CHOIR (partly enclosed; * unenclosed)
            1. Stopped Diapason 8
            2. *Nason Flute 4
            PEDAL
            3. Open Wood 16
            4. Bourdon 16
            5. Bass Flute 8 (from 4)
            """);
        Path organ = folder.resolve("organ.json");

        Reply reply = typed("read-stops", list.toString(), "-o", organ.toString());

        assertThat(reply.words()).doesNotContain("is taken to use", "is borrowed, but");
        assertThat(Files.readString(organ))
                .contains("\"name\": \"Nason Flute\", \"feet\": \"4\", \"family\": \"flute\"")
                .containsPattern("Nason Flute.*\"outside the box\": true")
                .doesNotContainPattern("Stopped Diapason.*\"outside the box\": true")
                .containsPattern("Bass Flute.*\"from\": \"Pedal: Bourdon 16\"");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "Great~Open Diapason 8~Choir (partly enclosed)~Viola 8~Flute 4"
                        + " | only some of its stops stand in the swell box",
                "Great~Open Diapason 8~Pedal~Bourdon 16~Couplers and accessories~Bench"
                        + " | couplers, but none of them is named",
                "Hauptwerk I~Principal 8~Octave 4~Schwellwerk II~Bourdon 8~Koppeln: II/I, Sub II-I, Sub I-II, Sub I-II"
                        + " | Couplers: II/I; Sub II-I; Sub I-II.",
                "Grand-Orgue~Montre 8~Récit~Flûte 8~Pédale~Soubasse 16~~Accouplement et tirasses"
                        + " | couplers, but none of them is named",
            })
    void what_a_list_only_hints_at_is_in_doubt(String list, String doubt) throws Exception {
        Path file = Files.writeString(folder.resolve("list.txt"), list.replace('~', '\n'));

        Reply reply = typed("read-stops", file.toString());

        assertThat(reply.status()).isEqualTo(Reply.WANTS_ATTENTION);
        assertThat(reply.results().replaceAll("\\s+", " ")).contains(doubt);
    }

    @Test
    void an_extension_without_a_name_is_of_the_stop_of_another_pitch_above_it() throws Exception {
        Path list = Files.writeString(
                folder.resolve("list.txt"),
                "Great\nOpen Diapason 8\nPedal\nBourdon 16\nBass Flute 8 (ext.)\nFlute 8\n");

        assertThat(typed("read-stops", list.toString()).words())
                .contains("Pedal Bass Flute 8 is taken to use the pipes of Pedal: Bourdon 16");
    }
}
