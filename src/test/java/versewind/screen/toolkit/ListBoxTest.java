package versewind.screen.toolkit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ListBoxTest {

    private static final List<String> ROWS = List.of("one", "two and more words", "three", "four");

    private static Frame words(int marked) {
        Frame frame = new Frame(12, 3, Marks.WORDS);
        new ListBox<>(ROWS, marked).paintWords(frame, new Box(1, 0, 10, 3), row -> row);
        return frame;
    }

    @ParameterizedTest
    @CsvSource({"0, one, 0", "1, one, 1", "2, three, 0", "3, three, 1"})
    void in_words_a_page_holds_whole_rows_and_the_caret_stands_where_the_marked_one_begins(
            int marked, String first, int caret) {
        Frame frame = words(marked);
        assertThat(frame.row(0)).isEqualTo(" " + first);
        assertThat(frame.caretY()).isEqualTo(caret);
    }

    @Test
    void in_words_a_long_row_goes_on_in_the_next_lines() {
        Frame frame = words(1);
        assertThat(frame.row(1)).isEqualTo(" two and");
        assertThat(frame.row(2)).isEqualTo(" more words");
    }

    @Test
    void where_the_mark_cannot_move_it_is_said_why() {
        ListBox<String> list = ListBox.of(ROWS);
        assertThat(list.end(1, "row")).isEmpty();
        assertThat(list.end(-1, "row")).contains("The first row.");
        assertThat(list.mark(3).end(ListBox.MOST, "row")).contains("The last row.");
        assertThat(ListBox.of(List.of("one")).end(1, "row")).contains("The only row.");
        assertThat(ListBox.of(List.of()).end(1, "row")).contains("There is no row here.");
    }
}
