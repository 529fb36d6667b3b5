package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.Shipped;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.NotationException;
import versewind.organ.Registration;
import versewind.organ.RegistrationText;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mode;
import versewind.plan.Singing;
import versewind.plan.VerseKind;
import versewind.plan.Verses;
import versewind.sound.Estimate;
import versewind.sound.OrganSound;
import versewind.sound.Verdict;

/**
 * Situations of which every organist knows how they come out, on the parish organ that comes with the program, in its
 * church of 6000 m3: common practice, no source.
 */
class ParishOrganTest {

    private static final String PEDAL = "; Pedal: Bourdon 16, Bass Flute 8; couplers: Great to Pedal";
    private static final String SWELL_DIAPASONS = "Swell: Open Diapason 8, Principal 4";
    private static final String GREAT_DIAPASONS = "Great: Open Diapason 8, Principal 4";
    private static final String GREAT_FLUTES = "Great: Stopped Flute 8, Open Flute 4";

    private final Instrument organ;
    private final OrganSound sound;
    private final int great;
    private final int swell;

    ParishOrganTest() throws Exception {
        organ = Shipped.instrument("st-tethwin");
        sound = OrganSound.open(organ);
        great = organ.division("Great").orElseThrow();
        swell = organ.division("Swell").orElseThrow();
    }

    private Registration drawn(String typed) throws NotationException {
        return new RegistrationText(organ).parse(typed);
    }

    private Registration everything() {
        Registration silent = Registration.silent(organ);
        return silent.withStops(IndexSet.range(organ.stops().size()))
                .withCouplers(IndexSet.range(organ.couplers().size()));
    }

    private Estimate estimate(Mode mode, Singing singing, int people, HandsAndFeet hands, Registration drawn) {
        return sound.estimate(
                Verses.blank(organ, VerseKind.VERSE)
                        .withMode(mode)
                        .withSinging(singing)
                        .withHands(hands)
                        .withRegistration(drawn),
                people,
                OptionalInt.empty());
    }

    private double dba(HandsAndFeet hands, Registration drawn) {
        return estimate(Mode.CONGREGATION, Singing.ORDINARY, 150, hands, drawn)
                .organDba()
                .orElseThrow();
    }

    @Test
    void hymns_are_led_from_the_great() {
        assertThat(organ.mainDivision()).isEqualTo(great);
    }

    @Test
    void full_organ_with_all_couplers_never_leads_500_people_at_full_voice_comfortably() {
        Estimate estimate = estimate(
                Mode.CONGREGATION, Singing.FULL_VOICE, 500, HandsAndFeet.on(Layout.FOUR_PARTS, great), everything());
        assertThat(Verdict.of(Mode.CONGREGATION, estimate.balance().share().orElseThrow()))
                .isEqualTo(Verdict.LEAD_ONLY_JUST);
    }

    @Test
    void great_to_mixture_and_trumpet_with_the_full_swell_is_nearly_everything() throws Exception {
        Registration nearly =
                drawn("Great: Open Diapason 8, Principal 4, Twelfth 2 2/3, Fifteenth 2, Mixture III, Trumpet 8;Swell:"
                        + " Open Diapason 8, Principal 4, Fifteenth 2, Mixture III, Fagotto 16,"
                        + " Cornopean 8, Oboe 8;Pedal:"
                        + " Open Wood 16, Bourdon 16, Principal 8, Bass Flute 8, Choral Bass 4, Trombone 16;couplers:"
                        + " Swell to Great, Swell to Pedal, Great to Pedal, Swell Octave, Swell Sub Oct");
        HandsAndFeet hands = HandsAndFeet.on(Layout.FOUR_PARTS, great);
        assertThat(dba(hands, everything()) - dba(hands, nearly)).isBetween(0.0, 2.0);
    }

    @Test
    void closing_the_box_on_swell_diapasons_takes_10_db_and_lets_a_soloist_through() throws Exception {
        HandsAndFeet hands = HandsAndFeet.on(Layout.MANUALS_ONLY, swell);
        Registration open = drawn(SWELL_DIAPASONS);
        Registration closed = open.withBox(swell, BoxPosition.CLOSED);
        assertThat(dba(hands, open) - dba(hands, closed)).isGreaterThanOrEqualTo(10);
        assertThat(estimate(Mode.SOLO_VOICE, Singing.ORDINARY, 100, hands, closed)
                        .balance()
                        .verdict())
                .isEqualTo(Verdict.CLEAR);
    }

    @Test
    void flutes_are_softer_than_diapasons_and_softer_again_in_the_closed_box() throws Exception {
        HandsAndFeet onGreat = HandsAndFeet.on(Layout.MANUALS_ONLY, great);
        HandsAndFeet onSwell = HandsAndFeet.on(Layout.MANUALS_ONLY, swell);
        Registration swellFlutes = drawn("Swell: Gedackt 8, Flute 4");
        double flutes = dba(onGreat, drawn(GREAT_FLUTES));
        assertThat(flutes).isLessThan(dba(onGreat, drawn(GREAT_DIAPASONS)));
        assertThat(dba(onSwell, swellFlutes.withBox(swell, BoxPosition.CLOSED)))
                .isLessThan(Math.min(flutes, dba(onSwell, swellFlutes)));
    }

    @ParameterizedTest
    @CsvSource({"FOUR_PARTS, '" + PEDAL + "'", "MANUALS_ONLY, ''"})
    void flutes_8_and_4_on_the_great_lead_a_hundred_gentle_singers(Layout layout, String pedal) throws Exception {
        Estimate estimate = estimate(
                Mode.CONGREGATION, Singing.GENTLE, 100, HandsAndFeet.on(layout, great), drawn(GREAT_FLUTES + pedal));
        assertThat(estimate.balance().verdict()).isEqualTo(Verdict.LEADS);
    }

    @Test
    void coupling_the_manual_down_and_putting_in_the_16_ft_takes_the_depth_and_not_the_loudness() throws Exception {
        Estimate with16 = estimate(
                Mode.CONGREGATION,
                Singing.ORDINARY,
                150,
                HandsAndFeet.on(Layout.FOUR_PARTS, great),
                drawn(GREAT_DIAPASONS + PEDAL));
        Estimate coupledDown = estimate(
                Mode.CONGREGATION,
                Singing.ORDINARY,
                150,
                HandsAndFeet.on(Layout.PEDAL_BY_COUPLER, great),
                drawn(GREAT_DIAPASONS + "; couplers: Great to Pedal"));
        assertThat(with16.organDba().orElseThrow() - coupledDown.organDba().orElseThrow())
                .isBetween(-1.5, 1.5);
        assertThat(lowPower(coupledDown)).isLessThan(lowPower(with16) / 10);
    }

    /** Power in the bands 25 to 50 Hz. */
    private static double lowPower(Estimate estimate) {
        double[] power = estimate.bands().power();
        return power[0] + power[1] + power[2] + power[3];
    }

    /** The course of five steps for hymns: church organ training material, as many methods have it. */
    @Test
    void every_step_of_the_build_up_is_heard_and_none_is_a_leap() throws Exception {
        List<String> steps = List.of(
                "Great: Open Diapason 8, Open Flute 4; Pedal: Bourdon 16, Bass Flute 8",
                "Great: Open Diapason 8, Principal 4; Pedal: Bourdon 16, Bass Flute 8",
                "Great: Open Diapason 8, Principal 4, Fifteenth 2; Pedal: Bourdon 16, Principal 8, Choral Bass 4",
                "Great: Open Diapason 8, Principal 4, Fifteenth 2, Mixture III; Pedal: Open Wood 16, Principal 8,"
                        + " Choral Bass 4",
                "Great: Open Diapason 8, Principal 4, Fifteenth 2, Mixture III, Trumpet 8; Pedal: Open Wood 16,"
                        + " Principal 8, Choral Bass 4, Trombone 16");
        HandsAndFeet hands = HandsAndFeet.on(Layout.FOUR_PARTS, great);
        for (int step = 1; step < steps.size(); step++) {
            double rise = dba(hands, drawn(steps.get(step))) - dba(hands, drawn(steps.get(step - 1)));
            assertThat(rise).as("step %d to %d", step, step + 1).isBetween(0.5, 6.0);
        }
    }
}
