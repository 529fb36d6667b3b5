package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.screen.toolkit.Enlarged;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;

class LargeLettersTest {

    private static final String MARKS = "●·▸◂■□◆◇▲△▼▽…┃█▌▏";

    private static List<String> large(String text) {
        Frame small = new Frame(Text.columns(text), 1);
        small.write(0, 0, text, Style.TEXT);
        Frame frame = new Frame(Text.columns(text) * Enlarged.COLUMNS, Enlarged.ROWS);
        Enlarged.paint(small, frame, 0, 0);
        return rows(frame);
    }

    private static List<String> rows(Frame frame) {
        return IntStream.range(0, frame.height()).mapToObj(frame::row).toList();
    }

    /** Whether a text stands on a frame in large letters, each of its rows under the one above. */
    private static boolean shows(Frame frame, String text) {
        List<String> rows = large(text);
        for (int y = 0; y + Enlarged.ROWS <= frame.height(); y++) {
            for (int x = frame.row(y).indexOf(rows.get(0));
                    x >= 0;
                    x = frame.row(y).indexOf(rows.get(0), x + 1)) {
                if (frame.row(y + 1).startsWith(rows.get(1), x)
                        && frame.row(y + 2).startsWith(rows.get(2), x)) {
                    return true;
                }
            }
        }
        return false;
    }

    @Test
    void a_big_screen_shows_every_stop_coupler_and_verse_with_its_level() {
        Frame frame = Desk.with("harvest-festival", 200, 60).press("L").frame();
        assertThat(Stream.of(
                        "Great",
                        "Open Diapason",
                        "Twelfth",
                        "Cornopean",
                        "Swell to Great",
                        "Trombone",
                        "Swell Sub Oct"))
                .allMatch(name -> shows(frame, name));
        assertThat(Stream.of("V1", "V4", "Inter", "81", "83", "77")).allMatch(text -> shows(frame, text));
        assertThat(shows(frame, "Clarinet"))
                .as("a stop that this organ has not got")
                .isFalse();
    }

    @ParameterizedTest
    @CsvSource({"120, 40", "120, 36", "161, 47"})
    void a_smaller_one_shows_a_part_of_them_and_turns_to_where_the_cursor_is(int columns, int rows) {
        Desk desk = Desk.with("harvest-festival", columns, rows).press("L");
        assertThat(shows(desk.frame(), "Bourdon")).isTrue();
        assertThat(shows(desk.press("<End>").frame(), "Swell Sub Oct")).isTrue();
        assertThat(shows(desk.press("n").frame(), "V1")).isTrue();
    }

    @Test
    void the_key_turns_them_off_again_and_the_cursor_fills_three_rows() {
        Desk desk = Desk.with("harvest-festival", 120, 40);
        List<String> usual = rows(desk.frame()).subList(0, 39);
        Frame frame = desk.press("L").frame();
        assertThat(IntStream.range(0, frame.height())
                        .filter(y -> frame.styleRow(y).startsWith("CC")))
                .hasSize(Enlarged.ROWS);
        assertThat(rows(desk.press("L").frame()).subList(0, 39)).isEqualTo(usual);
    }

    @Test
    void at_the_desk_everything_is_large() {
        Frame frame =
                Desk.with("harvest-festival", 200, 60).press("L", "K", " ").frame();
        assertThat(shows(frame, "208 Come, carry in the harvest")).isTrue();
        assertThat(shows(frame, "Drawn")).isTrue();
    }

    @Test
    void a_small_screen_keeps_the_usual_letters_and_says_why() {
        Desk desk = Desk.with("harvest-festival", 119, 40);
        String usual = desk.frame().row(3);
        assertThat(desk.press("L").frame().row(3)).isEqualTo(usual);
        assertThat(desk.frame().row(39))
                .contains("Large letters come where there are 120 columns and 36 rows; here are 119 by 40.");
    }

    @Test
    void no_two_letters_or_figures_look_alike_and_small_ones_and_accents_are_capitals() {
        String all = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789.,:;'!?()/+-&=#<>%×±" + MARKS;
        Set<List<String>> forms = new HashSet<>();
        all.codePoints().forEach(point -> forms.add(large(Character.toString(point))));
        assertThat(forms).hasSize((int) all.codePoints().count());
        assertThat(large("flûte à 8")).isEqualTo(large("FLUTE A 8"));
        assertThat(large("字").get(1)).as("what has no form is written as it is").isEqualTo("字");
    }
}
