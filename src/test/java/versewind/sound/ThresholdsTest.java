package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import versewind.plan.Mode;

class ThresholdsTest {

    @ParameterizedTest
    @CsvSource({
        "CONGREGATION, -15, LOST, lost, true, STRONGER",
        "CONGREGATION, -5.01, LOST, lost, true, STRONGER",
        "CONGREGATION, -5, LEAD_ONLY_JUST, only just, false, STRONGER",
        "CONGREGATION, -1.5, LEADS, leads, false, NONE",
        "CONGREGATION, 8.99, LEADS, leads, false, NONE",
        "CONGREGATION, 9, TOO_STRONG, too strong, true, SOFTER",
        "SMALL_CHOIR, -5.01, COVERED, covered, true, SOFTER",
        "SMALL_CHOIR, -5, VOICE_ONLY_JUST, only just, false, SOFTER",
        "SMALL_CHOIR, -1, CLEAR, clear, false, NONE",
        "SOLO_VOICE, -1.51, COVERED, covered, true, SOFTER",
        "SOLO_VOICE, -1.5, VOICE_ONLY_JUST, only just, false, SOFTER",
        "SOLO_VOICE, 3, CLEAR, clear, false, NONE",
        "MELODY_SOLOED, -2.01, BURIED, buried, true, STRONGER",
        "MELODY_SOLOED, -2, SOLO_LINE_ONLY_JUST, only just, false, STRONGER",
        "MELODY_SOLOED, 2, STANDS_OUT, stands out, false, NONE"
    })
    void a_verdict_begins_at_its_threshold(
            Mode mode, double marginDb, Verdict verdict, String word, boolean wantsAttention, Verdict.Way way) {
        Margin margin = Margin.of(mode, marginDb, new Margin.Bands(marginDb, marginDb, marginDb, marginDb));
        assertThat(margin.verdict()).isEqualTo(verdict);
        assertThat(margin.kind()).isEqualTo(verdict.kind());
        assertThat(verdict.word()).isEqualTo(word);
        assertThat(verdict.wantsAttention()).isEqualTo(wantsAttention);
        assertThat(verdict.way()).isEqualTo(way);
    }

    @ParameterizedTest
    @EnumSource
    void only_just_is_never_narrower_than_the_model_can_tell(Thresholds thresholds) {
        assertThat(thresholds.goodDb() - thresholds.onlyJustDb()).isGreaterThanOrEqualTo(3);
    }
}
