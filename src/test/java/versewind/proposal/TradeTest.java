package versewind.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import versewind.Shipped;
import versewind.organ.BoxPosition;
import versewind.organ.Family;
import versewind.organ.Stop;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.rules.ChorusFault;
import versewind.rules.ChorusFaults;
import versewind.rules.Company;
import versewind.rules.OrganFacts;
import versewind.rules.StopClass;

/** What organists draw, on every shipped organ. All of it common practice, no source. */
class TradeTest {

    /** About 150, and as many as there is room for in the village church. */
    private static int people(ProposalTrial console) {
        return Math.min(150, console.organ().room().seats() / 2);
    }

    private static final Map<String, ProposalTrial> CONSOLES = new ConcurrentHashMap<>();

    private static ProposalTrial console(String organ) {
        return CONSOLES.computeIfAbsent(organ, ProposalTrial::shipped);
    }

    static Stream<String> organs() {
        return Shipped.ORGANS.stream();
    }

    static Stream<Arguments> organsAndMoods() {
        return organs().flatMap(organ -> Stream.of(Mode.values())
                .flatMap(mode -> Stream.of(Mood.values()).map(mood -> Arguments.of(organ, mode, mood))));
    }

    private static boolean hasSoftEight(ProposalTrial console) {
        return console.organ().stops().stream()
                .filter(knob ->
                        knob.division() != console.organ().pedalDivision().orElse(-1))
                .map(knob -> knob.stop())
                .anyMatch(stop -> stop.family() == Family.FLUTE
                        && stop.footage().filter(feet -> feet.feet() == 8).isPresent());
    }

    private static Proposal forPeople(ProposalTrial console, Mood mood) {
        return console.best(people(console), console.verse(Mode.CONGREGATION, mood));
    }

    @ParameterizedTest
    @MethodSource("organs")
    void an_ordinary_congregation_gets_principals_8_and_4_of_the_main_manual_at_least(String organ) {
        ProposalTrial console = console(organ);
        Proposal proposal = forPeople(console, Mood.PLAIN);
        int main = console.organ().mainDivision();

        assertThat(console.draws(proposal, main, Family.PRINCIPAL, 8)).isTrue();
        assertThat(console.draws(proposal, main, Family.PRINCIPAL, 4)).isTrue();
        assertThat(proposal.hands().right()).isEqualTo(main);
        assertThat(proposal.hands().layout()).isEqualTo(Layout.FOUR_PARTS);
    }

    @ParameterizedTest
    @MethodSource("organs")
    void its_pedal_has_16_and_8_ft_or_16_ft_and_a_coupler(String organ) {
        ProposalTrial console = console(organ);
        Proposal proposal = forPeople(console, Mood.PLAIN);
        int pedal = console.organ().pedalDivision().orElseThrow();

        assertThat(console.drawsFeet(proposal, pedal, 16)).isTrue();
        assertThat(console.drawsFeet(proposal, pedal, 8) || console.isCoupledToPedal(proposal))
                .isTrue();
    }

    @ParameterizedTest
    @MethodSource("organs")
    void a_plain_verse_has_no_reeds_where_flues_lead(String organ) {
        ProposalTrial console = console(organ);
        Proposal plain = forPeople(console, Mood.PLAIN);

        assertThat(console.hasReedsThoughFluesLead(people(console), Mood.PLAIN, plain))
                .isFalse();
    }

    @ParameterizedTest
    @MethodSource("organs")
    void a_gentle_verse_has_neither_upperwork_nor_reeds(String organ) {
        ProposalTrial console = console(organ);
        Proposal proposal = forPeople(console, Mood.GENTLE);

        assertThat(console.drawn(proposal))
                .noneMatch(stop -> stop.family() == Family.MIXTURE
                        || stop.family().isReed()
                        || stop.footage().filter(feet -> feet.feet() < 4).isPresent());
    }

    @ParameterizedTest
    @MethodSource("organs")
    void a_festal_verse_has_2_ft_and_the_mixture_and_then_reeds(String organ) {
        ProposalTrial console = console(organ);
        Proposal proposal = forPeople(console, Mood.FESTAL);
        List<Stop> all =
                console.organ().stops().stream().map(knob -> knob.stop()).toList();

        assertThat(console.drawsFeet(proposal, console.organ().mainDivision(), 2))
                .isTrue();
        for (Family family : List.of(Family.MIXTURE, Family.CHORUS_REED)) {
            boolean isThere = all.stream().anyMatch(stop -> stop.family() == family);
            assertThat(console.draws(proposal, family)).as(family.word()).isEqualTo(isThere);
        }
    }

    @ParameterizedTest
    @MethodSource("organs")
    void a_festal_verse_is_stronger_than_a_gentle_one(String organ) {
        ProposalTrial console = console(organ);
        Proposal gentle = forPeople(console, Mood.GENTLE);
        Proposal festal = forPeople(console, Mood.FESTAL);

        assertThat(console.sound().levelDba(festal.registration(), festal.hands()))
                .isGreaterThan(console.sound().levelDba(gentle.registration(), gentle.hands()) + 3);
    }

    @ParameterizedTest
    @MethodSource("organs")
    void a_soloist_gets_flutes_or_a_box_that_is_not_open(String organ) {
        ProposalTrial console = console(organ);
        assumeTrue(hasSoftEight(console), "the organ has nothing softer than its principal");
        Proposal proposal = console.best(people(console), console.verse(Mode.SOLO_VOICE, Mood.PLAIN));
        BoxPosition box = proposal.registration().boxes().get(proposal.hands().right());

        List<Stop> manual = proposal.registration().stops().stream()
                .mapToObj(console.organ().stops()::get)
                .filter(knob ->
                        !console.organ().divisions().get(knob.division()).isPedal())
                .map(knob -> knob.stop())
                .toList();
        assertThat(manual).allMatch(stop -> stop.footage()
                .filter(feet -> feet.feet() == 8 || feet.feet() == 4)
                .isPresent());
        assertThat(manual.stream().allMatch(stop -> stop.family() == Family.FLUTE) || box != BoxPosition.OPEN)
                .isTrue();
    }

    @ParameterizedTest
    @MethodSource("organs")
    void a_small_choir_gets_8_and_4_ft_flues(String organ) {
        ProposalTrial console = console(organ);
        assumeTrue(hasSoftEight(console), "the organ has nothing softer than its principal");
        Proposal proposal = console.best(people(console), console.verse(Mode.SMALL_CHOIR, Mood.PLAIN));
        int right = proposal.hands().right();

        assertThat(console.drawsFeet(proposal, right, 8)).isTrue();
        assertThat(console.drawsFeet(proposal, right, 4)).isTrue();
        assertThat(console.drawn(proposal))
                .noneMatch(stop -> stop.family().isReed() || stop.family().isCompound());
    }

    @ParameterizedTest
    @MethodSource("organs")
    void a_soloed_introduction_is_one_colour_over_soft_8_ft(String organ) {
        ProposalTrial console = console(organ);
        assumeTrue(console.organ().manualDivisions().size() > 1, "one manual has no solo");
        Verse introduction = console.verse(Mode.MELODY_SOLOED, Mood.PLAIN).withKind(VerseKind.INTRODUCTION);
        Proposal proposal = console.best(people(console), introduction);
        int right = proposal.hands().right();
        int left = proposal.hands().left();

        assertThat(proposal.hands().layout()).isEqualTo(Layout.MELODY_SOLOED);
        assertThat(right).isNotEqualTo(left);
        assertThat(proposal.registration().stops().stream()
                        .filter(stop -> console.organ().stops().get(stop).division() == right))
                .hasSizeBetween(1, 2);
        assertThat(console.draws(proposal, left, Family.FLUTE, 8) || console.draws(proposal, left, Family.STRING, 8))
                .isTrue();
    }

    @ParameterizedTest
    @MethodSource("organs")
    void a_soloed_tune_is_sung_by_a_reed_a_cornet_or_a_flute_and_not_by_a_principal(String organ) {
        ProposalTrial console = console(organ);
        assumeTrue(console.organ().manualDivisions().size() > 1, "one manual has no solo");
        for (Mood mood : Mood.values()) {
            Proposal proposal = console.best(
                    people(console), console.verse(Mode.MELODY_SOLOED, mood).withKind(VerseKind.INTRODUCTION));

            assertThat(proposal.registration().stops().stream()
                            .mapToObj(console.organ().stops()::get)
                            .filter(knob -> OrganFacts.of(console.sound())
                                    .isOneKeyboard(
                                            knob.division(), proposal.hands().right()))
                            .map(knob -> knob.stop()))
                    .isNotEmpty()
                    .noneMatch(stop -> stop.family() == Family.PRINCIPAL || stop.family() == Family.STRING)
                    .noneMatch(StopClass::isThin);
        }
    }

    @ParameterizedTest
    @MethodSource("organsAndMoods")
    void no_proposal_breaks_a_rule_of_choruses(String organ, Mode mode, Mood mood) {
        ProposalTrial console = console(organ);
        Verse verse = console.verse(mode, mood);
        Proposal best = console.best(people(console), verse);

        assertThat(ChorusFaults.on(OrganFacts.of(console.sound()))
                        .in(best.registration(), best.hands(), Company.of(verse)))
                .extracting(ChorusFault::sentence)
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("organsAndMoods")
    void nothing_is_proposed_that_organists_would_laugh_at(String organ, Mode mode, Mood mood) {
        ProposalTrial console = console(organ);
        for (Proposal proposal : console.proposals(people(console), console.verse(mode, mood))) {
            List<Stop> drawn = console.drawn(proposal);
            long flutes = drawn.stream()
                    .filter(stop -> stop.family() == Family.FLUTE)
                    .filter(stop ->
                            stop.footage().filter(feet -> feet.feet() == 8).isPresent())
                    .count();

            assertThat(flutes).isLessThanOrEqualTo(4);
            assertThat(proposal.registration().tremulants().isEmpty()).isTrue();
            if (mode == Mode.CONGREGATION) {
                assertThat(drawn).noneMatch(stop -> stop.family() == Family.CELESTE);
            }
            if (drawn.stream().anyMatch(stop -> stop.family() == Family.CHORUS_REED) && mode == Mode.CONGREGATION) {
                assertThat(drawn).anyMatch(stop -> stop.family() == Family.PRINCIPAL);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("organsAndMoods")
    void each_other_proposal_says_in_a_few_words_of_its_own_how_it_differs(String organ, Mode mode, Mood mood) {
        ProposalTrial console = console(organ);
        List<Proposal> proposals = console.proposals(people(console), console.verse(mode, mood));

        assertThat(proposals.get(0).unlike()).isEmpty();
        assertThat(proposals.subList(1, proposals.size()).stream().map(Proposal::unlike))
                .doesNotHaveDuplicates()
                .allSatisfy(words -> assertThat(words).isNotBlank().hasSizeLessThan(90));
    }

    @ParameterizedTest
    @MethodSource("organsAndMoods")
    void a_balance_that_is_as_wanted_is_no_remark(String organ, Mode mode, Mood mood) {
        ProposalTrial console = console(organ);
        for (Proposal proposal : console.proposals(people(console), console.verse(mode, mood))) {
            assertThat(proposal.score().remarks())
                    .filteredOn(remark -> remark.contains("target"))
                    .allMatch(remark -> remark.contains("below the target") || remark.contains("above the target"));
        }
    }

    @ParameterizedTest
    @MethodSource("organsAndMoods")
    void the_best_comes_first_and_every_row_against_it_says_why(String organ, Mode mode, Mood mood) {
        ProposalTrial console = console(organ);
        List<Proposal> proposals = console.proposals(people(console), console.verse(mode, mood));

        assertThat(proposals).hasSizeBetween(1, VerseSearch.MOST_PROPOSALS);
        assertThat(proposals)
                .isSortedAccordingTo((one, other) ->
                        Double.compare(one.score().points(), other.score().points()));
        for (Proposal proposal : proposals) {
            assertThat(proposal.score().parts()).allSatisfy(part -> {
                assertThat(part.points()).isPositive();
                assertThat(part.sentence()).endsWith(".");
            });
            assertThat(proposal.why()).endsWith(".").doesNotContain("\n");
        }
    }
}
