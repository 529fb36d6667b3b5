package versewind.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class TerminalTypeTest {

    @ParameterizedTest
    @CsvSource({
        "xterm-256color, WINDOW, COLOUR",
        "screen, WINDOW, COLOUR",
        "tmux-256color, WINDOW, COLOUR",
        "rxvt-unicode, WINDOW, COLOUR",
        "linux, CONSOLE, COLOUR",
        "linux-16color, CONSOLE, COLOUR",
        "ansi, WINDOW, MONOCHROME",
        "rxvt, WINDOW, MONOCHROME",
        "rxvt-unicode-256color, WINDOW, COLOUR",
        "vt100, VIDEO_TERMINAL, MONOCHROME",
        "vt220, VIDEO_TERMINAL, MONOCHROME"
    })
    void the_kind_of_terminal_and_its_colours_follow_from_term(String term, TerminalType model, Palette palette)
            throws NoTerminalException {
        Map<String, String> environment = Map.of("TERM", term);
        assertThat(TerminalType.of(environment)).isEqualTo(model);
        assertThat(model.palette(environment)).isEqualTo(palette);
    }

    @Test
    void colours_can_be_refused_and_an_empty_refusal_is_none() {
        assertThat(TerminalType.WINDOW.palette(Map.of("NO_COLOR", "1"))).isEqualTo(Palette.MONOCHROME);
        assertThat(TerminalType.WINDOW.palette(Map.of("NO_COLOR", ""))).isEqualTo(Palette.COLOUR);
    }

    @Test
    void a_terminal_on_which_nothing_can_be_placed_is_refused_with_a_sentence() {
        assertThatThrownBy(() -> TerminalType.of(Map.of("TERM", "dumb")))
                .isInstanceOf(NoTerminalException.class)
                .hasMessage("the full screen needs a terminal: TERM is dumb, and on that nothing can be placed;"
                        + " `versewind assess PLAN` works without one.");
        assertThatThrownBy(() -> TerminalType.of(Map.of()))
                .hasMessage("the full screen needs a terminal: TERM is not set;"
                        + " `versewind assess PLAN` works without one.");
        assertThatThrownBy(() -> TerminalType.of(Map.of("TERM", ""))).isInstanceOf(NoTerminalException.class);
    }

    @ParameterizedTest
    @EnumSource(TerminalType.class)
    void whatever_is_switched_at_the_beginning_is_switched_back_at_the_end(TerminalType model) {
        String back = model.enter().replace('h', 'x').replace('l', 'h').replace('x', 'l');
        for (String mode : back.split("(?=\033)", -1)) {
            assertThat(model.leave()).contains(mode);
        }
        VirtualScreen screen = new VirtualScreen(80, 24, StandardCharsets.US_ASCII);
        screen.writeBytes((model.enter() + model.leave()).getBytes(StandardCharsets.US_ASCII));
        screen.obey();
        assertThat(screen.showsCaret()).isTrue();
        assertThat(model.leave()).startsWith("\033[m");
    }

    @Test
    void a_terminal_with_one_screen_is_not_asked_for_a_second_and_is_cleared_at_the_end() {
        for (TerminalType model : new TerminalType[] {TerminalType.CONSOLE, TerminalType.VIDEO_TERMINAL}) {
            assertThat(model.enter()).doesNotContain("1049");
            assertThat(model.leave()).doesNotContain("1049").endsWith("\033[H\033[2J");
        }
    }

    @Test
    void the_launcher_sets_the_same_modes_and_leaves_the_screen_in_the_same_way() throws IOException {
        String launcher = Files.readString(Path.of("src/main/launcher/versewind"));
        assertThat(launcher)
                .contains("\nmodes='" + Tty.MODES + "'\n")
                .contains("-D" + Tty.SIZE_PROPERTY + "=\"$size\"")
                .contains("*) printf '" + TerminalType.WINDOW.leave().replace("\033", "\\033") + "' ;;")
                .contains("linux* | vt*) printf '"
                        + TerminalType.VIDEO_TERMINAL.leave().replace("\033", "\\033") + "' ;;");
    }
}
