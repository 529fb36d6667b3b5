package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import versewind.plan.Mode;

class VerdictTest {

    @ParameterizedTest
    @CsvSource({
        "CONGREGATION, 0, LOST, lost, true, STRONGER",
        "CONGREGATION, 0.0899, LOST, lost, true, STRONGER",
        "CONGREGATION, 0.09, LEAD_ONLY_JUST, only just, false, STRONGER",
        "CONGREGATION, 0.17, LEADS, leads, false, NONE",
        "CONGREGATION, 0.5499, LEADS, leads, false, NONE",
        "CONGREGATION, 0.55, TOO_STRONG, too strong, true, SOFTER",
        "SMALL_CHOIR, 0.3699, COVERED, covered, true, SOFTER",
        "SMALL_CHOIR, 0.37, VOICE_ONLY_JUST, only just, false, SOFTER",
        "SMALL_CHOIR, 0.47, CLEAR, clear, false, NONE",
        "SOLO_VOICE, 0.4999, COVERED, covered, true, SOFTER",
        "SOLO_VOICE, 0.5, VOICE_ONLY_JUST, only just, false, SOFTER",
        "SOLO_VOICE, 0.6, CLEAR, clear, false, NONE",
        "MELODY_SOLOED, 0.0899, BURIED, buried, true, STRONGER",
        "MELODY_SOLOED, 0.09, SOLO_LINE_ONLY_JUST, only just, false, STRONGER",
        "MELODY_SOLOED, 0.17, STANDS_OUT, stands out, false, NONE",
        "MELODY_SOLOED, 1, STANDS_OUT, stands out, false, NONE"
    })
    void a_verdict_begins_at_its_edge(
            Mode mode, double share, Verdict verdict, String word, boolean wantsAttention, Verdict.Way way) {
        assertThat(Verdict.of(mode, share)).isEqualTo(verdict);
        assertThat(verdict.kind()).isEqualTo(Balance.Kind.of(mode));
        assertThat(verdict.word()).isEqualTo(word);
        assertThat(verdict.wantsAttention()).isEqualTo(wantsAttention);
        assertThat(verdict.way()).isEqualTo(way);
    }

    @ParameterizedTest
    @EnumSource
    void the_percent_that_are_shown_have_the_verdict_of_the_share(Mode mode) {
        for (int i = 0; i <= 10_000; i++) {
            double share = i / 10_000.0;
            assertThat(Verdict.of(mode, Balance.percent(share) / 100.0)).isEqualTo(Verdict.of(mode, share));
        }
    }
}
