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
}
