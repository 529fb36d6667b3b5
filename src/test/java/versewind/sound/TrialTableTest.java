package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.organ.Action;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mode;
import versewind.plan.Singing;

/**
 * The whole chain from stops to margin against an independent trial of it, to 2 dB: 26 stops, 6000 m3, 3 s empty, 20 m.
 * Both are estimates; what they share is the method. Full organ is played on the Great with the pedal, all else by the
 * hands alone.
 */
class TrialTableTest {

    private static final double TOLERANCE_DB = 2;

    private static Estimate estimate(Action action, Mode mode, Singing singing, int people, String drawn) {
        OrganSound sound = OrganSound.open(TrialOrgan.instrument(action));
        boolean full = drawn.equals("full");
        Registration registration =
                full ? Registration.full(sound.organ()) : TrialOrgan.draw(sound.organ(), drawn.split(" \\+ "));
        int division = drawn.startsWith("Swell") ? TrialOrgan.SWELL : TrialOrgan.GREAT;
        HandsAndFeet hands = HandsAndFeet.on(full ? Layout.FOUR_PARTS : Layout.MANUALS_ONLY, division);
        return sound.estimate(TrialOrgan.verse(mode, singing, hands, registration), people, OptionalInt.empty());
    }

    @ParameterizedTest
    @CsvSource({
        "480, FULL_VOICE, 88, -3, -3, full",
        "480, FULL_VOICE, 88, -12, -12, Great: Open Diapason 8 + Great: Principal 4 + Great: Fifteenth 2"
                + " + Swell: Open Diapason 8 + Swell: Principal 4 + Swell: Fifteenth 2 + Swell to Great",
        "180, ORDINARY, 78.5, 8, 8, full",
        "180, ORDINARY, 78.5, 0, 0, Great: Open Diapason 8 + Great: Principal 4 + Great: Fifteenth 2"
                + " + Great: Mixture III",
        "180, ORDINARY, 78.5, -2, -3, Great: Open Diapason 8 + Great: Principal 4 + Great: Fifteenth 2",
        "180, ORDINARY, 78.5, -7, -7, Great: Stopped Diapason 8 + Great: Flute 4",
        "100, GENTLE, 70, 2, 0, Great: Stopped Diapason 8 + Great: Flute 4",
        "100, GENTLE, 70, -11, -12, Swell: Open Diapason 8 + Swell: Principal 4 + Swell closed"
    })
    void the_lead_agrees_with_the_trial(
            int people, Singing singing, double singersDba, double differenceDb, double leadDb, String drawn) {
        for (Action action : Action.values()) {
            Estimate estimate = estimate(action, Mode.CONGREGATION, singing, people, drawn);
            double organDba = estimate.organAmongSingersDba().orElseThrow();
            double sungDba = estimate.singersDba().orElseThrow();
            assertThat(sungDba).isCloseTo(singersDba, within(TOLERANCE_DB));
            assertThat(organDba - sungDba).isCloseTo(differenceDb, within(TOLERANCE_DB));
            assertThat(estimate.margin().kind()).isEqualTo(Margin.Kind.LEAD);
            assertThat(estimate.margin().db().orElseThrow()).isCloseTo(leadDb, within(TOLERANCE_DB));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "-15, full",
        "-9, Great: Open Diapason 8 + Great: Principal 4",
        "-7, Swell: Open Diapason 8 + Swell: Principal 4",
        "0, Great: Stopped Diapason 8 + Great: Flute 4",
        "8, Swell: Open Diapason 8 + Swell: Principal 4 + Swell closed",
        "12, Swell: Lieblich Gedackt 8 + Swell: Flute 4 + Swell closed"
    })
    void the_words_of_a_trained_soloist_agree_with_the_trial(double marginDb, String drawn) {
        for (Action action : Action.values()) {
            Margin margin =
                    estimate(action, Mode.SOLO_VOICE, Singing.STRONG, 1, drawn).margin();
            assertThat(margin.kind()).isEqualTo(Margin.Kind.VOICE);
            assertThat(margin.db().orElseThrow()).isCloseTo(marginDb, within(TOLERANCE_DB));
        }
    }

    /** Estimates of another hand for a room with the same absorption: 5000 m3, 2.5 s, empty. */
    @ParameterizedTest
    @CsvSource({
        "89, FOUR_PARTS, full",
        "77, FOUR_PARTS, Great: Open Diapason 8 + Great: Principal 4 + Great: Fifteenth 2 + Pedal: Bourdon 16"
                + " + Pedal: Principal 8 + Great to Pedal",
        "65, MANUALS_ONLY, Great: Stopped Diapason 8"
    })
    void levels_in_an_empty_church_are_of_the_expected_size(double dba, Layout layout, String drawn) {
        OrganSound sound = OrganSound.open(TrialOrgan.instrument(Action.MECHANICAL));
        Registration registration = drawn.equals("full")
                ? Registration.full(sound.organ())
                : TrialOrgan.draw(sound.organ(), drawn.split(" \\+ "));
        HandsAndFeet hands = HandsAndFeet.on(layout, TrialOrgan.GREAT);
        Estimate estimate = sound.estimate(
                TrialOrgan.verse(Mode.MELODY_SOLOED, Singing.ORDINARY, hands, registration), 1, OptionalInt.empty());
        assertThat(estimate.organDba().orElseThrow()).isCloseTo(dba, within(1.5));
    }
}
