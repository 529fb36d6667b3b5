package versewind.screen.toolkit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class FlowTest {

    private static final List<String> STOPS = List.of("Principal 4", "Twelfth 2 2/3", "Fifteenth 2", "Mixture III");

    private static Flow moves() {
        return new Flow()
                .add("put in", Style.HEADING)
                .addNames("Great", STOPS.subList(0, 2), Style.TEXT)
                .paragraph()
                .add("draw", Style.HEADING)
                .addNames("Great", STOPS.subList(2, 4), Style.STRONG);
    }

    private static List<String> painted(Flow flow, int columns, int rows) {
        Frame frame = new Frame(columns + 10, rows + 2);
        flow.paint(frame, Marks.ASCII, 1, 1, columns, rows);
        assertThat(frame.row(rows + 1)).isEmpty();
        List<String> lines = IntStream.rangeClosed(1, rows).mapToObj(frame::row).toList();
        assertThat(lines).allMatch(line -> line.length() <= columns + 1);
        return lines.stream().map(String::strip).toList();
    }

    @Test
    void paragraphs_have_lines_of_their_own_where_there_are_enough() {
        assertThat(painted(moves(), 60, 3))
                .containsExactly("put in Great Principal 4, Twelfth 2 2/3", "draw Great Fifteenth 2, Mixture III", "");
    }

    @Test
    void else_they_follow_one_another_and_no_name_is_broken() {
        assertThat(painted(moves(), 50, 2))
                .containsExactly("put in Great Principal 4, Twelfth 2 2/3", "draw Great Fifteenth 2, Mixture III");
        assertThat(painted(moves(), 73, 1))
                .containsExactly("put in Great Principal 4, Twelfth 2 2/3; draw Great Fifteenth 2, ~1 more");
    }

    @Test
    void how_many_knobs_are_left_out_is_told() {
        assertThat(painted(moves(), 34, 1)).containsExactly("put in Great Principal 4, ~3 more");
        assertThat(painted(moves(), 12, 1)).containsExactly("put~ ~4 more");
    }

    @Test
    void what_may_be_left_out_is_left_out_first() {
        Flow flow = moves().ifRoom().add("or by hand", Style.TEXT);
        assertThat(painted(flow, 60, 3))
                .containsExactlyElementsOf(List.of(
                        "put in Great Principal 4, Twelfth 2 2/3",
                        "draw Great Fifteenth 2, Mixture III",
                        "or by hand"));
        assertThat(painted(flow, 40, 2)).noneMatch(line -> line.contains("hand"));
    }
}
