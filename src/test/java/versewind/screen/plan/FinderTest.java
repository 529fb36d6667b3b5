package versewind.screen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.Shipped;
import versewind.organ.Instrument;

class FinderTest {

    private static final Instrument PARISH = Shipped.instrument("st-tethwin");
    private static final Instrument ABBEY = Shipped.instrument("ambrelow");

    private static List<String> found(Instrument organ, String typed) {
        List<Item> items = StopGridLayout.of(organ, 60, 20).items();
        return FindScreen.Finder.fitting(organ, items, typed).stream()
                .map(item -> Item.fullName(organ, items.get(item)))
                .toList();
    }

    @Test
    void names_that_begin_with_it_come_first() {
        assertThat(found(PARISH, "flute"))
                .containsExactly(
                        "Swell: Flute 4", "Great: Stopped Flute 8", "Great: Open Flute 4", "Pedal: Bass Flute 8");
    }

    @Test
    void several_words_must_all_be_there_in_any_order() {
        assertThat(found(PARISH, "8 great flute")).containsExactly("Great: Stopped Flute 8");
    }

    @Test
    void capitals_do_not_matter() {
        assertThat(found(PARISH, "CORNOPEAN")).containsExactly("Swell: Cornopean 8");
    }

    @Test
    void accents_in_names_need_not_be_typed() {
        assertThat(found(ABBEY, "recit celeste")).containsExactly("Récit expressif: Voix céleste 8");
    }

    @Test
    void accents_may_be_typed_in_one_piece_or_two() {
        assertThat(found(ABBEY, "ce\u0301leste")).isEqualTo(found(ABBEY, "céleste"));
    }

    @Test
    void couplers_are_found() {
        assertThat(found(PARISH, "octave")).containsExactly("Swell Octave");
    }

    @Test
    void tremulants_are_found_by_their_division() {
        assertThat(found(PARISH, "swell trem")).containsExactly("Swell: Tremulant");
    }

    @ParameterizedTest
    @CsvSource({"' flute '", "'flute  4'"})
    void blanks_around_and_between_words_do_not_matter(String typed) {
        assertThat(found(PARISH, typed)).contains("Swell: Flute 4");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "zink", "flute 32", "\u0301"})
    void nothing_is_found_by_nothing_or_by_what_no_name_has(String typed) {
        assertThat(found(PARISH, typed)).isEmpty();
    }
}
