package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

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
    void every_command_is_reached_by_one_of_its_keys() {
        for (Command command : Command.values()) {
            for (Command.Where where : Command.Where.values()) {
                if (where.answersTo(command.where())) {
                    assertThat(command.keys()).as("%s in %s", command, where).anyMatch(key -> KeyMap.meaning(where, key)
                            .equals(Optional.of(command)));
                }
            }
        }
    }

    @Test
    void control_c_and_control_l_mean_the_same_everywhere() {
        for (Command.Where where : Command.Where.values()) {
            assertThat(KeyMap.meaning(where, Key.control('c'))).as("%s", where).contains(Command.INTERRUPT);
            assertThat(KeyMap.meaning(where, Key.control('l'))).as("%s", where).contains(Command.REPAINT);
        }
    }
}
