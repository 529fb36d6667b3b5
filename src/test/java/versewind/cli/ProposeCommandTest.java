package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.Golden;

class ProposeCommandTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int ENOUGH = 6;
    private static final int AT_ONCE = -1;

    @TempDir
    private Path folder;

    private Path plan;

    /** Reads progress, and presses Ctrl-C after so many words of it. */
    private static final class Impatient implements Progress {
        private final List<String> told = new ArrayList<>();
        private final int patience;

        Impatient(int patience) {
            this.patience = patience;
        }

        @Override
        public void tell(String progress) {
            told.add(progress);
        }

        @Override
        public boolean isInterrupted() {
            return told.size() > patience;
        }
    }

    @BeforeEach
    void copy_the_library() throws IOException {
        for (String name : List.of("instruments/st-tethwin.json", "plans/ordinary-sunday.json")) {
            Files.createDirectories(folder.resolve(name).getParent());
            Files.copy(Path.of(name), folder.resolve(name));
        }
        plan = folder.resolve("plans/ordinary-sunday.json");
    }

    private Reply typed(Progress meanwhile, String... words) {
        return Commands.run(
                List.of(words),
                new Environment(
                        folder,
                        Optional.empty(),
                        Map.of(),
                        InputStream.nullInputStream(),
                        StandardCharsets.UTF_8,
                        LocalDate.of(2026, 11, 25),
                        "1.0",
                        meanwhile,
                        OptionalInt.empty()));
    }

    private Reply typed(String... words) {
        return typed(Progress.QUIET, words);
    }

    @Test
    void a_verse_has_up_to_five_proposals_in_eighty_columns() {
        Reply reply = typed("propose", "ordinary-sunday", "--hymn", "1", "--verse", "V2");

        Golden.check("propose/verse.txt", reply.results());
        assertThat(reply.status()).isEqualTo(Reply.GOOD);
        assertThat(reply.results().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void a_hymn_has_one_proposal_for_every_verse() {
        assertThat(typed("propose", "ordinary-sunday", "--hymn", "3").results())
                .containsSubsequence("\n142  ", "\nIntro ", "\nV1 ", "\nV2 ", "general pistons are used.")
                .doesNotContain("\n190  ", "no proposal");
    }

    @Test
    void the_parts_of_the_json_add_up_to_the_score() throws IOException {
        JsonNode whole =
                JSON.readTree(typed("propose", "ordinary-sunday", "--json").results());

        assertThat(whole.path("hymns")).hasSize(4);
        int proposals = 0;
        for (JsonNode hymn : whole.path("hymns")) {
            for (JsonNode verse : hymn.path("verses")) {
                for (JsonNode proposal : verse.path("proposals")) {
                    double sum = 0;
                    for (JsonNode part : proposal.path("parts")) {
                        sum += part.path("points").asDouble();
                    }
                    assertThat(proposal.path("score").asDouble()).isCloseTo(sum, within(0.005));
                    assertThat(proposal.path("draw")).isNotEmpty();
                    assertThat(proposal.path("draw").get(0).has("division")).isTrue();
                    assertThat(proposal.path("why").asText()).endsWith(".");
                    proposals++;
                }
            }
        }
        assertThat(proposals).isEqualTo(18);
        assertThat(whole.path("greedyCost").asDouble())
                .isGreaterThanOrEqualTo(whole.path("cost").asDouble());
    }

    @Test
    void the_same_plan_has_the_same_proposals() {
        assertThat(typed("propose", "ordinary-sunday", "--json").results())
                .isEqualTo(typed("propose", "ordinary-sunday", "--json").results());
    }

    @Test
    void what_is_written_is_drawn_in_the_plan_and_its_pistons_are_set() throws IOException {
        Reply reply = typed("propose", "ordinary-sunday", "--write");

        assertThat(reply.words()).startsWith("versewind: 18 verses written to ");
        JsonNode written = JSON.readTree(plan.toFile());
        assertThat(written.findValuesAsText("piston")).isNotEmpty().allMatch(piston -> piston.matches("G[1-6]"));
        assertThat(typed("assess", "ordinary-sunday").status()).isEqualTo(Reply.GOOD);
        Path before = folder.resolve("bin/ordinary-sunday.json");
        assertThat(reply.words()).endsWith("The version before is kept: bin/ordinary-sunday.json.\n");
        assertThat(before).hasSameBinaryContentAs(Path.of("plans/ordinary-sunday.json"));
    }

    @Test
    void one_verse_that_is_written_leaves_the_others_alone() throws IOException {
        String before = Files.readString(plan);
        typed("propose", "ordinary-sunday", "--hymn", "1", "--verse", "V2", "--write");
        JsonNode was = JSON.readTree(before);
        JsonNode is = JSON.readTree(plan.toFile());

        assertThat(is.path("hymns").get(1)).isEqualTo(was.path("hymns").get(1));
        assertThat(is.path("hymns").get(0).path("verses").get(2))
                .isNotEqualTo(was.path("hymns").get(0).path("verses").get(2));
        assertThat(is.path("hymns").get(0).path("verses").get(1))
                .isEqualTo(was.path("hymns").get(0).path("verses").get(1));
    }

    @Test
    void a_verse_that_is_no_longer_on_its_piston_is_told() throws IOException {
        Path harvest = folder.resolve("plans/harvest-festival.json");
        Files.copy(Path.of("plans/harvest-festival.json"), harvest);

        Reply reply = typed("propose", "harvest-festival", "--hymn", "208", "--write");

        List<String> off = new ArrayList<>();
        JsonNode was = JSON.readTree(Path.of("plans/harvest-festival.json").toFile());
        JsonNode is = JSON.readTree(harvest.toFile());
        for (int i = 0; i < 7; i++) {
            JsonNode before = was.path("hymns").get(0).path("verses").get(i);
            JsonNode after = is.path("hymns").get(0).path("verses").get(i);
            if (before.has("piston") && !after.has("piston")) {
                off.add("208 " + before.path("label").asText());
            }
        }
        assertThat(off).isNotEmpty();
        assertThat(reply.words()).contains("no longer by a piston: " + String.join(", ", off) + ".\n");
    }

    @Test
    void without_write_nothing_is_written() throws IOException {
        String before = Files.readString(plan);
        typed("propose", "ordinary-sunday");

        assertThat(plan).hasContent(before.stripTrailing());
    }

    @Test
    void the_search_for_one_verse_can_be_stopped_too_and_tells_the_best_so_far() {
        Reply reply = typed(new Impatient(AT_ONCE), "propose", "ordinary-sunday", "--hymn", "1", "--verse", "V1");

        assertThat(reply.status()).isEqualTo(Reply.WANTS_ATTENTION);
        assertThat(reply.words()).contains("The search was stopped; these are the best so far.");
        assertThat(reply.results()).contains("hands");
    }

    @Test
    void a_search_that_is_stopped_before_it_has_anything_says_so() {
        Reply reply = typed(new Impatient(AT_ONCE), "propose", "ordinary-sunday");

        assertThat(reply.status()).isEqualTo(Reply.WANTS_ATTENTION);
        assertThat(reply.words()).isEqualTo("versewind: The search was stopped before anything was found.\n");
    }

    @Test
    void progress_is_told_and_a_search_that_is_stopped_keeps_what_it_has() throws IOException {
        Impatient impatient = new Impatient(ENOUGH);
        Reply reply = typed(impatient, "propose", "ordinary-sunday", "--write");

        assertThat(impatient.told).contains("versewind: 0 of 18 verses searched; Ctrl-C stops.");
        assertThat(reply.status()).isEqualTo(Reply.WANTS_ATTENTION);
        assertThat(reply.words()).contains("The search was stopped; 12 verses were not searched.", "6 verses written");
        JsonNode was = JSON.readTree(Path.of("plans/ordinary-sunday.json").toFile());
        assertThat(JSON.readTree(plan.toFile()).path("hymns").get(3))
                .isEqualTo(was.path("hymns").get(3));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--hymn 9            | The plan has no hymn \"9\". It has the hymns 31, 77, 142, 190.",
                "--hymn 1 --verse V9 | The hymn has no verse \"V9\". It has Intro, V1, V2, V3, Last.",
                "--verse V1          | --verse needs --hymn, because the plan has 4 hymns."
            })
    void what_is_not_there_is_told_with_what_there_is(String options, String sentence) {
        List<String> words = new ArrayList<>(List.of("propose", "ordinary-sunday"));
        words.addAll(List.of(options.strip().split(" ")));

        assertThat(typed(words.toArray(String[]::new)))
                .isEqualTo(new Reply(Reply.BAD, "", "versewind: " + sentence + "\n"));
    }

    @Test
    void a_hymn_is_found_by_its_number_in_the_book() {
        assertThat(typed("propose", "ordinary-sunday", "--hymn", "142").results())
                .isEqualTo(typed("propose", "ordinary-sunday", "--hymn", "3").results());
    }
}
