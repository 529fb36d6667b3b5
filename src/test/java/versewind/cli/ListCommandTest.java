package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static versewind.cli.Typing.typed;
import static versewind.cli.Typing.typedIn;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import versewind.Golden;

class ListCommandTest {

    @TempDir
    Path folder;

    @Test
    void the_shipped_plans_and_instruments_are_listed_as_before() {
        Reply reply = typed("list");

        Golden.check("list/shipped.txt", reply.results());
        assertThat(reply.status()).isEqualTo(Reply.GOOD);
        assertThat(reply.words()).isEmpty();
    }

    @Test
    void long_names_move_all_titles_and_none_out_of_line() throws IOException {
        Typing.makeLibrary(folder, Files.readString(Path.of("plans/harvest-festival.json")));
        Files.copy(
                Path.of("plans/harvest-festival.json"),
                folder.resolve("plans/harvest-festival-with-the-long-name.json"));

        assertThat(typedIn(folder, StandardCharsets.UTF_8, "list").results())
                .contains("Sun 4 Oct 2026   odd                                  Harvest Festival\n")
                .contains("Sun 4 Oct 2026   harvest-festival-with-the-long-name  Harvest Festival\n")
                .contains("            st-tethwin                           St Tethwin, Averstoke\n");
    }

    @Test
    void a_plan_that_cannot_be_read_hides_no_other() throws IOException {
        Typing.makeLibrary(folder, "{\"format\": 1, \"title\": \"Odd\", \"date\": \"2026-10-04\",");
        Files.copy(Path.of("plans/harvest-festival.json"), folder.resolve("plans/good.json"));

        Reply reply = typedIn(folder, StandardCharsets.UTF_8, "list");
        assertThat(reply.status()).isEqualTo(Reply.WANTS_ATTENTION);
        assertThat(reply.results())
                .contains("Sun 4 Oct 2026   odd                       Odd [cannot be read]\n")
                .contains("Sun 4 Oct 2026   good                      Harvest Festival\n");
        assertThat(reply.words())
                .startsWith("versewind: ")
                .contains("odd.json, line 1: ")
                .hasLineCount(1);
    }

    @Test
    void a_name_is_never_cut_and_a_title_only_by_the_edge_of_a_terminal() throws IOException {
        String name = "a-service-whose-name-is-as-long-as-the-name-of-a-file-can-be";
        String title = "A service whose title is longer than what is left of a line";
        Typing.makeLibrary(
                folder, Files.readString(Path.of("plans/wedding.json")).replace("\"st-tethwin\"", "\"ambrelow\""));
        Files.writeString(
                folder.resolve("plans/" + name + ".json"),
                Files.readString(Path.of("plans/harvest-festival.json")).replace("Harvest Festival", title));

        assertThat(typedIn(folder, StandardCharsets.UTF_8, "list").results()).contains(name + "  " + title + "\n");
        Environment piped = Typing.surroundings(folder, Optional.empty(), StandardCharsets.UTF_8);
        Environment narrow = new Environment(
                folder,
                Optional.empty(),
                Map.of(),
                piped.standardInput(),
                piped.charset(),
                piped.today(),
                piped.version(),
                Progress.QUIET,
                OptionalInt.of(80));
        assertThat(Commands.run(List.of("list"), narrow).results()).contains(name + "  ~\n");
    }

    @Test
    void as_json_troubles_are_told_and_unsaved_work_too() throws IOException {
        Typing.makeLibrary(folder, "{");
        Files.copy(Path.of("plans/harvest-festival.json"), folder.resolve("plans/.new.unsaved.json"));

        String json = typedIn(folder, StandardCharsets.UTF_8, "list", "--json").results();
        assertThat(json)
                .containsSubsequence("\"id\": \"new\"", "\"date\": \"2026-10-04\"", "\"unsavedWork\": true", "null")
                .containsSubsequence("\"id\": \"odd\"", "\"date\": null", "\"trouble\": \"", "odd.json, line 1")
                .contains("\"name\": \"St Tethwin\"");
    }

    @Test
    void an_empty_folder_has_no_plan_yet() {
        assertThat(typed("list", "--library", folder.toString()).results())
                .isEqualTo("No plans yet.\n\nNo instruments yet.\n");
    }
}
