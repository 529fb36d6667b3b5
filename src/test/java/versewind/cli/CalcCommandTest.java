package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static versewind.cli.Typing.typed;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.Golden;
import versewind.Published;
import versewind.screen.toolkit.Text;

/** The published answers once more, as somebody types them. */
class CalcCommandTest {

    private static JsonNode calculated(String... arguments) throws Exception {
        List<String> typed = new ArrayList<>(List.of("calc"));
        typed.addAll(List.of(arguments));
        typed.add("--json");
        Reply reply = typed(typed.toArray(String[]::new));
        assertThat(reply.words()).isEmpty();
        assertThat(reply.status()).isEqualTo(Reply.GOOD);
        return new ObjectMapper().readTree(reply.results());
    }

    private static String written(double[] numbers) {
        return Arrays.stream(numbers).mapToObj(String::valueOf).collect(Collectors.joining(" "));
    }

    private static String refused(String... arguments) {
        List<String> typed = new ArrayList<>(List.of("calc"));
        typed.addAll(List.of(arguments));
        Reply reply = typed(typed.toArray(String[]::new));
        assertThat(reply.status()).isEqualTo(Reply.BAD);
        return reply.words();
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/iso532_1_loudness.csv", useHeadersInDisplayName = true)
    void the_standards_signals_are_as_loud_as_it_says(int signal, String name, double sone, double phon)
            throws Exception {
        double[] levels = Published.column("iso532_1_levels.csv", "signal" + signal + "Db");
        JsonNode json = calculated("loudness", "--field", "free", "--levels", written(levels));

        assertThat(json.get("sone").doubleValue()).isEqualTo(sone, within(0.001));
        assertThat(json.get("phon").doubleValue()).isEqualTo(phon, within(0.001));
        double[] specific = Published.column("iso532_1_specific.csv", "signal" + signal);
        assertThat(json.get("specificSonePerBark")).hasSize(specific.length);
        for (int sample = 0; sample < specific.length; sample++) {
            assertThat(json.get("specificSonePerBark").get(sample).doubleValue())
                    .isEqualTo(specific[sample], within(6e-4));
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/ansi_s3_5_index.csv", useHeadersInDisplayName = true)
    void the_published_indices_are_found(
            String name,
            String procedure,
            String speech,
            String noise,
            String threshold,
            String importance,
            double index)
            throws Exception {
        List<String> typed = new ArrayList<>(List.of(
                "audibility", "--bands", procedure, "--target", speech, "--noise", noise, "--threshold", threshold));
        if (importance != null) {
            typed.addAll(List.of("--importance", importance));
        }

        assertThat(calculated(typed.toArray(String[]::new)).get("index").doubleValue())
                .isEqualTo(index, within(1e-6));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/reverberation.csv", useHeadersInDisplayName = true)
    void the_published_rooms_have_their_published_times(
            String room,
            String method,
            double volumeM3,
            String areas,
            String alphas,
            String airPerKm,
            double timeS,
            double tolerance)
            throws Exception {
        double[] areasM2 = Published.numbers(areas);
        double[] coefficients = Published.numbers(alphas);
        List<String> surfaces = new ArrayList<>();
        for (int surface = 0; surface < areasM2.length; surface++) {
            surfaces.add(areasM2[surface] + ":" + coefficients[surface]);
        }
        JsonNode json = calculated(
                "room",
                "--volume",
                String.valueOf(volumeM3),
                "--surfaces",
                String.join(" ", surfaces),
                "--air",
                airPerKm);

        String key = method.equals("Sabine") ? "sabineS" : method.equals("Eyring") ? "eyringS" : "millingtonS";
        assertThat(json.get(key).doubleValue()).isEqualTo(timeS, within(Math.max(tolerance, 5.1e-7)));
    }

    /** By hand from the formulas: see BarronRevisedTheoryTest; Kuttruff's class room of 200 m3 and 1 s. */
    @Test
    void a_hall_whose_time_is_known_has_barrons_strength_and_schroeders_frequency() throws Exception {
        JsonNode hall = calculated("room", "--volume", "10000", "--time", "2", "--distance", "20");

        assertThat(hall.get("strengthDb").doubleValue()).isEqualTo(6.4668, within(1e-4));
        assertThat(hall.get("clarityDb").doubleValue()).isEqualTo(-0.7260, within(1e-4));
        assertThat(calculated("room", "--volume", "200", "--time", "1")
                        .get("schroederHz")
                        .doubleValue())
                .isEqualTo(141.4, within(0.05));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/iso9612.csv", useHeadersInDisplayName = true)
    void the_days_of_the_standard_have_its_levels(
            String example, String levels, String hours, double dayDbA, double tolerance) throws Exception {
        double[] levelsDbA = Published.numbers(levels);
        double[] lengthsH = Published.numbers(hours);
        List<String> parts = new ArrayList<>();
        for (int part = 0; part < levelsDbA.length; part++) {
            parts.add(levelsDbA[part] + ":" + 60 * lengthsH[part]);
        }

        assertThat(calculated("dose", "--parts", String.join(" ", parts))
                        .get("dayDbA")
                        .doubleValue())
                .isEqualTo(dayDbA, within(tolerance));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/niosh.csv", useHeadersInDisplayName = true)
    void the_whole_of_nioshs_minutes_is_the_whole_dose(String levelDbA, double minutes) throws Exception {
        JsonNode json = calculated("dose", "--parts", levelDbA + ":" + minutes);

        assertThat(json.get("nioshPercent").doubleValue()).isEqualTo(100, within(1e-6));
        assertThat(json.get("nioshMinutes").get(0).doubleValue()).isEqualTo(minutes, within(1e-6));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/pitch_lengths.csv", useHeadersInDisplayName = true)
    void every_footage_has_its_published_pitch(
            String footage, double feet, double harmonic, double bottomCHz, double middleCHz) throws Exception {
        JsonNode json = calculated("pitch", "--feet", footage);

        assertThat(json.get("feet").textValue()).isEqualTo(footage);
        assertThat(json.get("harmonic").doubleValue()).isEqualTo(harmonic, within(1e-6));
        assertThat(json.get("middleCHz").doubleValue()).isEqualTo(middleCHz, within(5.1e-5));
    }

    /** The third octave of 1 kHz is 230.77 Hz wide, 23.632 dB: a band level of 60 dB is a spectrum level of 36.368. */
    @Test
    void levels_of_third_octaves_become_spectrum_levels() throws Exception {
        JsonNode typed = calculated("audibility", "--target", "1000=60", "--noise", "1000=60");

        assertThat(typed.get("audibility").get(8).doubleValue()).isEqualTo(0.5, within(1e-4));
        assertThat(typed.get("maskingDb").get(8).doubleValue()).isEqualTo(36.368, within(0.001));
        assertThat(typed.get("maskingDb").get(0).isNull()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"octave, 6", "third octave, 18", "critical band, 21", "equally contributing, 17"})
    void a_vocal_effort_stands_for_its_spectrum_in_every_procedure(String procedure, int bands) throws Exception {
        JsonNode quiet = calculated("audibility", "--bands", procedure, "--target", "normal");

        assertThat(quiet.get("index").doubleValue()).isBetween(0.98, 1.0);
        assertThat(quiet.get("audibility")).hasSize(bands);
    }

    @Test
    void the_text_reads_as_before() {
        String pink = written(Published.column("iso532_1_levels.csv", "signal5Db"));
        String all = typed("calc", "loudness", "--levels", pink).results()
                + typed("calc", "audibility", "--target", "raised", "--noise", "250=60 500=66 1000=62 2000=55")
                        .results()
                + typed("calc", "room", "--volume", "6000", "--surfaces", "2000:0.05,300:0.1", "--distance", "20")
                        .results()
                + typed("calc", "dose", "--parts", "94:30 88:60").results()
                + typed("calc", "pitch", "--feet", "2 2/3").results();

        Golden.check("calc/all.txt", all);
        assertThat(all.lines())
                .allSatisfy(line -> assertThat(Text.columns(line)).isLessThanOrEqualTo(80));
    }

    @Test
    void every_golden_calculation_is_compared() {
        assertThat(Golden.names("calc")).containsExactly("all.txt");
    }

    @Test
    void numbers_may_begin_with_a_point_and_a_level_of_nothing_is_a_hyphen() throws Exception {
        assertThat(calculated("dose", "--parts", "94:.3")).isEqualTo(calculated("dose", "--parts", "94:0.3"));
        assertThat(calculated("loudness", "--levels", "1000=60 25=-"))
                .isEqualTo(calculated("loudness", "--levels", "1000=60"));
    }

    @Test
    void the_old_word_is_still_understood() {
        assertThat(typed("reckon", "pitch", "--feet", "8")).isEqualTo(typed("calc", "pitch", "--feet", "8"));
        assertThat(typed("--help").results()).contains(" calc ").doesNotContain("reckon");
    }

    @Test
    void above_120_db_in_the_bass_the_standard_has_no_loudness() {
        assertThat(refused("loudness", "--levels", "63=121"))
                .isEqualTo("versewind: The loudness of ISO 532-1 needs a number in every band, and none above 120 dB in"
                        + " those to 250 Hz.\n");
    }

    @Test
    void what_cannot_be_is_refused_with_a_sentence() {
        assertThat(refused("weather")).startsWith("versewind: There is no calculation called \"weather\".");
        assertThat(refused("loudness"))
                .isEqualTo("versewind: --levels is needed for this. See versewind calc --help.\n");
        assertThat(refused("loudness", "--levels", "60 61")).contains("here are 2.");
        assertThat(refused("loudness", "--levels", "16000=60")).contains("at 16000 Hz");
        assertThat(refused("loudness", "--levels", "1000=loud")).contains("not \"loud\"");
        assertThat(refused("audibility", "--bands", "octave", "--target", "1 2 3"))
                .contains("This procedure has 6 bands, not 3.");
        assertThat(refused("audibility", "--bands", "equal", "--target", "loud", "--importance", "short"))
                .contains("average speech alone");
        assertThat(refused("room", "--volume", "-5", "--time", "2")).contains("A room's volume is more than nothing");
        assertThat(refused("room", "--volume", "500")).contains("either --surfaces or --time");
        assertThat(refused("room", "--volume", "500", "--surfaces", "100:1.2"))
                .contains("such a room has no reverberation");
        assertThat(refused("dose", "--parts", "94")).contains("pairs such as");
        assertThat(refused("dose", "--parts", "85:1000 80:1000")).contains("A day has 1440 minutes");
        assertThat(refused("dose", "--parts", "150:3")).contains("140 dB(A)");
        assertThat(refused("pitch", "--feet", "2 3/2")).contains("is no footage");
    }
}
