package versewind.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Registration;

class StopChangesTest {

    private static final Registration NOTHING = new Registration(
            IndexSet.EMPTY, IndexSet.EMPTY, IndexSet.EMPTY, List.of(BoxPosition.OPEN, BoxPosition.OPEN));
    private static final Registration SOFT = new Registration(
            IndexSet.of(1, 3), IndexSet.of(0), IndexSet.of(0), List.of(BoxPosition.OPEN, BoxPosition.CLOSED));
    private static final Registration LOUD = new Registration(
            IndexSet.of(1, 5, 70),
            IndexSet.of(0, 2),
            IndexSet.EMPTY,
            List.of(BoxPosition.OPEN, BoxPosition.THREE_QUARTERS));

    @Test
    void stops_that_come_are_drawn() {
        assertThat(StopChanges.between(SOFT, LOUD).stopsDrawn()).isEqualTo(IndexSet.of(5, 70));
    }

    @Test
    void stops_that_go_are_put_in() {
        assertThat(StopChanges.between(SOFT, LOUD).stopsPutIn()).isEqualTo(IndexSet.of(3));
    }

    @Test
    void couplers_that_come_are_drawn() {
        assertThat(StopChanges.between(SOFT, LOUD).couplersDrawn()).isEqualTo(IndexSet.of(2));
    }

    @Test
    void tremulants_that_go_are_put_in() {
        assertThat(StopChanges.between(SOFT, LOUD).tremulantsPutIn()).isEqualTo(IndexSet.of(0));
    }

    @Test
    void a_box_that_stays_where_it_is_is_not_moved() {
        assertThat(StopChanges.between(SOFT, LOUD).boxes())
                .containsExactly(new StopChanges.BoxMove(1, BoxPosition.THREE_QUARTERS));
    }

    @Test
    void every_stop_coupler_tremulant_and_box_is_one_movement() {
        assertThat(StopChanges.between(SOFT, LOUD).count()).isEqualTo(2 + 1 + 1 + 1 + 1);
    }

    @Test
    void a_box_counts_once_however_far_it_is_moved() {
        assertThat(StopChanges.between(NOTHING, NOTHING.withBox(0, BoxPosition.CLOSED))
                        .count())
                .isEqualTo(1);
    }

    @Test
    void nothing_moves_from_a_registration_to_itself() {
        assertThat(StopChanges.between(LOUD, LOUD).count()).isZero();
    }

    @Test
    void on_the_way_back_what_was_drawn_is_put_in() {
        Random random = new Random(5);
        for (int i = 0; i < 300; i++) {
            Registration from = registration(random);
            Registration to = registration(random);
            StopChanges there = StopChanges.between(from, to);
            StopChanges back = StopChanges.between(to, from);
            assertThat(List.of(back.stopsDrawn(), back.couplersDrawn(), back.tremulantsDrawn(), back.count()))
                    .isEqualTo(
                            List.of(there.stopsPutIn(), there.couplersPutIn(), there.tremulantsPutIn(), there.count()));
        }
    }

    @Test
    void the_movements_done_on_the_first_registration_give_the_second() {
        Random random = new Random(6);
        for (int i = 0; i < 300; i++) {
            Registration from = registration(random);
            Registration to = registration(random);
            assertThat(done(from, StopChanges.between(from, to))).isEqualTo(to);
        }
    }

    private static Registration done(Registration from, StopChanges moves) {
        List<BoxPosition> boxes = new ArrayList<>(from.boxes());
        moves.boxes().forEach(move -> boxes.set(move.division(), move.to()));
        return new Registration(
                from.stops().plus(moves.stopsDrawn()).minus(moves.stopsPutIn()),
                from.couplers().plus(moves.couplersDrawn()).minus(moves.couplersPutIn()),
                from.tremulants().plus(moves.tremulantsDrawn()).minus(moves.tremulantsPutIn()),
                boxes);
    }

    private static Registration registration(Random random) {
        return new Registration(
                IndexSet.of(random.ints(random.nextInt(40), 0, 130)),
                IndexSet.of(random.ints(random.nextInt(6), 0, 12)),
                IndexSet.of(random.ints(random.nextInt(3), 0, 4)),
                IntStream.range(0, 4)
                        .mapToObj(i -> BoxPosition.values()[random.nextInt(BoxPosition.values().length)])
                        .toList());
    }
}
