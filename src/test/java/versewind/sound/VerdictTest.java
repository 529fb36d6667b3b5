package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
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

    @ParameterizedTest
    @CsvSource({
        "0.1, 0.7, 0.2, 'leads 7, too strong 2 in 10', leads/too strong",
        "0.01, 0.75, 0.24, 'leads 8, too strong 2 in 10', leads/too strong",
        "0.1, 0.8, 0.1, 'leads, 8 in 10', 'leads, 8 in 10'",
        "0.25, 0.6, 0.15, 'leads, 6 in 10', 'leads, 6 in 10'",
        "0.1, 0.3, 0.6, 'too strong, 6 in 10', 'too strong, 6 in 10'"
    })
    void beside_a_lead_it_is_said_that_it_may_be_too_strong(
            double just, double leads, double strong, String words, String shortWords) {
        Odds odds = new Odds(List.of(
                new Odds.Chance(Verdict.LEAD_ONLY_JUST, just),
                new Odds.Chance(Verdict.LEADS, leads),
                new Odds.Chance(Verdict.TOO_STRONG, strong)));
        Balance balance = new Balance(OptionalDouble.of(0.5), Verdict.LEADS, odds.first(), odds);

        assertThat(balance.words()).isEqualTo(words);
        assertThat(balance.shortWords()).isEqualTo(shortWords);
    }
}
