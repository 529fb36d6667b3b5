package versewind.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Knobs;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.rules.BuildingStep;

class ServiceOptimizerTest {

    private static final Instrument ORGAN = new SmallOrgans(1).ofTwoManuals(8, 5, 3);
    private static final ChangeTime BREATH = new ChangeTime(1.2, 0.6, List.of(Knobs.all(ORGAN)));
    private static final Sound SOUND = new Sound(0, BuildingStep.FLUTE_8, "", Voice.NONE, "", "", 0);

    private static Candidate candidate(IndexSet stops, double points) {
        Registration drawn = Registration.silent(ORGAN).withStops(stops);
        Draft draft = new Draft(drawn, HandsAndFeet.on(Layout.FOUR_PARTS, 0));
        return new Candidate(
                new Sketch(draft, SOUND),
                points,
                true,
                true,
                0,
                70 + 7 * points % 5,
                0,
                new Heard(IndexSet.range(stops.size() % 3 == 0 ? 8 : 16), IndexSet.EMPTY, IndexSet.EMPTY));
    }

    /** Verses whose candidates are drawn at random from a few registrations, so that some come back. */
    private static List<VerseCandidates> stages(int seed, int verses, int candidates) {
        Random random = new Random(seed);
        List<IndexSet> registrations = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            IndexSet stops = IndexSet.EMPTY;
            for (int stop = 0; stop < ORGAN.stops().size(); stop++) {
                stops = random.nextInt(3) == 0 ? stops.with(stop) : stops;
            }
            registrations.add(stops);
        }
        List<VerseCandidates> stages = new ArrayList<>();
        for (int verse = 0; verse < verses; verse++) {
            List<Candidate> all = new ArrayList<>();
            for (int c = 0; c < candidates; c++) {
                all.add(candidate(registrations.get((verse / 3 + c) % 6), 3 * random.nextDouble()));
            }
            Optional<ChangeTime> breath = verse % 4 == 0 ? Optional.empty() : Optional.of(BREATH);
            Succession.Kind kind = verse % 4 == 0 ? Succession.Kind.INTRODUCED : Succession.Kind.VERSES;
            Succession.Growth growth = Succession.Growth.values()[verse % Succession.Growth.values().length];
            stages.add(new VerseCandidates(all, new Succession(kind, growth, breath)));
        }
        return stages;
    }

    /** The cost of a chain, for pistons that are there. */
    private static double cost(List<VerseCandidates> stages, int[] path, Set<Knobs> set) {
        double cost = 0;
        boolean wasSame = false;
        for (int i = 0; i < path.length; i++) {
            VerseCandidates stage = stages.get(i);
            Candidate here = stage.candidates().get(path[i]);
            cost += here.points();
            if (i == 0) {
                continue;
            }
            Candidate before = stages.get(i - 1).candidates().get(path[i - 1]);
            Succession.Cost step = stage.succession().cost(before, here);
            cost += step.standing() + (set.contains(here.setting()) ? step.byPiston() : step.byHand());
            double third = stage.succession().thirdAlike(before, here);
            cost += wasSame ? third : 0;
            wasSame = third > 0;
        }
        return cost;
    }

    /** The least cost of every chain with every choice of pistons. */
    private static double bruteForce(List<VerseCandidates> stages, int pistons) {
        Set<Knobs> settings = new HashSet<>();
        stages.forEach(stage -> stage.candidates().forEach(each -> settings.add(each.setting())));
        double least = Double.POSITIVE_INFINITY;
        for (Set<Knobs> set : subsets(List.copyOf(settings), pistons)) {
            least = Math.min(least, leastFrom(stages, new int[stages.size()], 0, set));
        }
        return least;
    }

    private static double leastFrom(List<VerseCandidates> stages, int[] path, int next, Set<Knobs> set) {
        if (next == path.length) {
            return cost(stages, path, set);
        }
        double least = Double.POSITIVE_INFINITY;
        for (path[next] = 0; path[next] < stages.get(next).candidates().size(); path[next]++) {
            least = Math.min(least, leastFrom(stages, path.clone(), next + 1, set));
        }
        return least;
    }

    private static List<Set<Knobs>> subsets(List<Knobs> settings, int most) {
        List<Set<Knobs>> subsets = new ArrayList<>();
        for (int bits = 0; bits < 1 << settings.size(); bits++) {
            if (Integer.bitCount(bits) <= most) {
                Set<Knobs> subset = new HashSet<>();
                for (int i = 0; i < settings.size(); i++) {
                    if ((bits & 1 << i) != 0) {
                        subset.add(settings.get(i));
                    }
                }
                subsets.add(subset);
            }
        }
        return subsets;
    }

    @ParameterizedTest
    @CsvSource({"1, 0", "1, 1", "1, 2", "2, 0", "2, 1", "3, 2", "4, 1", "5, 3", "6, 1", "7, 2", "8, 1", "9, 2", "10, 1"
    })
    void the_chain_is_the_cheapest_of_all_with_so_many_pistons(int seed, int pistons) {
        List<VerseCandidates> stages = stages(seed, 6, 3);
        ServiceOptimizer.Best best = new ServiceOptimizer(stages, pistons, Set.of()).best(() -> true);

        assertThat(best.cost()).isCloseTo(bruteForce(stages, pistons), within(1e-9));
        assertThat(best.bound()).isCloseTo(best.cost(), within(1e-9));
        assertThat(best.pistons()).hasSizeLessThanOrEqualTo(pistons);
        int[] path = best.candidates().stream().mapToInt(each -> each).toArray();
        assertThat(cost(stages, path, Set.copyOf(best.pistons()))).isCloseTo(best.cost(), within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "2, 2", "3, 0", "4, 3"})
    void the_greedy_answer_is_no_better(int seed, int pistons) {
        ServiceOptimizer chain = new ServiceOptimizer(stages(seed, 20, 5), pistons, Set.of());

        assertThat(chain.greedy().cost())
                .isGreaterThanOrEqualTo(chain.best(() -> true).cost());
    }

    @Test
    void more_pistons_cost_no_more() {
        List<VerseCandidates> stages = stages(11, 12, 4);
        double before = Double.POSITIVE_INFINITY;
        for (int pistons = 0; pistons < 5; pistons++) {
            double cost = new ServiceOptimizer(stages, pistons, Set.of())
                    .best(() -> true)
                    .cost();
            assertThat(cost).isLessThanOrEqualTo(before + 1e-9);
            before = cost;
        }
    }

    @Test
    void a_piston_that_is_there_already_is_used_and_does_not_count() {
        List<VerseCandidates> stages = stages(12, 6, 3);
        Set<Knobs> all = new HashSet<>();
        stages.forEach(stage -> stage.candidates().forEach(each -> all.add(each.setting())));
        ServiceOptimizer.Best best = new ServiceOptimizer(stages, 0, all).best(() -> true);

        assertThat(best.pistons()).isEmpty();
        assertThat(best.cost()).isCloseTo(bruteForce(stages, all.size()), within(1e-9));
    }

    @Test
    void a_search_that_is_stopped_has_the_best_so_far_and_says_how_far_off_it_may_be() {
        List<VerseCandidates> stages = stages(13, 30, 6);
        ServiceOptimizer.Best best = new ServiceOptimizer(stages, 1, Set.of()).best(() -> false);

        assertThat(best.candidates()).hasSize(30);
        assertThat(best.bound()).isLessThanOrEqualTo(best.cost());
        assertThat(best.bound())
                .isLessThanOrEqualTo(new ServiceOptimizer(stages, 1, Set.of())
                        .best(() -> true)
                        .cost());
    }
}
