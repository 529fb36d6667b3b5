package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.Golden;
import versewind.Shipped;
import versewind.calibration.Experience;

class CalibrateCommandTest {

    private static final String HEAD = "draw,box,dBA\n";
    private static final String DIAPASON = "Great: Open Diapason 8,,74\n";
    private static final String CHORUS = "\"Great: Open Diapason 8, Principal 4; couplers: Great to Pedal\",,79\n";
    private static final String CLOSED = "\"Swell: Gedackt 8, Flute 4; couplers: Swell to Great\",Swell=closed,62\n";

    @TempDir
    private Path folder;

    private Path instrument;

    @BeforeEach
    void copy_the_library() throws IOException {
        for (String name : List.of("instruments/st-tethwin.json", "plans/harvest-festival.json")) {
            Files.createDirectories(folder.resolve(name).getParent());
            Files.copy(Path.of(name), folder.resolve(name));
        }
        instrument = folder.resolve("instruments/st-tethwin.json");
    }

    private Reply calibrated(String table, String... more) throws IOException {
        Path readings = folder.resolve("readings.csv");
        Files.writeString(readings, table);
        return typed(Stream.concat(Stream.of("calibrate", "st-tethwin", readings.toString()), Stream.of(more))
                .toArray(String[]::new));
    }

    private Reply typed(String... words) {
        return Commands.run(
                List.of(words),
                new Environment(
                        folder,
                        Optional.empty(),
                        Map.of(),
                        InputStream.nullInputStream(),
                        StandardCharsets.UTF_8,
                        LocalDate.of(2026, 11, 25),
                        "1.0"));
    }

    @Test
    void an_organ_that_was_never_calibrated_tells_what_to_read_first() {
        assertThat(typed("calibrate", "st-tethwin").results())
                .contains("Not calibrated yet", "\n  1  ")
                .doesNotContain("\n  4  ");
    }

    @Test
    void a_proposed_reading_can_be_typed_back_as_it_is_printed() throws Exception {
        String proposals = typed("calibrate", "st-tethwin").results().replaceAll("\n {5}", " ");
        List<String> drawn = Pattern.compile("(?m)^  \\d  (.*?); [a-z ]+ on [A-Z]")
                .matcher(proposals)
                .results()
                .map(found -> found.group(1))
                .toList();
        assertThat(drawn).hasSizeBetween(1, 3);
        for (String each : drawn) {
            assertThat(typed("estimate", "st-tethwin", "--draw", each).status()).isEqualTo(Reply.GOOD);
        }
    }

    @Test
    void readings_are_told_with_what_was_expected_and_what_they_teach() throws IOException {
        Reply reply = calibrated(HEAD + DIAPASON + CHORUS + CLOSED, "--plan", "harvest-festival", "--next", "2");
        Golden.check("calibrate/readings.txt", reply.results());
        assertThat(reply.status()).isEqualTo(Reply.GOOD);
        assertThat(reply.words()).isEqualTo("versewind: Nothing has been written. Add --write to save this.\n");
    }

    @Test
    void nothing_is_written_unless_asked() throws IOException {
        byte[] before = Files.readAllBytes(instrument);
        calibrated(HEAD + DIAPASON);
        assertThat(Files.readAllBytes(instrument)).isEqualTo(before);
    }

    @Test
    void what_is_written_makes_levels_surer_and_undoing_restores_the_file_byte_for_byte() throws IOException {
        byte[] before = Files.readAllBytes(instrument);
        String unsure = typed("assess", "-v", "harvest-festival").results();
        assertThat(calibrated(HEAD + DIAPASON + CHORUS + CLOSED, "--write").status())
                .isEqualTo(Reply.GOOD);
        assertThat(unsure).contains("±4 dB(A)");
        assertThat(typed("assess", "-v", "harvest-festival").results())
                .contains("±2 dB(A)")
                .doesNotContain("±4 dB(A)");
        assertThat(typed("calibrate", "st-tethwin", "--undo").status()).isEqualTo(Reply.GOOD);
        assertThat(Files.readAllBytes(instrument)).isEqualTo(before);
    }

    @Test
    void readings_taken_in_two_evenings_teach_what_they_teach_together() throws Exception {
        calibrated(HEAD + DIAPASON, "--write");
        calibrated(HEAD + CHORUS + CLOSED, "--write");
        String apart = Files.readString(instrument);
        typed("calibrate", "st-tethwin", "--undo");
        calibrated(HEAD + DIAPASON + CHORUS + CLOSED, "--write");
        assertThat(Files.readString(instrument)).isEqualTo(apart);
    }

    @Test
    void a_reading_that_fits_nothing_is_named_and_can_be_left_out() throws IOException {
        String wrong = HEAD + DIAPASON + CHORUS + "Great: Principal 4,,45\n";
        Reply all = calibrated(wrong);
        assertThat(all.status()).isEqualTo(Reply.WANTS_ATTENTION);
        assertThat(all.results()).contains("Reading 3 does not fit the others").contains("--leave-out 3");
        assertThat(calibrated(wrong, "--leave-out", "3").status()).isEqualTo(Reply.GOOD);
    }

    @Test
    void as_json_the_numbers_are_those_of_the_text() throws Exception {
        JsonNode json = new ObjectMapper()
                .readTree(calibrated(HEAD + DIAPASON, "--json", "--next", "1").results());
        JsonNode reading = json.at("/readings/0");
        assertThat(reading.get("dBA").doubleValue()).isEqualTo(74);
        assertThat(reading.get("residual").doubleValue())
                .isEqualTo(Math.rint(10 * (74 - reading.get("after").doubleValue())) / 10);
        assertThat(json.at("/trims/organ").doubleValue()).isPositive();
        assertThat(json.at("/next").size()).isEqualTo(1);
        assertThat(json.at("/next/0/plusMinusAfter").doubleValue())
                .isLessThan(json.at("/next/0/plusMinusBefore").doubleValue());
    }

    @Test
    void remarks_semicolons_and_decimal_commas_are_read_as_well() throws IOException {
        Reply reply =
                calibrated("# a phone, 3 m from the case\n\nDraw;dba\nGreat: Open Diapason 8;74,0\n", "--next", "1");
        assertThat(reply.results()).contains("74").contains("Great: Open Diapason 8");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        draw,dBA~Great: Oxn,70 | line 2: draw: Great has no stop "Oxn".
        draw,dBA~Great: Trumpet 8,loud | line 2: dBA: "loud" is not a number. Enter a number from 20 to 130.
        draw,dBA~Great: Trumpet 8,300 | line 2: dBA: 300 is out of range. Enter a number from 20 to 130.
        draw,dBA~Pedal: Trombone 16,70,5 | line 2: there are more cells than columns.
        draw,dBA~Great: Foo 8,loud | line 2: dBA: "loud" is not a number.
        draw,dBA~Great: Trumpet 8,loud~Great: Foo 8,70 | line 3: draw: Great has no stop "Foo 8".
        draw,dBA,hands~Pedal: Trombone 16,70,manuals only | line 2: nothing sounds.
        draw,loud~Great: Trumpet 8,70 | line 1: there is no column "loud".
        draw~Great: Trumpet 8 | line 1: the column "dBA" is missing.
        draw,dBA | line 1: there are no readings.
        draw,dBA,singers,seat~Great: Trumpet 8,70,20,console | line 2: while people sing, the meter stands among them
        draw,dBA,date~Great: Trumpet 8,70,May | line 2: date: "May" is not a date. Enter a date, as 2026-10-04.
        draw,dBA,people~Great: Trumpet 8,70,-3 | line 2: people: -3 is out of range. Enter a whole number
        draw,dBA~"Great: Trumpet 8,70 | readings.csv
        """)
    void what_is_wrong_is_told_with_its_line(String table, String sentence) throws IOException {
        Reply reply = calibrated(table.replace('~', '\n') + "\n");
        assertThat(reply.status()).isEqualTo(Reply.BAD);
        assertThat(reply.words()).contains(sentence);
        assertThat(reply.results()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "--undo, has not been calibrated",
        "--write, There are no new readings to write",
        "--next=99, Enter a whole number from 1 to 20 for --next",
        "--leave-out=1, There is no reading 1"
    })
    void options_that_cannot_be_are_told(String option, String sentence) {
        Reply reply = typed("calibrate", "st-tethwin", option);
        assertThat(reply.status()).isEqualTo(Reply.BAD);
        assertThat(reply.words()).contains(sentence);
    }

    @Test
    void it_says_so_where_fewer_are_worth_it_than_were_asked_for() {
        String one = typed("calibrate", "st-tethwin", "--next", "1").results();
        String twenty = typed("calibrate", "st-tethwin", "--next", "20").results();

        assertThat(one).doesNotContain("would gain less than a tenth");
        assertThat(twenty)
                .contains("Another reading would gain less than a tenth.")
                .doesNotContain(" 20  ");
    }

    @Test
    void it_says_so_where_no_reading_is_worth_it() throws Exception {
        Page page = new Page(new CharsetFallback(StandardCharsets.UTF_8));
        new CalibrationReport(
                        Shipped.instrument("st-tethwin"),
                        Experience.NONE,
                        Optional.empty(),
                        List.of(),
                        3,
                        Optional.empty())
                .print(page);
        assertThat(page.text()).contains("Another reading would gain less than a tenth.");
    }
}
