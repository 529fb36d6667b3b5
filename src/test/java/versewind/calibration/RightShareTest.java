package versewind.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import versewind.Shipped;
import versewind.organ.RegistrationText;
import versewind.plan.Feedback;
import versewind.plan.HeardAs;
import versewind.plan.Mode;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.sound.OrganSound;

class RightShareTest {

    private static final int PEOPLE = 120;

    private final OrganSound sound;
    private final Verse chorus;
    private final Verse foundations;
    private final Verse flutes;

    RightShareTest() throws Exception {
        var open = Shipped.plan("ordinary-sunday");
        sound = OrganSound.open(open.instrument());
        Verse verse = open.plan().hymns().get(0).verses().get(1).withSinging(Singing.ORDINARY);
        RegistrationText text = new RegistrationText(open.instrument());
        chorus = verse.withRegistration(
                text.parse("Great: Open Diapason 8, Principal 4, Fifteenth 2; Pedal: Bourdon 16"));
        foundations = verse.withRegistration(text.parse("Great: Open Diapason 8, Principal 4; Pedal: Bourdon 16"));
        flutes = verse.withRegistration(text.parse("Great: Stopped Flute 8, Open Flute 4; Pedal: Bourdon 16"));
    }

    private double share(Verse verse) {
        return sound.estimate(verse, PEOPLE, OptionalInt.empty())
                .balance()
                .share()
                .orElseThrow();
    }

    private static HeardRegistration heard(Verse verse, HeardAs heard) {
        return HeardRegistration.of("2026-11-22, 208 V1", verse, new Feedback(heard, PEOPLE));
    }

    private RightShare right(List<HeardRegistration> usual, HeardRegistration... answers) {
        return new RightShare(new Experience(usual, List.of(answers)), sound);
    }

    @Test
    void it_is_between_the_usual_registration_and_what_was_right_after_a_service() {
        double usual = share(chorus);
        double right = right(List.of(heard(chorus, HeardAs.RIGHT)), heard(flutes, HeardAs.RIGHT))
                .of(chorus, PEOPLE)
                .orElseThrow();
        assertThat(right).isBetween(share(flutes), usual).isNotEqualTo(usual);
        assertThat(right(List.of()).of(chorus, PEOPLE)).isEmpty();
    }

    @Test
    void it_stays_clearly_below_what_was_too_strong_and_above_what_was_too_soft() {
        List<HeardRegistration> usual = List.of(heard(chorus, HeardAs.RIGHT));
        assertThat(right(usual, heard(foundations, HeardAs.TOO_STRONG))
                        .of(chorus, PEOPLE)
                        .orElseThrow())
                .isLessThan(share(foundations) - 0.03);
        assertThat(right(List.of(heard(flutes, HeardAs.RIGHT)), heard(foundations, HeardAs.TOO_SOFT))
                        .of(chorus, PEOPLE)
                        .orElseThrow())
                .isGreaterThan(share(foundations) + 0.03);
    }

    @Test
    void judgements_that_deny_each_other_and_those_on_other_singing_set_no_bounds() {
        List<HeardRegistration> usual = List.of(heard(chorus, HeardAs.RIGHT));
        double alone = right(usual).of(chorus, PEOPLE).orElseThrow();
        assertThat(right(usual, heard(flutes, HeardAs.TOO_STRONG), heard(foundations, HeardAs.TOO_SOFT))
                        .of(chorus, PEOPLE))
                .hasValue(alone);
        assertThat(right(
                                usual,
                                heard(flutes.withMode(Mode.SMALL_CHOIR), HeardAs.TOO_STRONG),
                                heard(flutes.withSinging(Singing.GENTLE), HeardAs.TOO_STRONG))
                        .of(chorus, PEOPLE))
                .hasValue(alone);
    }
}
