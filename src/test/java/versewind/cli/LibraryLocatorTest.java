package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
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
import versewind.organ.NotationException;

class LibraryLocatorTest {

    @TempDir
    Path folder;

    private Path working;
    private Path program;

    @BeforeEach
    void a_program_with_a_wedding_and_a_working_folder_with_nothing() throws IOException {
        working = Files.createDirectory(folder.resolve("working"));
        program = library("program", "wedding");
    }

    private Path library(String name, String plan) throws IOException {
        Path made = folder.resolve(name);
        Files.createDirectories(made.resolve("plans"));
        Files.createDirectories(made.resolve("instruments"));
        Files.copy(Path.of("instruments/st-tethwin.json"), made.resolve("instruments/st-tethwin.json"));
        Files.copy(Path.of("plans/harvest-festival.json"), made.resolve("plans/" + plan + ".json"));
        return made;
    }

    private Reply list(Map<String, String> environment, String... typed) {
        Environment surroundings = new Environment(
                working,
                Optional.of(program),
                environment,
                InputStream.nullInputStream(),
                StandardCharsets.UTF_8,
                LocalDate.of(2026, 11, 1),
                "1.2.3");
        return Commands.run(List.of(typed), surroundings);
    }

    @Test
    void the_option_goes_before_the_variable_and_that_before_the_working_folder() throws IOException {
        String typed = library("typed", "of-the-option").toString();
        Map<String, String> set =
                Map.of("VERSEWIND_LIBRARY", library("set", "of-the-variable").toString());
        library("working", "of-the-working-folder");

        assertThat(list(set, "list", "--library", typed).results()).contains(" of-the-option ");
        assertThat(list(set, "--library=" + typed, "list").results()).contains(" of-the-option ");
        assertThat(list(set, "list").results()).contains(" of-the-variable ");
        assertThat(list(Map.of("VERSEWIND_LIBRARY", ""), "list").results()).contains(" of-the-working-folder ");
    }

    @Test
    void your_own_library_is_made_on_first_use_with_what_is_shipped() {
        Path data = folder.resolve("data");

        assertThat(list(Map.of("XDG_DATA_HOME", data.toString(), "HOME", "/nowhere"), "list")
                        .results())
                .contains(" wedding ");
        assertThat(data.resolve("versewind/plans/wedding.json")).exists();
        assertThat(list(Map.of("XDG_DATA_HOME", "not/absolute", "HOME", folder.toString()), "list")
                        .results())
                .contains(" wedding ");
        assertThat(folder.resolve(".local/share/versewind/plans/wedding.json")).exists();
    }

    @Test
    void the_programs_own_folder_is_nobodys_library() {
        working = program;

        assertThat(list(Map.of("HOME", folder.toString()), "list").results()).contains(" wedding ");
        assertThat(folder.resolve(".local/share/versewind/plans/wedding.json")).exists();
    }

    @Test
    void help_makes_no_library() {
        list(Map.of("HOME", folder.toString()), "--help");

        assertThat(folder.resolve(".local")).doesNotExist();
    }

    @Test
    void a_folder_that_is_not_there_is_told_with_who_names_it() {
        assertThat(list(Map.of(), "list", "--library", "gone").words())
                .isEqualTo(
                        "versewind: There is no folder \"gone\", which --library names. Create it, or name the folder"
                                + " that contains plans and instruments.\n");
        assertThat(list(Map.of("VERSEWIND_LIBRARY", "gone"), "list").words())
                .startsWith("versewind: There is no folder \"gone\", which VERSEWIND_LIBRARY names.");
        assertThat(list(Map.of(), "list", "--library=").status()).isEqualTo(Reply.BAD);
    }

    @Test
    void the_option_wants_a_folder_and_only_one() {
        assertThat(list(Map.of(), "list", "--library").words())
                .isEqualTo("versewind: --library DIR is missing. See versewind list --help.\n");
        assertThatThrownBy(() -> LibraryLocator.of(List.of("--library", "a", "--library=b")))
                .isInstanceOf(UsageException.class)
                .hasMessage("--library can be given only once.");
    }

    @Test
    void behind_two_hyphens_it_is_no_option() throws NotationException {
        assertThat(LibraryLocator.of(List.of("find", "--", "--library", "x")).rest())
                .containsExactly("find", "--", "--library", "x");
    }
}
