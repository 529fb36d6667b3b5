package versewind.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.organ.Action;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.plan.HandsAndFeet;
import versewind.plan.Locks;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;

/** What is found on small organs, beside every draft of the space scored one by one. */
@Tag("slow")
class BranchAndBoundTest {

    /** Everything that may be proposed, written down without a thought. */
    private static final class Everything {
        private final ProposalTrial console;
        private final ScoreFunction scoring;
        private final Requirement requirement;
        private final List<HillClimb.Scored> scored = new ArrayList<>();

        Everything(ProposalTrial console, Plan plan, VersePlace place) {
            this.console = console;
            requirement = console.proposer().requirements().requirement(plan, place);
            scoring = console.proposer().search(plan, place, requirement).scoring();
            SearchSpace space = new SearchSpace(console.proposer().organ(), requirement);
            for (HandsAndFeet hands : space.hands()) {
                couplers(space.least(hands), space.couplers(hands), 0);
            }
            scored.sort(HillClimb.Scored.BEST_FIRST);
        }

        private void couplers(Draft draft, int[] couplers, int next) {
            if (next == couplers.length) {
                stops(draft, 0);
                return;
            }
            couplers(draft, couplers, next + 1);
            couplers(draft.toggleCoupler(couplers[next]), couplers, next + 1);
        }

        private void stops(Draft draft, int next) {
            if (next == console.organ().stops().size()) {
                boxes(draft, 0);
                return;
            }
            stops(draft, next + 1);
            if (!requirement.locks().never().contains(next)
                    && !requirement.locks().always().contains(next)) {
                stops(draft.withStop(next), next + 1);
            }
        }

        private void boxes(Draft draft, int next) {
            if (next == console.organ().divisions().size()) {
                DraftAnalysis sounding = new DraftAnalysis(console.proposer().organ());
                if (new SearchSpace(console.proposer().organ(), requirement)
                        .tidied(draft, sounding)
                        .equals(draft)) {
                    scored.add(new HillClimb.Scored(draft, scoring.points(draft, Double.POSITIVE_INFINITY)));
                }
                return;
            }
            boolean isEnclosed = console.organ().divisions().get(next).isEnclosed();
            for (BoxPosition position : isEnclosed ? SearchSpace.POSITIONS : List.of(BoxPosition.OPEN)) {
                boxes(draft.withBox(next, position), next + 1);
            }
        }

        List<Draft> best() {
            double worst = scored.get(0).points() + VerseSearch.WITHIN;
            List<Draft> chosen = new ArrayList<>();
            for (HillClimb.Scored each : scored) {
                boolean isUnlike =
                        chosen.stream().allMatch(other -> other.knobsFrom(each.draft()) >= VerseSearch.UNLIKE);
                if (isUnlike && each.points() <= worst && chosen.size() < VerseSearch.MOST_PROPOSALS) {
                    chosen.add(each.draft());
                }
            }
            return chosen;
        }
    }

    private static void assertExact(ProposalTrial console, int people, Verse verse) {
        Plan plan = ProposalTrial.plan(people, verse);
        VersePlace place = new VersePlace(0, 0);
        List<Draft> found = console.proposer()
                .search(plan, place, console.proposer().requirements().requirement(plan, place))
                .best(() -> true);

        assertThat(found).isEqualTo(new Everything(console, plan, place).best());
    }

    @ParameterizedTest
    @CsvSource({
        "CONGREGATION,  GENTLE",
        "CONGREGATION,  PLAIN",
        "CONGREGATION,  FESTAL",
        "SMALL_CHOIR,   PLAIN",
        "SOLO_VOICE,    GENTLE",
        "MELODY_SOLOED, PLAIN"
    })
    void the_village_organ_is_searched_to_the_end(Mode mode, Mood mood) {
        ProposalTrial console = ProposalTrial.shipped("little-corvening");

        assertExact(console, 60, console.verse(mode, mood));
    }

    @ParameterizedTest
    @CsvSource({
        "1, CONGREGATION,  PLAIN",
        "2, CONGREGATION,  BRIGHT",
        "3, CONGREGATION,  FESTAL",
        "4, SMALL_CHOIR,   BRIGHT",
        "5, SOLO_VOICE,    PLAIN",
        "6, MELODY_SOLOED, GENTLE",
        "7, CONGREGATION,  GENTLE"
    })
    void organs_of_two_manuals_are_searched_to_the_end(int seed, Mode mode, Mood mood) {
        ProposalTrial console = ProposalTrial.of(new SmallOrgans(seed).ofTwoManuals(4, 3, 1));

        assertExact(console, 100, console.verse(mode, mood));
    }

    @ParameterizedTest
    @CsvSource({
        "1, ELECTRIC,   CONGREGATION,  FESTAL",
        "2, MECHANICAL, CONGREGATION,  FESTAL",
        "3, MECHANICAL, CONGREGATION,  BRIGHT",
        "4, ELECTRIC,   SMALL_CHOIR,   PLAIN",
        "5, MECHANICAL, SOLO_VOICE,    GENTLE",
        "6, ELECTRIC,   MELODY_SOLOED, PLAIN"
    })
    void couplers_of_every_kind_are_part_of_the_space(int seed, Action action, Mode mode, Mood mood) {
        ProposalTrial console = ProposalTrial.of(new SmallOrgans(seed).ofManyCouplers(action));

        assertExact(console, 250, console.verse(mode, mood));
    }

    @Test
    void who_cannot_wait_has_what_was_found_so_far() {
        ProposalTrial console = ProposalTrial.of(new SmallOrgans(10).ofTwoManuals(8, 5, 3));
        Plan plan = ProposalTrial.plan(150, console.verse(Mode.CONGREGATION, Mood.PLAIN));
        VersePlace place = new VersePlace(0, 0);
        VerseSearch search = console.proposer()
                .search(plan, place, console.proposer().requirements().requirement(plan, place));

        assertThat(search.best(() -> false)).isNotEmpty();
    }

    @Test
    void an_organ_of_sixteen_stops_is_searched_to_the_end() {
        ProposalTrial console = ProposalTrial.of(new SmallOrgans(9).ofOneManual(13, 3));

        assertThat(console.organ().stops()).hasSize(16);
        assertExact(console, 120, console.verse(Mode.CONGREGATION, Mood.PLAIN));
    }

    @Test
    void an_organ_of_thirteen_stops_is_searched_to_the_end() {
        ProposalTrial console = ProposalTrial.of(new SmallOrgans(8).ofOneManual(10, 3));

        assertExact(console, 120, console.verse(Mode.CONGREGATION, Mood.BRIGHT));
    }

    @Test
    void locks_are_part_of_the_space() {
        ProposalTrial console = ProposalTrial.of(new SmallOrgans(9).ofTwoManuals(4, 3, 1));
        Locks locks = new Locks(IndexSet.of(2), IndexSet.of(0, 5));

        assertExact(console, 100, console.verse(Mode.CONGREGATION, Mood.PLAIN).withLocks(locks));
    }

    @Test
    void the_largest_organ_that_is_searched_to_the_end_has_sixteen_stops() {
        Instrument organ = new SmallOrgans(10).ofTwoManuals(8, 5, 3);
        ProposalTrial console = ProposalTrial.of(organ);

        assertThat(organ.stops()).hasSize(BranchAndBound.MOST_STOPS);
        assertThat(console.proposals(150, console.verse(Mode.CONGREGATION, Mood.FESTAL)))
                .isNotEmpty();
    }
}
