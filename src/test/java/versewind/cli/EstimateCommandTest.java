package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static versewind.cli.Typing.typed;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.Golden;

class EstimateCommandTest {

    private static final String CHORUS =
            "Great: Open Diapason 8, Principal 4, Fifteenth 2; Pedal: Bourdon 16, Principal 8; couplers: Great to"
                    + " Pedal";

    private static Reply estimated(String draw, String... more) {
        List<String> words = new ArrayList<>(List.of("estimate", "st-tethwin", "--draw", draw));
        words.addAll(Arrays.asList(more));
        return typed(words.toArray(String[]::new));
    }

    private static JsonNode json(String draw, String... more) throws Exception {
        List<String> words = new ArrayList<>(Arrays.asList(more));
        words.add("--json");
        return new ObjectMapper()
                .readTree(estimated(draw, words.toArray(String[]::new)).results());
    }

    @Test
    void a_registration_under_a_congregation_reads_as_before() {
        Golden.check(
                "estimate/congregation.txt",
                estimated(CHORUS, "--people", "180", "--tempo", "96").results());
    }

    @Test
    void with_nothing_drawn_for_the_feet_the_hands_play_all_four_parts() {
        String hands = estimated("Great: Open Diapason 8, Principal 4").results();

        assertThat(hands).contains("manuals only on Great").contains("mf, ");
        assertThat(estimated("Great: Open Diapason 8; couplers: Great to Pedal").results())
                .contains("four parts on Great");
    }

    @Test
    void a_soloed_melody_reads_as_before() {
        Golden.check(
                "estimate/melody-soloed.txt",
                estimated(
                                "Swell: Oboe 8; Great: Stopped Flute 8; Pedal: Bourdon 16",
                                "--mode",
                                "soloed",
                                "--hands",
                                "soloed",
                                "--right",
                                "Swell",
                                "--left",
                                "Great",
                                "--tremulant",
                                "Tremulant")
                        .results());
    }

    @Test
    void nothing_drawn_is_silent_and_a_box_is_told_even_if_it_is_open() {
        assertThat(estimated("").results())
                .contains("boxes       Swell open\n", "organ       silent: nothing drawn sounds\n")
                .doesNotContain("couplers");
    }

    @Test
    void what_is_not_typed_is_a_hundred_people_singing_as_usual_in_four_parts_on_the_main_division() {
        assertThat(estimated(CHORUS))
                .isEqualTo(estimated(
                        CHORUS,
                        "--people",
                        "100",
                        "--mode",
                        "congregation",
                        "--singing",
                        "ordinary",
                        "--hands",
                        "four-part",
                        "--right",
                        "Great",
                        "--left",
                        "Great",
                        "--box",
                        "Swell=open"));
    }

    @Test
    void an_estimate_ends_well_whatever_it_says() {
        assertThat(estimated(CHORUS).status()).isEqualTo(Reply.GOOD);
        assertThat(estimated("Great: Stopped Flute 8", "--people", "480", "--singing", "full voice")
                        .status())
                .isEqualTo(Reply.GOOD);
    }

    @Test
    void as_json_it_has_the_fields_of_a_verse_and_what_is_drawn() throws Exception {
        JsonNode json = json(CHORUS);

        assertThat(json.fieldNames())
                .toIterable()
                .containsExactly(
                        "instrument",
                        "drawn",
                        "couplers",
                        "boxes",
                        "label",
                        "kind",
                        "optional",
                        "mode",
                        "organ",
                        "singers",
                        "lead",
                        "lagMs",
                        "fromUsual");
        assertThat(json.get("instrument").textValue()).isEqualTo("st-tethwin");
        assertThat(json.get("drawn"))
                .hasToString("{\"Great\":[\"Open Diapason 8\",\"Principal 4\",\"Fifteenth 2\"],"
                        + "\"Pedal\":[\"Bourdon 16\",\"Principal 8\"]}");
        assertThat(json.get("couplers")).hasToString("[\"Great to Pedal\"]");
        assertThat(json.get("boxes")).hasToString("{\"Swell\":\"open\"}");
        assertThat(json.get("singers").get("count").intValue()).isEqualTo(80);
    }

    @Test
    void a_file_of_an_instrument_is_called_by_its_name_alone() throws Exception {
        JsonNode json = new ObjectMapper()
                .readTree(typed("estimate", "instruments/st-tethwin.json", "--draw", CHORUS, "--json")
                        .results());

        assertThat(json).isEqualTo(json(CHORUS));
    }

    @Test
    void with_a_tempo_the_lag_is_told_in_beats_too() throws Exception {
        JsonNode json = json(CHORUS, "--tempo", "60");

        assertThat(json.get("lagBeats").doubleValue())
                .as("to two decimals")
                .isCloseTo(json.get("lagMs").doubleValue() / 1000, within(0.0051));
    }

    @Test
    void a_closed_box_is_softer_than_an_open_one() throws Exception {
        String swell = "Swell: Open Diapason 8, Principal 4, Cornopean 8";

        double closed = organDba(json(swell, "--right", "Swell", "--box", "Swell=closed"));
        double open = organDba(json(swell, "--right", "Swell", "--box", "swell=open"));

        assertThat(closed).isLessThan(open);
    }

    @Test
    void the_people_of_a_small_choir_are_its_voices() {
        Reply reply = estimated("Great: Stopped Flute 8", "--mode", "choir", "--people", "24");

        assertThat(reply.results()).contains("small choir of 24, ordinary; 100 listening");
    }

    @Test
    void the_left_hand_plays_with_the_right() {
        assertThat(estimated(CHORUS, "--right", "Swell"))
                .isEqualTo(estimated(CHORUS, "--right", "Swell", "--left", "Swell"));
    }

    private static double organDba(JsonNode json) {
        return json.get("organ").get("dbA").doubleValue();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "--people | 0 | Enter a whole number from 1 to 50000 for --people, not \"0\".",
                "--people | 50001 | Enter a whole number from 1 to 50000 for --people, not \"50001\".",
                "--people | many | Enter a whole number from 1 to 50000 for --people, not \"many\".",
                "--people | 99999999999999999999 |"
                        + " Enter a whole number from 1 to 50000 for --people, not \"99999999999999999999\".",
                "--tempo | 19 | Enter a whole number from 20 to 300 for --tempo, not \"19\".",
                "--tempo | 88.5 | Enter a whole number from 20 to 300 for --tempo, not \"88.5\".",
                "--mode | crowd | Unknown value for --mode: \"crowd\". Use \"congregation\", \"small choir\","
                        + " \"soloist\", \"melody soloed\", \"descant\", \"trebles\", \"alternation\","
                        + " \"unaccompanied\", \"voices alone\", \"one alone\".",
                "--singing | loud | Unknown value for --singing: \"loud\". Use \"gentle\", \"ordinary\", \"strong\","
                        + " \"full voice\".",
                "--hands | three | Unknown value for --hands: \"three\". Use \"four parts\", \"manuals only\","
                        + " \"pedal by coupler\", \"melody soloed\", \"solo without pedal\".",
                "--right | Pedal | A hand cannot play the Pedal. Name the division of a manual.",
                "--left | Choir | The organ has no division \"Choir\"."
                        + " The divisions are \"Great\", \"Swell\", \"Pedal\".",
                "--box | Great=closed | Great is not in a swell box. Leave out its position.",
                "--tremulant | Zimbelstern | The organ has no tremulant \"Zimbelstern\"."
                        + " The tremulants are \"Tremulant\".",
                "--draw | Great: Tromba 8 | --draw STOPS can be given only once. See versewind estimate --help.",
            })
    void what_cannot_be_meant_is_answered_with_a_sentence(String option, String value, String sentence) {
        assertThat(estimated(CHORUS, option, value))
                .isEqualTo(new Reply(Reply.BAD, "", "versewind: " + sentence + "\n"));
    }

    @Test
    void every_instrument_can_be_estimated_in_full_without_a_pedal_stop_being_asked_for() {
        for (String instrument :
                List.of("ambrelow", "foundlings-chapel", "little-corvening", "ostmere-cathedral", "st-tethwin")) {
            assertThat(typed("estimate", instrument, "--draw", "").words())
                    .as(instrument)
                    .isEmpty();
        }
    }
}
