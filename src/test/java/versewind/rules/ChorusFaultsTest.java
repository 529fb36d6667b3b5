package versewind.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static versewind.rules.Loft.CATHEDRAL;
import static versewind.rules.Loft.CHAPEL;
import static versewind.rules.Loft.VILLAGE;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mode;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;

/** All of it common practice, no source. */
class ChorusFaultsTest {

    private static final String[] PRINCIPALS = {"Great: Diapason II 8", "Great: Principal 4", "Great: Fifteenth 2"};

    private static String[] principalsAnd(String... more) {
        String[] all = Arrays.copyOf(PRINCIPALS, PRINCIPALS.length + more.length);
        System.arraycopy(more, 0, all, PRINCIPALS.length, more.length);
        return all;
    }

    private static Severity severity(Verse verse) {
        return CATHEDRAL.faults().in(verse).get(0).severity();
    }

    @Test
    void hands_without_8_ft_are_told_so() {
        Verse verse = CATHEDRAL.verse("Great", "Great: Principal 4", "Great: Fifteenth 2");

        assertThat(CATHEDRAL.sentences(verse)).containsExactly("The hands have no 8 ft.");
        assertThat(CATHEDRAL.mended(verse)).contains("Great: Diapason I 8");
    }

    @Test
    void a_coupler_brings_the_8_ft() {
        Verse verse = CATHEDRAL.verse(
                "Great", "Great: Principal 4", "Great: Fifteenth 2", "Swell: Open Diapason 8", "Swell to Great");

        assertThat(CATHEDRAL.sentences(verse)).isEmpty();
    }

    @Test
    void a_2_ft_over_8_ft_without_4_ft_is_a_gap() {
        Verse verse = CATHEDRAL.verse("Great", "Great: Diapason II 8", "Great: Fifteenth 2");

        assertThat(CATHEDRAL.sentences(verse))
                .containsExactly("The hands have 2 ft over 8 ft without 4 ft between them.");
        assertThat(severity(verse)).isEqualTo(Severity.CAUTION);
        assertThat(CATHEDRAL.mended(verse))
                .containsExactly("Great: Diapason II 8", "Great: Octave 4", "Great: Fifteenth 2");
    }

    @Test
    void for_a_choir_the_gap_may_be_meant() {
        Verse verse = CATHEDRAL
                .verse("Positive", "Positive: Gedackt 8", "Positive: Block Flute 2")
                .withMode(Mode.SMALL_CHOIR);

        assertThat(severity(verse)).isEqualTo(Severity.REMARK);
    }

    @Test
    void a_coupler_fills_the_gap() {
        Verse verse = CATHEDRAL.verse(
                "Great", "Great: Diapason II 8", "Great: Fifteenth 2", "Swell: Principal 4", "Swell to Great");

        assertThat(CATHEDRAL.sentences(verse)).isEmpty();
    }

    @Test
    void a_1_ft_over_4_ft_without_2_ft_is_a_gap() {
        Verse verse =
                CATHEDRAL.verse("Positive", "Positive: Gedackt 8", "Positive: Principal 4", "Positive: Sifflet 1");

        assertThat(CATHEDRAL.sentences(verse))
                .containsExactly("The hands have 1 ft over 4 ft without 2 ft between them.");
    }

    @Test
    void one_flute_for_a_soloist_has_no_gap() {
        Verse verse = CATHEDRAL.verse("Swell", "Swell: Stopped Diap 8").withMode(Mode.SOLO_VOICE);

        assertThat(CATHEDRAL.sentences(verse)).isEmpty();
    }

    @Test
    void a_mixture_without_its_chorus_is_bare() {
        Verse verse = CATHEDRAL.verse("Great", "Great: Diapason II 8", "Great: Mixture IV");

        assertThat(CATHEDRAL.sentences(verse))
                .containsExactly("Great: Mixture IV wants 4 ft flues beneath in the hands.");
        assertThat(CATHEDRAL.mended(verse))
                .containsExactly("Great: Diapason II 8", "Great: Octave 4", "Great: Mixture IV");
    }

    @Test
    void a_mixture_over_8_and_4_ft_stands_well() {
        Verse verse = CATHEDRAL.verse("Great", "Great: Diapason II 8", "Great: Principal 4", "Great: Mixture IV");

        assertThat(CATHEDRAL.sentences(verse)).isEmpty();
    }

    @Test
    void a_reed_of_4_ft_is_no_chorus_for_a_mixture() {
        Verse verse = CATHEDRAL
                .verse("Swell", "Swell: Open Diapason 8", "Swell: Clarion 4", "Swell: Mixture IV")
                .withKind(VerseKind.INTERLUDE);

        assertThat(CATHEDRAL.sentences(verse))
                .containsExactly("Swell: Mixture IV wants 4 ft flues beneath in the hands.");
    }

    @Test
    void manual_16_ft_without_upperwork_thickens() {
        Verse verse = CATHEDRAL.verse("Great", "Great: Bourdon 16", "Great: Diapason II 8", "Great: Principal 4");

        assertThat(CATHEDRAL.sentences(verse))
                .containsExactly("Great: Bourdon 16 only thickens the hands without 2 ft or a mixture above.");
        assertThat(CATHEDRAL.mended(verse)).containsExactly("Great: Diapason II 8", "Great: Principal 4");
    }

    @Test
    void manual_16_ft_under_a_whole_chorus_is_grand() {
        Verse verse = CATHEDRAL.verse("Great", principalsAnd("Great: Double Diapason 16"));

        assertThat(CATHEDRAL.sentences(verse)).isEmpty();
    }

    @Test
    void the_organ_alone_may_have_manual_16_ft_for_its_gravity() {
        Verse verse = CATHEDRAL
                .verse("Swell", "Swell: Bourdon 16", "Swell: Stopped Diap 8")
                .withKind(VerseKind.INTERLUDE);

        assertThat(CATHEDRAL.sentences(verse)).isEmpty();
    }

    @Test
    void a_mutation_wants_an_8_ft_flue() {
        Verse verse = CATHEDRAL
                .soloed("Choir", "Swell", "Choir: Clarinet 8", "Choir: Nazard 2 2/3", "Swell: Viole 8")
                .withHands(CATHEDRAL.hands(Layout.MELODY_SOLOED, "Choir", "Swell"));

        assertThat(CATHEDRAL.sentences(verse))
                .containsExactly(
                        "Choir: Nazard 2 2/3 wants an 8 ft flue beneath in the right hand.",
                        "The feet play, but nothing sounds on the pedal: the bass is missing.");
        assertThat(CATHEDRAL.mended(verse)).contains("Choir: Gedackt 8");
    }

    @Test
    void a_nazard_over_a_flute_is_a_solo_voice() {
        Verse verse = CATHEDRAL.soloed(
                "Choir", "Swell", "Choir: Gedackt 8", "Choir: Nazard 2 2/3", "Swell: Viole 8", "Swell to Pedal");

        assertThat(CATHEDRAL.sentences(verse)).isEmpty();
    }

    @Test
    void a_cornet_that_begins_with_8_ft_carries_itself() {
        Verse verse = CATHEDRAL.soloed("Great", "Swell", "Great: Cornet V", "Swell: Viole 8", "Swell to Pedal");

        assertThat(CATHEDRAL.sentences(verse)).isEmpty();
    }

    @Test
    void a_cornet_without_8_ft_is_a_mutation() {
        Verse verse = CHAPEL.soloed(
                "Rückpositiv", "Hauptwerk", "Rückpositiv: Sesquialtera II", "Hauptwerk: Rohrflöte 8", "HW an Pedal");

        assertThat(CHAPEL.sentences(verse))
                .containsExactly("Rückpositiv: Sesquialtera II wants an 8 ft flue beneath in the right hand.");
    }

    @Test
    void a_celeste_wavers_under_a_congregation() {
        Verse verse = CATHEDRAL.verse("Swell", "Swell: Salicional 8", "Swell: Voix Celeste 8");

        assertThat(CATHEDRAL.sentences(verse)).containsExactly("Swell: Voix Celeste 8 wavers under a congregation.");
        assertThat(CATHEDRAL.mended(verse)).containsExactly("Swell: Salicional 8");
    }

    @Test
    void a_celeste_wavers_in_a_chorus() {
        Verse verse = CATHEDRAL
                .verse("Swell", "Swell: Open Diapason 8", "Swell: Principal 4", "Swell: Voix Celeste 8")
                .withMode(Mode.SMALL_CHOIR);

        assertThat(CATHEDRAL.sentences(verse)).containsExactly("Swell: Voix Celeste 8 wavers in a chorus.");
    }

    @Test
    void a_celeste_with_its_partner_may_carry_a_soloist() {
        Verse verse = CATHEDRAL
                .verse("Swell", "Swell: Salicional 8", "Swell: Voix Celeste 8")
                .withMode(Mode.SOLO_VOICE);

        assertThat(CATHEDRAL.sentences(verse)).isEmpty();
    }

    @Test
    void a_tremulant_shakes_a_congregation() {
        Verse verse = CATHEDRAL.verse("Swell", "Swell: Stopped Diap 8", "Swell: Lieblich Flute 4", "Swell Tremulant");

        assertThat(CATHEDRAL.sentences(verse)).containsExactly("The tremulant shakes the Swell under a congregation.");
        assertThat(CATHEDRAL.mended(verse)).containsExactly("Swell: Stopped Diap 8", "Swell: Lieblich Flute 4");
    }

    @Test
    void a_tremulant_of_a_manual_that_nobody_plays_shakes_nobody() {
        Verse verse = CATHEDRAL.verse("Great", principalsAnd("Swell: Stopped Diap 8", "Swell Tremulant"));

        assertThat(CATHEDRAL.sentences(verse)).isEmpty();
    }

    @Test
    void a_tremulant_belongs_to_a_solo() {
        Verse verse = CATHEDRAL.soloed(
                "Swell", "Choir", "Swell: Oboe 8", "Swell Tremulant", "Choir: Gedackt 8", "Choir to Pedal");

        assertThat(CATHEDRAL.sentences(verse)).isEmpty();
    }

    @Test
    void a_vox_humana_has_no_place_under_a_congregation() {
        Verse verse = CATHEDRAL.verse("Swell", "Swell: Stopped Diap 8", "Swell: Vox Humana 8");

        assertThat(CATHEDRAL.sentences(verse))
                .containsExactly("Swell: Vox Humana 8 has no place under a congregation.");
        assertThat(CATHEDRAL.mended(verse)).containsExactly("Swell: Stopped Diap 8");
    }

    @Test
    void a_vox_humana_may_play_an_interlude() {
        Verse verse = CATHEDRAL
                .verse("Swell", "Swell: Stopped Diap 8", "Swell: Vox Humana 8")
                .withKind(VerseKind.INTERLUDE);

        assertThat(CATHEDRAL.sentences(verse)).isEmpty();
    }

    @Test
    void a_clarinet_stands_out_of_a_chorus() {
        Verse verse = CATHEDRAL.verse("Great", principalsAnd("Choir: Clarinet 8", "Choir to Great"));

        assertThat(CATHEDRAL.sentences(verse))
                .containsExactly("Choir: Clarinet 8 is for solos and stands out of the chorus.");
        assertThat(severity(verse)).isEqualTo(Severity.REMARK);
        assertThat(CATHEDRAL.mended(verse)).doesNotContain("Choir: Clarinet 8");
    }

    @Test
    void an_oboe_behind_closed_shutters_disturbs_nobody() {
        Verse verse = CATHEDRAL
                .verse("Swell", "Swell: Open Diapason 8", "Swell: Principal 4", "Swell: Oboe 8", "Swell closed")
                .withSinging(Singing.GENTLE);

        assertThat(CATHEDRAL.sentences(verse)).isEmpty();
    }

    @Test
    void an_oboe_belongs_to_a_full_swell() {
        Verse verse = CATHEDRAL.verse(
                "Swell",
                "Swell: Open Diapason 8",
                "Swell: Principal 4",
                "Swell: Mixture IV",
                "Swell: Cornopean 8",
                "Swell: Oboe 8");

        assertThat(CATHEDRAL.sentences(verse)).isEmpty();
    }

    @Test
    void an_oboe_may_join_flutes() {
        Verse verse = CATHEDRAL.verse("Swell", "Swell: Stopped Diap 8", "Swell: Lieblich Flute 4", "Swell: Oboe 8");

        assertThat(CATHEDRAL.sentences(verse)).isEmpty();
    }

    @Test
    void a_trumpet_over_one_diapason_stands_over_too_little() {
        Verse verse = CATHEDRAL.verse("Great", "Great: Diapason II 8", "Great: Trumpet 8");

        assertThat(CATHEDRAL.sentences(verse))
                .containsExactly("Great: Trumpet 8 stands over too little flue in the hands.");
        assertThat(CATHEDRAL.mended(verse))
                .containsExactly("Great: Diapason II 8", "Great: Octave 4", "Great: Trumpet 8");
    }

    @Test
    void a_trumpet_over_a_chorus_is_the_last_step() {
        Verse verse = CATHEDRAL.verse("Great", principalsAnd("Great: Trumpet 8"));

        assertThat(CATHEDRAL.sentences(verse)).isEmpty();
    }

    @Test
    void a_fanfare_is_free() {
        Verse verse =
                CATHEDRAL.verse("Great", "Great: Trumpet 8", "Great: Clarion 4").withKind(VerseKind.INTRODUCTION);

        assertThat(CATHEDRAL.sentences(verse)).isEmpty();
    }

    @Test
    void a_trombone_wants_one_flue_beneath_it() {
        Verse verse = CATHEDRAL.withPedal("Great", principalsAnd("Pedal: Trombone 16", "Great to Pedal"));
        Verse alone = CATHEDRAL.withPedal("Great", principalsAnd("Pedal: Trombone 16", "Pedal: Posaune 8"));

        assertThat(CATHEDRAL.sentences(verse)).isEmpty();
        assertThat(CATHEDRAL.sentences(alone))
                .containsExactly("Pedal: Trombone 16 and Pedal: Posaune 8 stand over too little flue in the pedal.");
    }

    @Test
    void feet_that_play_nothing_are_told_so() {
        Verse verse = CATHEDRAL.withPedal("Great", PRINCIPALS);

        assertThat(CATHEDRAL.sentences(verse))
                .containsExactly("The feet play, but nothing sounds on the pedal: the bass is missing.");
        assertThat(CATHEDRAL.mended(verse)).contains("Great to Pedal");
    }

    @Test
    void a_manual_coupled_down_sounds_on_the_pedal() {
        Verse verse = CATHEDRAL
                .verse("Great", principalsAnd("Great to Pedal"))
                .withHands(CATHEDRAL.hands(Layout.COUPLED_DOWN, "Great", "Great"));

        assertThat(CATHEDRAL.sentences(verse)).isEmpty();
    }

    @Test
    void a_pedal_of_16_ft_alone_wants_its_coupler() {
        Verse verse = VILLAGE.withPedal("Manual", "Manual: Stopped Diap 8", "Manual: Flute 4", "Pedal: Bourdon 16");

        assertThat(VILLAGE.sentences(verse))
                .containsExactly("The pedal has no 8 ft, and the coupler that would make its line clear is not drawn.");
        assertThat(VILLAGE.mended(verse)).contains("Manual to Pedal");
    }

    @Test
    void the_coupler_gives_the_pedal_its_8_ft() {
        Verse verse = VILLAGE.withPedal(
                "Manual", "Manual: Stopped Diap 8", "Manual: Flute 4", "Pedal: Bourdon 16", "Manual to Pedal");

        assertThat(VILLAGE.sentences(verse)).isEmpty();
    }

    @Test
    void a_pedal_that_no_coupler_would_help_wants_an_8_ft_of_its_own() {
        Verse verse = VILLAGE.withPedal("Manual", "Manual: Flute 4", "Pedal: Bourdon 16", "Manual to Pedal");

        assertThat(VILLAGE.sentences(verse))
                .containsExactly(
                        "The hands have no 8 ft.", "The pedal has no 8 ft: its line is felt more than followed.");
    }

    @Test
    void an_8_ft_of_its_own_makes_the_pedal_clear() {
        Verse verse = CATHEDRAL.withPedal("Great", principalsAnd("Pedal: Bourdon 16", "Pedal: Bass Flute 8"));

        assertThat(CATHEDRAL.sentences(verse)).isEmpty();
    }

    @Test
    void each_hand_is_judged_by_what_it_plays() {
        Verse verse = CATHEDRAL
                .verse("Great", principalsAnd("Swell: Principal 4"))
                .withHands(CATHEDRAL.hands(Layout.MANUALS_ONLY, "Great", "Swell"));

        assertThat(CATHEDRAL.sentences(verse)).containsExactly("The left hand has no 8 ft.");
    }

    @Test
    void divisions_on_one_manual_are_one_chorus() {
        Verse verse = CATHEDRAL.verse("Choir", "Choir: Gedackt 8", "Positive: Principal 4", "Positive: Octave 2");

        assertThat(CATHEDRAL.sentences(verse)).isEmpty();
    }

    @Test
    void nothing_drawn_is_no_matter_of_choruses() {
        assertThat(CATHEDRAL.sentences(CATHEDRAL.withPedal("Great"))).isEmpty();
    }

    @Test
    void a_remark_costs_half_of_what_a_caution_costs() {
        Verse verse = CATHEDRAL.verse("Great", "Great: Diapason II 8", "Great: Fifteenth 2");
        List<ChorusFault> cautions = CATHEDRAL.faults().in(verse);
        List<ChorusFault> remarks = CATHEDRAL.faults().in(verse.withMode(Mode.SMALL_CHOIR));

        assertThat(remarks.get(0).weight()).isEqualTo(cautions.get(0).weight() / 2);
    }

    @ParameterizedTest
    @EnumSource(Rule.class)
    void every_rule_is_found_by_its_word(Rule rule) {
        assertThat(Rule.ofWord(rule.word())).contains(rule);
    }
}
