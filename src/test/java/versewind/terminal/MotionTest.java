package versewind.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class MotionTest {

    private static final int WIDTH = 120;
    private static final int HEIGHT = 12;

    @Test
    void the_cheapest_way_leads_from_any_cell_to_any_other_and_is_no_longer_than_the_absolute_one() {
        VirtualScreen screen = new VirtualScreen(WIDTH, HEIGHT, StandardCharsets.US_ASCII);
        int[] columns = {0, 1, 2, 5, 8, 9, 10, 50, 98, 99, 100, 118};
        int[] rows = {0, 1, 5, 8, 9, 10, 11};
        for (int from = 0; from < columns.length * rows.length; from++) {
            for (int to = 0; to < columns.length * rows.length; to++) {
                int fromX = columns[from / rows.length];
                int fromY = rows[from % rows.length];
                int x = columns[to / rows.length];
                int y = rows[to % rows.length];
                String way = Emitter.Motion.cheapest(fromX, fromY, x, y);
                screen.writeBytes((Emitter.Motion.absolute(fromX, fromY) + way).getBytes(StandardCharsets.US_ASCII));
                screen.obey();
                assertThat(new int[] {screen.caretX(), screen.caretY()}).containsExactly(x, y);
                assertThat(way.length())
                        .isLessThanOrEqualTo(Emitter.Motion.absolute(x, y).length());
            }
        }
    }

    @Test
    void steps_nearby_are_short() {
        assertThat(Emitter.Motion.cheapest(40, 10, 39, 10)).hasSize(1);
        assertThat(Emitter.Motion.cheapest(40, 10, 0, 10)).hasSize(1);
        assertThat(Emitter.Motion.cheapest(40, 10, 41, 10)).hasSize(3);
        assertThat(Emitter.Motion.cheapest(40, 10, 40, 11)).hasSize(3);
        assertThat(Emitter.Motion.cheapest(40, 10, 40, 10)).isEmpty();
    }
}
