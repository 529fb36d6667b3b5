package versewind.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvTest {

    private static List<String> cells(String text) throws BadRows {
        return Csv.read(text).get(0).cells();
    }

    /** Source: RFC 4180, section 2, rules 5 to 7. */
    @Test
    void commas_quotation_marks_and_line_ends_stand_in_quotation_marks() throws BadRows {
        assertThat(Csv.row(List.of("aaa", "b\r\nbb", "c,c", "d\"d")))
                .isEqualTo("aaa,\"b\r\nbb\",\"c,c\",\"d\"\"d\"\r\n");
        assertThat(cells("\"aaa\",\"b\r\nbb\",\"b\"\"bb\"\r\n")).containsExactly("aaa", "b\r\nbb", "b\"bb");
    }

    @Test
    void a_row_knows_the_line_it_begins_on() throws BadRows {
        List<Csv.Row> rows = Csv.read("a,b\r\n\"c\nd\",e\r\nf,g");

        assertThat(rows).extracting(Csv.Row::line).containsExactly(1, 2, 4);
        assertThat(rows.get(2).cells()).containsExactly("f", "g");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1",
                "-1",
                "@SUM(A1)",
                "\t=1",
                " =1",
                "\r\n=1",
                "\uFF1D1",
                "'=1",
                "''-1",
                "' =1",
                "\n",
                "'\tx"
            })
    void what_a_spreadsheet_would_take_for_a_formula_is_made_harmless_and_read_as_it_was(String value) throws BadRows {
        String written = Csv.row(List.of(value, "x"));

        assertThat(written.startsWith("\"") ? written.substring(1) : written).startsWith("'");
        assertThat(cells(written)).containsExactly(value, "x");
    }

    @ParameterizedTest
    @ValueSource(strings = {"'tis the gift", "''", "8 7 8 7 D", "a-b", " blank around ", "", "3/4", "x=1"})
    void what_is_no_formula_gets_nothing_put_before_it(String value) throws BadRows {
        String written = Csv.row(List.of(value, "x"));

        assertThat(written.replace("\"", "")).isEqualTo(value + ",x\r\n");
        assertThat(cells(written)).containsExactly(value, "x");
    }

    @Test
    void semicolons_and_tabs_part_cells_where_the_first_row_has_them() throws BadRows {
        assertThat(cells("a;b")).containsExactly("a", "b");
        assertThat(cells("a\tb")).containsExactly("a", "b");
    }

    @Test
    void quotation_marks_that_do_not_close_are_told_with_their_line() {
        String quotes = "a cell begins with a quotation mark but does not end with one."
                + " Close it, and double the marks inside.";
        assertThatThrownBy(() -> Csv.read("a\nb,\"c\nd\n")).hasMessage("line 2: " + quotes);
        assertThatThrownBy(() -> Csv.read("a\n\"b\"c")).hasMessage("line 2: " + quotes);
    }

    @Test
    void control_characters_cannot_reach_a_terminal() {
        assertThat(Csv.row(List.of("\u001B[2J\u009B"))).isEqualTo("?[2J?\r\n");
    }
}
