package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static versewind.cli.Typing.typed;
import static versewind.cli.Typing.typedIn;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.Golden;

class CommandsTest {

    @Test
    void help_reads_as_before_and_stays_within_eighty_columns() {
        Golden.check("help/versewind.txt", typed("--help").results());
        Golden.check("help/estimate.txt", typed("estimate", "-h").results());
        Golden.check("help/sheet.txt", typed("sheet", "--help").results());
        for (String word : Subcommand.words()) {
            assertThat(typed(word, "--help").results().lines()).allMatch(line -> line.length() <= 80);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "-h", "--version", "-V"})
    void help_and_version_are_results_and_need_nothing_else(String option) {
        for (List<String> typed : List.of(
                List.of(option), List.of("assess", option), List.of("estimate", option), List.of(option, "assess"))) {
            Reply reply = typed(typed.toArray(String[]::new));
            assertThat(reply.status()).as(typed.toString()).isEqualTo(Reply.GOOD);
            assertThat(reply.results()).as(typed.toString()).isNotEmpty();
            assertThat(reply.words()).as(typed.toString()).isEmpty();
        }
    }

    @Test
    void the_version_is_told() {
        assertThat(typed("--version")).isEqualTo(new Reply(Reply.GOOD, "versewind 1.2.3\n", ""));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "assess | PLAN is missing. See versewind assess --help.",
                "estimate | INSTRUMENT is missing. See versewind estimate --help.",
                "estimate st-tethwin | --draw STOPS is missing. See versewind estimate --help.",
                "estimate st-tethwin --draw | --draw STOPS is missing. See versewind estimate --help.",
                "assess wedding --jsno | There is no option \"--jsno\"."
                        + " Did you mean \"--json\"? See versewind assess --help.",
                "assess wedding --window | There is no option \"--window\". The options are \"--hymn\", \"--verse\","
                        + " \"--people\", \"--heard\", \"-v\", \"--spoken\", \"--json\", \"--library\", \"--help\","
                        + " \"--version\". See versewind assess --help.",
                "assess wedding easter | \"easter\" is one word too many. See versewind assess --help.",
                "desk | PLAN is missing. See versewind desk --help.",
                "desk weding | plans: there is no \"weding\" here. Did you mean \"wedding\"?",
                "desk wedding easter | \"easter\" is one word too many. See versewind desk --help.",
                "wedding easter | \"easter\" is one word too many. See versewind --help.",
                "wedding assess easter | Write \"wedding\" after the command assess.",
                "--frobnicate | There is no option \"--frobnicate\"."
                        + " The options are \"--window\", \"--large\", \"--spoken\", \"--library\", \"--help\","
                        + " \"--version\". See versewind --help.",
                "assess --json=yes wedding | --json takes no value. Leave out what follows the equals sign."
                        + " See versewind assess --help.",
                "assess weding | plans: there is no \"weding\" here. Did you mean \"wedding\"?",
                "asess | There is no command \"asess\". Did you mean \"assess\"? See versewind --help.",
                "asses wedding | There is no command \"asses\". Did you mean \"assess\"? See versewind --help.",
                "weding | plans: there is no \"weding\" here. Did you mean \"wedding\"?",
                "assess plans | plans: there is no \"plans\" here. There are \"advent-candlelight\", \"ash-wednesday\","
                        + " \"easter-cathedral\", \"harvest-festival\", \"ordinary-sunday\", \"wedding\".",
                "assess ./plans | plans: this is a folder. Name a file in it.",
                "assess ./ | .: this is a folder. Name a file in it.",
                "assess nowhere/x.json | nowhere/x.json: there is no such file."
                        + " Look for it in another folder, or restore it from a copy.",
                "estimate st-tethwyn --draw x | instruments: there is no \"st-tethwyn\" here."
                        + " Did you mean \"st-tethwin\"?",
            })
    void what_is_typed_wrong_is_answered_with_a_sentence(String typed, String sentence) {
        assertThat(typed(typed.split(" ", -1))).isEqualTo(new Reply(Reply.BAD, "", "versewind: " + sentence + "\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"wedding", "plans/wedding.json", "desk wedding", ""})
    void the_editor_says_that_it_has_no_terminal(String typed) {
        Reply reply = typed.isEmpty() ? typed() : typed(typed.split(" ", -1));

        assertThat(reply.status()).isEqualTo(Reply.BAD);
        assertThat(reply.results()).isEmpty();
        assertThat(reply.words()).startsWith("versewind: the full screen needs a terminal: ");
    }

    @Test
    void what_looks_like_an_option_can_be_a_plan() {
        assertThat(typed("--", "-odd").words()).startsWith("versewind: plans: there is no \"-odd\" here.");
    }

    @Test
    void what_was_typed_cannot_move_the_cursor() {
        assertThat(typed("assess", "a\033[2Jb").words()).doesNotContain("\033");
        assertThat(typed("estimate", "st-tethwin", "--draw", "\033[2J: x").words())
                .doesNotContain("\033");
    }

    @Test
    void words_are_in_the_terminals_letters() {
        Reply reply =
                typedIn(Typing.SHIPPED, StandardCharsets.US_ASCII, "estimate", "foundlings-chapel", "--draw", "x: y");

        assertThat(reply.words())
                .isEqualTo("versewind: The organ has no division \"x\"."
                        + " The divisions are \"Hauptwerk\", \"Ruckpositiv\", \"Pedal\".\n");
    }
}
