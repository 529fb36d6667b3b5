package versewind.screen.toolkit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.Shipped;
import versewind.organ.Instrument;

class AbbreviationTest {

    @ParameterizedTest
    @CsvSource({
        "Open Diapason,    13, Open Diapason",
        "Open Diapason,    12, Open Diap.",
        "Open Diapason,    10, Open Diap.",
        "Open Diapason,     9, Open Dia.",
        "Open Diapason,     8, Op. Dia.",
        "Open Diapason,     7, Op. Di.",
        "Open Diapason,     6, Op. D…",
        "Open Diapason No. 1, 15, Open Diapason 1",
        "Open Diapason No. 1, 12, Open Diap. 1",
        "Open Diapason No. 1, 11, Open Dia. 1",
        "Open Diapason No. 2,  7, Op. D…2",
        "Double Open Diapason, 14, Dbl Open Diap.",
        "Swell Sub Octave, 13, Swell Sub Oct",
        "Swell Octave to Great, 15, Swell Oct to Gt",
        "Lieblich Gedackt, 12, Lieb. Ged.",
        "Harmonic Flute,   13, Harm. Flute",
        "Contra Fagotto,   12, Cont. Fagot.",
        "Contra Fagotto,   11, Cont. Fago.",
        "Voix céleste,     11, Voix céles.",
        "II,                1, …",
        "Tuba,              3, Tu."
    })
    void the_longest_words_are_shortened_first(String name, int columns, String shorter) {
        assertThat(Abbreviation.of(name, columns, "…")).isEqualTo(shorter);
    }

    @Test
    void an_accent_is_not_parted_from_its_letter() {
        assertThat(Abbreviation.of("Re\u0301cit expressif", 9, "…")).isEqualTo("Réc. exp.");
    }

    @ParameterizedTest
    @CsvSource({"0", "-1"})
    void where_there_is_no_room_there_is_nothing(int columns) {
        assertThat(Abbreviation.of("Tuba", columns, "…")).isEmpty();
    }

    @Test
    void a_name_never_takes_more_columns_than_it_may() {
        Random random = new Random(7);
        Instrument organ = Shipped.instrument("ostmere-cathedral");
        for (Instrument.Knob knob : organ.stops()) {
            int columns = random.nextInt(25);
            assertThat(Text.columns(Abbreviation.of(knob.stop().name(), columns, "…")))
                    .isLessThanOrEqualTo(columns);
        }
    }

    @Test
    void names_of_wide_characters_are_counted_in_columns() {
        assertThat(Abbreviation.of("主音栓 笛", 7, "…")).isEqualTo("主音栓…");
    }
}
