package versewind.organ;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.Shipped;

/** Pistons as they are written, and what they set. */
class PressedTest {

    private static final Instrument BOTH = Shipped.instrument("st-tethwin");
    private static final Instrument DIVISIONALS = Shipped.instrument("harlan-falls");

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "G3 | G3",
                " g 3 | G3",
                "General 3 | G3",
                "2/G3 | 2/G3",
                "2 / gen 3 | 2/G3",
                "Great 3 | Great 3",
                "gt3 | Great 3",
                "Great 3, Swell 2 | Great 3, Swell 2",
                "Sw 2 Gt 3 | Swell 2, Great 3",
                "2/Gt. 3 + Sw. 2 | 2/Great 3, Swell 2"
            })
    void a_piston_is_read_as_organists_write_it_and_named_in_full(String written, String name)
            throws NotationException {
        Pressed pressed = Pressed.read(BOTH, written);
        assertThat(pressed.name(BOTH)).isEqualTo(name);
        assertThat(Pressed.read(BOTH, name)).isEqualTo(pressed);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Banana | \"Banana\" is not a piston of this organ, which has Great 1 to 4, Swell 1 to 4, Pedal 1 to"
                        + " 4.",
                "Great | \"Great\" is not a piston of this organ, which has Great 1 to 4, Swell 1 to 4, Pedal 1 to 4.",
                "G1 | The organ has no general pistons, and so no G1: its pistons are Great 1 to 4, Swell 1 to 4,"
                        + " Pedal 1 to 4.",
                "Great 1, Gt 2 | Press one piston of a division at a time, as in Great 2.",
                "0/Great 1 | The organ has no memory level 0 for piston 0/Great 1: it has 8."
            })
    void what_the_organ_does_not_have_is_refused_with_what_it_has(String written, String sentence) {
        assertThatThrownBy(() -> Pressed.read(DIVISIONALS, written)).hasMessage(sentence);
        assertThat(Pressed.of(DIVISIONALS, written)).isEqualTo(Pressed.NONE);
    }

    @Test
    void a_divisional_sets_its_division_and_its_couplers_only_where_the_organ_has_it_so() {
        Knobs swell = Pressed.of(BOTH, "Swell 1").reach(BOTH);
        assertThat(swell.stops().stream().mapToObj(BOTH.stops()::get))
                .isNotEmpty()
                .allMatch(knob -> BOTH.divisionNames().get(knob.division()).equals("Swell"));
        assertThat(swell.couplers().isEmpty()).isTrue();
        assertThat(Pressed.of(BOTH, "G1").reach(BOTH)).isEqualTo(Knobs.all(BOTH));
    }

    @Test
    void what_no_pressed_piston_sets_stays_as_it_was() {
        Registration full = Registration.full(BOTH);
        Registration silent = Registration.silent(BOTH);
        Registration after = Pressed.of(BOTH, "Great 1, Swell 2").press(BOTH, silent, full);

        assertThat(after.stops().stream().mapToObj(BOTH.stops()::get))
                .isNotEmpty()
                .noneMatch(knob -> BOTH.divisions().get(knob.division()).isPedal());
        assertThat(after.couplers()).isEqualTo(silent.couplers());
        assertThat(Pressed.of(BOTH, "G1").press(BOTH, full, full)).isEqualTo(full);
        assertThat(List.of(Pressed.NONE.press(BOTH, silent, full))).containsExactly(silent);
    }
}
