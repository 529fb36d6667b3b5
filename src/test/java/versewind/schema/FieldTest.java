package versewind.schema;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import versewind.organ.Instrument;
import versewind.organ.Stop;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Silenced;
import versewind.plan.Verse;
import versewind.plan.VersePlace;

class FieldTest {
    private static final int LONGEST_HINT = 140;

    static List<Table<?>> tables() {
        return List.of(
                ServiceFields.HEAD,
                HymnFields.HEAD,
                VerseFields.TABLE,
                StopFields.TABLE,
                InstrumentFields.DIVISION,
                InstrumentFields.COUPLER,
                InstrumentFields.TREMULANT,
                InstrumentFields.PISTONS,
                InstrumentFields.TABLE,
                RoomFields.TABLE);
    }

    @ParameterizedTest
    @MethodSource("tables")
    void a_hint_says_something_in_the_three_rows_of_a_small_form(Table<?> table) {
        assertThat(table.fields())
                .isNotEmpty()
                .extracting(field -> field.hint())
                .allSatisfy(hint -> assertThat(hint).isNotBlank().hasSizeLessThanOrEqualTo(LONGEST_HINT));
    }

    @Test
    void whatever_stands_in_a_verse_can_be_typed_again() {
        for (int seed = 0; seed < 100; seed++) {
            RandomWorks works = new RandomWorks(seed);
            Instrument organ = works.instrument();
            OrganNames names = OrganNames.of(organ);
            Plan plan = works.plan(organ);
            if (!isTypable(organ)) {
                continue;
            }

            assertThat(ServiceFields.HEAD
                            .read(field -> field.typed(plan), names, FieldTest::fail)
                            .orElseThrow()
                            .heading())
                    .isEqualTo(plan.heading());
            for (Hymn hymn : plan.hymns()) {
                assertThat(HymnFields.HEAD.read(field -> field.typed(hymn), names, FieldTest::fail))
                        .contains(hymn.withVerses(List.of()));
                for (Verse written : hymn.verses()) {
                    Verse verse = written.silenced().stream()
                            .map(each -> new Silenced(each.rule(), each.note().strip()))
                            .reduce(written, Verse::silencing, (one, other) -> other);
                    Verse typed = VerseFields.TABLE
                            .read(field -> field.typed(verse, names), names, FieldTest::fail)
                            .orElseThrow();
                    assertThat(plan.withHymns(List.of(hymn.withVerses(List.of(typed))))
                                    .verse(new VersePlace(0, 0)))
                            .as("seed %d", seed)
                            .isEqualTo(verse);
                }
            }
        }
    }

    private static void fail(Refused wrong) {
        throw new AssertionError(wrong.sentence());
    }

    /** Whether no name begins or ends with a blank, which is taken away from typed text. */
    private static boolean isTypable(Instrument organ) {
        return Stream.of(
                        organ.divisionNames().stream(),
                        organ.stops().stream().map(knob -> knob.name().label()),
                        organ.couplerNames().stream(),
                        organ.tremulantNames().stream())
                .flatMap(names -> names)
                .allMatch(name -> name.equals(name.strip()));
    }

    @Test
    void whatever_stands_in_a_stop_can_be_typed_again() {
        for (int seed = 0; seed < 100; seed++) {
            for (Instrument.Knob knob : new RandomWorks(seed).instrument().stops()) {
                Stop stop = knob.stop();

                assertThat(StopFields.TABLE.read(field -> field.typed(stop), OrganNames.NONE, FieldTest::fail))
                        .contains(stop);
            }
        }
    }

    static Stream<Arguments> wrong() {
        return Stream.of(
                Arguments.of(
                        HymnFields.TEMPO, "fast", "\"fast\" is not a number. Enter a whole number from 20 to 300."),
                Arguments.of(HymnFields.TEMPO, "301", "301 is out of range. Enter a whole number from 20 to 300."),
                Arguments.of(
                        HymnFields.TEMPO, "99.5", "99.5 is not a whole number. Enter a whole number from 20 to 300."),
                Arguments.of(
                        VerseFields.SINGING,
                        "loudly",
                        "Unknown value \"loudly\". Use gentle, ordinary, strong or full voice."),
                Arguments.of(VerseFields.MOOD, "festsl", "Unknown value \"festsl\". Did you mean \"festal\"?"),
                Arguments.of(
                        VerseFields.KIND,
                        " ",
                        "This must not be blank. Use introduction, verse, refrain, interlude, last verse or Amen."),
                Arguments.of(
                        ServiceFields.DATE,
                        "30 Feb 2026",
                        "\"2026-02-30\" is not a date. Enter a date, such as 20 Dec 2026 or 2026-12-20."),
                Arguments.of(
                        ServiceFields.DATE,
                        "2026-11-2929 Nov 2026",
                        "\"2026-11-2929 Nov 2026\" is not a date. Enter a date, such as 20 Dec 2026 or 2026-12-20."),
                Arguments.of(
                        StopFields.FEET,
                        "2 2/0",
                        "\"2 2/0\" is not a pitch in feet. Enter a pitch in feet, such as 8, 2 2/3 or 1/2."),
                Arguments.of(
                        StopFields.COMPOSITION,
                        "H 1",
                        "\"H\" is not a key. Enter a key,"
                                + " C to B for the bottom octave, then c to b, c1 to b1 and so on, sharps as c#1."),
                Arguments.of(
                        StopFields.COMPOSITION,
                        "c1",
                        "\"c1\" is not a list. Write a key, then its feet, as C 1 1/3, 1; c1 2, 1 1/3."),
                Arguments.of(DivisionFields.IS_BOXED, "maybe", "\"maybe\" is not yes or no. Enter yes or no."),
                Arguments.of(
                        DivisionFields.KEYBOARD,
                        "8",
                        "\"8\" is not a keyboard. Enter a keyboard, 1 for the lowest manual to 7, or pedal."),
                Arguments.of(
                        InstrumentFields.SOURCE, "Graet", "There is no division \"Graet\". Did you mean \"Great\"?"));
    }

    @ParameterizedTest
    @MethodSource("wrong")
    void what_cannot_be_used_is_refused_with_what_would_be_right(Field<?, ?> field, String typed, String sentence) {
        OrganNames names = OrganNames.ofDivisions(List.of("Great", "Pedal"));

        assertThat(catchThrowableOfType(Refused.class, () -> field.parse(typed, names))
                        .sentence())
                .isEqualTo(sentence);
    }

    @ParameterizedTest
    @CsvSource({
        "2026-12-20",
        "20 Dec 2026",
        "20 december 2026",
        "20.12.2026",
        "20. 12. 2026",
        "20/12/2026",
        "20th Dec 2026"
    })
    void a_date_is_typed_in_two_ways(String typed) throws Refused {
        assertThat(ServiceFields.DATE.parse(typed)).contains(LocalDate.of(2026, 12, 20));
    }

    @Test
    void a_blank_is_the_usual_value_where_there_is_one() throws Refused {
        assertThat(ServiceFields.SECONDS_A_MOVE.parse(" ")).isEqualTo(0.6);
        assertThat(HymnFields.TEMPO.parse("")).isEmpty();
        assertThat(StopFields.PIPE.parse("")).isEmpty();
        assertThat(HymnFields.TITLE.parse("")).isEmpty();
    }

    @Test
    void the_beginning_of_a_word_is_enough_and_numbers_may_have_a_comma() throws Refused {
        assertThat(VerseFields.SINGING.parse("FULL").word()).isEqualTo("full voice");
        assertThat(StopFields.RANKS.parse("iv")).isEqualTo(4);
        assertThat(StopFields.TRIM.parse("+2,5")).isEqualTo(2.5);
        assertThat(StopFields.FEET.parse("2 2/3 ft").map(Object::toString)).isEqualTo(Optional.of("2 2/3"));
        assertThat(DivisionFields.KEYBOARD.parse("Ped")).isEmpty();
    }
}
