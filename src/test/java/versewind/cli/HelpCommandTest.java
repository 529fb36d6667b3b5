package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static versewind.cli.Typing.typed;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HelpCommandTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "assess",
                "list",
                "find",
                "export",
                "import",
                "propose",
                "estimate",
                "sheet",
                "read-stops",
                "help"
            })
    void help_of_a_command_is_what_the_command_says_of_itself(String command) {
        assertThat(typed("help", command)).isEqualTo(typed(command, "--help"));
    }

    @Test
    void help_alone_lists_the_commands() {
        assertThat(typed("help")).isEqualTo(typed("--help"));
    }

    @Test
    void a_command_that_is_not_there_is_answered_with_the_nearest() {
        assertThat(typed("help", "asses").words())
                .isEqualTo("versewind: There is no command \"asses\". Did you mean \"assess\"?\n");
    }

    @Test
    void the_manual_page_tells_of_every_command_and_of_the_environment() {
        String page = typed("help", "--man").results();

        assertThat(page)
                .startsWith(".TH VERSEWIND 1\n")
                .contains(".SS assess\n", ".SS import\n", ".B \\-\\-library DIR\n", ".B VERSEWIND_LIBRARY\n")
                .doesNotContain("\n'");
    }

    @Test
    void the_completion_knows_every_command_and_option() {
        assertThat(typed("help", "--completion").results())
                .startsWith("#!/usr/bin/env bash\n")
                .contains("assess", "export", "--json", "--library", "complete -F");
    }
}
