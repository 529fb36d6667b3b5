package versewind.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.StopName;
import versewind.plan.HandsAndFeet;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.Verses;
import versewind.sound.OrganSound;
import versewind.store.BadFile;
import versewind.store.Library;
import versewind.store.OpenPlan;

class DynamicStepsTest {

    private static final int PEOPLE = 200;

    private static Instrument organ;
    private static OrganSound sound;

    @BeforeAll
    static void open() throws BadFile {
        organ = new Library(Path.of("")).openInstrument("st-tethwin");
        sound = OrganSound.open(organ);
    }

    private static Registration drawn(String... stops) {
        IndexSet set = IndexSet.EMPTY;
        for (String stop : stops) {
            int colon = stop.indexOf(": ");
            set = set.with(organ.stop(new StopName(stop.substring(0, colon), stop.substring(colon + 2)))
                    .orElseThrow());
        }
        return Registration.silent(organ).withStops(set);
    }

    private static Verse verse(Registration registration) {
        return Verses.blank(organ, VerseKind.VERSE).withRegistration(registration);
    }

    private static DynamicSteps ladder(Registration registration) {
        return DynamicSteps.of(sound, verse(registration), PEOPLE, OptionalInt.empty());
    }

    private static List<String> names(IndexSet stops) {
        return stops.stream()
                .mapToObj(stop -> organ.stops().get(stop).name().toString())
                .toList();
    }

    @Test
    void from_eight_and_four_foot_one_climbs_by_the_fifteenth_and_the_mixture_together() {
        DynamicSteps ladder = ladder(
                drawn("Great: Open Diapason 8", "Great: Principal 4", "Pedal: Bourdon 16", "Pedal: Principal 8"));
        assertThat(ladder.stronger()).hasSize(2);
        assertThat(names(ladder.stronger().get(0).moves().stopsDrawn()))
                .containsExactly("Great: Fifteenth 2", "Great: Mixture III");
    }

    @Test
    void one_comes_down_by_what_was_built_last() {
        DynamicSteps ladder = ladder(drawn(
                "Great: Open Diapason 8",
                "Great: Principal 4",
                "Great: Fifteenth 2",
                "Great: Mixture III",
                "Pedal: Bourdon 16",
                "Pedal: Principal 8"));
        assertThat(names(ladder.softer().get(0).moves().stopsPutIn()))
                .containsExactly("Great: Fifteenth 2", "Great: Mixture III");
        assertThat(names(ladder.softer().get(1).moves().stopsPutIn())).containsExactly("Great: Principal 4");
    }

    @Test
    void full_organ_has_nothing_stronger_and_a_single_flute_nothing_softer() {
        assertThat(ladder(Registration.full(organ)).stronger()).isEmpty();
        assertThat(ladder(drawn("Great: Stopped Flute 8")).softer()).isEmpty();
    }

    @Test
    void where_nothing_sounds_there_is_no_ladder() {
        DynamicSteps ladder = ladder(Registration.silent(organ));
        assertThat(ladder.stronger()).isEmpty();
        assertThat(ladder.softer()).isEmpty();
    }

    @Test
    void a_box_that_is_closed_is_opened_before_a_stop_is_drawn() {
        int swell = organ.division("Swell").orElseThrow();
        Verse onSwell = verse(
                        drawn("Swell: Open Diapason 8", "Swell: Principal 4").withBox(swell, BoxPosition.QUARTER))
                .withHands(HandsAndFeet.on(HandsAndFeet.Layout.MANUALS_ONLY, swell));
        DynamicSteps ladder = DynamicSteps.of(sound, onSwell, PEOPLE, OptionalInt.empty());
        assertThat(ladder.stronger().get(0).moves().boxes()).isNotEmpty();
        assertThat(ladder.stronger().get(0).moves().stopsDrawn().isEmpty()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"harvest-festival", "ash-wednesday", "wedding"})
    void every_step_of_the_shipped_plans_is_one_to_four_decibels_and_leaves_no_new_gap(String name) throws BadFile {
        OpenPlan open = new Library(Path.of("")).openPlan(name);
        OrganSound of = OrganSound.open(open.instrument());
        BuildingOrder order = new BuildingOrder(open.instrument());
        int steps = 0;
        for (Hymn hymn : open.plan().hymns()) {
            for (Verse verse : hymn.verses()) {
                int people = open.plan().heading().people();
                DynamicSteps ladder = DynamicSteps.of(of, verse, people, hymn.tempo());
                assertThat(ladder).isEqualTo(DynamicSteps.of(of, verse, people, hymn.tempo()));
                check(ladder.stronger(), verse, of, open.plan(), 1);
                check(ladder.softer(), verse, of, open.plan(), -1);
                for (DynamicStep rung : ladder.stronger()) {
                    IndexSet after = rung.registration().stops();
                    rung.moves().stopsDrawn().forEach(stop -> assertThat(order.mayThicken(after.without(stop), stop))
                            .isTrue());
                }
                steps += ladder.stronger().size() + ladder.softer().size();
            }
        }
        assertThat(steps).isPositive();
    }

    private static void check(List<DynamicStep> rungs, Verse verse, OrganSound sound, Plan plan, int sign) {
        Registration from = verse.registration();
        for (DynamicStep rung : rungs) {
            double change = level(sound, verse, rung.registration(), plan) - level(sound, verse, from, plan);
            assertThat(rung.changeDb()).isEqualTo(change);
            assertThat(sign * change).isBetween(1.0, 4.0);
            assertThat(rung.moves()).isEqualTo(StopChanges.between(from, rung.registration()));
            assertThat(rung.moves().count()).isBetween(1, 4);
            from = rung.registration();
        }
    }

    private static double level(OrganSound sound, Verse verse, Registration drawn, Plan plan) {
        return sound.estimate(verse.withRegistration(drawn), plan.heading().people(), OptionalInt.empty())
                .organDba()
                .orElseThrow();
    }

    /** Every single stop that may be drawn is tried here by hand. */
    @Test
    void no_step_takes_two_movements_where_one_would_do() {
        for (Registration start : List.of(
                drawn("Great: Open Diapason 8", "Pedal: Bourdon 16"),
                drawn("Great: Stopped Flute 8", "Great: Open Flute 4"),
                drawn("Great: Open Diapason 8", "Great: Principal 4", "Great: Fifteenth 2", "Pedal: Bourdon 16"))) {
            double before = sound.estimate(verse(start), PEOPLE, OptionalInt.empty())
                    .organDba()
                    .orElseThrow();
            BuildingOrder order = new BuildingOrder(organ);
            List<Double> changes = new ArrayList<>();
            Stream.iterate(0, stop -> stop + 1).limit(organ.stops().size()).forEach(stop -> {
                if (order.mayDraw(start.stops(), stop)) {
                    changes.add(sound.estimate(verse(start.toggleStop(stop)), PEOPLE, OptionalInt.empty())
                                    .organDba()
                                    .orElseThrow()
                            - before);
                }
            });
            boolean oneWouldDo = changes.stream().anyMatch(change -> change >= 2 && change <= 4);
            int movements = ladder(start).stronger().get(0).moves().count();
            assertThat(movements == 1).isEqualTo(oneWouldDo);
        }
    }
}
