package versewind.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class CautionTest {

    @Test
    void at_85_dB_ears_are_mentioned() {
        assertThat(Caution.hearing(OptionalDouble.of(85)))
                .contains("Hearing: up to 85 dB(A). NIOSH: 85 dB(A) over 8 hours; EU action values: 80 and 85 dB(A)."
                        + " Not a measurement; follow local rules and qualified advice.");
    }

    @Test
    void just_below_85_dB_they_are_not() {
        assertThat(Caution.hearing(OptionalDouble.of(84.99))).isEmpty();
    }

    @Test
    void silence_needs_no_caution() {
        assertThat(Caution.hearing(OptionalDouble.empty())).isEmpty();
    }
}
