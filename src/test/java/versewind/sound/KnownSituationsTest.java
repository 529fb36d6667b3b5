package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mode;
import versewind.plan.Singing;
import versewind.schema.KnownOrgan;
import versewind.store.Library;

/**
 * Situations of which every organist knows how they come out, on the shipped organ of 26 stops in a church of 520
 * seats, as it is known from what is usual on it: common practice, no source. Congregations and melodies by the share
 * as estimated, soloists by the most likely verdict.
 */
class KnownSituationsTest {

    private static final int GREAT = 0;
    private static final int SWELL = 1;
    private static final String GREAT_8_4 = "Great: Open Diapason 8 + Great: Principal 4";
    private static final String GREAT_8_4_2 = GREAT_8_4 + " + Great: Fifteenth 2";
    private static final String SWELL_8_4 = "Swell: Open Diapason 8 + Swell: Principal 4";
    private static final String SWELL_8_4_2 = SWELL_8_4 + " + Swell: Fifteenth 2";
    private static final String FLUTES_8_4 = "Great: Stopped Flute 8 + Great: Open Flute 4";
    private static final String COUPLED = " + Swell to Great";
    private static final String FEET = " + Pedal: Bourdon 16 + Pedal: Bass Flute 8 + Great to Pedal";
    private static final String BOTH_TO_MIXTURE =
            GREAT_8_4_2 + " + Great: Mixture III + " + SWELL_8_4_2 + " + Swell: Mixture III" + COUPLED + FEET;

    private final OrganSound sound;
    private final Instrument organ;

    KnownSituationsTest() throws Exception {
        KnownOrgan known = new Library(Path.of("")).openOrgan("st-tethwin").organ();
        organ = known.instrument();
        sound = known.sound();
    }

    private Registration draw(String drawn) {
        return drawn.equals("everything") ? Registration.full(organ) : TrialOrgan.draw(organ, drawn.split(" \\+ "));
    }

    private Balance balance(Mode mode, Singing singing, int people, HandsAndFeet hands, String drawn) {
        return sound.estimate(TrialOrgan.verse(mode, singing, hands, draw(drawn)), people, OptionalInt.empty())
                .balance();
    }

    private double share(Mode mode, Singing singing, int people, HandsAndFeet hands, String drawn) {
        return balance(mode, singing, people, hands, drawn).share().orElseThrow();
    }

    private Verdict lead(Singing singing, int people, String drawn) {
        HandsAndFeet hands = HandsAndFeet.on(Layout.FOUR_PARTS, GREAT);
        return Verdict.of(Mode.CONGREGATION, share(Mode.CONGREGATION, singing, people, hands, drawn));
    }

    @ParameterizedTest
    @CsvSource({
        "480, FULL_VOICE, LEAD_ONLY_JUST, everything",
        "150, ORDINARY, LEADS, " + GREAT_8_4_2 + " + " + SWELL_8_4_2 + COUPLED + FEET,
        "180, ORDINARY, LEADS, " + GREAT_8_4_2 + " + " + SWELL_8_4_2 + COUPLED + FEET,
        "180, ORDINARY, LEAD_ONLY_JUST, " + GREAT_8_4 + FEET,
        "150, ORDINARY, LEAD_ONLY_JUST, " + GREAT_8_4 + FEET,
        "180, ORDINARY, LOST, " + FLUTES_8_4 + FEET,
        "150, ORDINARY, LOST, " + FLUTES_8_4 + FEET,
        "100, GENTLE, LEADS, " + FLUTES_8_4 + FEET,
        "300, STRONG, LEAD_ONLY_JUST, " + BOTH_TO_MIXTURE,
        "300, STRONG, LEADS, " + BOTH_TO_MIXTURE + " + Great: Trumpet 8 + Swell: Cornopean 8 + Pedal: Trombone 16",
        "40, ORDINARY, LEADS, " + GREAT_8_4 + FEET,
        "40, ORDINARY, TOO_STRONG, everything"
    })
    void a_congregation_is_led(int people, Singing singing, Verdict verdict, String drawn) {
        assertThat(lead(singing, people, drawn)).isEqualTo(verdict);
    }

    @ParameterizedTest
    @CsvSource({"150", "180"})
    void the_great_to_fifteenth_leads_an_ordinary_congregation_or_only_just(int people) {
        assertThat(lead(Singing.ORDINARY, people, GREAT_8_4_2 + FEET)).isIn(Verdict.LEADS, Verdict.LEAD_ONLY_JUST);
    }

    @ParameterizedTest
    @CsvSource({
        "CLEAR, SWELL, " + SWELL_8_4 + " + Swell closed",
        "CLEAR, SWELL, Swell: Gedackt 8",
        "CLEAR, SWELL, Swell: Gedackt 8 + Swell: Flute 4",
        "CLEAR, GREAT, Great: Stopped Flute 8",
        "CLEAR, SWELL, Swell: Gedackt 8 + Swell: Flute 4 + Swell closed",
        "COVERED, SWELL, " + SWELL_8_4,
        "COVERED, GREAT, " + GREAT_8_4
    })
    void a_soloist_is_heard_or_covered(Verdict verdict, String manual, String drawn) {
        HandsAndFeet hands = HandsAndFeet.on(Layout.MANUALS_ONLY, manual.equals("SWELL") ? SWELL : GREAT);
        assertThat(balance(Mode.SOLO_VOICE, Singing.ORDINARY, 100, hands, drawn).verdict())
                .isEqualTo(verdict);
    }

    @Test
    void to_8_and_4_a_second_8_ft_adds_less_than_a_2_ft_or_a_mixture() {
        HandsAndFeet hands = HandsAndFeet.on(Layout.FOUR_PARTS, GREAT);
        for (Singing singing : Singing.values()) {
            double two = with(singing, hands, " + Great: Fifteenth 2");
            double mixture = with(singing, hands, " + Great: Mixture III");
            for (String eight : List.of("Great: Stopped Flute 8", "Swell: Open Diapason 8", "Swell: Viola 8")) {
                double added = with(singing, hands, COUPLED + " + " + eight);
                assertThat(added).isLessThan(two).isLessThan(mixture);
            }
        }
    }

    private double with(Singing singing, HandsAndFeet hands, String added) {
        return share(Mode.CONGREGATION, singing, 180, hands, GREAT_8_4 + FEET + added);
    }

    /** A solo stop in the right hand over soft 8 ft in the left. */
    @ParameterizedTest
    @CsvSource({
        "SWELL, STANDS_OUT, Swell: Oboe 8 + Great: Stopped Flute 8",
        "SWELL, BURIED, Swell: Oboe 8 + " + GREAT_8_4_2 + " + Great: Mixture III",
        "GREAT, STANDS_OUT, Great: Open Diapason 8 + Swell: Gedackt 8",
        "GREAT, STANDS_OUT, Great: Stopped Flute 8 + Great: Twelfth 2 2/3 + Swell: Gedackt 8",
        "GREAT, STANDS_OUT, Great: Trumpet 8 + " + SWELL_8_4,
        "GREAT, BURIED, Great: Stopped Flute 8 + " + SWELL_8_4
    })
    void a_soloed_melody_is_heard_over_its_accompaniment(String solo, Verdict verdict, String drawn) {
        HandsAndFeet hands = solo.equals("SWELL")
                ? new HandsAndFeet(Layout.MELODY_SOLOED, SWELL, GREAT)
                : new HandsAndFeet(Layout.MELODY_SOLOED, GREAT, SWELL);
        double share = share(Mode.MELODY_SOLOED, Singing.ORDINARY, 100, hands, drawn + " + Pedal: Bourdon 16");
        assertThat(Verdict.of(Mode.MELODY_SOLOED, share)).isEqualTo(verdict);
    }
}
