package versewind.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.Shipped;
import versewind.organ.Instrument;
import versewind.organ.NotationException;
import versewind.organ.RegistrationText;
import versewind.plan.HandsAndFeet;
import versewind.plan.Mode;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;
import versewind.plan.Verses;
import versewind.sound.Balance;
import versewind.sound.OrganSound;

class OtherwiseTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "CONGREGATION | 150 | Great: Open Diapason 8, Principal 4, Fifteenth 2"
                        + " | or lost, 3 in 10: if they sing out, couple the Swell 8 4",
                "CONGREGATION | 150 | Great: Open Diapason 8, Principal 4, Fifteenth 2; Swell: Cornopean 8; Pedal:"
                        + " Trombone 16 | or lost, 3 in 10: if they sing out, couple the Swell 8 4",
                "CONGREGATION | 40 | Great: Principal 4 | or leads, 3 in 10",
                "CONGREGATION | 20 | Great: Principal 4 | or lost, 4 in 10: if they sing out, add the Open Diapason 8",
                "CONGREGATION | 40 | Great: Open Diapason 8, Principal 4, Fifteenth 2, Mixture III, Trumpet 8; Swell:"
                        + " Cornopean 8 | if too strong, put in the Trumpet 8",
                "CONGREGATION | 40 | Great: Open Diapason 8, Principal 4, Fifteenth 2, Mixture III, Trumpet 8"
                        + " | if too strong, put in the Trumpet 8",
                "CONGREGATION | 400 | Great: Stopped Flute 8 | ''",
                "MELODY_SOLOED | 100 | Great: Open Diapason 8 | ''"
            })
    void the_other_outcome_is_told_with_what_to_have_ready(Mode mode, int people, String drawn, String words)
            throws NotationException {
        Instrument organ = Shipped.instrument("st-tethwin");
        OrganSound sound = OrganSound.open(organ);
        Verse verse = Verses.blank(organ, VerseKind.VERSE)
                .withMode(mode)
                .withHands(HandsAndFeet.on(HandsAndFeet.Layout.MANUALS_ONLY, 0))
                .withRegistration(new RegistrationText(organ).parse(drawn));
        Balance balance = sound.estimate(verse, people, OptionalInt.empty()).balance();

        assertThat(Advice.on(sound).otherwise(verse, balance).map(Otherwise::words))
                .isEqualTo(words.isEmpty() ? Optional.empty() : Optional.of(words));
    }

    @Test
    void what_was_coupled_last_is_uncoupled() throws NotationException {
        var open = Shipped.plan("wedding");
        OrganSound sound = open.organ().sound();
        Verse verse = open.plan()
                .verse(new VersePlace(1, 4))
                .withRegistration(new RegistrationText(open.instrument())
                        .parse("Grand-Orgue: Montre 8, Prestant 4; Positif: Montre 8, Prestant 4; Récit expressif:"
                                + " Flûte harm. 8, Viole 8, Flûte octav. 4; Pédale: Soubasse 16, Flûte 8; couplers:"
                                + " Positif au G.O., Récit au G.O., Tirasse G.O.; Récit expressif closed"));
        Balance balance = sound.estimate(verse, 60, OptionalInt.empty()).balance();

        assertThat(Advice.on(sound).otherwise(verse, balance).map(Otherwise::words))
                .contains("if too strong, uncouple the Récit expressif 8 4");
    }
}
