package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static versewind.cli.Typing.typed;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever lists the subcommands lists those of the table. */
class HelpCommandTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource(Subcommand.class)
    void every_subcommand_has_its_help_its_line_and_its_place_in_the_manual(Subcommand subcommand) {
        String word = subcommand.word();

        assertThat(typed("help", word)).isEqualTo(typed(word, "--help"));
        assertThat(typed("help", word).results()).startsWith("Usage: versewind " + word + " ");
        assertThat(typed("help").results()).containsPattern("\n  " + word + " +[A-Z]");
        assertThat(typed("help", "--man").results()).contains(".SS " + word.replace("-", "\\-") + "\n");
    }

    @Test
    void help_alone_is_the_help_of_the_program() {
        assertThat(typed("help")).isEqualTo(typed("--help"));
    }

    @Test
    void a_command_that_is_not_there_is_answered_with_the_nearest() {
        assertThat(typed("help", "asses").words())
                .isEqualTo("versewind: There is no command \"asses\". Did you mean \"assess\"?\n");
    }

    @Test
    void the_manual_page_has_its_sections_and_common_options_once() {
        String page = typed("help", "--man").results();

        assertThat(page)
                .startsWith(".TH VERSEWIND 1\n")
                .containsSubsequence(
                        ".SH NAME",
                        ".SH SYNOPSIS",
                        ".SH DESCRIPTION",
                        ".SH OPTIONS",
                        ".SH COMMANDS",
                        ".SH EXIT STATUS",
                        ".SH ENVIRONMENT",
                        ".SH FILES",
                        ".SH EXAMPLES",
                        ".SH SEE ALSO")
                .containsOnlyOnce(".B \\-\\-library DIR\n")
                .doesNotContain("\n'");
    }

    @Test
    void the_launcher_leaves_the_terminal_alone_for_all_subcommands_but_the_desk() throws IOException {
        String launcher = Files.readString(Path.of("src/main/launcher/versewind"));
        String list = launcher.lines()
                .filter(line -> line.strip().startsWith("-* | "))
                .findFirst()
                .orElseThrow();
        Set<String> words = new TreeSet<>(
                Arrays.asList(list.replaceAll("-\\* \\||\\).*| ", "").split("\\|", -1)));
        Set<String> printing = new TreeSet<>(Subcommand.words());
        printing.remove(Subcommand.DESK.word());
        printing.add("reckon");

        assertThat(words).isEqualTo(printing);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "asse                    | assess",
                "desk harv               | harvest-festival",
                "estimate st-            | st-tethwin",
                "assess --peo            | --people",
                "sheet wedding --format h| html",
                "help cal                | calibrate/calc",
                "harv                    | harvest-festival",
                "sheet wedding --format = h      | html",
                "change wedding --mode s         | small choir/soloist",
                "change wedding --singing fu     | full voice",
                "change wedding --hands pe       | pedal by coupler",
                "change wedding --verse Re       | Refrain",
                "change wedding --box R          | Récit\\ expressif=",
                "change wedding --box Sw = h     | half",
                "estimate st-tethwin --box Sw    | Swell=",
                "import list.csv --replace wed   | wedding",
                "calc l                          | loudness",
                "reckon do                       | dose",
            })
    void the_shell_completes_subcommands_options_and_names(String typed, String completed) throws Exception {
        assertThat(completed(typed)).isEqualTo(completed);
    }

    @ParameterizedTest
    @ValueSource(strings = {"--library %s desk Zo", "--library = %s desk Zo", "--library %s desk '\"Zo'"})
    void a_name_with_blanks_in_a_library_that_is_named_is_one_word(String typed) throws Exception {
        Path plans = Files.createDirectories(folder.resolve("two words/plans"));
        Files.writeString(plans.resolve("Zoe et fete.json"), "{}");

        assertThat(completed(String.format(typed, "'" + folder.resolve("two words") + "'")))
                .isEqualTo("Zoe et fete");
    }

    /** The words between which the shell leaves a choice, with strokes between them. */
    private String completed(String typed) throws Exception {
        Path script = Files.writeString(
                folder.resolve("completion"), typed("help", "--completion").results());
        String words = "versewind " + typed.strip();
        Process bash = new ProcessBuilder(List.of(
                        "bash",
                        "-c",
                        ". " + script + "; COMP_WORDS=(" + words
                                + "); COMP_CWORD=$((${#COMP_WORDS[@]} - 1)); _versewind; IFS=/; echo"
                                + " \"${COMPREPLY[*]}\""))
                .redirectErrorStream(true)
                .start();

        String completed = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        assertThat(bash.waitFor()).isZero();
        return completed;
    }
}
