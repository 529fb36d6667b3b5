package versewind.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import versewind.Shipped;
import versewind.organ.Instrument;
import versewind.organ.Knobs;
import versewind.organ.Piston;
import versewind.organ.Pressed;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.store.OpenPlan;

/** What is known of a plan's pistons is what one finds who looks through the plan. */
class PistonUseTest {

    private static final int PLANS = 300;

    private final Random random = new Random(7);

    @Test
    void the_pistons_of_a_plan_are_those_that_one_finds_in_it_whatever_was_put_in_the_place_of_its_verses()
            throws Exception {
        OpenPlan open = Shipped.plan("easter-cathedral");
        Instrument organ = open.instrument();
        List<Piston> pistons = Stream.of("G1", "G2", "G3", "Great 1", "Great 2", "Swell 1")
                .flatMap(text -> Pressed.of(organ, text).pistons().stream())
                .toList();
        assertThat(pistons).hasSize(6);
        for (int i = 0; i < PLANS; i++) {
            Plan plan = open.plan();
            for (VersePlace place : plan.places()) {
                plan = plan.withVerse(place, anyVerse(plan, place));
            }
            PistonUse use = PistonUse.of(plan, organ);
            for (int changes = random.nextInt(3); changes > 0; changes--) {
                VersePlace place = any(plan.places());
                Verse other = anyVerse(plan, place);
                plan = plan.withVerse(place, other);
                use = use.with(place, other);
            }
            VersePlace place = any(plan.places());
            for (Piston piston : pistons) {
                assertIsFound(plan, organ, use, piston, place);
            }
        }
    }

    private <T> T any(List<T> some) {
        return some.get(random.nextInt(some.size()));
    }

    private Verse anyVerse(Plan plan, VersePlace place) {
        Verse like = plan.verse(new VersePlace(random.nextInt(2), 1));
        return plan.verse(place)
                .withRegistration(like.registration())
                .withPiston(any(List.of("", "", "G1", "G2", "Great 1, Swell 1", "Great 2", "no piston")));
    }

    private static void assertIsFound(Plan plan, Instrument organ, PistonUse use, Piston piston, VersePlace place) {
        Verse verse = plan.verse(place);
        List<VersePlace> places = plan.places();
        Predicate<VersePlace> isPressed =
                each -> pressed(organ, plan.verse(each)).contains(piston);
        Predicate<VersePlace> isSetTheSame =
                each -> set(organ, piston, plan.verse(each)).equals(set(organ, piston, verse));
        List<VersePlace> holders = places.stream().filter(isPressed).toList();
        List<VersePlace> before = places.subList(0, places.indexOf(place));

        assertThat(use.isPressed(piston)).isEqualTo(!holders.isEmpty());
        assertThat(use.isSetTo(piston, verse))
                .isEqualTo(!holders.isEmpty() && holders.stream().allMatch(isSetTheSame));
        assertThat(use.holder(piston, place))
                .isEqualTo(before.stream().filter(isPressed).findFirst());
        Optional<Piston> alike = before.stream()
                .filter(isSetTheSame)
                .flatMap(each -> pressed(organ, plan.verse(each)).stream())
                .filter(other -> other.division().equals(piston.division()))
                .findFirst();
        assertThat(use.alike(piston, place, verse)).isEqualTo(alike);
    }

    private static List<Piston> pressed(Instrument organ, Verse verse) {
        return Pressed.of(organ, verse.piston()).pistons();
    }

    private static Knobs set(Instrument organ, Piston piston, Verse verse) {
        return Knobs.drawn(verse.registration()).and(piston.reach(organ));
    }
}
