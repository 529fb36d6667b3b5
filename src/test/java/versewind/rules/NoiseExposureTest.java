package versewind.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import versewind.Shipped;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.Verses;
import versewind.sound.EarSeats;
import versewind.sound.OrganSound;

class NoiseExposureTest {

    private static Instrument organ;
    private static OrganSound sound;
    private static EarSeats seats;

    @BeforeAll
    static void open() {
        organ = Shipped.instrument("st-tethwin");
        sound = OrganSound.open(organ);
        seats = new EarSeats(sound);
    }

    private static Verse full(VerseKind kind) {
        return Verses.blank(organ, kind).withRegistration(Registration.full(organ));
    }

    private static NoiseExposure ears(Verse... verses) {
        Hymn hymn = new Hymn("1", "", "", "8 8 8 8", "", OptionalInt.of(85), "", List.of(verses));
        Plan plan = new Plan(new ServiceHeading("", Optional.empty(), 200, ""), "st-tethwin", List.of(hymn));
        return NoiseExposure.of(plan, Assessment.of(plan, sound), seats);
    }

    /** 34 beats at 85 a minute are 0.4 minutes; NIOSH's minutes for the level are 480 / 2^((L - 85)/3). */
    @Test
    void the_share_of_the_dose_is_the_time_over_nioshs_time_for_the_level() {
        NoiseExposure ears = ears(full(VerseKind.VERSE), full(VerseKind.LAST_VERSE));
        NoiseExposure.Seat organist = ears.organist().orElseThrow();

        assertThat(ears.minutes()).isEqualTo(0.8, within(1e-12));
        assertThat(organist.share()).isEqualTo(0.8 / 480 * Math.pow(2, (organist.levelDba() - 85) / 3), within(1e-9));
        assertThat(organist.dayDba()).isEqualTo(organist.levelDba() + 10 * Math.log10(0.8 / 480), within(1e-9));
        assertThat(organist.distanceM()).isEqualTo(3);
        assertThat(ears.choir().orElseThrow().distanceM()).isEqualTo(8);
    }

    /** 6 dB are two of NIOSH's exchanges of 3 dB: a quarter, or four times. */
    @Test
    void six_decibels_are_a_quarter_or_four_times_the_dose() {
        NoiseExposure.Seat seat = new NoiseExposure.Seat(3, 91, 6, 0.2, 80);

        assertThat(seat.leastShare()).isEqualTo(0.05, within(1e-12));
        assertThat(seat.mostShare()).isEqualTo(0.8, within(1e-12));
    }

    @Test
    void twice_through_the_plan_is_twice_the_dose_at_the_same_level() {
        NoiseExposure once = ears(full(VerseKind.VERSE));
        NoiseExposure twice = ears(full(VerseKind.VERSE), full(VerseKind.VERSE));
        double share = once.choir().orElseThrow().share();

        assertThat(twice.choir().orElseThrow().share()).isEqualTo(2 * share, within(1e-12));
        assertThat(twice.choir().orElseThrow().levelDba())
                .isEqualTo(once.choir().orElseThrow().levelDba(), within(1e-9));
    }

    @Test
    void it_is_said_with_what_is_known_and_who_comes_first() {
        NoiseExposure ears = new NoiseExposure(
                14.4,
                Optional.of(new NoiseExposure.Seat(3, 91.2, 6, 0.126, 76)),
                Optional.of(new NoiseExposure.Seat(2.5, 80, 6, 0.0092, 65)));

        assertThat(ears.words())
                .contains("Ears, once through the plan, about 14 min of sound: the organist, 3 m from the organ, about"
                        + " 91 dB(A), 13% of the daily dose, perhaps 3 to 50%; the choir, 2.5 m from the organ,"
                        + " about 80 dB(A), 0.9% of the daily dose, perhaps 0.2 to 4%. The dose is NIOSH's for a"
                        + " day (85 dB(A) over 8 hours); length and levels are estimates. Not a measurement;"
                        + " follow local rules and qualified advice.");
    }

    @Test
    void silence_needs_no_words() {
        NoiseExposure silence = ears(Verses.blank(organ, VerseKind.INTERLUDE));

        assertThat(silence.organist()).isEmpty();
        assertThat(silence.choir()).isEmpty();
        assertThat(silence.words()).isEmpty();
        assertThat(ears().words()).isEmpty();
    }

    @Test
    void beside_the_music_it_is_said_of_seats_with_a_tenth_of_the_dose_or_more() {
        NoiseExposure.Seat less = new NoiseExposure.Seat(8, 86, 4, 0.099, 76);
        NoiseExposure.Seat more = new NoiseExposure.Seat(3, 93, 4, 0.354, 80);

        assertThat(new NoiseExposure(12, Optional.of(less), Optional.of(less)).caution())
                .isEmpty();
        assertThat(new NoiseExposure(12, Optional.of(more), Optional.of(less)).caution())
                .hasValue("Ears: of a day's noise dose, about 35% for the organist.");
        assertThat(new NoiseExposure(12, Optional.of(more), Optional.of(more)).caution())
                .hasValue("Ears: of a day's noise dose, about 35% for the organist, 35% for the choir.");
    }
}
