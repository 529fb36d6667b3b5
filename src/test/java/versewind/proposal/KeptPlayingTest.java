package versewind.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import versewind.organ.BoxPosition;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Locks;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Plan;
import versewind.plan.Player;
import versewind.plan.Verse;
import versewind.plan.VersePlace;

/** A fixed way to play is kept, by the proposals of a verse and by those of a service. */
class KeptPlayingTest {

    private static final int PEOPLE = 120;

    static List<String> organs() {
        return List.of("st-tethwin", "little-corvening", "foundlings-chapel");
    }

    private static Stream<Verse> verses(ProposalTrial console) {
        return Stream.of(
                console.verse(Mode.CONGREGATION, Mood.PLAIN),
                console.verse(Mode.CONGREGATION, Mood.FESTAL),
                console.verse(Mode.SMALL_CHOIR, Mood.GENTLE),
                console.verse(Mode.MELODY_SOLOED, Mood.PLAIN));
    }

    private static List<Proposal> all(ProposalTrial console, Plan plan) {
        Stream<Proposal> ofVerses = Stream.iterate(
                        0, i -> i < plan.hymns().get(0).verses().size(), i -> i + 1)
                .flatMap(verse -> {
                    List<Proposal> found = console.proposer()
                            .forVerse(plan, new VersePlace(0, verse))
                            .proposals();
                    assertThat(found).isNotEmpty();
                    return found.stream();
                });
        Stream<Proposal> ofService = console.proposer().forService(plan, SearchProgress.PATIENT).verses().stream()
                .map(ServiceProposal.OfVerse::proposal);
        return Stream.concat(ofVerses, ofService).toList();
    }

    @ParameterizedTest
    @MethodSource("organs")
    void a_player_without_pedals_is_given_something_for_the_hands(String organ) {
        ProposalTrial console = ProposalTrial.shipped(organ);
        Plan plan = ProposalTrial.plan(PEOPLE, verses(console).toArray(Verse[]::new));
        plan = plan.withHeading(plan.heading().withPlayer(Player.MANUALS_ONLY));

        assertThat(all(console, plan)).allSatisfy(proposal -> {
            assertThat(proposal.hands().layout().usesPedal()).isFalse();
            assertThat(proposal.registration().stops().stream()
                            .mapToObj(console.organ().stops()::get))
                    .noneMatch(knob ->
                            console.organ().divisions().get(knob.division()).isPedal());
        });
    }

    @ParameterizedTest
    @MethodSource("organs")
    void hands_and_feet_that_are_kept_stay_as_they_are(String organ) {
        ProposalTrial console = ProposalTrial.shipped(organ);
        List<Integer> manuals = console.organ().manualDivisions();
        HandsAndFeet softer = HandsAndFeet.on(Layout.MANUALS_ONLY, manuals.get(manuals.size() - 1));
        Plan plan = ProposalTrial.plan(
                PEOPLE,
                verses(console)
                        .map(verse -> verse.withHands(softer).withLocks(Locks.NONE.keeping(Locks.Kept.HANDS_AND_FEET)))
                        .toArray(Verse[]::new));

        assertThat(all(console, plan))
                .allSatisfy(proposal -> assertThat(proposal.hands()).isEqualTo(softer));
    }

    @ParameterizedTest
    @MethodSource("organs")
    void swell_boxes_that_are_kept_stay_as_they_are(String organ) {
        ProposalTrial console = ProposalTrial.shipped(organ);
        List<BoxPosition> quarter =
                Collections.nCopies(console.organ().divisions().size(), BoxPosition.QUARTER);
        List<BoxPosition> kept = IntStream.range(0, quarter.size())
                .mapToObj(division -> console.organ().divisions().get(division).isEnclosed()
                        ? quarter.get(division)
                        : BoxPosition.OPEN)
                .toList();
        Plan plan = ProposalTrial.plan(
                PEOPLE,
                verses(console)
                        .map(verse -> verse.withRegistration(
                                        verse.registration().withBoxes(kept))
                                .withLocks(Locks.NONE.keeping(Locks.Kept.BOXES)))
                        .toArray(Verse[]::new));

        assertThat(all(console, plan))
                .allSatisfy(
                        proposal -> assertThat(proposal.registration().boxes()).isEqualTo(kept));
    }

    @ParameterizedTest
    @MethodSource("organs")
    void hands_that_the_plan_has_play_alone_play_alone(String organ) {
        ProposalTrial console = ProposalTrial.shipped(organ);
        Verse alone = console.verse(Mode.CONGREGATION, Mood.PLAIN);
        Verse verse = alone.withHands(alone.hands().withLayout(Layout.MANUALS_ONLY));

        assertThat(all(console, ProposalTrial.plan(PEOPLE, verse, verse)))
                .extracting(proposal -> proposal.hands().layout())
                .containsOnly(Layout.MANUALS_ONLY);
    }
}
