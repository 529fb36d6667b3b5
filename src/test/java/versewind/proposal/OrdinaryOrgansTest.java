package versewind.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import versewind.organ.BoxPosition;
import versewind.organ.Family;
import versewind.organ.Instrument;
import versewind.organ.Stop;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mode;
import versewind.plan.Mood;

/**
 * What is proposed for about 150 people on ordinary organs of two manuals, in rooms of 1500 to 9000 m3. All of it
 * common practice, no source.
 */
class OrdinaryOrgansTest {

    private static final int PEOPLE = 150;
    private static final int ORGANS = 24;

    static LongStream seeds() {
        return LongStream.range(0, ORGANS);
    }

    private static boolean isSoft(Stop stop) {
        return stop.family() == Family.FLUTE || stop.family() == Family.STRING;
    }

    private static boolean hasOnManuals(Instrument organ, Family family) {
        return organ.stops().stream()
                .anyMatch(knob ->
                        knob.division() != OrdinaryOrgans.PEDAL && knob.stop().family() == family);
    }

    private static List<Stop> drawnOn(ProposalTrial console, Proposal proposal, int division) {
        Instrument organ = console.organ();
        return proposal.registration().stops().stream()
                .mapToObj(stop -> organ.stops().get(stop))
                .filter(knob -> knob.division() == division)
                .map(Instrument.Knob::stop)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void a_congregation_has_great_principals_8_and_4_and_a_pedal_of_16_ft_with_8_ft_or_a_coupler(long seed) {
        ProposalTrial console = ProposalTrial.of(OrdinaryOrgans.ofSeed(seed));
        Proposal plain = console.best(PEOPLE, console.verse(Mode.CONGREGATION, Mood.PLAIN));

        assertThat(console.draws(plain, OrdinaryOrgans.GREAT, Family.PRINCIPAL, 8))
                .isTrue();
        assertThat(console.draws(plain, OrdinaryOrgans.GREAT, Family.PRINCIPAL, 4))
                .isTrue();
        assertThat(console.hasReedsThoughFluesLead(PEOPLE, Mood.PLAIN, plain)).isFalse();
        assertThat(plain.hands().layout()).isEqualTo(Layout.FOUR_PARTS);
        assertThat(console.drawsFeet(plain, OrdinaryOrgans.PEDAL, 16)).isTrue();
        assertThat(console.drawsFeet(plain, OrdinaryOrgans.PEDAL, 8) || console.isCoupledToPedal(plain))
                .isTrue();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void a_gentle_verse_has_flues_of_8_and_4_ft_alone(long seed) {
        ProposalTrial console = ProposalTrial.of(OrdinaryOrgans.ofSeed(seed));
        Proposal gentle = console.best(PEOPLE, console.verse(Mode.CONGREGATION, Mood.GENTLE));
        Predicate<Stop> isBright = stop -> stop.family() == Family.MIXTURE
                || stop.family().isReed()
                || stop.footage().filter(feet -> feet.feet() < 4).isPresent();

        assertThat(console.drawn(gentle)).noneMatch(isBright);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void a_festal_verse_adds_2_ft_and_the_mixture_and_then_reeds(long seed) {
        ProposalTrial console = ProposalTrial.of(OrdinaryOrgans.ofSeed(seed));
        Proposal festal = console.best(PEOPLE, console.verse(Mode.CONGREGATION, Mood.FESTAL));

        assertThat(console.drawsFeet(festal, OrdinaryOrgans.GREAT, 2)).isTrue();
        assertThat(console.draws(festal, Family.MIXTURE)).isEqualTo(hasOnManuals(console.organ(), Family.MIXTURE));
        assertThat(console.draws(festal, Family.CHORUS_REED) || !hasOnManuals(console.organ(), Family.CHORUS_REED))
                .isTrue();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void a_soloist_has_soft_stops_or_a_box_that_is_not_open(long seed) {
        ProposalTrial console = ProposalTrial.of(OrdinaryOrgans.ofSeed(seed));
        Proposal solo = console.best(PEOPLE, console.verse(Mode.SOLO_VOICE, Mood.PLAIN));
        boolean isHeldBack = solo.hands().right() == OrdinaryOrgans.SWELL
                && solo.registration().boxes().get(OrdinaryOrgans.SWELL) != BoxPosition.OPEN;

        assertThat(isHeldBack || console.drawn(solo).stream().allMatch(OrdinaryOrgansTest::isSoft))
                .isTrue();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void a_soloed_introduction_has_one_colour_over_soft_stops(long seed) {
        ProposalTrial console = ProposalTrial.of(OrdinaryOrgans.ofSeed(seed));
        Proposal soloed = console.best(PEOPLE, console.verse(Mode.MELODY_SOLOED, Mood.PLAIN));

        assertThat(soloed.hands().layout()).isEqualTo(Layout.MELODY_SOLOED);
        assertThat(drawnOn(console, soloed, soloed.hands().right())).hasSizeBetween(1, 2);
        assertThat(drawnOn(console, soloed, soloed.hands().left())).isNotEmpty().allMatch(OrdinaryOrgansTest::isSoft);
    }
}
