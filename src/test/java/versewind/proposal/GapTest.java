package versewind.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Plan;
import versewind.plan.VersePlace;

/** How far the usual search stays behind a long one; printed for every shipped organ. */
@Tag("slow")
class GapTest {

    private static final List<Mood> MOODS = List.of(Mood.GENTLE, Mood.PLAIN, Mood.FESTAL);

    /** Points; what is still no difference to an organist. An estimate. */
    private static final double TOLERABLE = 0.75;

    @ParameterizedTest
    @ValueSource(
            strings = {"foundlings-chapel", "harlan-falls", "st-tethwin", "oudervaart", "ambrelow", "ostmere-cathedral"
            })
    void the_usual_search_is_near_to_the_best_of_a_long_run(String organ) {
        ProposalTrial console = ProposalTrial.shipped(organ);
        double greatest = 0;
        double sum = 0;
        int count = 0;
        for (Mode mode : Mode.values()) {
            for (Mood mood : MOODS) {
                Plan plan = ProposalTrial.plan(150, console.verse(mode, mood));
                double usual = best(console, plan, HillClimb.Effort.USUAL);
                double gap = usual - best(console, plan, HillClimb.Effort.LONG);
                greatest = Math.max(greatest, gap);
                sum += gap;
                count++;
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%s: behind the best of a long run by %.3f points in the mean, %.3f at most (%d verses)%n",
                organ,
                sum / count,
                greatest,
                count);

        assertThat(greatest).isBetween(0.0, TOLERABLE);
    }

    private static double best(ProposalTrial console, Plan plan, HillClimb.Effort effort) {
        VersePlace place = new VersePlace(0, 0);
        VerseSearch search = console.proposer()
                .search(plan, place, console.proposer().requirements().requirement(plan, place));
        return search.climbed(effort, () -> true).get(0).points();
    }
}
