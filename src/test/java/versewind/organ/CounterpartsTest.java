package versewind.organ;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every expectation is common practice, no source. */
class CounterpartsTest {

    private static final Room ROOM = new Room(
            3000,
            200,
            new Room.MeasuredTimes(List.of(2.0, 2.0, 2.0, 2.0, 2.0, 2.0)),
            new Room.Distances(10, 20, 5, 8, 3));

    private static final Instrument PARISH = organ(
            List.of(
                    division("Great", 1, false, "Open Diapason 8", "Stopped Flute 8", "Principal 4", "Trumpet 8"),
                    division("Swell", 2, true, "Gedackt 8", "Viola 8", "Celeste 8", "Oboe 8"),
                    division("Pedal", 0, false, "Bourdon 16", "Principal 8")),
            List.of(
                    new Coupler("Swell to Great", "Swell", "Great", Coupler.Kind.UNISON),
                    new Coupler("Great to Pedal", "Great", "Pedal", Coupler.Kind.UNISON)));

    private static final Instrument CHAPEL = organ(
            List.of(
                    division("Hauptwerk", 1, false, "Prinzipal 8", "Gedackt 8", "Oktave 4", "Flöte 4"),
                    division("Schwellwerk", 2, true, "Rohrflöte 8", "Prinzipal 4", "Krummhorn 8"),
                    division("Pedal", 0, false, "Subbass 16")),
            List.of(new Coupler("SW/HW", "Schwellwerk", "Hauptwerk", Coupler.Kind.UNISON)));

    private static final Instrument VILLAGE =
            organ(List.of(division("Manual", 1, true, "Open Diapason 8", "Stopped Diapason 8")), List.of());

    private static Instrument organ(List<Division> divisions, List<Coupler> couplers) {
        return new Instrument("An organ", "", Action.MECHANICAL, 0, divisions, couplers, List.of(), Pistons.NONE, ROOM);
    }

    private static Division division(String name, int manual, boolean enclosed, String... labels) {
        List<Stop> stops = Stream.of(labels).map(CounterpartsTest::stop).toList();
        return new Division(
                name,
                manual == 0 ? OptionalInt.empty() : OptionalInt.of(manual),
                manual == 0 ? 30 : 56,
                enclosed ? Optional.of(new SwellBox(0)) : Optional.empty(),
                stops);
    }

    private static Stop stop(String label) {
        int blank = label.lastIndexOf(' ');
        String name = label.substring(0, blank);
        Family family = name.matches("Gedackt|.*[Ff]l.*|Bourdon|Subbass|Stopped.*")
                ? Family.FLUTE
                : name.equals("Viola")
                        ? Family.STRING
                        : name.equals("Celeste")
                                ? Family.CELESTE
                                : name.equals("Trumpet")
                                        ? Family.CHORUS_REED
                                        : name.matches("Oboe|Krummhorn") ? Family.SOLO_REED : Family.PRINCIPAL;
        return Stop.of(name, label.substring(blank + 1), family, family.usualPipe());
    }

    private static Registration drawn(Instrument organ, String... names) {
        Registration drawn = Registration.silent(organ);
        for (String name : names) {
            String[] parts = name.split(": ", -1);
            drawn = parts.length == 2
                    ? drawn.toggleStop(
                            organ.stop(new StopName(parts[0], parts[1])).orElseThrow())
                    : drawn.toggleCoupler(organ.coupler(name).orElseThrow());
        }
        return drawn;
    }

    private static String becomes(Instrument to, String stop) {
        Counterparts.Brought brought = new Counterparts(PARISH, to).bring(drawn(PARISH, stop));
        assertThat(brought.registration().fits(to)).isTrue();
        return brought.registration().stops().stream()
                .mapToObj(i -> to.stops().get(i).name().toString())
                .findFirst()
                .orElse("nothing");
    }

    @Test
    void main_division_box_and_pedal_find_their_like_under_any_name() {
        Counterparts counterparts = new Counterparts(PARISH, CHAPEL);

        assertThat(counterparts.division(0)).hasValue(0);
        assertThat(counterparts.division(1)).hasValue(1);
        assertThat(counterparts.division(2)).hasValue(2);
        assertThat(new Counterparts(PARISH, VILLAGE).division(2)).isEmpty();
    }

    @Test
    void a_stop_becomes_the_one_of_its_family_and_pitch() {
        assertThat(becomes(CHAPEL, "Great: Open Diapason 8")).isEqualTo("Hauptwerk: Prinzipal 8");
        assertThat(becomes(CHAPEL, "Great: Stopped Flute 8")).isEqualTo("Hauptwerk: Gedackt 8");
        assertThat(becomes(CHAPEL, "Great: Principal 4")).isEqualTo("Hauptwerk: Oktave 4");
        assertThat(becomes(CHAPEL, "Pedal: Bourdon 16")).isEqualTo("Pedal: Subbass 16");
    }

    @Test
    void a_string_becomes_a_flute_and_one_kind_of_reed_the_other() {
        assertThat(becomes(CHAPEL, "Swell: Viola 8")).isEqualTo("Schwellwerk: Rohrflöte 8");
        assertThat(becomes(CHAPEL, "Swell: Oboe 8")).isEqualTo("Schwellwerk: Krummhorn 8");
    }

    @Test
    void nothing_does_for_a_celeste_for_another_pitch_or_for_a_reed_among_flues() {
        assertThat(becomes(CHAPEL, "Swell: Celeste 8")).isEqualTo("nothing");
        assertThat(becomes(CHAPEL, "Pedal: Principal 8")).isEqualTo("nothing");
        assertThat(becomes(CHAPEL, "Great: Trumpet 8")).isEqualTo("nothing");
        assertThat(becomes(VILLAGE, "Pedal: Bourdon 16")).isEqualTo("nothing");
    }

    @Test
    void what_is_another_and_what_is_missing_is_told_in_the_order_of_the_knobs() {
        Counterparts.Brought brought = new Counterparts(PARISH, CHAPEL)
                .bring(drawn(PARISH, "Great: Principal 4", "Swell: Celeste 8", "Swell to Great", "Great to Pedal"));

        assertThat(brought.replacements())
                .containsExactly(
                        new Counterparts.Replacement("Great: Principal 4", Optional.of("Hauptwerk: Oktave 4")),
                        new Counterparts.Replacement("Swell: Celeste 8", Optional.empty()),
                        new Counterparts.Replacement("Swell to Great", Optional.of("SW/HW")),
                        new Counterparts.Replacement("Great to Pedal", Optional.empty()));
        assertThat(brought.registration().couplers()).isEqualTo(IndexSet.of(0));
    }

    @Test
    void a_box_stands_as_it_stood_and_is_missed_where_there_is_none() {
        Registration half = drawn(PARISH, "Swell: Gedackt 8").withBox(1, BoxPosition.HALF);

        assertThat(new Counterparts(PARISH, CHAPEL)
                        .bring(half)
                        .registration()
                        .boxes()
                        .get(1))
                .isEqualTo(BoxPosition.HALF);
        assertThat(new Counterparts(PARISH, VILLAGE).bring(half).replacements())
                .contains(new Counterparts.Replacement("Swell box half", Optional.empty()));
    }

    @Test
    void on_one_manual_two_coupled_divisions_need_no_coupler() {
        Counterparts.Brought brought = new Counterparts(PARISH, VILLAGE)
                .bring(drawn(PARISH, "Great: Open Diapason 8", "Swell: Gedackt 8", "Swell to Great"));

        assertThat(brought.registration().stops()).isEqualTo(IndexSet.of(0, 1));
        assertThat(brought.replacements())
                .extracting(Counterparts.Replacement::was)
                .doesNotContain("Swell to Great");
    }

    @Test
    void on_the_same_organ_everything_stays() {
        Registration full = Registration.full(PARISH).withBox(1, BoxPosition.QUARTER);

        assertThat(new Counterparts(PARISH, PARISH).bring(full)).isEqualTo(new Counterparts.Brought(full, List.of()));
    }
}
