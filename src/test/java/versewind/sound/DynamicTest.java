package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.organ.Instrument;
import versewind.plan.HandsAndFeet;
import versewind.plan.Mode;
import versewind.plan.Singing;
import versewind.store.Library;

class DynamicTest {

    @ParameterizedTest
    @CsvSource({"40, pp", "50, pp", "60, p", "78, mp", "85, mf", "95, f", "110, ff", "131, fff", "150, fff", "170, fff"
    })
    void a_word_begins_at_its_share_of_the_way_from_the_softest_stop_to_full_organ(double sone, String word) {
        assertThat(new Dynamic.Scale(50, 150).of(sone).word()).isEqualTo(word);
    }

    @Test
    void an_organ_of_one_loudness_is_always_full() {
        assertThat(new Dynamic.Scale(70, 70).of(70)).isEqualTo(Dynamic.FFF);
    }

    /** Common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "P, Great: Stopped Flute 8 + Great: Open Flute 4",
        "MF, Great: Open Diapason 8 + Great: Principal 4",
        "F, Great: Open Diapason 8 + Great: Principal 4 + Great: Fifteenth 2",
        "FF, Great: Open Diapason 8 + Great: Principal 4 + Great: Fifteenth 2 + Great: Mixture III"
                + " + Swell: Open Diapason 8 + Swell: Principal 4 + Swell: Fifteenth 2 + Swell to Great",
        "FFF, Great: Open Diapason 8 + Great: Principal 4 + Great: Fifteenth 2 + Great: Mixture III + Great: Trumpet 8"
                + " + Swell: Open Diapason 8 + Swell: Principal 4 + Swell: Fifteenth 2 + Swell: Cornopean 8"
                + " + Swell to Great"
    })
    void the_words_follow_the_order_of_building_up(Dynamic dynamic, String drawn) throws Exception {
        Instrument organ = new Library(Path.of("")).openInstrument("st-tethwin");
        HandsAndFeet hands = HandsAndFeet.on(HandsAndFeet.Layout.FOUR_PARTS, 0);
        String eight = dynamic == Dynamic.P ? "Pedal: Bass Flute 8" : "Pedal: Principal 8";
        String[] knobs = TrialOrgan.and(drawn.split(" \\+ "), "Pedal: Bourdon 16", eight, "Great to Pedal");
        assertThat(OrganSound.open(organ)
                        .estimate(
                                TrialOrgan.verse(
                                        Mode.CONGREGATION, Singing.ORDINARY, hands, TrialOrgan.draw(organ, knobs)),
                                150,
                                OptionalInt.empty())
                        .dynamic())
                .contains(dynamic);
    }
}
