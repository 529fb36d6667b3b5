package versewind.screen.toolkit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import versewind.screen.Desk;
import versewind.screen.Wanted;

class KeyTest {

    @ParameterizedTest
    @EnumSource(
            value = Key.Named.class,
            mode = EnumSource.Mode.EXCLUDE,
            names = {"CHARACTER"})
    void a_named_key_is_written_in_words(Key.Named named) {
        assertThat(Key.of(named).name()).matches("[A-Z][A-Za-z0-9]*([ -][A-Z][a-z]+)?");
    }

    @Test
    void no_two_keys_are_written_the_same() {
        assertThat(Stream.of(Key.Named.values())
                        .filter(named -> named != Key.Named.CHARACTER)
                        .map(named -> Key.of(named).name()))
                .doesNotHaveDuplicates();
    }

    @Test
    void a_character_is_written_as_it_is() {
        assertThat(Key.of('X').name()).isEqualTo("X");
    }

    @Test
    void the_space_bar_has_a_name() {
        assertThat(Key.of(' ').name()).isEqualTo("Space");
    }

    @Test
    void a_character_held_with_control_is_written_so() {
        assertThat(Key.control('s').name()).isEqualTo("Ctrl-S");
    }

    @Test
    void a_key_is_known_by_its_name() {
        for (Key.Named named : Key.Named.values()) {
            if (named != Key.Named.CHARACTER) {
                assertThat(Key.all(Key.of(named).name())).containsExactly(Key.of(named));
            }
        }
        assertThat(Key.all("u, Ctrl-Z, Space")).containsExactly(Key.of('u'), Key.control('z'), Key.of(' '));
        assertThat(Key.all(",")).containsExactly(Key.of(','));
    }

    @Test
    void control_c_and_control_l_mean_the_same_everywhere() {
        for (String screen : List.of("f", "e", "/", "?", "o", "K", "M")) {
            Desk desk = Desk.with("harvest-festival", 80, 24).press(screen);
            desk.effects();
            assertThat(desk.press("^L").effects()).contains(Wanted.of("repaint"));
            assertThat(desk.press("^C").effects()).contains(Wanted.of("quit"));
        }
    }
}
