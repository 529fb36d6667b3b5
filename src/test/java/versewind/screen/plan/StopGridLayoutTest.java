package versewind.screen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.Shipped;
import versewind.organ.Instrument;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.screen.Desk;
import versewind.screen.OddOrgans;
import versewind.screen.Update;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Marks;
import versewind.screen.toolkit.Style;

/** The knobs of every shipped organ on screens of every size. */
class StopGridLayoutTest {

    private record Organ(String id, Instrument instrument) {
        @Override
        public String toString() {
            return id;
        }
    }

    private record Size(int columns, int rows) {}

    static Stream<Organ> organs() {
        return Stream.of("ambrelow", "foundlings-chapel", "little-corvening", "ostmere-cathedral", "st-tethwin")
                .map(id -> new Organ(id, Shipped.instrument(id)));
    }

    private static List<Size> sizes() {
        return IntStream.iterate(60, columns -> columns <= 200, columns -> columns + 5)
                .boxed()
                .flatMap(columns -> IntStream.iterate(18, rows -> rows <= 60, rows -> rows + 3)
                        .mapToObj(rows -> new Size(columns, rows)))
                .toList();
    }

    private static StopGridLayout jamb(Organ organ, Size size) {
        Layout layout = Layout.of(size.columns(), size.rows());
        return StopGridLayout.of(organ.instrument(), layout.gridWidth(), layout.height());
    }

    private static List<Integer> knobs(StopGridLayout.Column column) {
        return column.lines().stream()
                .flatMap(line -> line instanceof StopGridLayout.KnobLine knob ? Stream.of(knob.item()) : Stream.empty())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("organs")
    void every_knob_stands_in_one_place(Organ organ) {
        int knobs = organ.instrument().stops().size()
                + organ.instrument().couplers().size()
                + organ.instrument().tremulants().size();
        for (Size size : sizes()) {
            StopGridLayout jamb = jamb(organ, size);
            List<Integer> standing = jamb.columns().stream()
                    .flatMap(column -> knobs(column).stream())
                    .toList();
            assertThat(standing)
                    .as("%s", size)
                    .isEqualTo(IntStream.range(0, knobs).boxed().toList());
        }
    }

    @ParameterizedTest
    @MethodSource("organs")
    void every_column_is_on_one_page(Organ organ) {
        for (Size size : sizes()) {
            StopGridLayout jamb = jamb(organ, size);
            for (int column = 0; column < jamb.columns().size(); column++) {
                int at = column;
                assertThat(jamb.pages().stream().filter(page -> page == jamb.pageOf(at)))
                        .as("%s, column %d", size, column)
                        .hasSize(1);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("organs")
    void the_columns_of_a_page_fit_beside_each_other(Organ organ) {
        for (Size size : sizes()) {
            StopGridLayout jamb = jamb(organ, size);
            for (int page : jamb.pages()) {
                int width = -StopGridLayout.GAP;
                for (int column = page; column < jamb.columns().size() && jamb.pageOf(column) == page; column++) {
                    width += jamb.columns().get(column).width() + StopGridLayout.GAP;
                }
                assertThat(width)
                        .as("%s, page from column %d", size, page)
                        .isLessThanOrEqualTo(
                                Layout.of(size.columns(), size.rows()).gridWidth());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("organs")
    void no_column_is_higher_than_the_screen(Organ organ) {
        for (Size size : sizes()) {
            assertThat(jamb(organ, size).columns())
                    .as("%s", size)
                    .allMatch(column -> column.lines().size()
                            <= Layout.of(size.columns(), size.rows()).height());
        }
    }

    @ParameterizedTest
    @MethodSource("organs")
    void a_column_ends_with_a_knob_and_not_with_a_heading(Organ organ) {
        for (Size size : sizes()) {
            assertThat(jamb(organ, size).columns())
                    .as("%s", size)
                    .allMatch(
                            column -> column.lines().get(column.lines().size() - 1) instanceof StopGridLayout.KnobLine);
        }
    }

    @ParameterizedTest
    @MethodSource("organs")
    void a_column_does_not_begin_with_a_blank(Organ organ) {
        for (Size size : sizes()) {
            assertThat(jamb(organ, size).columns())
                    .as("%s", size)
                    .noneMatch(column -> column.lines().get(0) instanceof StopGridLayout.BlankLine);
        }
    }

    @ParameterizedTest
    @MethodSource("organs")
    void the_arrows_lead_from_every_knob_to_every_other(Organ organ) {
        for (Size size : sizes()) {
            StopGridLayout jamb = jamb(organ, size);
            for (int start : List.of(0, jamb.items().size() / 2, jamb.items().size() - 1)) {
                assertThat(reached(jamb, start).cardinality())
                        .as("%s, from %d", size, start)
                        .isEqualTo(jamb.items().size());
            }
        }
    }

    private static BitSet reached(StopGridLayout jamb, int start) {
        BitSet reached = new BitSet();
        Deque<Integer> todo = new ArrayDeque<>(List.of(start));
        while (!todo.isEmpty()) {
            int item = todo.removeFirst();
            if (item >= 0 && item < jamb.items().size() && !reached.get(item)) {
                reached.set(item);
                todo.addAll(List.of(item - 1, item + 1, jamb.beside(item, -1), jamb.beside(item, 1)));
            }
        }
        return reached;
    }

    @ParameterizedTest
    @MethodSource("organs")
    void the_arrow_to_the_right_goes_to_the_next_column_and_as_high_as_can_be(Organ organ) {
        for (Size size : sizes()) {
            StopGridLayout jamb = jamb(organ, size);
            for (int item = 0; item < jamb.items().size(); item++) {
                StopGridLayout.Spot from = jamb.spot(item);
                StopGridLayout.Spot to = jamb.spot(jamb.beside(item, 1));
                int last = jamb.columns().size() - 1;
                assertThat(to.column()).as("%s, knob %d", size, item).isEqualTo(Math.min(from.column() + 1, last));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("organs")
    void going_down_visits_every_knob_and_shows_each(Organ organ) {
        for (Size size : List.of(new Size(60, 18), new Size(80, 24), new Size(97, 31), new Size(200, 60))) {
            Desk desk = desk(organ.instrument(), organ.id(), size);
            List<String> visited = new ArrayList<>();
            for (int i = 0; i < jamb(organ, size).items().size(); i++) {
                visited.add(desk.knob());
                assertThat(cursorCells(desk)).as("%s, %s", size, desk.knob()).isGreaterThan(4);
                desk.press("<Down>");
            }
            assertThat(visited).as("%s", size).doesNotHaveDuplicates();
        }
    }

    private static Desk desk(Instrument organ, String id, Size size) {
        Plan plan = new Plan(new ServiceHeading("Trial", Optional.empty(), 100, ""), id, List.of());
        return Desk.with(
                plan, organ, Update.empty(size.columns(), size.rows(), Marks.UNICODE, Desk.TODAY), Optional.empty());
    }

    private static long cursorCells(Desk desk) {
        Frame frame = desk.frame();
        Layout layout = Layout.of(desk.state());
        return IntStream.range(layout.top(), layout.statusTop())
                .flatMap(y -> IntStream.range(0, layout.gridWidth()).filter(x -> frame.style(x, y) == Style.CURSOR))
                .count();
    }

    @Test
    void the_parish_organ_stands_on_one_page_of_an_ordinary_screen() {
        Organ parish = new Organ("st-tethwin", Shipped.instrument("st-tethwin"));
        assertThat(jamb(parish, new Size(80, 24)).pages()).containsExactly(0);
    }

    @Test
    void the_cathedral_organ_stands_on_four_pages_of_an_ordinary_screen() {
        Organ cathedral = new Organ("ostmere-cathedral", Shipped.instrument("ostmere-cathedral"));
        assertThat(jamb(cathedral, new Size(80, 24)).pages()).hasSize(4);
    }

    @ParameterizedTest
    @ValueSource(ints = {80, 100, 120, 160, 200})
    void a_higher_screen_needs_no_more_pages(int columns) {
        Organ cathedral = new Organ("ostmere-cathedral", Shipped.instrument("ostmere-cathedral"));
        List<Integer> pages = IntStream.rangeClosed(18, 60)
                .mapToObj(
                        rows -> jamb(cathedral, new Size(columns, rows)).pages().size())
                .toList();
        assertThat(pages).isSortedAccordingTo((a, b) -> b - a);
    }

    @Test
    void an_organ_without_stops_has_its_headings_and_no_knobs() {
        assertThat(StopGridLayout.of(OddOrgans.withoutStops(), 52, 17).items()).isEmpty();
    }

    @Test
    void a_division_without_stops_still_has_its_heading() {
        assertThat(StopGridLayout.of(OddOrgans.withoutStops(), 52, 17)
                        .columns()
                        .get(0)
                        .lines())
                .contains(new StopGridLayout.DivisionLine(0));
    }

    @Test
    void names_as_long_as_can_be_do_not_make_a_column_wider_than_the_screen() {
        assertThat(StopGridLayout.of(OddOrgans.withLongNames(), 52, 17).columns())
                .allMatch(column -> column.width() <= 52);
    }
}
