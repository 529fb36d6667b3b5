package versewind.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.Shipped;
import versewind.organ.IndexSet;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.store.OpenPlan;

/** What was found in the hymns that a change leaves alone is kept, and is what would be found anew. */
class UnmendedTest {

    private static final int CHANGES = 60;

    private final Random random = new Random(11);

    @ParameterizedTest
    @ValueSource(strings = {"easter-cathedral", "ordinary-sunday", "wedding"})
    void after_any_change_the_findings_are_those_of_the_whole_plan(String id) throws Exception {
        OpenPlan open = Shipped.plan(id);
        Advice advice = Advice.on(open.organ().sound());
        Plan plan = open.plan();
        for (int i = 0; i < CHANGES; i++) {
            plan = changed(plan);

            List<Finding> all = advice.findings(plan).stream()
                    .map(finding -> finding.with(Optional.empty()))
                    .toList();
            assertThat(advice.unmended(plan)).isEqualTo(all);
        }
    }

    private <T> T any(List<T> some) {
        return some.get(random.nextInt(some.size()));
    }

    private Plan changed(Plan plan) {
        VersePlace place = any(plan.places());
        Verse verse = plan.verse(place);
        Verse other = plan.verse(any(plan.places()));
        int hymns = plan.hymns().size();
        return switch (random.nextInt(8)) {
            case 0 -> plan.withVerse(place, verse.withPiston(other.piston()));
            case 1 -> plan.withVerse(place, verse.withPiston(""));
            case 2 -> plan.swapping(random.nextInt(hymns - 1));
            case 3 -> hymns > 2 ? plan.removing(random.nextInt(hymns)) : plan;
            case 4 -> plan.inserting(random.nextInt(hymns), any(plan.hymns()));
            case 5 -> plan.withPeople(100 + random.nextInt(500));
            case 6 -> prepared(plan, random.nextInt(hymns - 1), other);
            default -> plan.withVerse(place, verse.withRegistration(other.registration()));
        };
    }

    /** The end of a hymn uncoupled, so that what is drawn there is heard in the next hymn, or nowhere. */
    private Plan prepared(Plan plan, int hymn, Verse drawn) {
        VersePlace end = new VersePlace(hymn, plan.hymns().get(hymn).verses().size() - 1);
        Verse last = plan.verse(end)
                .withPiston("")
                .withRegistration(drawn.registration().withCouplers(IndexSet.EMPTY));
        VersePlace next = new VersePlace(hymn + 1, 0);
        Verse first = plan.verse(next).withRegistration(drawn.registration());
        return random.nextBoolean()
                ? plan.withVerse(end, last)
                : plan.withVerse(end, last).withVerse(next, first);
    }
}
