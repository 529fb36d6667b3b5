package versewind.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import versewind.Shipped;
import versewind.plan.Plan;
import versewind.sound.OrganSound;

class ReadingDesignTest {

    private final Plan harvest;
    private final OrganSound sound;

    ReadingDesignTest() throws Exception {
        var open = Shipped.plan("harvest-festival");
        harvest = open.plan();
        sound = OrganSound.open(open.instrument());
    }

    @Test
    void readings_are_proposed_as_long_as_one_gains_a_tenth_and_the_verdicts_become_more_certain() {
        List<ReadingDesign.Proposed> proposed = ReadingDesign.of(sound, harvest, 20);

        assertThat(proposed).hasSizeBetween(2, 10);
        for (ReadingDesign.Proposed each : proposed) {
            assertThat(each.afterDb()).isLessThanOrEqualTo(0.9 * each.beforeDb());
        }
        assertThat(proposed.get(proposed.size() - 1).afterOdds().orElseThrow())
                .isGreaterThan(proposed.get(0).beforeOdds().orElseThrow());
    }

    @Test
    void once_the_organ_is_known_the_singing_alone_helps_most() {
        List<MeterReading> readings = new ArrayList<>();
        ReadingDesign.allRound(sound, 5, 0).forEach(each -> readings.add(each.reading()));
        OrganSound known = Fit.of(sound, readings).after();

        ReadingDesign.Proposed first = ReadingDesign.of(known, harvest, 1).get(0);

        assertThat(first.reading().sung()).isPresent();
        assertThat(first.reading().registration().stops().isEmpty()).isTrue();
        assertThat(first.words(sound.organ())).startsWith("the singing alone, in an unaccompanied verse: ");
    }
}
