package versewind.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class KeywordsTest {

    @ParameterizedTest
    @EnumSource
    void a_kind_of_verse_is_found_by_its_word(VerseKind kind) {
        assertThat(VerseKind.ofWord(kind.word())).contains(kind);
    }

    @ParameterizedTest
    @EnumSource
    void a_mode_is_found_by_its_word(Mode mode) {
        assertThat(Mode.ofWord(mode.word())).contains(mode);
    }

    @ParameterizedTest
    @EnumSource
    void a_strength_is_found_by_its_word(Singing singing) {
        assertThat(Singing.ofWord(singing.word())).contains(singing);
    }

    @ParameterizedTest
    @EnumSource
    void a_layout_is_found_by_its_word(HandsAndFeet.Layout layout) {
        assertThat(HandsAndFeet.Layout.ofWord(layout.word())).contains(layout);
    }

    @Test
    void capitals_and_blanks_around_a_word_do_not_matter() {
        assertThat(Mode.ofWord(" Small Choir ")).contains(Mode.SMALL_CHOIR);
    }

    @Test
    void a_word_that_means_nothing_is_not_found() {
        assertThat(Mode.ofWord("choir")).isEmpty();
    }
}
