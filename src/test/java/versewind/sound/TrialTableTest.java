package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.organ.Action;
import versewind.organ.Division;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.MixtureBreak;
import versewind.organ.Pipe;
import versewind.organ.Registration;
import versewind.organ.Stop;
import versewind.organ.StopName;
import versewind.organ.SwellBox;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mode;
import versewind.plan.Singing;

/**
 * The whole chain from stops to share against an independent trial of it, within 2 points or a quarter of the figure:
 * 26 stops, 6000 m3, 3 s empty, 20 m. Both are estimates; what they share is the method.
 *
 * <p>What the trial does not say was chosen once: its flutes are open, the ranks of its cornet are like those of a
 * mixture, and an open box costs it nothing.
 */
class TrialTableTest {

    private static final String GREAT_842 = "Great: Open Diapason 8 + Great: Principal 4 + Great: Fifteenth 2";
    private static final String SWELL_842 = "Swell: Open Diapason 8 + Swell: Principal 4 + Swell: Fifteenth 2";
    private static final String PEDAL_16_8 = "Pedal: Bourdon 16 + Pedal: Principal 8 + Great to Pedal";

    private static OrganSound organ(Optional<SwellBox> box) {
        List<Division> divisions = new ArrayList<>(TrialOrgan.divisions());
        List<Stop> great = new ArrayList<>(divisions.get(TrialOrgan.GREAT).stops());
        great.add(Stop.of("Open Flute", "8", Family.FLUTE, Pipe.OPEN));
        great.add(new Stop(
                "Cornet",
                Optional.empty(),
                Family.MIXTURE,
                Family.MIXTURE.usualPipe(),
                5,
                List.of(new MixtureBreak(
                        Division.BOTTOM_KEY, List.of(feet("8"), feet("4"), feet("2 2/3"), feet("2"), feet("1 3/5")))),
                0,
                Stop.Enclosure.AS_ITS_DIVISION,
                Optional.empty(),
                ""));
        divisions.set(TrialOrgan.GREAT, new Division("Great", OptionalInt.of(1), 61, Optional.empty(), great));
        List<Stop> swell = divisions.get(TrialOrgan.SWELL).stops();
        divisions.set(TrialOrgan.SWELL, new Division("Swell", OptionalInt.of(2), 61, box, swell));
        return OrganSound.open(TrialOrgan.instrument(Action.MECHANICAL, divisions, TrialOrgan.ROOM));
    }

    private static Footage feet(String written) {
        return Footage.parse(written).orElseThrow();
    }

    private static double percent(Mode mode, Singing singing, int people, HandsAndFeet hands, String drawn) {
        Optional<SwellBox> box = drawn.contains("closed") ? Optional.of(new SwellBox(0)) : Optional.empty();
        OrganSound sound = organ(box);
        Registration registration = drawn.equals("everything")
                ? everything(sound.organ())
                : TrialOrgan.draw(sound.organ(), drawn.split(" \\+ "));
        Balance balance = sound.estimate(
                        TrialOrgan.verse(mode, singing, hands, registration), people, OptionalInt.empty())
                .balance();
        return 100 * balance.share().orElseThrow();
    }

    /** All but the octave couplers and what was added to the organ for its solos. */
    private static Registration everything(Instrument organ) {
        IndexSet solo = IndexSet.of(
                organ.stop(new StopName("Great", "Open Flute 8")).orElseThrow(),
                organ.stop(new StopName("Great", "Cornet V")).orElseThrow());
        Registration unison = TrialOrgan.draw(organ, "Swell to Great", "Swell to Pedal", "Great to Pedal");
        return Registration.full(organ)
                .withStops(Registration.full(organ).stops().minus(solo))
                .withCouplers(unison.couplers());
    }

    private static void assertAgree(double percent, double trial) {
        assertThat(percent).isCloseTo(trial, within(Math.max(2, trial / 4)));
    }

    @ParameterizedTest
    @CsvSource({
        "16, 29, 46, 67, 57, FOUR_PARTS, everything",
        "7, 14, 27, 52, 40, FOUR_PARTS, " + GREAT_842 + " + Great: Mixture III + " + SWELL_842
                + " + Swell: Mixture III + Swell to Great + " + PEDAL_16_8,
        "4, 9, 20, 45, 33, MANUALS_ONLY, " + GREAT_842 + " + " + SWELL_842 + " + Swell to Great",
        "3, 7, 16, 39, 27, FOUR_PARTS, " + GREAT_842 + " + " + PEDAL_16_8,
        "4, 9, 16, 37, 26, MANUALS_ONLY, Great: Open Diapason 8 + Great: Open Flute 8 + Swell: Open Diapason 8"
                + " + Swell: Lieblich Gedackt 8 + Swell: Viola 8 + Swell: Voix Celeste 8 + Swell to Great",
        "3, 6, 12, 33, 22, MANUALS_ONLY, Great: Open Diapason 8 + Great: Principal 4",
        "1, 3, 6, 19, 12, MANUALS_ONLY, Great: Open Flute 8 + Great: Flute 4",
        "1, 3, 9, 29, 17, MANUALS_ONLY, Great: Mixture III",
        "0, 0, 1, 3, 2, MANUALS_ONLY, Swell: Open Diapason 8 + Swell: Principal 4 + Swell closed"
    })
    void the_lead_agrees_with_the_trial(
            double full, double strong, double ordinary, double gentle, double few, Layout layout, String drawn) {
        HandsAndFeet hands = HandsAndFeet.on(layout, drawn.startsWith("Swell") ? TrialOrgan.SWELL : TrialOrgan.GREAT);
        assertAgree(percent(Mode.CONGREGATION, Singing.FULL_VOICE, 480, hands, drawn), full);
        assertAgree(percent(Mode.CONGREGATION, Singing.STRONG, 300, hands, drawn), strong);
        assertAgree(percent(Mode.CONGREGATION, Singing.ORDINARY, 180, hands, drawn), ordinary);
        assertAgree(percent(Mode.CONGREGATION, Singing.GENTLE, 100, hands, drawn), gentle);
        assertAgree(percent(Mode.CONGREGATION, Singing.ORDINARY, 40, hands, drawn), few);
    }

    @ParameterizedTest
    @CsvSource({
        "46, 11, 2, Swell: Oboe 8",
        "62, 31, 12, Great: Trumpet 8",
        "55, 22, 6, Great: Cornet V",
        "33, 5, 1, Great: Open Flute 8 + Great: Twelfth 2 2/3",
        "19, 1, 0, Great: Open Flute 8",
        "39, 4, 1, Great: Open Diapason 8"
    })
    void a_solo_line_agrees_with_the_trial(double overFlute, double overPrincipals, double overMixture, String melody) {
        boolean isOnSwell = melody.startsWith("Swell");
        String flute = isOnSwell ? "Great: Stopped Diapason 8" : "Swell: Lieblich Gedackt 8";
        String chorus = isOnSwell ? GREAT_842 : SWELL_842;
        String manual = isOnSwell ? "Great" : "Swell";
        assertAgree(soloed(melody, isOnSwell, flute), overFlute);
        assertAgree(
                soloed(melody, isOnSwell, manual + ": Open Diapason 8 + " + manual + ": Principal 4"), overPrincipals);
        assertAgree(soloed(melody, isOnSwell, chorus + " + " + manual + ": Mixture III"), overMixture);
    }

    private static double soloed(String melody, boolean isOnSwell, String beneath) {
        HandsAndFeet hands = isOnSwell
                ? new HandsAndFeet(Layout.MELODY_SOLOED, TrialOrgan.SWELL, TrialOrgan.GREAT)
                : new HandsAndFeet(Layout.MELODY_SOLOED, TrialOrgan.GREAT, TrialOrgan.SWELL);
        return percent(
                Mode.MELODY_SOLOED, Singing.ORDINARY, 100, hands, melody + " + " + beneath + " + Pedal: Bourdon 16");
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

    /** The levels of the singing that the trial found. */
    @ParameterizedTest
    @CsvSource({"480, FULL_VOICE, 88", "180, ORDINARY, 78.5", "100, GENTLE, 70"})
    void the_singing_agrees_with_the_trial(int people, Singing singing, double trialDba) {
        OrganSound sound = organ(Optional.empty());
        HandsAndFeet hands = HandsAndFeet.on(Layout.MANUALS_ONLY, TrialOrgan.GREAT);
        Registration silent = Registration.silent(sound.organ());
        double dba = sound.estimate(
                        TrialOrgan.verse(Mode.CONGREGATION, singing, hands, silent), people, OptionalInt.empty())
                .singersDba()
                .orElseThrow();
        assertThat(dba).isCloseTo(trialDba, within(2.0));
    }
}
