package versewind.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static versewind.rules.Loft.CATHEDRAL;
import static versewind.rules.Loft.CHAPEL;
import static versewind.rules.Loft.VILLAGE;
import static versewind.rules.RuleCase.great;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import versewind.organ.Family;
import versewind.organ.Registration;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Silenced;
import versewind.plan.Singing;
import versewind.plan.SungBy;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;

/** All of it common practice, no source. */
class AdviceTest {

    private static final int FEW = 60;
    private static final int MANY = 1400;

    private static final Verse FLUTE = CATHEDRAL.verse("Great", "Great: Stopped Diap 8");
    private static final Verse FLUTES = CATHEDRAL.verse("Swell", "Swell: Stopped Diap 8", "Swell: Lieblich Flute 4");
    private static final Verse CHORUS =
            CATHEDRAL.verse("Great", "Great: Diapason II 8", "Great: Principal 4", "Great: Fifteenth 2");
    private static final Verse WITH_REEDS = CATHEDRAL.verse(
            "Great",
            "Great: Diapason I 8",
            "Great: Diapason II 8",
            "Great: Octave 4",
            "Great: Fifteenth 2",
            "Great: Mixture IV",
            "Great: Trumpet 8",
            "Great: Posaune 8",
            "Great: Clarion 4");

    private static Verse mended(Finding finding, Plan plan) {
        VersePlace place = finding.place();
        return finding.mend()
                .orElseThrow()
                .on(plan)
                .hymns()
                .get(place.hymn())
                .verses()
                .get(place.verse());
    }

    @Test
    void a_lead_that_is_lost_on_eight_and_four_foot_is_not_mended_by_a_lone_reed() {
        Verse verse = CATHEDRAL
                .verse("Great", "Great: Diapason II 8", "Great: Principal 4")
                .withSinging(Singing.STRONG);
        Finding finding = CATHEDRAL.found(BalanceRule.LEAD_LOST, FEW, verse).get(0);
        Verse after = mended(finding, CATHEDRAL.plan(FEW, verse));

        assertThat(after.registration().stops().minus(verse.registration().stops()).stream())
                .isNotEmpty()
                .noneMatch(stop -> CATHEDRAL.organ().stops().get(stop).stop().family() == Family.CHORUS_REED);
        assertThat(CATHEDRAL.found(BalanceRule.LEAD_LOST, FEW, after)).isEmpty();
        assertThat(CATHEDRAL.faults().in(after)).isEmpty();
    }

    @Test
    void more_movements_than_the_breath_holds_want_a_piston() {
        Finding finding = CATHEDRAL
                .found(ChangeRule.TOO_MANY_MOVES, FEW, FLUTE, WITH_REEDS)
                .get(0);

        assertThat(finding.sentence()).isEqualTo("9 changes from V1 need 3.0 s with both hands; the breath is 2.0 s.");
        assertThat(finding.mend().orElseThrow().words()).isEqualTo("Set it on piston G1.");
        assertThat(finding.numbers())
                .containsExactly(
                        new Figure("movements", 9, Figure.Unit.COUNT),
                        new Figure("needed", 3.0, Figure.Unit.SECONDS),
                        new Figure("breath", 3 * 60.0 / 90, Figure.Unit.SECONDS));
    }

    @Test
    void a_piston_that_sets_the_same_already_is_proposed() {
        Finding finding = CATHEDRAL
                .found(ChangeRule.TOO_MANY_MOVES, FEW, WITH_REEDS.withPiston("G7"), FLUTE.withPiston("G2"), WITH_REEDS)
                .get(0);

        assertThat(finding.mend().orElseThrow().words()).isEqualTo("Set it on piston G7.");
    }

    @Test
    void where_all_generals_are_used_a_divisional_is_offered_before_another_memory_level() {
        Verse[] verses = IntStream.rangeClosed(1, 18)
                .mapToObj(i -> i <= 16 ? CHORUS.withPiston("G" + i) : i == 17 ? FLUTE : WITH_REEDS)
                .toArray(Verse[]::new);
        Finding finding = CATHEDRAL.found(ChangeRule.TOO_MANY_MOVES, FEW, verses).stream()
                .filter(found -> found.place().verse() == 17)
                .findFirst()
                .orElseThrow();

        assertThat(finding.mend().orElseThrow().words()).isEqualTo("Set it on piston Great 1.");
    }

    @Test
    void a_piston_that_there_is_not_moves_nothing_in_the_breath() {
        assertThat(CATHEDRAL.says(ChangeRule.TOO_MANY_MOVES, FEW, FLUTE, WITH_REEDS.withPiston("G17")))
                .hasSize(1);
    }

    @Test
    void what_is_drawn_on_a_manual_that_nobody_hears_yet_needs_no_breath() {
        Verse soft = CHAPEL.verse("Rückpositiv", "Rückpositiv: Gedackt 8");
        Verse onTheSame = CHAPEL.verse("Hauptwerk", "Hauptwerk: Rohrflöte 8");
        Verse loud = CHAPEL.verse(
                        "Hauptwerk",
                        "Hauptwerk: Prinzipal 8",
                        "Hauptwerk: Oktave 4",
                        "Hauptwerk: Quinte 2 2/3",
                        "Hauptwerk: Oktave 2",
                        "Hauptwerk: Mixtur IV")
                .withPiston("G1");
        Finding finding =
                CHAPEL.found(ChangeRule.TOO_MANY_MOVES, FEW, onTheSame, loud).get(0);

        assertThat(finding.sentence()).isEqualTo("6 changes from V1 need 1.8 s with both hands; the breath is 1.3 s.");
        assertThat(finding.mend()).isEmpty();
        assertThat(CHAPEL.found(ChangeRule.TOO_MANY_MOVES, FEW, soft, loud)).isEmpty();
    }

    @Test
    void of_a_verse_without_the_organ_nothing_is_said_and_after_it_there_is_time_enough() {
        Verse silent = great("Great: Fifteenth 2").withSungBy(SungBy.UNACCOMPANIED);

        assertThat(CATHEDRAL.advice().findings(CATHEDRAL.plan(FEW, silent))).isEmpty();
        assertThat(CATHEDRAL.found(ChangeRule.TOO_MANY_MOVES, FEW, silent, WITH_REEDS))
                .isEmpty();
    }

    @Test
    void the_time_of_a_movement_is_the_users() {
        Plan usual = CATHEDRAL.plan(FEW, FLUTE, CHORUS);
        Plan slow = usual.withHeading(new ServiceHeading("", Optional.empty(), FEW, "").withMoveS(1.2));

        assertThat(CATHEDRAL.advice().findings(slow)).anyMatch(finding -> finding.rule() == ChangeRule.TOO_MANY_MOVES);
    }

    @Test
    void a_mend_on_a_piston_that_others_have_goes_on_a_piston_of_its_own() {
        Verse shared = FLUTES.withPiston("G1").withSinging(Singing.GENTLE);
        Finding finding = Stream.of(FEW, 100, 150, 200, 300)
                .flatMap(people ->
                        CATHEDRAL
                                .found(BalanceRule.LEAD_LOST, people, shared, shared.withKind(VerseKind.LAST_VERSE))
                                .stream())
                .filter(found -> found.mend().isPresent())
                .findFirst()
                .orElseThrow();

        assertThat(finding.mend().orElseThrow().words()).endsWith("Set it on piston G2.");
    }

    @Test
    void a_hymn_on_easter_day_grows() {
        Plan plain = CATHEDRAL.plan(FEW, CHORUS, CHORUS, CHORUS);
        Plan easter = plain.withHeading(new ServiceHeading("", Optional.of(LocalDate.of(2027, 3, 28)), FEW, ""));
        Plan lent = plain.withHeading(new ServiceHeading("", Optional.of(LocalDate.of(2027, 2, 21)), FEW, ""));

        assertThat(CATHEDRAL.advice().findings(easter)).anyMatch(finding -> finding.rule() == HymnRule.NO_GROWTH);
        assertThat(CATHEDRAL.advice().findings(lent)).noneMatch(finding -> finding.rule() == HymnRule.NO_GROWTH);
    }

    @Test
    void what_is_silenced_is_kept_apart_with_its_note() {
        Verse gap = VILLAGE.verse("Manual", "Manual: Stopped Diap 8", "Manual: Fifteenth 2");
        Verse silenced = gap.silencing(new Silenced("gap", "for the children"));

        assertThat(VILLAGE.found(ChorusRule.GAP, FEW, gap).get(0).isSilenced()).isFalse();
        assertThat(VILLAGE.found(ChorusRule.GAP, FEW, silenced).get(0).silence())
                .contains("for the children");
        assertThat(VILLAGE.found(ChorusRule.GAP, FEW, silenced.hearing("gap"))
                        .get(0)
                        .isSilenced())
                .isFalse();
    }

    @Test
    void the_weightiest_finding_of_a_verse_comes_first() {
        Verse verse = CATHEDRAL.verse("Great", "Great: Fifteenth 2").withSinging(Singing.FULL_VOICE);
        List<Finding> findings = CATHEDRAL.advice().findings(CATHEDRAL.plan(MANY, verse), new VersePlace(0, 0));

        assertThat(findings).extracting(Finding::rule).startsWith(BalanceRule.LEAD_LOST, ChorusRule.NO_EIGHT_FOOT);
    }

    @Test
    void of_a_verse_in_which_nothing_is_drawn_yet_only_that_is_told() {
        Verse loud = WITH_REEDS.withSinging(Singing.STRONG);
        Verse undrawn = loud.withRegistration(Registration.silent(CATHEDRAL.organ()));
        Plan plan = CATHEDRAL.plan(
                FEW,
                loud.withKind(VerseKind.INTRODUCTION),
                undrawn,
                undrawn,
                loud,
                undrawn.withMode(Mode.MELODY_SOLOED),
                undrawn.withMode(Mode.SMALL_CHOIR),
                undrawn.withKind(VerseKind.LAST_VERSE));
        Plan easter = plan.withHeading(new ServiceHeading("", Optional.of(LocalDate.of(2027, 3, 28)), FEW, ""));

        assertThat(CATHEDRAL.advice().findings(easter))
                .filteredOn(finding ->
                        !finding.sentence().equals("Nothing is drawn that sounds: the people sing without a lead."))
                .extracting(finding -> finding.place().verse() + " " + finding.sentence())
                .isEmpty();
    }

    @Test
    void every_mend_is_a_change_of_the_plan() {
        Plan plan = CATHEDRAL.plan(FEW, FLUTE, WITH_REEDS, CHORUS.withMode(Mode.SOLO_VOICE), FLUTE);

        assertThat(CATHEDRAL.advice().findings(plan))
                .filteredOn(finding -> finding.mend().isPresent())
                .isNotEmpty()
                .allSatisfy(finding ->
                        assertThat(finding.mend().orElseThrow().on(plan)).isNotEqualTo(plan));
    }

    @Test
    void a_finding_is_mended_by_itself_as_it_is_among_all() {
        Plan plan = CATHEDRAL.plan(FEW, FLUTE, FLUTE, WITH_REEDS, CHORUS.withMode(Mode.SOLO_VOICE), FLUTE);
        List<Finding> all = CATHEDRAL.advice().findings(plan);
        assertThat(all).anyMatch(finding -> finding.mend().isPresent());

        List<Finding> unmended = CATHEDRAL.advice().unmended(plan);
        assertThat(unmended).allMatch(finding -> finding.mend().isEmpty());
        assertThat(unmended)
                .extracting(finding -> CATHEDRAL.advice().mended(plan, finding))
                .isEqualTo(all);
    }
}
