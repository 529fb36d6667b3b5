package versewind.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static versewind.rules.Loft.CATHEDRAL;
import static versewind.rules.Loft.CHAPEL;
import static versewind.rules.Loft.VILLAGE;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import versewind.organ.Family;
import versewind.organ.Registration;
import versewind.plan.Edit;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Silenced;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;
import versewind.sound.Verdict;

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

    private static Verse withVerdict(Verdict verdict, Stream<Verse> verses) {
        return verses.filter(verse -> CATHEDRAL
                        .sound()
                        .estimate(verse, FEW, OptionalInt.of(90))
                        .margin()
                        .verdict()
                        .equals(verdict))
                .findFirst()
                .orElseThrow();
    }

    private static Verse mended(Finding finding, Plan plan) {
        VersePlace place = finding.place();
        return finding.mend()
                .orElseThrow()
                .edit()
                .apply(plan)
                .hymns()
                .get(place.hymn())
                .verses()
                .get(place.verse());
    }

    @Test
    void a_lead_that_is_lost_is_told() {
        Verse verse = FLUTE.withSinging(Singing.FULL_VOICE);

        assertThat(CATHEDRAL.says(Rule.LEAD_LOST, MANY, verse))
                .containsExactly("The lead is lost: people who sing with full voice cover the organ.");
        assertThat(CATHEDRAL.says(Rule.LEAD_LOST, FEW, CHORUS)).isEmpty();
    }

    @Test
    void an_organ_that_is_silent_leads_nobody() {
        assertThat(CATHEDRAL.says(Rule.LEAD_LOST, FEW, CATHEDRAL.verse("Great")))
                .containsExactly("Nothing is drawn that sounds: the people sing without a lead.");
    }

    @Test
    void a_lead_is_mended_by_the_one_stop_that_is_enough() {
        Verse verse = CATHEDRAL
                .verse("Great", "Great: Diapason II 8", "Great: Principal 4", "Great: Fifteenth 2", "Great: Mixture IV")
                .withSinging(Singing.STRONG);
        Finding finding = CATHEDRAL.found(Rule.LEAD_ONLY_JUST, FEW, verse).get(0);
        Verse after = mended(finding, CATHEDRAL.plan(FEW, verse));

        assertThat(StopChanges.between(verse.registration(), after.registration())
                        .count())
                .isEqualTo(1);
        assertLeads(after);
    }

    @Test
    void a_lead_that_is_lost_on_eight_and_four_foot_is_not_mended_by_a_lone_reed() {
        Verse verse = CATHEDRAL
                .verse("Great", "Great: Diapason II 8", "Great: Principal 4")
                .withSinging(Singing.STRONG);
        Finding finding = CATHEDRAL.found(Rule.LEAD_LOST, FEW, verse).get(0);
        Verse after = mended(finding, CATHEDRAL.plan(FEW, verse));

        assertThat(after.registration().stops().minus(verse.registration().stops()).stream())
                .isNotEmpty()
                .noneMatch(stop -> CATHEDRAL.organ().stops().get(stop).stop().family() == Family.CHORUS_REED);
        assertThat(CATHEDRAL.found(Rule.LEAD_LOST, FEW, after)).isEmpty();
        assertThat(CATHEDRAL.faults().in(after)).isEmpty();
    }

    private static void assertLeads(Verse after) {
        assertThat(CATHEDRAL
                        .sound()
                        .estimate(after, FEW, OptionalInt.of(90))
                        .margin()
                        .verdict())
                .isEqualTo(Verdict.LEADS);
        assertThat(CATHEDRAL.faults().in(after)).isEmpty();
    }

    @Test
    void a_lead_that_only_just_holds_is_a_remark() {
        Verse verse = withVerdict(
                Verdict.LEAD_ONLY_JUST, Stream.of(FLUTE, FLUTES, CHORUS).flatMap(each -> Stream.of(Singing.values())
                        .map(each::withSinging)));

        assertThat(CATHEDRAL.found(Rule.LEAD_ONLY_JUST, FEW, verse))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(Severity.REMARK);
                    assertThat(finding.sentence())
                            .matches("The lead (probably )?only just holds against people who sing .*");
                    assertThat(finding.numbers())
                            .extracting(Figure::name)
                            .containsExactly("margin", "organ", "singing");
                });
    }

    @Test
    void an_organ_that_overbears_is_told() {
        Verse verse = WITH_REEDS.withSinging(Singing.GENTLE).withPeople(OptionalInt.of(12));

        assertThat(CATHEDRAL.says(Rule.LEAD_TOO_STRONG, FEW, verse))
                .containsExactly("The organ overbears people who sing gently.");
        assertThat(CATHEDRAL.says(Rule.LEAD_TOO_STRONG, FEW, CHORUS)).isEmpty();
    }

    @Test
    void a_right_hand_without_stops_has_no_tune() {
        Verse verse = FLUTES.withHands(CATHEDRAL.hands(Layout.MANUALS_ONLY, "Great", "Swell"));

        assertThat(CATHEDRAL.says(Rule.NO_TUNE, FEW, verse))
                .containsExactly("Nothing sounds in the right hand: the people have no tune to follow.");
        assertThat(CATHEDRAL.says(Rule.NO_TUNE, FEW, FLUTES)).isEmpty();
    }

    @Test
    void a_soloist_who_is_covered_is_told() {
        Verse verse = CHORUS.withMode(Mode.SOLO_VOICE);

        assertThat(CATHEDRAL.says(Rule.WORDS_COVERED, FEW, verse))
                .containsExactly("The organ covers the soloist: the words are lost in the nave.");
        assertThat(CATHEDRAL.says(
                        Rule.WORDS_COVERED,
                        FEW,
                        CATHEDRAL
                                .verse("Swell", "Swell: Stopped Diap 8", "Swell closed")
                                .withMode(Mode.SOLO_VOICE)))
                .isEmpty();
    }

    @Test
    void a_box_closed_a_little_is_enough_where_the_words_only_just_come_through() {
        Verse verse =
                withVerdict(Verdict.VOICE_ONLY_JUST, Stream.of(Singing.values()).flatMap(singing -> Stream.of(
                                Mode.SMALL_CHOIR, Mode.SOLO_VOICE)
                        .map(FLUTES.withSinging(singing)::withMode)));
        Finding finding = CATHEDRAL.found(Rule.WORDS_ONLY_JUST, FEW, verse).get(0);

        assertThat(finding.sentence())
                .matches("The words of the (choir|soloist) (probably )?only just come through\\.");
        assertThat(finding.mend().orElseThrow().words()).isEqualTo("Set the box of the Swell to half.");
    }

    @Test
    void a_melody_that_is_buried_is_told() {
        Verse verse = CATHEDRAL.soloed(
                "Choir", "Great", "Choir: Dulciana 8", "Great: Diapason I 8", "Great: Octave 4", "Great to Pedal");

        assertThat(CATHEDRAL.says(Rule.MELODY_BURIED, FEW, verse))
                .containsExactly("The soloed melody is buried in its accompaniment.");
        assertThat(CATHEDRAL.says(
                        Rule.MELODY_BURIED,
                        FEW,
                        CATHEDRAL.soloed(
                                "Great", "Choir", "Great: Diapason I 8", "Choir: Dulciana 8", "Choir to Pedal")))
                .isEmpty();
    }

    @Test
    void a_melody_soloed_supports_no_congregation() {
        Verse verse = CHORUS.withHands(CATHEDRAL.hands(Layout.MELODY_SOLOED, "Great", "Swell"));
        Finding finding =
                CATHEDRAL.found(Rule.MELODY_UNDER_CONGREGATION, FEW, verse).get(0);

        assertThat(finding.sentence()).isEqualTo("A melody soloed out gives a congregation little support.");
        assertThat(finding.mend().orElseThrow().words()).isEqualTo("Play it in four parts on the Great.");
        assertThat(CATHEDRAL.says(Rule.MELODY_UNDER_CONGREGATION, FEW, verse.withMode(Mode.SMALL_CHOIR)))
                .isEmpty();
    }

    @Test
    void an_introduction_is_not_louder_than_its_verse() {
        Verse introduction = WITH_REEDS.withKind(VerseKind.INTRODUCTION).withLabel("Intro");
        Finding finding = CATHEDRAL
                .found(Rule.INTRODUCTION_LOUDER, 12, introduction, FLUTES.withSinging(Singing.GENTLE))
                .get(0);

        assertThat(finding.sentence())
                .matches("The introduction is about \\d+ dB louder than V1, which it introduces\\.");
        assertThat(finding.mend().orElseThrow().words()).isEqualTo("Play it on what V1 has.");
        assertThat(CATHEDRAL.says(Rule.INTRODUCTION_LOUDER, FEW, introduction, WITH_REEDS))
                .isEmpty();
    }

    @Test
    void an_introduction_is_of_the_world_of_its_verse() {
        Verse whisper =
                CATHEDRAL.verse("Choir", "Choir: Dulciana 8", "Choir closed").withKind(VerseKind.INTRODUCTION);

        assertThat(CATHEDRAL.says(Rule.INTRODUCTION_ELSEWHERE, FEW, whisper, WITH_REEDS))
                .singleElement()
                .asString()
                .matches("The introduction is about \\d+ dB softer than V1: it comes from another world\\.");
        assertThat(CATHEDRAL.says(
                        Rule.INTRODUCTION_ELSEWHERE, FEW, CHORUS.withKind(VerseKind.INTRODUCTION), WITH_REEDS))
                .isEmpty();
    }

    @Test
    void nobody_hears_a_dulciana_in_a_big_chorus() {
        Verse verse = WITH_REEDS.withRegistration(WITH_REEDS
                .registration()
                .withStops(WITH_REEDS
                        .registration()
                        .stops()
                        .plus(CATHEDRAL.draw("Choir: Dulciana 8").stops()))
                .withCouplers(CATHEDRAL.draw("Choir to Great").couplers()));
        Finding finding = CATHEDRAL.found(Rule.INAUDIBLE, FEW, verse).get(0);

        assertThat(finding.sentence()).isEqualTo("Nobody hears whether Choir: Dulciana 8 is drawn.");
        assertThat(finding.mend().orElseThrow().words()).isEqualTo("Put in Choir: Dulciana 8.");
        assertThat(CATHEDRAL.says(Rule.INAUDIBLE, FEW, verse, verse)).hasSize(1);
    }

    @Test
    void a_dulciana_beside_a_flute_is_heard() {
        Verse verse = CATHEDRAL.verse("Choir", "Choir: Dulciana 8", "Choir: Gedackt 8");

        assertThat(CATHEDRAL.says(Rule.INAUDIBLE, FEW, verse)).isEmpty();
    }

    @Test
    void an_open_wood_under_flutes_in_a_closed_box_booms() {
        String[] soft = {"Swell: Stopped Diap 8", "Swell: Lieblich Flute 4", "Swell to Pedal", "Swell closed"};
        Verse booms = CATHEDRAL.withPedal("Swell", soft[0], soft[1], soft[2], soft[3], "Pedal: Open Wood 16");
        Verse balanced = CATHEDRAL.withPedal("Swell", soft[0], soft[1], soft[2], soft[3], "Pedal: Bourdon 16");

        assertThat(CATHEDRAL.says(Rule.PEDAL_BOOMS, FEW, booms))
                .singleElement()
                .asString()
                .matches("The pedal booms: its stops make 3\\d % of the loudness\\.");
        assertThat(CATHEDRAL.says(Rule.PEDAL_BOOMS, FEW, balanced)).isEmpty();
    }

    @Test
    void a_leap_between_neighbours_is_told() {
        assertThat(CATHEDRAL.says(Rule.STEP, FEW, FLUTE, WITH_REEDS.withLabel("V2")))
                .containsExactly("The organ leaps up by about 23 dB from V1.");
        assertThat(CATHEDRAL.says(Rule.STEP, FEW, FLUTES, CHORUS)).isEmpty();
    }

    @Test
    void a_choir_between_verses_of_the_people_makes_no_leap() {
        assertThat(CATHEDRAL.says(Rule.STEP, FEW, FLUTE.withMode(Mode.SMALL_CHOIR), WITH_REEDS))
                .isEmpty();
    }

    @Test
    void more_movements_than_the_breath_holds_want_a_piston() {
        Finding finding =
                CATHEDRAL.found(Rule.TOO_MANY_MOVES, FEW, FLUTE, WITH_REEDS).get(0);

        assertThat(finding.sentence()).isEqualTo("9 movements from V1 need 3.0 s, and the breath is 2.0 s.");
        assertThat(finding.mend().orElseThrow().words()).isEqualTo("Set it on piston G1.");
        assertThat(finding.numbers())
                .containsExactly(
                        new Figure("movements", 9, Figure.Unit.COUNT),
                        new Figure("needed", 3.0, Figure.Unit.SECONDS),
                        new Figure("breath", 3 * 60.0 / 90, Figure.Unit.SECONDS));
    }

    @Test
    void two_movements_a_hand_fit_into_the_breath() {
        assertThat(CATHEDRAL.says(Rule.TOO_MANY_MOVES, FEW, FLUTE, CHORUS)).isEmpty();
    }

    @Test
    void a_piston_sets_everything() {
        assertThat(CATHEDRAL.says(Rule.TOO_MANY_MOVES, FEW, FLUTE, WITH_REEDS.withPiston("G4")))
                .isEmpty();
    }

    @Test
    void a_piston_that_sets_the_same_already_is_proposed() {
        Finding finding = CATHEDRAL
                .found(Rule.TOO_MANY_MOVES, FEW, WITH_REEDS.withPiston("G7"), FLUTE.withPiston("G2"), WITH_REEDS)
                .get(0);

        assertThat(finding.mend().orElseThrow().words()).isEqualTo("Set it on piston G7.");
    }

    @Test
    void a_piston_that_holds_something_else_already_is_told_and_a_free_one_offered() {
        Finding finding = CATHEDRAL
                .found(Rule.PISTON_TWICE, FEW, FLUTE.withPiston("G1"), CHORUS.withPiston("G1"))
                .get(0);

        assertThat(finding.place().verse()).isEqualTo(1);
        assertThat(finding.sentence())
                .isEqualTo(
                        "Piston G1 holds something else since V1: it would have to be on another memory level here.");
        assertThat(finding.mend().orElseThrow().words()).isEqualTo("Set it on piston G2.");
    }

    @Test
    void a_piston_may_be_pressed_again_for_what_it_holds() {
        assertThat(CATHEDRAL.says(Rule.PISTON_TWICE, FEW, FLUTE.withPiston("G1"), CHORUS, FLUTE.withPiston("G1")))
                .isEmpty();
    }

    @Test
    void a_general_that_the_organ_does_not_have_is_told_and_one_that_it_has_offered() {
        Finding finding = CATHEDRAL
                .found(Rule.PISTON_MISSING, FEW, FLUTE.withPiston("G1"), CHORUS.withPiston("G17"))
                .get(0);

        assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
        assertThat(finding.sentence()).isEqualTo("The organ has no piston G17: its generals are G1 to G16.");
        assertThat(finding.mend().orElseThrow().words()).isEqualTo("Set it on piston G2.");
        assertThat(CATHEDRAL.says(Rule.PISTON_MISSING, FEW, FLUTE.withPiston("129/G1")))
                .containsExactly("The organ has no memory level 129 for piston 129/G1: it has 128.");
        assertThat(CHAPEL.says(
                        Rule.PISTON_MISSING,
                        FEW,
                        CHAPEL.verse("Hauptwerk", "Hauptwerk: Prinzipal 8").withPiston("G1")))
                .containsExactly("The organ has no general pistons, and so no G1: all is moved by hand.");
    }

    @Test
    void a_general_that_the_organ_has_and_a_divisional_are_not_missing() {
        assertThat(CATHEDRAL.says(
                        Rule.PISTON_MISSING,
                        FEW,
                        FLUTE.withPiston("G16"),
                        FLUTE.withPiston("128/G16"),
                        FLUTE.withPiston("Sw 9")))
                .isEmpty();
    }

    @Test
    void a_piston_on_another_memory_level_may_hold_something_else() {
        assertThat(CATHEDRAL.says(Rule.PISTON_TWICE, FEW, FLUTE.withPiston("G1"), CHORUS.withPiston("2/G1")))
                .isEmpty();
        assertThat(CATHEDRAL.says(Rule.PISTON_TWICE, FEW, FLUTE.withPiston("2/G1"), CHORUS.withPiston("2 / g1")))
                .hasSize(1);
    }

    @Test
    void where_all_of_the_first_memory_level_are_used_one_of_the_next_is_offered() {
        Verse[] verses = IntStream.rangeClosed(1, 18)
                .mapToObj(i -> i <= 16 ? CHORUS.withPiston("G" + i) : i == 17 ? FLUTE : WITH_REEDS)
                .toArray(Verse[]::new);
        Finding finding = CATHEDRAL.found(Rule.TOO_MANY_MOVES, FEW, verses).stream()
                .filter(found -> found.place().verse() == 17)
                .findFirst()
                .orElseThrow();

        assertThat(finding.mend().orElseThrow().words()).isEqualTo("Set it on piston 2/G1.");
    }

    @Test
    void a_piston_that_there_is_not_moves_nothing_in_the_breath() {
        assertThat(CATHEDRAL.says(Rule.TOO_MANY_MOVES, FEW, FLUTE, WITH_REEDS.withPiston("G17")))
                .hasSize(1);
    }

    @Test
    void an_organ_without_pistons_has_none_to_press() {
        Verse soft = CHAPEL.verse("Rückpositiv", "Rückpositiv: Gedackt 8");
        Verse loud = CHAPEL.verse(
                        "Hauptwerk",
                        "Hauptwerk: Prinzipal 8",
                        "Hauptwerk: Oktave 4",
                        "Hauptwerk: Quinte 2 2/3",
                        "Hauptwerk: Oktave 2",
                        "Hauptwerk: Mixtur IV")
                .withPiston("G1");
        Finding finding = CHAPEL.found(Rule.TOO_MANY_MOVES, FEW, soft, loud).get(0);

        assertThat(finding.sentence())
                .isEqualTo(
                        "6 movements from V1 need 1.8 s, and the breath is 1.3 s; draw these already during V1, where"
                                + " nobody hears them: Hauptwerk Prinzipal 8, Oktave 4, Quinte 2 2/3, Oktave 2, Mixtur"
                                + " IV.");
        assertThat(finding.mend().orElseThrow().words())
                .isEqualTo(
                        "Already during V1, draw Hauptwerk: Prinzipal 8, Oktave 4, Quinte 2 2/3, Oktave 2, Mixtur IV.");
        assertThat(finding.mend().orElseThrow().edit())
                .isEqualTo(new Edit.SetVerse(
                        0,
                        0,
                        soft.withRegistration(CHAPEL.draw(
                                "Rückpositiv: Gedackt 8",
                                "Hauptwerk: Prinzipal 8",
                                "Hauptwerk: Oktave 4",
                                "Hauptwerk: Quinte 2 2/3",
                                "Hauptwerk: Oktave 2",
                                "Hauptwerk: Mixtur IV"))));
    }

    @Test
    void the_time_of_a_movement_is_the_users() {
        Plan usual = CATHEDRAL.plan(FEW, FLUTE, CHORUS);
        Plan slow = usual.withHeading(new ServiceHeading("", Optional.empty(), FEW, "", 1.2));

        assertThat(CATHEDRAL.advice().findings(slow)).anyMatch(finding -> finding.rule() == Rule.TOO_MANY_MOVES);
    }

    @Test
    void the_third_verse_with_the_same_sound_is_one_too_many() {
        Finding finding = CATHEDRAL
                .found(Rule.SAME_SOUND, FEW, CHORUS, CHORUS, CHORUS, CHORUS)
                .get(0);

        assertThat(finding.sentence()).isEqualTo("This is the third verse with the same sound.");
        assertThat(finding.place()).isEqualTo(new VersePlace(0, 2));
        assertThat(CATHEDRAL.says(Rule.SAME_SOUND, FEW, CHORUS, CHORUS, FLUTES, CHORUS))
                .isEmpty();
    }

    @Test
    void a_long_hymn_wants_a_verse_without_16_ft() {
        Verse heavy = CATHEDRAL
                .withPedal(
                        "Great",
                        "Great: Diapason II 8",
                        "Great: Principal 4",
                        "Great: Fifteenth 2",
                        "Pedal: Bourdon 16",
                        "Great to Pedal")
                .withSinging(Singing.GENTLE);
        Finding finding = CATHEDRAL
                .found(Rule.SIXTEEN_ALWAYS, FEW, heavy, heavy, heavy, heavy, heavy)
                .get(0);

        assertThat(finding.sentence()).isEqualTo("All 5 verses have 16 ft in the pedal; this one could do without.");
        assertThat(finding.mend().orElseThrow().words()).isEqualTo("Play it with the hands only.");
        assertThat(CATHEDRAL.says(Rule.SIXTEEN_ALWAYS, FEW, heavy, heavy, CHORUS, heavy, heavy))
                .isEmpty();
        assertThat(CATHEDRAL.says(Rule.SIXTEEN_ALWAYS, FEW, heavy, heavy, heavy, heavy))
                .isEmpty();
    }

    @Test
    void verses_that_need_the_pedal_to_lead_are_left_with_it() {
        Verse soft = CATHEDRAL.withPedal("Great", "Great: Stopped Diap 8", "Pedal: Bourdon 16", "Great to Pedal");

        assertThat(CATHEDRAL.says(Rule.SIXTEEN_ALWAYS, MANY, soft, soft, soft, soft, soft))
                .isEmpty();
    }

    @Test
    void a_mend_on_a_piston_that_others_have_goes_on_a_piston_of_its_own() {
        Verse shared = FLUTES.withPiston("G1").withSinging(Singing.GENTLE);
        Finding finding = Stream.of(FEW, 100, 150, 200, 300)
                .flatMap(people ->
                        CATHEDRAL.found(Rule.LEAD_LOST, people, shared, shared.withKind(VerseKind.LAST_VERSE)).stream())
                .filter(found -> found.mend().isPresent())
                .findFirst()
                .orElseThrow();

        assertThat(finding.mend().orElseThrow().words()).endsWith("Set it on piston G2.");
    }

    @Test
    void a_hymn_that_is_sung_strongly_grows() {
        Verse strong = CHORUS.withSinging(Singing.STRONG);

        assertThat(CATHEDRAL.says(Rule.NO_GROWTH, FEW, strong, strong, strong))
                .containsExactly("The hymn is sung strongly, and does not grow: its last verse is about as loud as its"
                        + " softest.");
        assertThat(CATHEDRAL.says(Rule.NO_GROWTH, FEW, strong, strong, WITH_REEDS.withSinging(Singing.STRONG)))
                .isEmpty();
        assertThat(CATHEDRAL.says(Rule.NO_GROWTH, FEW, CHORUS, CHORUS, CHORUS)).isEmpty();
    }

    @Test
    void a_hymn_on_easter_day_grows() {
        Plan plain = CATHEDRAL.plan(FEW, CHORUS, CHORUS, CHORUS);
        Plan easter = plain.withHeading(new ServiceHeading("", Optional.of(LocalDate.of(2027, 3, 28)), FEW, ""));
        Plan lent = plain.withHeading(new ServiceHeading("", Optional.of(LocalDate.of(2027, 2, 21)), FEW, ""));

        assertThat(CATHEDRAL.advice().findings(easter)).anyMatch(finding -> finding.rule() == Rule.NO_GROWTH);
        assertThat(CATHEDRAL.advice().findings(lent)).noneMatch(finding -> finding.rule() == Rule.NO_GROWTH);
    }

    @Test
    void the_biggest_verse_of_a_hymn_that_is_sung_strongly_is_the_last() {
        Verse strong = CHORUS.withSinging(Singing.STRONG);
        Verse biggest = WITH_REEDS.withSinging(Singing.STRONG).withLabel("V2");

        assertThat(CATHEDRAL.says(Rule.BIGGEST_NOT_LAST, FEW, strong, biggest, strong))
                .singleElement()
                .asString()
                .matches("V2 is bigger than this last verse by about \\d+ dB\\.");
        assertThat(CATHEDRAL.says(Rule.BIGGEST_NOT_LAST, FEW, strong, biggest, FLUTES.withSinging(Singing.GENTLE)))
                .isEmpty();
    }

    @Test
    void what_is_silenced_is_kept_apart_with_its_note() {
        Verse gap = VILLAGE.verse("Manual", "Manual: Stopped Diap 8", "Manual: Fifteenth 2");
        Verse silenced = gap.silencing(new Silenced("gap", "for the children"));

        assertThat(VILLAGE.found(Rule.GAP, FEW, gap).get(0).isSilenced()).isFalse();
        assertThat(VILLAGE.found(Rule.GAP, FEW, silenced).get(0).silence()).contains("for the children");
        assertThat(VILLAGE.found(Rule.GAP, FEW, silenced.hearing("gap")).get(0).isSilenced())
                .isFalse();
    }

    @Test
    void the_weightiest_finding_of_a_verse_comes_first() {
        Verse verse = CATHEDRAL.verse("Great", "Great: Fifteenth 2").withSinging(Singing.FULL_VOICE);
        List<Finding> findings = CATHEDRAL.advice().findings(CATHEDRAL.plan(MANY, verse), new VersePlace(0, 0));

        assertThat(findings).extracting(Finding::rule).startsWith(Rule.LEAD_LOST, Rule.NO_EIGHT_FOOT);
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
                .allSatisfy(finding -> assertThat(
                                finding.mend().orElseThrow().edit().apply(plan))
                        .isNotEqualTo(plan));
    }
}
