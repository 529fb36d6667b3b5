package versewind.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class VerseTest {

    @Test
    void nobody_sings_in_an_introduction() {
        assertThat(SmallPlan.verse(VerseKind.INTRODUCTION, "Intro").isSung()).isFalse();
    }

    @Test
    void nobody_sings_over_a_soloed_melody() {
        assertThat(SmallPlan.verse("V1").withMode(Mode.MELODY_SOLOED).isSung()).isFalse();
    }

    @Test
    void an_amen_is_sung() {
        assertThat(SmallPlan.verse(VerseKind.AMEN, "Amen").isSung()).isTrue();
    }
}
