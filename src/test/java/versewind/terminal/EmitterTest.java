package versewind.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.googlecode.lanterna.TerminalPosition;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import versewind.screen.Desk;
import versewind.screen.Drawing;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Marks;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;

class EmitterTest {

    private static final int WIDTH = 80;
    private static final int HEIGHT = 24;
    private static final List<String> KEYS = List.of(
            " ", "<Down>", "<Right>", "n", "p", "]", "[", "<Tab>", "1", "3", "+", "-", "<", ">", "h", "f", "<Esc>", "?",
            "e", "'Ped'", "u", "K", "a", "R", ":", "/");

    private final VirtualScreen screen = new VirtualScreen(WIDTH, HEIGHT, StandardCharsets.UTF_8);
    private final Emitter emitter = new Emitter(screen, StandardCharsets.UTF_8, Palette.COLOUR);

    // The byte counts are those that a minimal emitter was measured to need, and one more.

    @Test
    void nothing_is_written_when_nothing_has_changed() throws IOException {
        paint(organ());
        assertThat(paint(organ())).isZero();
        assertThat(screen.writes()).isEqualTo(1);
    }

    @Test
    void one_cell_costs_eight_bytes_at_most() throws IOException {
        Frame text = organ();
        Drawing.write(text, 0, HEIGHT - 1, "Drawn", Style.TEXT);
        paint(text);
        Frame far = organ();
        Drawing.write(far, 0, HEIGHT - 1, "Drawn", Style.TEXT);
        Drawing.write(far, 40, 7, "x", Style.TEXT);
        assertThat(paint(far)).isLessThanOrEqualTo(8);
        assertThat(paint(text)).as("and less where the cursor is near").isLessThanOrEqualTo(3);
    }

    @Test
    void a_highlight_moved_one_to_the_right_costs_twelve_bytes_at_most() throws IOException {
        paint(highlighted(30));
        paint(highlighted(31));
        assertThat(paint(highlighted(32))).isLessThanOrEqualTo(12);
        assertThat(paint(highlighted(33))).isLessThanOrEqualTo(12);
    }

    @Test
    void a_status_text_costs_its_letters_nine_bytes_and_the_way_back_to_the_caret_at_most() throws IOException {
        Frame before = organ();
        Drawing.write(before, 0, HEIGHT - 1, "Drawn", Style.TEXT);
        paint(before);
        paint(highlighted(30));
        Frame after = highlighted(30);
        Drawing.write(after, 0, HEIGHT - 1, "Saved", Style.TEXT);
        assertThat(paint(after)).isLessThanOrEqualTo(17);
    }

    @Test
    void a_first_screen_costs_2300_bytes_at_most() throws IOException {
        assertThat(paint(organ())).isBetween(1_000, 2_300);
    }

    @Test
    void a_row_that_grows_shorter_is_erased_to_its_end() throws IOException {
        Frame before = new Frame(WIDTH, HEIGHT);
        Drawing.write(before, 0, 5, "The reeds of the Swell cover the singers", Style.TEXT);
        paint(before);
        Frame after = new Frame(WIDTH, HEIGHT);
        Drawing.write(after, 0, 5, "The reeds", Style.TEXT);
        assertThat(paint(after)).isLessThanOrEqualTo(8);
        assertShows(after, Palette.COLOUR);
    }

    @Test
    void a_row_that_is_read_aloud_is_written_whole() throws IOException {
        Frame before = new Frame(WIDTH, HEIGHT, Marks.WORDS);
        Drawing.write(before, 1, HEIGHT - 1, "Advent, 1 of 2", Style.TEXT);
        paint(before);
        Frame after = new Frame(WIDTH, HEIGHT, Marks.WORDS);
        Drawing.write(after, 1, HEIGHT - 1, "Ash Wednesday, 2 of 2", Style.TEXT);
        assertThat(paint(after)).isGreaterThanOrEqualTo("Ash Wednesday, 2 of 2".length());
        assertThat(paint(after)).isZero();
    }

    @Test
    void a_frame_is_one_write() throws IOException {
        paint(organ());
        paint(highlighted(40));
        assertThat(screen.writes()).isEqualTo(2);
    }

    @Test
    void wide_characters_keep_the_columns_behind_them_in_place() throws IOException {
        Frame frame = new Frame(WIDTH, HEIGHT);
        Drawing.write(frame, 0, 0, "a漢字b 8'", Style.TEXT);
        Drawing.write(frame, WIDTH - 2, 1, "漢", Style.DRAWN);
        Drawing.write(frame, 4, 2, "\uD83C\uDFB5 é", Style.STRONG);
        paint(frame);
        assertShows(frame, Palette.COLOUR);
        assertThat(screen.character(5, 0)).isEqualTo('b');
    }

    @Test
    void behind_a_wide_character_the_column_is_named_for_terminals_that_see_its_width_otherwise() throws IOException {
        Frame frame = new Frame(WIDTH, HEIGHT);
        Drawing.write(frame, 0, 0, "漢x", Style.TEXT);
        emitter.paint(frame);
        assertThat(screen.toString(StandardCharsets.UTF_8)).endsWith("漢\033[;3Hx");
    }

    @Test
    void half_a_wide_character_is_never_left_behind() throws IOException {
        String[] rows = {"漢字漢字x", "x漢字漢字", "ab漢cd字", "漢xx漢字", "xx字漢x漢", "", "字"};
        for (String from : rows) {
            for (String to : rows) {
                Frame before = new Frame(WIDTH, HEIGHT);
                Drawing.write(before, 3, 3, from, Style.TEXT);
                paint(before);
                Frame after = new Frame(WIDTH, HEIGHT);
                Drawing.write(after, 3, 3, to, Style.TEXT);
                paint(after);
                assertShows(after, Palette.COLOUR);
            }
        }
    }

    @Test
    void a_wide_character_that_another_text_has_halved_leaves_a_blank() throws IOException {
        Frame frame = new Frame(WIDTH, HEIGHT);
        Drawing.write(frame, 0, 0, "漢字", Style.TEXT);
        Drawing.write(frame, 1, 0, "xy", Style.TEXT);
        paint(frame);
        assertThat(row(0, 5)).isEqualTo(" xy  ");
    }

    @Test
    void nothing_in_a_text_reaches_the_terminal_as_a_control() throws IOException {
        Frame frame = new Frame(WIDTH, HEIGHT);
        Drawing.write(frame, 0, 0, "a\033[2Jb\007c\177d\u009Be\u202Ef\u200Bg\tq\nr\0", Style.TEXT);
        paint(frame);
        assertThat(row(0, 24)).isEqualTo("a?[2Jb?c?d?e?f?g q?r?   ");
    }

    @Test
    void combining_accents_do_not_shift_the_row() throws IOException {
        Frame frame = new Frame(WIDTH, HEIGHT);
        Drawing.write(frame, 0, 0, "Flu\u0302te x\u0306|", Style.TEXT);
        paint(frame);
        assertThat(row(0, 8)).isEqualTo("Fl\u00FBte x|");
    }

    @Test
    void a_character_that_the_terminal_has_not_got_is_plain_or_a_question_mark_for_each_column() throws IOException {
        VirtualScreen latin = new VirtualScreen(WIDTH, HEIGHT, StandardCharsets.ISO_8859_1);
        Frame frame = new Frame(WIDTH, HEIGHT);
        Drawing.write(frame, 0, 0, "é→漢x", Style.TEXT);
        new Emitter(latin, StandardCharsets.ISO_8859_1, Palette.COLOUR).paint(frame);
        latin.obey();
        assertThat(row(latin, 0, 5)).isEqualTo("é???x");
        VirtualScreen ascii = new VirtualScreen(WIDTH, HEIGHT, StandardCharsets.US_ASCII);
        new Emitter(ascii, StandardCharsets.US_ASCII, Palette.COLOUR).paint(frame);
        ascii.obey();
        assertThat(row(ascii, 0, 5)).isEqualTo("e???x");
    }

    @Test
    void the_caret_stands_where_the_frame_has_it_and_else_is_hidden() throws IOException {
        paint(organ());
        assertThat(screen.showsCaret()).isFalse();
        Frame field = organ();
        Drawing.caret(field, 12, 4);
        paint(field);
        assertCaret(12, 4);
        Frame moved = organ();
        Drawing.caret(moved, 13, 4);
        assertThat(paint(moved)).isLessThanOrEqualTo(3);
        assertCaret(13, 4);
        paint(organ());
        assertThat(screen.showsCaret()).isFalse();
    }

    @Test
    void a_frame_of_another_size_clears_the_screen() throws IOException {
        paint(organ());
        Frame small = new Frame(20, 5);
        Drawing.write(small, 0, 0, "Too small", Style.TEXT);
        paint(small);
        assertThat(row(0, 20).strip()).isEqualTo("Too small");
        assertThat(row(10, WIDTH)).isBlank();
    }

    @Test
    void what_was_written_over_the_screen_is_painted_over_after_forgetting() throws IOException {
        paint(organ());
        emitter.send("\033[1;1H\033[31mShell prompt");
        screen.obey();
        paint(organ());
        assertShows(organ(), Palette.COLOUR);
    }

    @Test
    void a_broken_line_is_told_and_the_next_frame_is_painted_whole() throws IOException {
        boolean[] broken = {true};
        OutputStream line = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                if (broken[0]) {
                    throw new IOException("Input/output error");
                }
                screen.write(b);
            }
        };
        Emitter onBrokenLine = new Emitter(line, StandardCharsets.UTF_8, Palette.COLOUR);
        assertThatThrownBy(() -> onBrokenLine.paint(organ())).isInstanceOf(IOException.class);
        broken[0] = false;
        onBrokenLine.paint(organ());
        screen.obey();
        assertShows(organ(), Palette.COLOUR);
    }

    @ParameterizedTest
    @EnumSource(Palette.class)
    void frames_at_random_are_the_same_in_the_terminal_and_in_a_window(Palette palette) throws IOException {
        Random random = new Random(20);
        Pair pair = new Pair(40, 12, palette);
        Frame frame = new Frame(40, 12);
        for (int step = 0; step < 150; step++) {
            frame = change(frame, random);
            pair.paint(frame);
            pair.assertSame(frame, "step " + step);
        }
    }

    @ParameterizedTest
    @CsvSource({"harvest-festival", "easter-cathedral", "wedding"})
    void a_hundred_frames_of_the_program_are_the_same_in_the_terminal_and_in_a_window(String plan) throws IOException {
        Random random = new Random(20);
        Pair pair = new Pair(WIDTH, HEIGHT, Palette.COLOUR);
        Desk desk = Desk.with(plan, WIDTH, HEIGHT);
        for (int step = 0; step < 100; step++) {
            String key = KEYS.get(random.nextInt(KEYS.size()));
            Frame frame = desk.press(key).frame();
            pair.paint(frame);
            pair.assertSame(frame, "step " + step + ", after " + key);
        }
    }

    /** A terminal that obeys the emitter, and a window, both showing the same frames. */
    private static final class Pair {
        private final VirtualScreen ours;
        private final Emitter painter;
        private final WindowScreen window;

        Pair(int width, int height, Palette palette) throws IOException {
            ours = new VirtualScreen(width, height, StandardCharsets.UTF_8);
            painter = new Emitter(ours, StandardCharsets.UTF_8, palette);
            window = new WindowScreen(width, height, palette);
        }

        void paint(Frame frame) throws IOException {
            painter.paint(frame);
            ours.obey();
            window.paint(frame);
        }

        void assertSame(Frame frame, String when) {
            for (int y = 0; y < frame.height(); y++) {
                for (int x = 0; x < frame.width(); x++) {
                    if (ours.character(x, y) != VirtualScreen.SECOND_HALF) {
                        assertSame(x, y, when + ", column " + x + ", row " + y);
                    }
                }
            }
            assertThat(ours.showsCaret()).as(when).isEqualTo(window.showsCaret());
            if (ours.showsCaret()) {
                assertThat(new TerminalPosition(ours.caretX(), ours.caretY())).isEqualTo(window.caret());
            }
        }

        private void assertSame(int x, int y, String cell) {
            TextAttributes look = ours.look(x, y);
            boolean isBlank = ours.character(x, y) == ' ' && look.isPlainWhenBlank();
            assertThat(window.character(x, y)).as(cell).isEqualTo(Character.toString(ours.character(x, y)));
            assertThat(isBlank ? window.looksEmptyLike(x, y, look) : window.looksLike(x, y, look))
                    .as(cell + ": " + look)
                    .isTrue();
        }
    }

    /** Another frame with a few runs written anew, as a program's next one is; now and then with nothing kept. */
    private static Frame change(Frame old, Random random) {
        Frame frame = new Frame(old.width(), old.height());
        String[] words = {"Principal 8", "漢字", "ö→─█", "   ", "x", "Ut    ", "", "水 8' 風", "~~~~"};
        boolean keeps = random.nextInt(10) > 0;
        for (int y = 0; keeps && y < frame.height(); y++) {
            for (int x = 0; x < frame.width(); x++) {
                if (old.character(x, y) != Frame.SECOND_HALF) {
                    Drawing.write(frame, x, y, Character.toString(old.character(x, y)), old.style(x, y));
                }
            }
        }
        int changes = random.nextInt(12);
        Style[] styles = Style.values();
        for (int i = 0; i < changes; i++) {
            int x = random.nextInt(frame.width());
            int y = random.nextInt(frame.height());
            String word = words[random.nextInt(words.length)];
            int end = x + Text.columns(word);
            if (end <= frame.width() && isWhole(frame, x, y) && isWhole(frame, end, y)) {
                Drawing.write(frame, x, y, word, styles[random.nextInt(styles.length)]);
            }
        }
        int caretX = random.nextInt(frame.width());
        int caretY = random.nextInt(frame.height());
        if (random.nextInt(3) == 0 && isWhole(frame, caretX, caretY)) {
            Drawing.caret(frame, caretX, caretY);
        }
        return frame;
    }

    /** Whether no wide character lies across the left edge of a cell. */
    private static boolean isWhole(Frame frame, int x, int y) {
        return x >= frame.width() || frame.character(x, y) != Frame.SECOND_HALF;
    }

    private int paint(Frame frame) throws IOException {
        emitter.paint(frame);
        return screen.obey();
    }

    private void assertShows(Frame frame, Palette palette) {
        for (int y = 0; y < frame.height(); y++) {
            for (int x = 0; x < frame.width(); x++) {
                String cell = "column " + x + ", row " + y;
                assertThat(screen.character(x, y)).as(cell).isEqualTo(frame.character(x, y));
                int character = frame.character(x, y);
                assertThat(seen(character, screen.look(x, y)))
                        .as(cell)
                        .isEqualTo(seen(character, palette.look(frame.style(x, y))));
            }
        }
    }

    /** What is seen of attributes: of a blank only lines and backgrounds. */
    private static TextAttributes seen(int character, TextAttributes look) {
        return character == ' ' && look.isPlainWhenBlank() ? TextAttributes.PLAIN : look;
    }

    private void assertCaret(int x, int y) {
        assertThat(screen.showsCaret()).isTrue();
        assertThat(new int[] {screen.caretX(), screen.caretY()}).containsExactly(x, y);
    }

    private String row(int y, int columns) {
        return row(screen, y, columns);
    }

    private static String row(VirtualScreen screen, int y, int columns) {
        StringBuilder row = new StringBuilder();
        for (int x = 0; x < columns; x++) {
            row.appendCodePoint(screen.character(x, y));
        }
        return row.toString();
    }

    /**
     * A screen as full as the editor's: three divisions of stops with their marks, some drawn, and a few lines below.
     */
    private static Frame organ() {
        Frame frame = new Frame(WIDTH, HEIGHT);
        String[] names = {"Principal", "Gedackt", "Octave", "Flute", "Twelfth", "Fifteenth", "Mixture IV", "Trumpet"};
        for (int division = 0; division < 3; division++) {
            int x = division * 27;
            Drawing.write(frame, x, 0, "Division " + division, Style.HEADING);
            for (int i = 0; i < 16; i++) {
                boolean drawn = (i + division) % 5 == 0;
                Drawing.write(frame, x, i + 2, drawn ? "[#]" : "[ ]", drawn ? Style.DRAWN : Style.FAINT);
                Drawing.write(frame, x + 4, i + 2, names[i % 8], drawn ? Style.STRONG : Style.TEXT);
                Drawing.write(frame, x + 18, i + 2, (16 >> i % 4) + "'", Style.FAINT);
            }
        }
        Drawing.write(frame, 0, 19, "Verse 3 of 5   all sing   Great to Pedal", Style.TEXT);
        Drawing.write(frame, 0, 20, "==========|=====", Style.BAR);
        Drawing.write(frame, 20, 20, "the organ leads", Style.GOOD);
        return frame;
    }

    private static Frame highlighted(int x) {
        Frame frame = organ();
        Drawing.write(frame, 27, 22, "abcdefghijklmnopqrstuvwxyz", Style.TEXT);
        Drawing.paint(frame, x, 22, 1, Style.CURSOR);
        return frame;
    }
}
