package versewind.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BadFileTest {

    static Stream<BrokenFiles.Broken> plans() {
        return BrokenFiles.of("plan");
    }

    static Stream<BrokenFiles.Broken> organs() {
        return BrokenFiles.of("organ");
    }

    @ParameterizedTest
    @MethodSource("plans")
    void a_mistake_in_a_plan_is_told_with_its_line_and_field_and_what_to_do(BrokenFiles.Broken broken) {
        assertThatExceptionOfType(BadFile.class)
                .isThrownBy(() -> SmallOrgan.readPlan(broken.text()))
                .withMessage("plans/lent.json, " + broken.sentence());
    }

    @ParameterizedTest
    @MethodSource("organs")
    void a_mistake_in_an_instrument_is_told_with_its_line_and_field_and_what_to_do(BrokenFiles.Broken broken) {
        assertThatExceptionOfType(BadFile.class)
                .isThrownBy(() -> SmallOrgan.read(broken.text()))
                .withMessage("instruments/nether-wick.json, " + broken.sentence());
    }

    @Test
    void every_part_of_the_sentence_can_be_had_alone() {
        String misspelt = SmallOrgan.with(SmallOrgan.PLAN, "\"Oboe 8\"", "\"Hoboe 8\"");

        BadFile bad = catchThrowableOfType(BadFile.class, () -> SmallOrgan.readPlan(misspelt));

        assertThat(bad.file()).isEqualTo("plans/lent.json");
        assertThat(bad.line()).hasValue(17);
        assertThat(bad.place()).isEqualTo("hymns[0].verses[0].drawn.Swell[0]");
        assertThat(bad.problem()).isEqualTo("Swell has no stop \"Hoboe 8\"");
        assertThat(bad.remedy()).isEqualTo("Did you mean \"Oboe 8\"?");
        assertThat(bad.getStackTrace()).isEmpty();
    }

    @Test
    void a_byte_that_is_not_utf_8_is_told_with_its_line() {
        byte[] latin1 = SmallOrgan.with(SmallOrgan.PLAN, "wait for the bell", "fl\u00f6te")
                .getBytes(StandardCharsets.ISO_8859_1);

        assertThatExceptionOfType(BadFile.class)
                .isThrownBy(() -> SmallOrgan.readPlan(latin1))
                .withMessage("plans/lent.json, line 27: a character here is not written in UTF-8. "
                        + "Save the file in the encoding UTF-8.");
    }

    @Test
    void an_empty_file_is_told_so() {
        assertThatExceptionOfType(BadFile.class)
                .isThrownBy(() -> SmallOrgan.readPlan(" \n"))
                .withMessage("plans/lent.json, line 1: the file is empty. Restore it from a copy, or make a new one.");
    }

    @Test
    void a_list_where_an_object_should_be_is_told_so() {
        assertThatExceptionOfType(BadFile.class)
                .isThrownBy(() -> SmallOrgan.readPlan("[]"))
                .withMessage("plans/lent.json, line 1: expected an object in braces { }, found a list.");
    }

    @Test
    void a_nesting_without_end_costs_nothing() {
        assertThatExceptionOfType(BadFile.class)
                .isThrownBy(() -> SmallOrgan.readPlan("[".repeat(4_000_000)))
                .withMessageContaining("a text, a number, a name or a nesting here is far too large");
        assertThatExceptionOfType(BadFile.class)
                .isThrownBy(() -> SmallOrgan.readPlan("{\"a\":".repeat(1_000_000)))
                .withMessageContaining("a text, a number, a name or a nesting here is far too large");
    }

    @Test
    void numbers_and_names_and_lists_without_end_cost_nothing() {
        for (String bomb : List.of(
                "9".repeat(4_000_000),
                "1e" + "9".repeat(100),
                "\"" + "x".repeat(2000) + "\": 1",
                "[" + "[],".repeat(2_000_000) + "[]]")) {
            assertThatExceptionOfType(BadFile.class)
                    .isThrownBy(() -> SmallOrgan.readPlan(SmallOrgan.with(
                            SmallOrgan.PLAN, "\"people\": 70", bomb.startsWith("\"") ? bomb : "\"people\": " + bomb)))
                    .withMessageContaining("a number, a name or a nesting here is far too large");
        }
    }

    @Test
    void what_stands_in_a_file_cannot_reach_the_screen_as_a_control_character() {
        String hostile =
                SmallOrgan.with(SmallOrgan.PLAN, "\"Oboe 8\"", "\"\\u001b[2J\\u202e\\n" + "x".repeat(500) + "\"");

        BadFile bad = catchThrowableOfType(BadFile.class, () -> SmallOrgan.readPlan(hostile));

        assertThat(bad.problem()).isEqualTo("Swell has no stop \" [2J  " + "x".repeat(54) + "...\"");
    }

    @Test
    void a_sentence_is_about_the_file_as_it_was_named() {
        assertThat(BadFile.whole(Path.of("./plans/x.json"), "it is gone", "Make a new one."))
                .hasMessage("plans/x.json: it is gone. Make a new one.");
    }
}
