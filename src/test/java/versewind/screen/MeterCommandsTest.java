package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.Golden;
import versewind.calibration.CalibratedOrgan;
import versewind.calibration.Calibration;
import versewind.calibration.Experience;
import versewind.calibration.Fit;
import versewind.calibration.MeterReading;
import versewind.screen.plan.PlanEvent;
import versewind.screen.state.FormBox;
import versewind.sound.OrganSound;
import versewind.sound.Seat;

class MeterCommandsTest {

    private final Desk desk = Desk.with("harvest-festival", 80, 24).press("n");
    private final OrganSound before = desk.work().sound();

    /** What is wanted done outside: the readings that the organ is to be fitted to. */
    @SuppressWarnings("unchecked") // the readings are the only argument
    private List<MeterReading> wanted() {
        return desk.effects().stream()
                .filter(wanted -> wanted.is("recalibrate"))
                .map(wanted -> (List<MeterReading>) wanted.argument(0, List.class))
                .reduce((first, last) -> last)
                .orElseThrow();
    }

    private Desk fitted() {
        List<MeterReading> readings = wanted();
        if (readings.isEmpty()) {
            return desk.answer(new PlanEvent.Recalibrated(
                    CalibratedOrgan.of(before, Calibration.NONE, Experience.NONE), List.of()));
        }
        Fit fit = Fit.of(before, readings);
        return desk.answer(new PlanEvent.Recalibrated(
                CalibratedOrgan.of(fit.calibration().soundOf(fit.instrument()), fit.calibration(), Experience.NONE),
                Fit.outliers(before, readings)));
    }

    @Test
    void a_reading_is_of_what_is_drawn_and_played_here() {
        desk.press("m", "'84,5'", "<Tab>", "^U", "'far'", "<Tab>", "^U", "'90'", "<Tab>", "'60'", "<Enter>");
        MeterReading reading = wanted().get(0);
        assertThat(reading.dba()).isEqualTo(84.5);
        assertThat(reading.registration()).isEqualTo(desk.verse().registration());
        assertThat(reading.hands()).isEqualTo(desk.verse().hands());
        assertThat(reading.seat()).isEqualTo(Seat.FAR);
        assertThat(reading.present()).isEqualTo(90);
        assertThat(reading.sung().orElseThrow())
                .isEqualTo(new MeterReading.Sung(60, desk.verse().singing()));
        assertThat(reading.date()).isEqualTo(desk.state().today().toString());
    }

    @Test
    void after_a_reading_levels_are_surer_and_it_is_told_what_was_expected() {
        desk.press("m", "'88'", "<Enter>");
        fitted();
        assertThat(desk.said()).startsWith("Read 88 dB(A), expected 8").endsWith("The organ's file is written.");
        assertThat(desk.screen()).contains("dB±3").doesNotContain("±6 dB(A)");
        assertThat(desk.state().isUnsaved()).isFalse();
    }

    @Test
    void readings_are_added_to_those_before_and_can_be_left_out() {
        desk.press("m", "'85'", "<Enter>");
        fitted();
        desk.press("n", "m", "'86'", "<Enter>");
        fitted();
        desk.press("M", "<Up>", "x");
        assertThat(wanted()).hasSize(1).allMatch(reading -> reading.dba() == 86);
    }

    @Test
    void a_reading_that_fits_nothing_is_told() {
        desk.press("m", "'85'", "<Enter>");
        fitted();
        desk.press("m", "'85'", "<Enter>");
        fitted();
        desk.press("m", "'60'", "<Enter>");
        fitted();
        assertThat(desk.said()).contains("It does not fit the others");
    }

    @Test
    void leaving_out_the_last_reading_leaves_an_organ_that_was_never_read() {
        desk.press("m", "'85'", "<Enter>");
        fitted();
        desk.press("M", "x");
        fitted();
        assertThat(desk.work().organ().calibration().isNone()).isTrue();
        desk.press("x");
        assertThat(desk.said()).isEqualTo("There is no reading to leave out.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"'loud' | Enter a level in dB(A), such as 78.5.", "'12' | A reading lies between 20 and 130 dB(A)."
            },
            quoteCharacter = '"')
    void what_is_no_level_is_told(String typed, String complaint) {
        desk.press("m", typed, "<Enter>");
        assertThat(desk.state().top()).isInstanceOfSatisfying(FormBox.class, form -> assertThat(form.complaint())
                .isEqualTo(complaint));
        assertThat(desk.effects()).isEmpty();
    }

    @Test
    void silence_cannot_be_read() {
        desk.press("p", "0", "m");
        assertThat(desk.said()).isEqualTo("Nothing sounds here. Draw a registration first.");
    }

    @Test
    void with_everything_in_the_reading_is_of_the_singing_alone() {
        desk.press("0", "m", "'80'", "<Enter>");
        MeterReading reading = wanted().get(0);
        assertThat(reading.present()).isEqualTo(480);
        assertThat(reading.sung().orElseThrow().singers()).isEqualTo(384);
        assertThat(reading.registration().stops().isEmpty()).isTrue();
    }

    @Test
    void the_readings_and_what_to_read_next_look_as_before() {
        desk.press("M");
        Golden.check("metering/none-80x24.txt", desk.screen());
        desk.press("<Esc>", "m", "'85'", "<Enter>");
        fitted();
        desk.press("n", "m", "'86'", "<Enter>");
        fitted();
        desk.press("m");
        Golden.check("metering/form-80x24.txt", desk.screen());
        desk.press("<Esc>", "M");
        Golden.check("metering/readings-80x24.txt", desk.screen());
    }
}
