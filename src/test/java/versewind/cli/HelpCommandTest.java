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
                "help cal                | calibrate calc",
                "harv                    | harvest-festival",
            })
    void the_shell_completes_subcommands_options_and_names(String typed, String completed) throws Exception {
        Path script = Files.writeString(
                folder.resolve("completion"), typed("help", "--completion").results());
        String words = "versewind " + typed.strip();
        int last = words.split(" ", -1).length - 1;
        Process bash = new ProcessBuilder(List.of(
                        "bash",
                        "-c",
                        ". " + script + "; COMP_WORDS=(" + words + "); COMP_CWORD=" + last
                                + "; _versewind; echo \"${COMPREPLY[@]}\""))
                .redirectErrorStream(true)
                .start();

        assertThat(new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip())
                .isEqualTo(completed);
        assertThat(bash.waitFor()).isZero();
    }
}
