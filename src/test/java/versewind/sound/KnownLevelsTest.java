package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static versewind.sound.TrialOrgan.GREAT;
import static versewind.sound.TrialOrgan.SWELL;
import static versewind.sound.TrialOrgan.and;
import static versewind.sound.TrialOrgan.draw;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.Action;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mode;
import versewind.plan.Singing;

/** What every organist knows of how loud registrations are: common practice, no source. */
class KnownLevelsTest {

    private static final String[] PEDAL_16_8 = {"Pedal: Bourdon 16", "Pedal: Bass Flute 8", "Great to Pedal"};
    private static final String[] GREAT_8_4 = {"Great: Open Diapason 8", "Great: Principal 4"};
    private static final String[] GREAT_FLUTES = {"Great: Stopped Diapason 8", "Great: Flute 4"};
    private static final String[] SWELL_8_4 = {"Swell: Open Diapason 8", "Swell: Principal 4"};
    private static final String[] SWELL_FLUTES = {"Swell: Lieblich Gedackt 8", "Swell: Flute 4"};

    private final OrganSound electric = OrganSound.open(TrialOrgan.instrument(Action.ELECTRIC));
    private final Instrument organ = electric.organ();

    private Estimate played(HandsAndFeet hands, Registration drawn) {
        return electric.estimate(
                TrialOrgan.verse(Mode.CONGREGATION, Singing.ORDINARY, hands, drawn), 150, OptionalInt.empty());
    }

    private double dba(Layout layout, int division, String... drawn) {
        return played(HandsAndFeet.on(layout, division), draw(organ, drawn))
                .organDba()
                .orElseThrow();
    }

    private static Registration everythingDrawn(Instrument organ) {
        return Registration.silent(organ)
                .withStops(IndexSet.of(IntStream.range(0, organ.stops().size())))
                .withCouplers(IndexSet.of(IntStream.range(0, organ.couplers().size())));
    }

    @Test
    void the_great_to_mixture_and_trumpet_with_the_full_swell_is_nearly_everything() {
        Registration nearly = draw(
                organ,
                "Great: Open Diapason 8",
                "Great: Principal 4",
                "Great: Twelfth 2 2/3",
                "Great: Fifteenth 2",
                "Great: Mixture III",
                "Great: Trumpet 8",
                "Swell: Open Diapason 8",
                "Swell: Principal 4",
                "Swell: Fifteenth 2",
                "Swell: Mixture III",
                "Swell: Contra Fagotto 16",
                "Swell: Cornopean 8",
                "Swell: Oboe 8",
                "Pedal: Open Wood 16",
                "Pedal: Bourdon 16",
                "Pedal: Principal 8",
                "Pedal: Bass Flute 8",
                "Pedal: Choral Bass 4",
                "Pedal: Trombone 16",
                "Swell to Great",
                "Swell to Pedal",
                "Great to Pedal");
        HandsAndFeet hands = HandsAndFeet.on(Layout.FOUR_PARTS, GREAT);
        double everything = played(hands, everythingDrawn(organ)).organDba().orElseThrow();
        assertThat(everything - played(hands, nearly).organDba().orElseThrow()).isBetween(0.0, 2.0);
    }

    @Test
    void flutes_are_softer_than_diapasons_and_softer_again_in_a_closed_box() {
        double diapasons = dba(Layout.MANUALS_ONLY, GREAT, GREAT_8_4);
        double flutes = dba(Layout.MANUALS_ONLY, GREAT, GREAT_FLUTES);
        double open = dba(Layout.MANUALS_ONLY, SWELL, SWELL_FLUTES);
        double closed = dba(Layout.MANUALS_ONLY, SWELL, and(SWELL_FLUTES, "Swell closed"));
        assertThat(diapasons).isGreaterThan(flutes + 2);
        assertThat(flutes).isGreaterThan(open + 1);
        assertThat(open).isGreaterThan(closed + 10);
    }

    @Test
    void coupling_the_manual_down_instead_of_the_16_ft_takes_the_depth_and_not_the_loudness() {
        Estimate with16 = played(
                HandsAndFeet.on(Layout.FOUR_PARTS, GREAT),
                draw(organ, and(GREAT_8_4, "Pedal: Bourdon 16", "Pedal: Bass Flute 8", "Great to Pedal")));
        Estimate coupled =
                played(HandsAndFeet.on(Layout.PEDAL_BY_COUPLER, GREAT), draw(organ, and(GREAT_8_4, "Great to Pedal")));
        assertThat(with16.organDba().orElseThrow() - coupled.organDba().orElseThrow())
                .isBetween(0.0, 1.5);
        for (int band = 0; ThirdOctaves.centreHz(band) < 63; band++) {
            double lost = with16.bands().power()[band]
                    / Math.max(1e-30, coupled.bands().power()[band]);
            assertThat(ThirdOctaves.powerToDb(lost)).isGreaterThan(10);
        }
    }

    @Test
    void every_step_of_the_build_up_is_heard_and_none_is_a_leap() {
        String[][] manuals = {
            {"Great: Open Diapason 8", "Great: Flute 4"},
            {"Great: Open Diapason 8", "Great: Principal 4"},
            {"Great: Open Diapason 8", "Great: Principal 4", "Great: Fifteenth 2"},
            {"Great: Open Diapason 8", "Great: Principal 4", "Great: Fifteenth 2", "Great: Mixture III"},
            {
                "Great: Open Diapason 8",
                "Great: Principal 4",
                "Great: Fifteenth 2",
                "Great: Mixture III",
                "Great: Trumpet 8"
            }
        };
        String[] pedal = PEDAL_16_8;
        String[] growing = {
            "", "Pedal: Principal 8", "Pedal: Open Wood 16", "Pedal: Choral Bass 4", "Pedal: Trombone 16"
        };
        OptionalDouble before = OptionalDouble.empty();
        for (int step = 0; step < manuals.length; step++) {
            pedal = step == 0 ? pedal : and(pedal, growing[step]);
            double level = dba(Layout.FOUR_PARTS, GREAT, and(manuals[step], pedal));
            if (before.isPresent()) {
                assertThat(level - before.getAsDouble()).isBetween(0.5, 6.0);
            }
            before = OptionalDouble.of(level);
        }
    }

    @Test
    void closing_the_box_on_swell_diapasons_takes_10_dB() {
        double open = dba(Layout.MANUALS_ONLY, SWELL, SWELL_8_4);
        double closed = dba(Layout.MANUALS_ONLY, SWELL, and(SWELL_8_4, "Swell closed"));
        assertThat(open - closed).isGreaterThan(10);
    }
}
