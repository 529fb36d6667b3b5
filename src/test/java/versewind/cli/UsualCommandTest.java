package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UsualCommandTest {

    private static final String DRAW = "Great: Open Diapason 8, Principal 4; couplers: Swell to Great; Swell closed";

    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void make_a_library() throws IOException {
        Typing.makeLibrary(folder, "");
        file = folder.resolve("instruments/st-tethwin.json");
        for (String name : new String[] {"ordinary", "gentle", "full church"}) {
            usual("--name", name, "--remove");
        }
    }

    private Reply usual(String... more) {
        return Typing.typedIn(
                folder,
                StandardCharsets.UTF_8,
                Stream.concat(Stream.of("usual", "st-tethwin"), Stream.of(more)).toArray(String[]::new));
    }

    @Test
    void an_organ_without_any_asks_for_the_first() {
        assertThat(usual().results()).contains("What do you draw for an ordinary hymn, and");
    }

    @Test
    void one_that_is_kept_is_listed_in_the_notation_in_which_it_was_typed() {
        assertThat(usual("--draw", DRAW, "--people", "150").status()).isEqualTo(Reply.GOOD);

        assertThat(usual().results())
                .contains("ordinary: 150 people, singing ordinary, right\n")
                .contains(DRAW);
    }

    @Test
    void a_room_is_written_in_eighty_columns() {
        assertThat(Typing.typedIn(folder, StandardCharsets.UTF_8, "room", "st-tethwin")
                        .results()
                        .lines())
                .hasSize(2)
                .allMatch(line -> line.length() <= 80);
    }

    @Test
    void one_without_a_stop_is_refused() throws IOException {
        byte[] before = Files.readAllBytes(file);

        assertThat(usual("--name", "a b", "--draw", "").words()).contains("A usual registration needs a stop.");
        assertThat(usual("--name", "a b", "--draw", "couplers: Swell to Great").status())
                .isEqualTo(Reply.BAD);
        assertThat(file).hasBinaryContent(before);
    }

    @Test
    void what_is_written_over_is_kept_and_named() throws IOException {
        byte[] before = Files.readAllBytes(file);
        String kept = usual("--draw", DRAW).words();
        assertThat(kept(kept)).hasBinaryContent(before);

        byte[] now = Files.readAllBytes(file);
        String room = Typing.typedIn(folder, StandardCharsets.UTF_8, "room", "st-tethwin", "dry hall, 300 seats")
                .words();
        assertThat(kept(room)).hasBinaryContent(now);
    }

    private Path kept(String words) {
        return file.resolveSibling(words.replaceAll("(?s).*beside it, (\\S+)\\.\n.*", "$1"));
    }

    @Test
    void only_what_is_given_changes_in_one_that_is_kept() throws IOException {
        usual("--draw", DRAW, "--people", "150", "--right", "Swell");
        JsonNode before = json();
        usual("--felt", "a little soft");
        JsonNode after = json();

        assertThat(after.get("felt").asText()).isEqualTo("a little soft");
        assertThat(before.get("felt").asText()).isEqualTo("right");
        for (String field : new String[] {"name", "people", "singing", "mode", "right", "left", "hands", "drawn"}) {
            assertThat(after.get(field)).as(field).isEqualTo(before.get(field));
        }
    }

    private JsonNode json() throws IOException {
        return new ObjectMapper()
                .readTree(usual("--json").results())
                .get("usual")
                .get(0);
    }

    @Test
    void without_a_number_half_the_seats_are_taken() throws IOException {
        usual("--draw", DRAW);
        assertThat(json().get("people").asInt()).isEqualTo(260);
    }

    @Test
    void removing_it_restores_the_file_byte_for_byte() throws IOException {
        byte[] before = Files.readAllBytes(file);
        usual("--name", "gentle", "--draw", DRAW);
        assertThat(Files.readAllBytes(file)).isNotEqualTo(before);
        usual("--name", "gentle", "--remove");
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }

    @Test
    void up_to_a_dozen_are_kept() {
        for (int i = 1; i <= 12; i++) {
            assertThat(usual("--name", "no. " + i, "--draw", DRAW).status()).isEqualTo(Reply.GOOD);
        }
        assertThat(usual("--name", "one more", "--draw", DRAW).words()).contains("Remove one first");
    }

    @Test
    void mistakes_are_named_and_nothing_is_written() throws IOException {
        byte[] before = Files.readAllBytes(file);
        assertThat(usual("--draw", "Great: Principal 2").words()).contains("Great has no stop \"Principal 2\"");
        assertThat(usual("--name", "gentle", "--people", "20").words())
                .contains("has no usual registration \"gentle\"");
        assertThat(usual("--name", "gentle", "--remove").words()).contains("has no usual registration \"gentle\"");
        assertThat(usual("--remove").words()).contains("Say which with --name");
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }

    @Test
    void an_estimate_is_measured_by_it() {
        usual("--draw", DRAW, "--people", "150");
        Reply reply = Typing.typedIn(
                folder, StandardCharsets.UTF_8, "estimate", "st-tethwin", "--draw", DRAW, "--people", "140");
        assertThat(reply.results()).contains("usual       as loud as your usual\n");
    }

    @Test
    void what_contradicts_all_the_rest_is_pointed_out() {
        usual("--name", "a", "--draw", DRAW, "--people", "150", "--felt", "a little soft");
        usual("--name", "b", "--draw", DRAW, "--people", "150", "--felt", "a little soft");
        Reply reply = usual(
                "--name", "c", "--draw", "Great: Stopped Flute 8", "--people", "150", "--felt", "a little strong");
        assertThat(reply.status()).isEqualTo(Reply.WANTS_ATTENTION);
        assertThat(reply.results())
                .contains("You found your \"c\" too strong, but your \"a\" too soft, your \"b\" too soft.");
    }

    @Test
    void what_is_usual_is_proposed_first() throws IOException {
        Files.copy(Path.of("plans/ordinary-sunday.json"), folder.resolve("plans/ordinary-sunday.json"));
        usual("--draw", "Great: all; couplers: Great to Pedal", "--people", "140");
        Reply reply = Typing.typedIn(
                folder, StandardCharsets.UTF_8, "propose", "ordinary-sunday", "--hymn", "1", "--verse", "V1");

        assertThat(reply.results()).contains("\n1  Your usual", "Compared with no. 2: ");
    }

    @Test
    void what_is_usual_comes_last_in_a_verse_that_it_is_too_strong_for() throws IOException {
        String plan = Files.readString(Path.of("plans/ordinary-sunday.json"))
                .replaceFirst("\"label\": \"V1\",", "\"label\": \"V1\", \"mood\": \"gentle\",");
        Files.writeString(folder.resolve("plans/ordinary-sunday.json"), plan);
        usual("--draw", "Great: all; Swell: all; couplers: Great to Pedal, Swell to Great", "--people", "140");
        Reply reply = Typing.typedIn(
                folder, StandardCharsets.UTF_8, "propose", "ordinary-sunday", "--hymn", "1", "--verse", "V1");

        assertThat(reply.results())
                .doesNotContain("\n1  Your usual")
                .containsPattern("Your usual[^.]*\\.\\s+Compared with no\\. 1: stronger than this verse wants");
    }
}
