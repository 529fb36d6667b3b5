package versewind.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SoughtTest {

    @Test
    void capitals_accents_and_order_make_no_difference_but_every_word_counts() {
        assertThat(Sought.of("  RECIT  plein ").isIn("Plein jeu du Récit")).isTrue();
        assertThat(Sought.of("recit cornet").isIn("Plein jeu du Récit")).isFalse();
        assertThat(Sought.of("").isIn("anything")).isTrue();
    }

    @Test
    void apostrophes_quotation_marks_and_dashes_are_found_as_a_keyboard_writes_them() {
        assertThat(Sought.of("st vaurin's").isIn("St Vaurin\u2019s Abbey")).isTrue();
        assertThat(Sought.of("\u201cquiet\u201d 1\u20132").isIn("the \"quiet\" one, 1-2"))
                .isTrue();
        assertThat(Sought.of("vaurins").isIn("St Vaurin\u2019s Abbey")).isFalse();
    }

    @Test
    void what_parts_the_words_of_a_registration_is_not_sought() {
        assertThat(Sought.of("Great: Principal 4, Mixture III; Pedal:"))
                .isEqualTo(Sought.of("great principal 4 mixture iii pedal"));
        assertThat(Sought.of(" : ;").words()).isEmpty();
    }
}
