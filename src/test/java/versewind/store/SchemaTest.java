package versewind.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import versewind.Shipped;
import versewind.calibration.Experience;
import versewind.calibration.Fit;
import versewind.calibration.MeterReading;
import versewind.organ.FormerNames;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.Singing;
import versewind.schema.KnownOrgan;
import versewind.schema.RandomWorks;
import versewind.sound.OrganSound;
import versewind.sound.Seat;

class SchemaTest {
    private static final JsonSchema INSTRUMENT = schema("instrument");
    private static final JsonSchema PLAN = schema("plan");

    private static JsonSchema schema(String name) {
        try (InputStream in = Library.class.getResourceAsStream("/versewind/schema/" + name + ".schema.json")) {
            return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                    .getSchema(in);
        } catch (IOException missing) {
            throw new IllegalStateException(missing);
        }
    }

    private static Set<ValidationMessage> objections(JsonSchema schema, String text) {
        return schema.validate(
                text, InputFormat.JSON, context -> context.getExecutionConfig().setFormatAssertionsEnabled(true));
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    static List<Path> instruments() {
        return Shipped.instrumentFiles();
    }

    static List<Path> plans() {
        return Shipped.planFiles();
    }

    static Stream<BrokenFiles.Broken> plansOfWrongShape() {
        return BrokenFiles.of("plan").filter(BrokenFiles.Broken::seenBySchema);
    }

    static Stream<BrokenFiles.Broken> organsOfWrongShape() {
        return BrokenFiles.of("organ").filter(BrokenFiles.Broken::seenBySchema);
    }

    @ParameterizedTest
    @MethodSource("instruments")
    void an_instrument_that_comes_with_the_program_is_valid(Path file) throws IOException {
        assertThat(objections(INSTRUMENT, Files.readString(file))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("plans")
    void a_plan_that_comes_with_the_program_is_valid(Path file) throws IOException {
        assertThat(objections(PLAN, Files.readString(file))).isEmpty();
    }

    @Test
    void whatever_is_written_is_valid() {
        for (int seed = 0; seed < 100; seed++) {
            RandomWorks works = new RandomWorks(seed);
            Instrument instrument = works.instrument();

            assertThat(objections(INSTRUMENT, text(InstrumentJson.bytes(instrument))))
                    .as("seed %d", seed)
                    .isEmpty();
            assertThat(objections(PLAN, text(PlanJson.bytes(works.plan(instrument), instrument))))
                    .as("seed %d", seed)
                    .isEmpty();
        }
    }

    @Test
    void a_calibrated_instrument_is_valid_and_is_read_as_it_was_written() throws Exception {
        Instrument organ = SmallOrgan.organ();
        Registration drawn = Registration.full(organ);
        HandsAndFeet hands = HandsAndFeet.on(HandsAndFeet.Layout.FOUR_PARTS, organ.mainDivision());
        MeterReading.Sung sung = new MeterReading.Sung(20, Singing.GENTLE);
        Fit fit = Fit.of(
                OrganSound.open(organ),
                List.of(
                        new MeterReading("2026-11-20", drawn, hands, Seat.CHOIR, 0, Optional.empty(), 85.5),
                        new MeterReading("", drawn, hands, Seat.NAVE, 30, Optional.of(sung), 88)));
        byte[] written = InstrumentJson.bytes(
                new KnownOrgan(fit.instrument(), fit.calibration(), Experience.NONE, FormerNames.NONE));
        KnownOrgan read = InstrumentJson.read(Path.of("calibrated.json"), written);

        assertThat(objections(INSTRUMENT, text(written))).isEmpty();
        assertThat(read.calibration()).isEqualTo(fit.calibration());
        assertThat(InstrumentJson.bytes(read)).isEqualTo(written);
    }

    @ParameterizedTest
    @MethodSource("plansOfWrongShape")
    void a_plan_of_the_wrong_shape_is_refused_by_the_schema_as_by_the_reader(BrokenFiles.Broken broken) {
        assertThat(objections(PLAN, broken.text())).isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("organsOfWrongShape")
    void an_instrument_of_the_wrong_shape_is_refused_by_the_schema_as_by_the_reader(BrokenFiles.Broken broken) {
        assertThat(objections(INSTRUMENT, broken.text())).isNotEmpty();
    }
}
