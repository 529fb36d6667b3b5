package versewind.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.Shipped;
import versewind.organ.IndexSet;
import versewind.organ.Knobs;
import versewind.plan.Locks;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Plan;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.rules.Advice;
import versewind.rules.ChangeRule;
import versewind.rules.Finding;
import versewind.rules.Severity;
import versewind.sound.OrganSound;
import versewind.sound.Verdict;
import versewind.store.OpenPlan;

class ServiceTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "advent-candlelight",
                "ash-wednesday",
                "easter-cathedral",
                "harvest-festival",
                "ordinary-sunday",
                "wedding"
            })
    void of_every_shipped_service_the_proposal_is_better_than_verse_by_verse_and_gives_no_caution(String name)
            throws Exception {
        OpenPlan open = Shipped.plan(name);
        ServiceProposal proposal =
                RegistrationProposer.of(open.organ().sound()).forService(open.plan(), SearchProgress.PATIENT);
        Plan drawn = proposal.on(open.plan());

        assertThat(proposal.unsearched()).isZero();
        assertThat(proposal.cost()).isLessThanOrEqualTo(proposal.greedyCost());
        assertThat(proposal.bound()).isLessThanOrEqualTo(proposal.cost());
        assertThat(proposal.pistons())
                .isLessThanOrEqualTo(open.instrument().pistons().generals());
        assertThat(drawn.fits(open.instrument())).isTrue();
        assertThat(Advice.on(open.organ().sound()).findings(drawn))
                .filteredOn(finding -> finding.severity() == Severity.CAUTION
                        && !isOnlyJustLed(open, drawn, finding.place())
                        && !finding.isSilenced())
                .extracting(Finding::sentence)
                .isEmpty();
    }

    /** Whether a verse is led only just as estimated, even if its lead may well be lost. */
    private static boolean isOnlyJustLed(OpenPlan open, Plan drawn, VersePlace place) {
        Verse verse = drawn.hymns().get(place.hymn()).verses().get(place.verse());
        double share = open.organ()
                .sound()
                .clearShare(verse, open.plan().heading().people())
                .of(verse.registration(), verse.hands());
        return Verdict.of(verse.mode(), share) == Verdict.LEAD_ONLY_JUST;
    }

    @Test
    void a_piston_sets_one_registration() throws Exception {
        OpenPlan open = Shipped.plan("harvest-festival");
        ServiceProposal proposal =
                RegistrationProposer.of(open.organ().sound()).forService(open.plan(), SearchProgress.PATIENT);
        Map<String, Set<Knobs>> set = new HashMap<>();
        proposal.verses().forEach(each -> set.computeIfAbsent(each.piston(), piston -> new HashSet<>())
                .add(Knobs.drawn(each.proposal().registration())));

        set.remove("");
        assertThat(set).isNotEmpty();
        assertThat(set.values()).allSatisfy(settings -> assertThat(settings).hasSize(1));
    }

    @Test
    void pistons_of_hymns_that_are_left_alone_are_left_alone() throws Exception {
        OpenPlan open = Shipped.plan("harvest-festival");
        Plan before = open.plan();
        Plan after = RegistrationProposer.of(open.organ().sound())
                .forHymn(before, 1, SearchProgress.PATIENT)
                .on(before);
        Map<String, Knobs> taken = new HashMap<>();
        for (int hymn = 0; hymn < before.hymns().size(); hymn++) {
            if (hymn != 1) {
                assertThat(after.hymns().get(hymn)).isEqualTo(before.hymns().get(hymn));
                before.hymns()
                        .get(hymn)
                        .verses()
                        .forEach(verse -> taken.put(verse.piston(), Knobs.drawn(verse.registration())));
            }
        }
        for (Verse verse : after.hymns().get(1).verses()) {
            if (!verse.piston().isBlank() && taken.containsKey(verse.piston())) {
                assertThat(taken.get(verse.piston())).isEqualTo(Knobs.drawn(verse.registration()));
            }
        }
    }

    @Test
    void locks_are_kept_in_every_proposal() {
        ProposalTrial console = ProposalTrial.shipped("st-tethwin");
        int mixture = console.organ().division("Great").orElseThrow();
        IndexSet never = IndexSet.of(console.organ().stops().stream()
                .filter(knob -> knob.division() == mixture && knob.stop().name().equals("Fifteenth"))
                .mapToInt(console.organ().stops()::indexOf));
        Locks locks = new Locks(IndexSet.of(2), never);
        Verse verse = console.verse(Mode.CONGREGATION, Mood.FESTAL).withLocks(locks);

        assertThat(console.proposals(150, verse)).isNotEmpty().allSatisfy(proposal -> {
            assertThat(proposal.registration().stops().contains(2)).isTrue();
            assertThat(proposal.registration().stops().minus(never))
                    .isEqualTo(proposal.registration().stops());
        });
    }

    @Test
    void where_everything_is_locked_out_a_sentence_says_so() {
        ProposalTrial console = ProposalTrial.shipped("little-corvening");
        Locks locks =
                new Locks(IndexSet.EMPTY, IndexSet.range(console.organ().stops().size()));
        Plan plan = ProposalTrial.plan(
                40, console.verse(Mode.CONGREGATION, Mood.PLAIN).withLocks(locks));
        RegistrationProposer.OfVerse found = console.proposer().forVerse(plan, new VersePlace(0, 0));

        assertThat(found.proposals()).isEmpty();
        assertThat(found.none(plan)).hasValue("Nothing can be drawn: the locks leave no stop that could sound.");
    }

    @Test
    void a_search_that_is_stopped_leaves_the_rest_as_it_was() {
        ProposalTrial console = ProposalTrial.shipped("st-tethwin");
        Verse verse = console.verse(Mode.CONGREGATION, Mood.PLAIN);
        Plan plan = ProposalTrial.plan(150, verse, verse, verse, verse);
        List<Integer> told = new ArrayList<>();
        ServiceProposal proposal = console.proposer().forService(plan, new SearchProgress() {
            @Override
            public boolean goesOn() {
                return told.size() < 3;
            }

            @Override
            public void searched(int verses, int of) {
                told.add(verses);
            }
        });

        assertThat(told).containsExactly(0, 1, 2);
        assertThat(proposal.unsearched()).isEqualTo(2);
        assertThat(proposal.verses()).hasSize(2);
        assertThat(proposal.on(plan).hymns().get(0).verses().get(3)).isEqualTo(verse);
    }

    @ParameterizedTest
    @ValueSource(strings = {"little-corvening", "foundlings-chapel", "harlan-falls", "st-tethwin", "ostmere-cathedral"})
    void the_changes_fit_in_the_breath_with_a_verse_that_may_be_left_out_and_without_it(String organ) {
        ProposalTrial console = ProposalTrial.shipped(organ);
        Verse festal = console.verse(Mode.CONGREGATION, Mood.FESTAL).withSinging(Singing.STRONG);
        Verse choir = console.verse(Mode.SMALL_CHOIR, Mood.GENTLE);
        Plan plan = ProposalTrial.plan(150, choir, choir, festal.withOptional(true), choir, festal);
        Plan drawn = console.proposer().forService(plan, SearchProgress.PATIENT).on(plan);

        assertThat(Advice.on(OrganSound.open(console.organ())).findings(drawn))
                .extracting(Finding::rule)
                .doesNotContain(ChangeRule.TOO_MANY_MOVES);
    }
}
