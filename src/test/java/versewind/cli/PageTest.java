package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import versewind.screen.toolkit.Text;

class PageTest {

    @Test
    void no_line_is_broken_between_a_name_and_its_number() {
        Page page = new Page(new CharsetFallback(StandardCharsets.UTF_8), 40);
        page.hanging("Great  ", "Open Diapason 8, Principal 4, Twelfth 2 2/3, Mixture III, Trumpet 8");

        assertThat(page.text()).isEqualTo("""
            Great  Open Diapason 8, Principal 4,
                   Twelfth 2 2/3, Mixture III,
                   Trumpet 8
            """);
    }

    private final Page page = new Page(new CharsetFallback(StandardCharsets.UTF_8));

    @Test
    void a_page_is_as_wide_as_its_terminal_and_endless_without_one() {
        String text = "x".repeat(120);

        assertThat(line(OptionalInt.empty(), text)).isEqualTo(text + "\n");
        assertThat(line(OptionalInt.of(100), text)).isEqualTo("x".repeat(99) + "~\n");
        assertThat(line(OptionalInt.of(40), text)).isEqualTo("x".repeat(79) + "~\n");
    }

    private static String line(OptionalInt terminal, String text) {
        Page page = Page.asWideAs(terminal, new CharsetFallback(StandardCharsets.UTF_8));
        page.line(text);
        return page.text();
    }

    @Test
    void a_line_that_is_too_long_is_cut_and_marked() {
        page.line("x".repeat(81));
        assertThat(page.text()).isEqualTo("x".repeat(79) + "~\n");
    }

    @Test
    void a_paragraph_is_broken_between_words() {
        page.paragraph("x".repeat(40) + " " + "y".repeat(39) + " z");
        assertThat(page.text()).isEqualTo("x".repeat(40) + " " + "y".repeat(39) + "\nz\n");
    }

    @Test
    void words_beside_a_head_go_on_below_the_first_of_them() {
        page.hanging("Great  ", "x".repeat(70) + " y".repeat(4));
        assertThat(page.text()).isEqualTo("Great  " + "x".repeat(70) + " y\n       y y y\n");
    }

    @Test
    void cells_are_as_wide_as_they_look() {
        assertThat(Text.columns(page.left("\u8b9a\u7f8e", 7))).isEqualTo(7);
        assertThat(Text.columns(page.left("Re\u0301cit", 7))).isEqualTo(7);
        assertThat(page.left("\u8b9a\u7f8e\u8b9a\u7f8e", 7)).isEqualTo("\u8b9a\u7f8e\u8b9a~");
        assertThat(page.left("\u8b9a\u7f8e\u8b9a\u7f8e", 6)).isEqualTo("\u8b9a\u7f8e~ ");
        assertThat(page.right("81", 5)).isEqualTo("   81");
    }

    @Test
    void on_a_narrow_page_a_line_is_wrapped_and_nothing_is_lost() {
        Page narrow = new Page(new CharsetFallback(StandardCharsets.UTF_8), 40);
        narrow.line("V1      congregation  ordinary   fff   +3    22%  leads, 8 in 10");
        narrow.line("x".repeat(40));
        assertThat(narrow.text())
                .isEqualTo("V1 congregation ordinary fff +3 22%\n  leads, 8 in 10\n" + "x".repeat(40) + "\n");
    }
}
