package versewind.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import versewind.Shipped;
import versewind.organ.Instrument;
import versewind.plan.Plan;
import versewind.schema.KnownOrgan;
import versewind.schema.RandomWorks;

class RoundTripTest {

    static List<Path> instruments() {
        return Shipped.instrumentFiles();
    }

    static List<Path> plans() {
        return Shipped.planFiles();
    }

    @ParameterizedTest
    @MethodSource("instruments")
    void an_instrument_that_comes_with_the_program_is_written_as_it_was_read(Path file) throws BadFile, IOException {
        KnownOrgan organ = new Library(Path.of("")).openOrgan(file.toString()).organ();

        assertThat(InstrumentJson.bytes(organ)).asString().isEqualTo(Files.readString(file));
    }

    @ParameterizedTest
    @MethodSource("plans")
    void a_plan_that_comes_with_the_program_is_written_as_it_was_read(Path file) throws BadFile, IOException {
        OpenPlan open = new Library(Path.of("")).openPlan(file);

        assertThat(PlanJson.bytes(open.plan(), open.instrument())).asString().isEqualTo(Files.readString(file));
    }

    @Test
    void the_small_organ_and_its_plan_are_written_as_they_were_read() throws BadFile {
        Plan plan = SmallOrgan.readPlan(SmallOrgan.PLAN).plan();

        assertThat(InstrumentJson.bytes(SmallOrgan.organ())).asString().isEqualTo(SmallOrgan.FILE);
        assertThat(PlanJson.bytes(plan, SmallOrgan.organ())).asString().isEqualTo(SmallOrgan.PLAN);
    }

    @Test
    void any_instrument_that_is_written_reads_back_as_itself_and_is_written_the_same_again() throws BadFile {
        for (int seed = 0; seed < 500; seed++) {
            Instrument instrument = new RandomWorks(seed).instrument();
            byte[] written = InstrumentJson.bytes(instrument);

            Instrument read =
                    InstrumentJson.read(Path.of("seed-" + seed), written).instrument();

            assertThat(read).as("seed %d", seed).isEqualTo(instrument);
            assertThat(InstrumentJson.bytes(read)).as("seed %d", seed).isEqualTo(written);
        }
    }

    @Test
    void any_plan_that_is_written_reads_back_as_itself_and_is_written_the_same_again() throws BadFile {
        for (int seed = 0; seed < 500; seed++) {
            RandomWorks works = new RandomWorks(seed);
            Instrument instrument = works.instrument();
            Plan plan = works.plan(instrument);
            byte[] written = PlanJson.bytes(plan, instrument);

            Plan read = PlanJson.read(Path.of("seed-" + seed), written, (id, found) -> KnownOrgan.of(instrument))
                    .plan();

            assertThat(read).as("seed %d", seed).isEqualTo(plan);
            assertThat(PlanJson.bytes(read, instrument)).as("seed %d", seed).isEqualTo(written);
        }
    }

    @Test
    void a_registration_too_long_for_a_line_stands_a_division_a_line() throws BadFile {
        String all = SmallOrgan.with(
                SmallOrgan.PLAN,
                "{\"Great\": [\"Open Diapason 8\"], \"Swell\": [\"Oboe 8\"], \"Pedal\": [\"Bourdon 16\"]}",
                """
                {
                            "Great": ["Open Diapason 8", "Principal 4", "Fifteenth 2"],
                            "Swell": ["Stopped Diapason 8", "Sesquialtera II", "Oboe 8"],
                            "Pedal": ["Bourdon 16"]
                          }\
                """);

        Plan plan = SmallOrgan.readPlan(all).plan();

        assertThat(PlanJson.bytes(plan, SmallOrgan.organ())).asString().isEqualTo(all);
    }

    @Test
    void fields_in_another_order_and_all_on_one_line_mean_the_same() throws BadFile {
        String moved = SmallOrgan.with(
                SmallOrgan.with(SmallOrgan.PLAN, "  \"people\": 70,\n", ""), "{\n", "{\n\"people\": 70,");

        assertThat(SmallOrgan.readPlan(moved.replace("\n", " ")).plan())
                .isEqualTo(SmallOrgan.readPlan(SmallOrgan.PLAN).plan());
    }

    @Test
    void a_byte_order_mark_and_the_line_ends_of_other_systems_are_read_over() throws BadFile {
        assertThat(SmallOrgan.read("\uFEFF" + SmallOrgan.FILE.replace("\n", "\r\n")))
                .isEqualTo(SmallOrgan.organ());
    }
}
