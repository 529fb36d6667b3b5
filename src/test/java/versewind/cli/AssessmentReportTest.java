package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.Shipped;
import versewind.organ.Instrument;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Silenced;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.Verses;
import versewind.rules.Attendance;
import versewind.schema.KnownOrgan;
import versewind.sound.OrganSound;
import versewind.store.Fingerprint;
import versewind.store.OpenPlan;

class AssessmentReportTest {

    private static JsonNode tree(String json) throws Exception {
        return new ObjectMapper().readTree(json);
    }

    private static List<String> fields(JsonNode object) {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }

    private static String json(Plan plan, Instrument organ) {
        OpenPlan open =
                new OpenPlan(plan, KnownOrgan.of(organ), Path.of("x.json"), Fingerprint.NO_FILE, Optional.empty());
        return AssessmentReport.of(open, PartOfPlan.ALL, OrganSound.open(organ))
                .json()
                .text();
    }

    private static JsonNode assessed(Verse... verses) throws Exception {
        Instrument organ = Shipped.instrument("st-tethwin");
        Hymn hymn = new Hymn("7", "Caf\u00e9\u007f\u202e", "", "", "", OptionalInt.empty(), "", List.of(verses));
        Plan plan = new Plan(new ServiceHeading("A service", Optional.empty(), 90, ""), "st-tethwin", List.of(hymn));
        String json = json(plan, organ);
        assertThat(json)
                .as("printable ASCII and line ends")
                .matches("[ -~\\n]+")
                .endsWith("}\n");
        return tree(json);
    }

    private static Verse blank(VerseKind kind) {
        return Verses.blank(Shipped.instrument("st-tethwin"), kind);
    }

    @ParameterizedTest
    @ValueSource(strings = {"harvest-festival", "easter-cathedral", "ash-wednesday"})
    void a_plan_has_these_fields_and_no_others(String id) throws Exception {
        OpenPlan open = Shipped.plan(id);
        JsonNode json = tree(json(open.plan(), open.instrument()));

        assertThat(fields(json))
                .containsExactly(
                        "plan",
                        "date",
                        "day",
                        "occasion",
                        "instrument",
                        "people",
                        "singingInTen",
                        "player",
                        "hymns",
                        "ears",
                        "findings");
        checkEars(json.get("ears"));
        assertThat(json.get("plan").textValue()).isEqualTo(open.plan().heading().title());
        assertThat(json.get("instrument").textValue()).isEqualTo(open.plan().instrument());
        assertThat(json.get("people").intValue())
                .isEqualTo(open.plan().heading().people());
        assertThat(json.get("hymns")).hasSameSizeAs(open.plan().hymns());
        for (JsonNode hymn : json.get("hymns")) {
            assertThat(fields(hymn)).containsExactly("number", "title", "verses");
            for (JsonNode verse : hymn.get("verses")) {
                checkVerse(verse);
            }
        }
        for (JsonNode finding : json.get("findings")) {
            assertThat(fields(finding)).containsExactly("severity", "rule", "place", "numbers", "sentence", "mend");
            assertThat(fields(finding.get("place"))).containsExactly("hymn", "verse", "label");
        }
    }

    private static void checkEars(JsonNode ears) {
        assertThat(fields(ears)).containsExactly("minutes", "organist", "choir");
        for (String who : List.of("organist", "choir")) {
            JsonNode seat = ears.get(who);
            assertThat(fields(seat))
                    .containsExactly(
                            "distanceM", "dbA", "plusMinusDb", "nioshPercent", "leastPercent", "mostPercent", "dayDbA");
            assertThat(seat.get("dbA").doubleValue()).isBetween(60.0, 110.0);
        }
    }

    /** The numbers are those of three assessments. */
    @Test
    void before_other_numbers_of_people_every_verse_has_a_list() throws Exception {
        OpenPlan open = Shipped.plan("harvest-festival");
        OrganSound sound = OrganSound.open(open.instrument());
        Attendance attendance = Attendance.of(open.plan(), sound, List.of(500, 40, 180));
        JsonNode json = tree(
                new AttendanceReport(open, PartOfPlan.ALL, attendance).json().text());

        JsonNode verse = json.get("hymns").get(0).get("verses").get(1);
        assertThat(fields(verse)).containsExactly("label", "kind", "optional", "mode", "people");
        assertThat(verse.get("people")).hasSize(3);
        double before = 0;
        for (int i = 0; i < 3; i++) {
            JsonNode crowd = verse.get("people").get(i);
            assertThat(fields(crowd)).containsExactly("count", "organ", "singers", "lead", "lagMs", "mend");
            assertThat(crowd.get("count").intValue())
                    .isEqualTo(List.of(40, 180, 500).get(i));
            assertThat(crowd.get("singers").get("dbA").doubleValue()).isGreaterThan(before);
            before = crowd.get("singers").get("dbA").doubleValue();
        }
    }

    private static void checkVerse(JsonNode verse) {
        String margin =
                switch (verse.get("mode").textValue()) {
                    case "small choir", "soloist" -> "voice";
                    case "melody soloed" -> "soloLine";
                    default -> "lead";
                };
        assertThat(fields(verse))
                .containsExactly(
                        "label",
                        "kind",
                        "optional",
                        "mode",
                        "organ",
                        "singers",
                        margin,
                        "lagMs",
                        "step",
                        "heard",
                        "present",
                        "touch");
        assertThat(fields(verse.get("touch")))
                .containsExactly("manner", "holdBeats", "breathBeats", "lagBeats", "sentence", "breath", "lag");
        assertThat(fields(verse.get("organ")))
                .containsExactly("dbA", "plusMinus", "sone", "sonePlusMinus", "phon", "phonPlusMinus", "dynamic");
        assertThat(fields(verse.get("singers"))).containsExactly("dbA", "plusMinus", "count");
        assertThat(fields(verse.get(margin))).containsExactly("share", "verdict", "odds");
        assertThat(verse.get("organ").get("dbA").asText()).matches("\\d+\\.\\d");
        assertThat(verse.get("organ").get("sone").asText()).matches("\\d+\\.\\d");
        assertThat(verse.get("lagMs").asText()).matches("\\d+\\.\\d");
    }

    @Test
    void what_does_not_sound_is_null() throws Exception {
        JsonNode verse = assessed(blank(VerseKind.VERSE)).at("/hymns/0/verses/0");

        assertThat(verse.get("organ"))
                .hasToString("{\"dbA\":null,\"plusMinus\":null,\"sone\":null,\"sonePlusMinus\":null,"
                        + "\"phon\":null,\"phonPlusMinus\":null,\"dynamic\":null}");
        assertThat(verse.get("lead"))
                .hasToString("{\"share\":0.0,\"verdict\":\"lost\",\"odds\":{\"lost\":1,\"only just\":0,\"leads\":0,"
                        + "\"too strong\":0}}");
        assertThat(verse.get("singers").get("count").intValue()).isEqualTo(72);
    }

    @Test
    void an_interlude_has_nobody_to_lead() throws Exception {
        JsonNode verse = assessed(blank(VerseKind.INTERLUDE)).at("/hymns/0/verses/0");

        assertThat(verse.get("lead"))
                .hasToString("{\"share\":null,\"verdict\":\"organ alone\",\"odds\":{\"organ alone\":1}}");
        assertThat(verse.get("singers")).hasToString("{\"dbA\":null,\"plusMinus\":null,\"count\":0}");
    }

    @Test
    void a_choir_that_nothing_covers_has_a_clear_voice() throws Exception {
        JsonNode verse = assessed(
                        blank(VerseKind.VERSE).withMode(Mode.SMALL_CHOIR).withPeople(OptionalInt.of(9)))
                .at("/hymns/0/verses/0");

        assertThat(verse.get("voice"))
                .hasToString("{\"share\":0.994,\"verdict\":\"clear\",\"odds\":{\"covered\":0,\"only just\":0,"
                        + "\"clear\":1}}");
        assertThat(verse.get("singers").get("count").intValue()).isEqualTo(9);
    }

    @Test
    void a_finding_says_where_why_and_what_to_do() throws Exception {
        JsonNode finding = assessed(blank(VerseKind.VERSE)).at("/findings/0");

        assertThat(finding.toString())
                .startsWith("{\"severity\":\"caution\",\"rule\":\"lead lost\","
                        + "\"place\":{\"hymn\":0,\"verse\":0,\"label\":\"V\"},"
                        + "\"numbers\":{\"share\":0.0,\"singing\":77,\"singingPlusMinus\":3},"
                        + "\"sentence\":\"Nothing is drawn that sounds: the people sing without a lead.\","
                        + "\"mend\":\"Draw Great: Open Diapason 8, Principal 4");
    }

    @Test
    void a_silenced_finding_carries_its_note() throws Exception {
        JsonNode finding = assessed(blank(VerseKind.VERSE).silencing(new Silenced("lead lost", "a cappella")))
                .at("/findings/0");

        assertThat(finding.get("silenced").textValue()).isEqualTo("a cappella");
    }

    @Test
    void texts_come_back_as_they_were() throws Exception {
        JsonNode hymn = assessed().at("/hymns/0");

        assertThat(hymn.get("title").textValue()).isEqualTo("Caf\u00e9\u007f\u202e");
        assertThat(hymn.get("verses")).isEmpty();
    }
}
