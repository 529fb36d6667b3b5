package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static versewind.cli.Typing.typed;
import static versewind.cli.Typing.typedIn;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import versewind.Golden;

class FindCommandTest {

    @TempDir
    Path folder;

    @Test
    void a_long_heading_is_wrapped_and_not_cut() {
        String found = typed("find", "orrin", "festal").results();

        assertThat(found).contains("Cathedral of\n                 St Orrin\n").doesNotContain("~");
    }

    @Test
    void what_was_drawn_for_a_tune_reads_as_before() {
        Reply reply = typed("find", "corvening");

        Golden.check("find/corvening.txt", reply.results());
        assertThat(reply.status()).isEqualTo(Reply.GOOD);
        assertThat(reply.words()).isEmpty();
    }

    @Test
    void a_stop_is_found_in_the_verses_that_draw_it_and_in_no_other() {
        String found = typed("find", "harvest 208 trumpet").results();

        assertThat(found).contains("Trumpet 8", "    V4 ").doesNotContain("    V1 ");
    }

    @Test
    void a_date_is_found_in_words_and_in_figures() {
        assertThat(typed("find", "4 october 2026").results())
                .isEqualTo(typed("find", "2026-10-04").results())
                .contains("Harvest Festival");
    }

    @Test
    void nothing_found_is_said_and_told_by_the_exit_status() {
        assertThat(typed("find", "no such tune"))
                .isEqualTo(new Reply(Reply.WANTS_ATTENTION, "", "versewind: Nothing matches \"no such tune\".\n"));
        assertThat(typed("find", "no such tune", "--json").results()).contains("\"found\": [ ]");
        assertThat(typed("find", " ").status()).isEqualTo(Reply.BAD);
    }

    @Test
    void a_plan_that_cannot_be_read_is_told_and_the_others_are_looked_into() throws IOException {
        Typing.makeLibrary(folder, "{");
        Files.copy(Path.of("plans/harvest-festival.json"), folder.resolve("plans/good.json"));

        Reply reply = typedIn(folder, StandardCharsets.UTF_8, "find", "corvening", "--json");
        assertThat(reply.results()).contains("\"id\": \"good\"", "\"tune\": \"CORVENING\"", "\"drawn\": {");
        assertThat(reply.words()).startsWith("versewind: Not searched: ").contains("odd.json, line 1");
    }
}
