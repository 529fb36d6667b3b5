package versewind.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.Shipped;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.StopName;
import versewind.plan.HandsAndFeet;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.Verses;
import versewind.sound.OrganSound;
import versewind.store.OpenPlan;

class DynamicStepsTest {

    private static final int PEOPLE = 200;

    private static Instrument organ;
    private static OrganSound sound;

    @BeforeAll
    static void open() {
        organ = Shipped.instrument("st-tethwin");
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
        return DynamicSteps.of(sound, verse(registration), PEOPLE, OptionalInt.empty(), DynamicSteps.PRINTED);
    }

    private static List<String> names(IndexSet stops) {
        return stops.stream()
                .mapToObj(stop -> organ.stops().get(stop).name().toString())
                .toList();
    }

    @Test
    void from_eight_and_four_foot_the_fifteenth_comes_next_and_then_the_twelfth() {
        DynamicSteps ladder = ladder(
                drawn("Great: Open Diapason 8", "Great: Principal 4", "Pedal: Bourdon 16", "Pedal: Principal 8"));
        Registration coupled = ladder.stronger().get(0).registration();
        assertThat(names(coupled.stops())).contains("Great: Open Diapason 8", "Great: Principal 4");
        assertThat(ladder.stronger()).hasSize(2);
        assertThat(names(ladder.stronger().get(1).registration().stops())).contains("Great: Fifteenth 2");
    }

    @Test
    void one_comes_down_by_what_was_built_last_and_never_takes_the_foundation() {
        DynamicSteps ladder = ladder(drawn(
                "Great: Open Diapason 8",
                "Great: Principal 4",
                "Great: Fifteenth 2",
                "Great: Mixture III",
                "Pedal: Bourdon 16",
                "Pedal: Principal 8"));
        assertThat(names(ladder.softer().get(0).moves().stopsPutIn())).containsExactly("Great: Mixture III");
        assertThat(names(ladder.softer().get(1).moves().stopsPutIn())).containsExactly("Great: Fifteenth 2");
    }

    @Test
    void the_twelfth_and_fifteenth_come_off_before_the_principals_beneath_them() {
        Registration chorus =
                drawn("Great: Open Diapason 8", "Great: Principal 4", "Great: Twelfth 2 2/3", "Great: Fifteenth 2");
        for (DynamicStep step : ladder(chorus).softer()) {
            IndexSet left = step.registration().stops();
            boolean hasTop =
                    names(left).stream().anyMatch(name -> name.contains("Twelfth") || name.contains("Fifteenth"));
            assertThat(!hasTop || names(left).contains("Great: Principal 4")).isTrue();
        }
    }

    @Test
    void a_soloed_melody_is_made_stronger_by_the_next_louder_solo_stop() {
        int swell = organ.division("Swell").orElseThrow();
        Verse soloed = verse(drawn("Swell: Gedackt 8", "Great: Stopped Flute 8"))
                .withMode(Mode.MELODY_SOLOED)
                .withHands(new HandsAndFeet(HandsAndFeet.Layout.MELODY_SOLOED, swell, organ.mainDivision()));
        DynamicStep louder = DynamicSteps.of(sound, soloed, PEOPLE, OptionalInt.empty(), DynamicSteps.PRINTED)
                .stronger()
                .get(0);
        assertThat(names(louder.moves().stopsPutIn())).containsExactly("Swell: Gedackt 8");
        assertThat(louder.moves().stopsDrawn().size()).isEqualTo(1);
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
        DynamicSteps ladder = DynamicSteps.of(sound, onSwell, PEOPLE, OptionalInt.empty(), DynamicSteps.PRINTED);
        assertThat(ladder.stronger().get(0).moves().boxes()).isNotEmpty();
        assertThat(ladder.stronger().get(0).moves().stopsDrawn().isEmpty()).isTrue();
    }

    /** A line is short of a step only at its ends. */
    @ParameterizedTest
    @ValueSource(strings = {"harvest-festival", "ash-wednesday", "wedding"})
    void every_step_of_the_shipped_plans_is_heard_and_breaks_no_rule(String name) {
        OpenPlan open = Shipped.plan(name);
        OrganSound of = OrganSound.open(open.instrument());
        int steps = 0;
        for (Hymn hymn : open.plan().hymns()) {
            for (Verse verse : hymn.verses()) {
                int people = open.plan().heading().people();
                DynamicSteps ladder = DynamicSteps.of(of, verse, people, hymn.tempo(), DynamicSteps.AT_DESK);
                assertThat(ladder).isEqualTo(DynamicSteps.of(of, verse, people, hymn.tempo(), DynamicSteps.AT_DESK));
                check(ladder.stronger(), verse, of, open.plan(), 1);
                check(ladder.softer(), verse, of, open.plan(), -1);
                steps += ladder.stronger().size() + ladder.softer().size();
            }
        }
        assertThat(steps).isPositive();
    }

    private static void check(List<DynamicStep> rungs, Verse verse, OrganSound sound, Plan plan, int sign) {
        Registration from = verse.registration();
        ChorusFaults faults = ChorusFaults.on(OrganFacts.of(sound));
        for (DynamicStep rung : rungs) {
            double change = level(sound, verse, rung.registration(), plan) - level(sound, verse, from, plan);
            assertThat(rung.changeDb()).isEqualTo(change);
            Registration louder = sign > 0 ? rung.registration() : from;
            assertThat(sign * change)
                    .isGreaterThanOrEqualTo(isOfWeight(sound, verse, louder) ? 0 : DynamicSteps.LEAST_STEP_DB);
            assertThat(rung.moves()).isEqualTo(StopChanges.between(from, rung.registration()));
            assertThat(cautions(faults, verse.withRegistration(rung.registration())))
                    .isLessThanOrEqualTo(cautions(faults, verse.withRegistration(from)));
            from = rung.registration();
        }
    }

    /** Doubles and what follows add weight and hardly any level. */
    private static boolean isOfWeight(OrganSound sound, Verse verse, Registration drawn) {
        return new BuildingLine(
                        OrganFacts.of(sound),
                        verse.hands(),
                        verse.locks().never(),
                        verse.registration().stops())
                .reached(drawn)
                .filter(rung -> rung.step().compareTo(BuildingStep.DOUBLES) >= 0)
                .isPresent();
    }

    private static long cautions(ChorusFaults faults, Verse verse) {
        return faults.in(verse).stream()
                .filter(fault -> fault.severity() == Severity.CAUTION)
                .count();
    }

    private static double level(OrganSound sound, Verse verse, Registration drawn, Plan plan) {
        return sound.estimate(verse.withRegistration(drawn), plan.heading().people(), OptionalInt.empty())
                .organDba()
                .orElseThrow();
    }
}
