package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static versewind.cli.Typing.typed;
import static versewind.cli.Typing.typedIn;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import versewind.Golden;
import versewind.Shipped;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.screen.toolkit.Text;

class AssessCommandTest {

    /** Nothing drawn under a congregation, a choir under full organ, and texts that are hard to show. */
    private static final String ODD = """
        {"format": 1, "title": "\\u001b[2J\\u8b9a\\u7f8e Vespers", "instrument": "st-tethwin", "people": 1, "hymns": [
          {"number": "",
           "title": "Ch\\u0153ur c\\u00e9leste, whose first line is so long that it goes on and on and on over the top",
           "verses": [
            {"kind": "verse", "label": "\\u8b9a\\u7f8e\\u8b9a\\u7f8e", "mode": "congregation", "singing": "gentle",
             "hands": "four parts", "right": "Great", "left": "Great", "drawn": {}},
            {"kind": "last verse", "label": "Verse the last", "mode": "small choir", "singing": "gentle",
             "hands": "four parts", "right": "Great", "left": "Great",
             "drawn": {"Great": ["Trumpet 8", "Mixture III"]}}]},
          {"number": "7", "title": "Re\\u0301cit\\r\\nwith a line end", "verses": []}]}
        """;

    @Test
    void an_assessment_reads_as_before() {
        Golden.check(
                "assess/harvest-festival.txt",
                typed("assess", "harvest-festival").results());
        Golden.check(
                "assess-people/harvest-festival.txt",
                typed("assess", "harvest-festival", "--people", "40,180,500").results());
    }

    @Test
    void a_verse_or_a_hymn_alone_reads_as_it_does_among_all() {
        Reply last = typed("assess", "harvest-festival", "--verse", "208/Last");
        String row =
                last.results().lines().filter(line -> line.startsWith("Last ")).collect(Collectors.joining("\n"));
        assertThat(typed("assess", "harvest-festival").results()).contains("\n" + row + "\n");
        assertThat(last.results()).doesNotContain("V1", "211  ");
        assertThat(typed("assess", "harvest-festival", "--hymn", "208", "--verse", "Last")
                        .results())
                .isEqualTo(last.results());
        assertThat(typed("assess", "harvest-festival", "--hymn", "211").results())
                .contains("211  ", "\nV3 ")
                .doesNotContain("208  ");
        assertThat(typed("assess", "harvest-festival", "--verse", "208/Last", "--people", "40,1000")
                        .results())
                .contains("\nLast ")
                .doesNotContain("\nV1 ", "211  ");
        assertThat(typed("assess", "harvest-festival", "--verse", "208/Last", "--json")
                        .results())
                .contains("\"label\": \"Last\"")
                .doesNotContain("\"label\": \"V1\"", "\"number\": \"211\"");
    }

    @Test
    void only_a_verse_that_is_shown_decides_the_exit_status() {
        assertThat(typed("assess", "harvest-festival", "--people", "5000").status())
                .isEqualTo(Reply.WANTS_ATTENTION);
        assertThat(typed("assess", "harvest-festival", "--verse", "208/Intro", "--people", "5000")
                        .status())
                .isEqualTo(Reply.GOOD);
        assertThat(typed("assess", "harvest-festival", "--verse", "9/V1").words())
                .contains("The plan has no hymn \"9\".");
    }

    @ParameterizedTest
    @MethodSource("versewind.Shipped#plans")
    void every_verse_of_a_shipped_plan_has_its_row_within_eighty_columns(String plan) {
        Plan read = Shipped.plan(plan).plan();
        for (Reply reply : List.of(typed("assess", plan), typed("assess", plan, "--people", "40,180,500"))) {
            assertThat(reply.words()).isEmpty();
            assertThat(reply.results().lines()).allMatch(line -> Text.columns(line) <= 80);
            for (Hymn hymn : read.hymns()) {
                assertThat(reply.results())
                        .containsSubsequence(hymn.verses().stream()
                                .map(verse -> "\n"
                                        + verse.label()
                                                .substring(
                                                        0,
                                                        Math.min(
                                                                4, verse.label().length())))
                                .toList());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("versewind.Shipped#plans")
    void the_exit_status_agrees_with_the_summary(String plan) {
        Reply reply = typed("assess", plan);

        assertThat(reply.status())
                .isEqualTo(
                        reply.results().contains("\nNo verse needs attention.\n") ? Reply.GOOD : Reply.WANTS_ATTENTION);
    }

    @Test
    void where_the_leads_are_well_a_caution_is_told_all_the_same(@TempDir Path folder) throws IOException {
        String plan = Files.readString(Path.of("plans/harvest-festival.json"));
        Typing.makeLibrary(folder, plan.replaceFirst("\"piston\": \"G3\"", "\"piston\": \"G9\""));
        Reply reply = typedIn(folder, StandardCharsets.UTF_8, "assess", "odd");

        assertThat(reply.results())
                .contains("\nNo verse needs attention, but there is 1 caution: 208 Intro no such piston.\n")
                .doesNotContain("No verse needs attention.");
        assertThat(reply.status()).isEqualTo(Reply.GOOD);
    }

    @Test
    void more_than_three_numbers_of_people_stand_in_several_tables() {
        Reply reply = typed("assess", "wedding", "--people", "1, 90,200,700");

        assertThat(reply.results())
                .contains("     1 person                 90 people                200 people\n")
                .contains("     700 people\n");
        assertThat(typed("assess", "wedding", "--people", "90", "--json").results())
                .contains("\"people\": [");
    }

    @Test
    void as_json_the_church_day_of_the_service_is_told() {
        for (String[] typed : List.of(
                new String[] {"assess", "ash-wednesday", "--json"},
                new String[] {"assess", "ash-wednesday", "--people", "90", "--json"},
                new String[] {"list", "--json"})) {
            assertThat(typed(typed).results())
                    .containsSubsequence(
                            "\"date\": \"2027-02-10\"",
                            "\"day\": {",
                            "\"season\": \"Lent\"",
                            "\"name\": \"Ash Wednesday\"",
                            "\"also\": null",
                            "\"occasion\": \"penitential\"");
        }
    }

    /** The odds in every report add up to 1, and hold every verdict on such a verse. */
    @ParameterizedTest
    @MethodSource("versewind.Shipped#plans")
    void as_json_the_odds_of_all_verdicts_add_up_to_one(String plan) {
        Pattern balance = Pattern.compile(
                "\"(lead|voice|soloLine)\": \\{\\s*\"share\": ([^,]+),\\s*\"verdict\": \"([^\"]+)\",\\s*\"odds\":"
                        + " \\{([^}]+)\\}");
        Map<String, List<String>> verdicts = Map.of(
                "lead", List.of("lost", "only just", "leads", "too strong"),
                "voice", List.of("covered", "only just", "clear"),
                "soloLine", List.of("buried", "only just", "stands out"));
        Matcher found = balance.matcher(typed("assess", plan, "--json").results());
        int balances = 0;
        while (found.find()) {
            List<String> words = new ArrayList<>();
            double sum = 0;
            for (String odds : found.group(4).split(",", -1)) {
                words.add(odds.replaceFirst("(?s)\\s*\"(.+)\": .*", "$1"));
                sum += Double.parseDouble(odds.replaceFirst("(?s).*: (\\S+)\\s*", "$1"));
            }
            assertThat(sum).as(found.group()).isCloseTo(1, within(1e-9));
            assertThat(words)
                    .isEqualTo(found.group(2).equals("null") ? List.of(found.group(3)) : verdicts.get(found.group(1)));
            balances++;
        }
        assertThat(balances).isGreaterThan(5);
    }

    @Test
    void as_json_a_service_without_a_date_has_no_church_day(@TempDir Path folder) throws IOException {
        Typing.makeLibrary(folder, ODD);
        assertThat(typedIn(folder, StandardCharsets.UTF_8, "assess", "odd", "--json")
                        .results())
                .contains("\"date\": null,\n  \"day\": null,");
    }

    @Test
    void numbers_of_people_that_are_none_are_refused() {
        assertThat(typed("assess", "wedding", "--people", "40,,60").words())
                .isEqualTo("versewind: Enter a whole number from 1 to 50000 for --people, not \"\".\n");
        assertThat(typed("assess", "wedding", "--people", "0").status()).isEqualTo(Reply.BAD);
        assertThat(typed("assess", "wedding", "--people", "1,2,3,4,5,6,7,8,9,10,11,12,13")
                        .words())
                .isEqualTo("versewind: Enter at most 12 numbers for --people.\n");
    }

    @Test
    void a_room_timed_in_two_octaves_says_that_the_others_are_estimated(@TempDir Path folder) throws IOException {
        Typing.makeLibrary(folder, ODD);
        Path instrument = folder.resolve("instruments/st-tethwin.json");
        Files.writeString(
                instrument,
                Files.readString(instrument)
                        .replaceFirst(
                                "\"reverberation\": \\{[^}]*}", "\"reverberation\": {\"500\": 3.1, \"1000\": 2.9}"));

        Reply reply = typedIn(folder, StandardCharsets.UTF_8, "assess", "odd");

        assertThat(reply.results())
                .contains("Reverberation: timed at 500, 1000 Hz; the other octaves are estimated from that");
    }

    @Test
    void a_plan_may_be_named_by_its_file() {
        assertThat(typed("assess", "plans/wedding.json")).isEqualTo(typed("assess", "wedding"));
    }

    @Test
    void what_was_said_of_a_verse_is_shown_and_moves_the_share_where_it_is_asked_for(@TempDir Path folder)
            throws IOException {
        Typing.makeLibrary(
                folder,
                Files.readString(Path.of("plans/harvest-festival.json"))
                        .replaceFirst("\"piston\": \"G4\"", "$0, \"heard\": \"too soft\", \"present\": 300"));
        String plain = typedIn(folder, StandardCharsets.UTF_8, "assess", "odd").results();
        String heeding = typedIn(folder, StandardCharsets.UTF_8, "assess", "--heard", "odd")
                .results();

        assertThat(plain).contains("heard    V1: too soft (300 people).");
        assertThat(share(heeding)).isLessThan(share(plain) - 3);
        assertThat(typedIn(folder, StandardCharsets.UTF_8, "assess", "--heard", "-v", "odd")
                        .results())
                .containsPattern("Since the answers of Sun 4 Oct 2026, the organ is taken to be \\d+ dB softer, ±\\d");
        assertThat(plain).doesNotContain("Since the answers");
        assertThat(typedIn(folder, StandardCharsets.UTF_8, "assess", "odd", "--json")
                        .results())
                .contains("\"heard\": \"too soft\"", "\"present\": 300");
    }

    /** The share of the first verse, in percent. */
    private static int share(String assessment) {
        String row = assessment
                .lines()
                .filter(line -> line.startsWith("V1 "))
                .findFirst()
                .orElseThrow();
        return Integer.parseInt(row.replaceFirst(".* (\\d+)%.*", "$1"));
    }

    @Test
    void to_heed_what_was_never_said_is_a_misuse() {
        Reply reply = typed("assess", "wedding", "--heard");

        assertThat(reply.status()).isEqualTo(Reply.BAD);
        assertThat(reply.words()).contains("No feedback is recorded in this plan");
    }

    @Test
    void names_of_any_letters_stay_in_their_columns(@TempDir Path folder) throws IOException {
        Typing.makeLibrary(folder, ODD);

        Reply reply = typedIn(folder, StandardCharsets.UTF_8, "assess", "odd");

        Golden.check("assess-odd/unicode.txt", reply.results());
        assertThat(reply.status()).isEqualTo(Reply.WANTS_ATTENTION);
        assertThat(reply.results().lines())
                .allSatisfy(line -> assertThat(Text.columns(line)).isLessThanOrEqualTo(80));
    }

    @Test
    void a_terminal_without_such_letters_gets_others(@TempDir Path folder) throws IOException {
        Typing.makeLibrary(folder, ODD);

        Reply reply = typedIn(folder, StandardCharsets.US_ASCII, "assess", "odd");

        assertThat(reply.results()).matches("[ -~\\n]+");
    }

    @Test
    void unsaved_work_is_mentioned(@TempDir Path folder) throws IOException {
        Typing.makeLibrary(folder, ODD);
        Files.writeString(folder.resolve("plans/.odd.unsaved.json"), ODD.replace("Vespers", "Compline"));

        Reply reply = typedIn(folder, StandardCharsets.UTF_8, "assess", "odd");

        assertThat(reply.results()).contains("Vespers");
        assertThat(reply.words())
                .isEqualTo(
                        "versewind: " + folder.resolve("plans/odd.json") + " has unsaved work, which is not assessed."
                                + " To restore it: versewind " + folder.resolve("plans/odd.json") + "\n");
    }

    @Test
    void a_plan_of_which_there_is_only_unsaved_work_is_assessed_without_a_word(@TempDir Path folder)
            throws IOException {
        Typing.makeLibrary(folder, ODD);
        Files.move(folder.resolve("plans/odd.json"), folder.resolve("plans/.odd.unsaved.json"));

        Reply reply = typedIn(folder, StandardCharsets.UTF_8, "assess", "odd");

        assertThat(reply.results()).contains("Vespers");
        assertThat(reply.words()).isEmpty();
    }

    @Test
    void a_broken_plan_is_refused_with_its_place(@TempDir Path folder) throws IOException {
        Typing.makeLibrary(folder, ODD.replace("Trumpet 8", "Trumpt 8"));

        Reply reply = typedIn(folder, StandardCharsets.UTF_8, "assess", "odd");

        assertThat(reply)
                .isEqualTo(new Reply(
                        Reply.BAD,
                        "",
                        "versewind: " + folder.resolve("plans/odd.json")
                                + ", line 9, hymns[0].verses[1].drawn.Great[0]:"
                                + " Great has no stop \"Trumpt 8\". Did you mean \"Trumpet 8\"?\n"));
    }

    @Test
    void a_room_of_an_unknown_material_is_refused_with_its_place(@TempDir Path folder) throws IOException {
        Typing.makeLibrary(folder, ODD);
        Path instrument = folder.resolve("instruments/st-tethwin.json");
        Files.writeString(
                instrument,
                Files.readString(instrument)
                        .replaceFirst(
                                "\"reverberation\": \\{[^}]*}",
                                "\"surfaces\": [{\"material\": \"limestone wal\", \"area\": 900}]"));

        Reply reply = typedIn(folder, StandardCharsets.UTF_8, "assess", "odd");

        assertThat(reply.status()).isEqualTo(Reply.BAD);
        assertThat(reply.words())
                .contains("room.surfaces[0].material: there is no material \"limestone wal\"."
                        + " Did you mean \"limestone wall\"?");
    }

    @Test
    void spoken_a_verse_is_a_sentence_and_what_is_so_in_every_hymn_is_said_once() {
        String said = typed("assess", "harvest-festival", "--spoken").results();
        assertThat(said)
                .contains("\nV2: congregation of 480; triple forte, 84 decibels, leads, 9 in 10; about 2 decibels"
                        + " louder than V1; Swell draw Fagotto 16; Couplers draw Swell to Pedal.\n")
                .containsOnlyOnce("Breathe 2 beats between verses")
                .doesNotContain("\u00b1", "  ", "verse   mode");
    }
}
