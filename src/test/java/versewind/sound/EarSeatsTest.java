package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static versewind.sound.TrialOrgan.GREAT;
import static versewind.sound.TrialOrgan.draw;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import versewind.organ.Action;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.Trims;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mode;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;

/** Console 3 m and choir 12 m from the organ, nave 20 m; critical distance about 2.5 m. */
class EarSeatsTest {

    private final OrganSound sound = OrganSound.open(TrialOrgan.instrument(Action.MECHANICAL));
    private final Instrument organ = sound.organ();
    private final EarSeats seats = new EarSeats(sound);

    private Verse verse(Mode mode, Singing singing, Registration drawn) {
        return TrialOrgan.verse(mode, singing, HandsAndFeet.on(Layout.FOUR_PARTS, GREAT), drawn);
    }

    private Registration some() {
        return draw(organ, "Great: Open Diapason 8", "Great: Principal 4", "Great to Pedal");
    }

    private EarSeats.Levels during(Verse verse, int people) {
        return seats.during(verse, people, sound.estimate(verse, people, OptionalInt.empty()));
    }

    @Test
    void the_organist_hears_the_organ_louder_than_the_choir_and_the_choir_than_the_nave() {
        Verse alone = verse(Mode.CONGREGATION, Singing.ORDINARY, some()).withKind(VerseKind.INTERLUDE);
        EarSeats.Levels levels = during(alone, 100);
        double naveDba =
                sound.estimate(alone, 100, OptionalInt.empty()).organDba().orElseThrow();

        assertThat(levels.choir().orElseThrow()).isGreaterThan(naveDba + 0.3);
        assertThat(levels.organist().orElseThrow()).isGreaterThan(levels.choir().orElseThrow() + 1);
    }

    @Test
    void louder_singers_and_a_louder_room_are_louder_at_the_ears_too() {
        Verse sung = verse(Mode.CONGREGATION, Singing.ORDINARY, some());
        OrganSound louder = sound.with(Trims.of(organ), new Offsets(3, 2));
        EarSeats.Levels before = during(sung, 100);
        EarSeats.Levels after = new EarSeats(louder).during(sung, 100, louder.estimate(sung, 100, OptionalInt.empty()));

        assertThat(after.choir().orElseThrow() - before.choir().orElseThrow()).isBetween(2.0, 5.0);
        assertThat(after.organist().orElseThrow() - before.organist().orElseThrow())
                .isBetween(0.5, 5.0);
    }

    /** At the choir's seat the estimate has the organ's level already, by another way. */
    @Test
    void the_organ_alone_at_the_choir_is_what_a_choir_hears() {
        Verse sung = verse(Mode.SMALL_CHOIR, Singing.ORDINARY, some());
        Verse alone = sung.withKind(VerseKind.INTERLUDE);
        double organDba = sound.estimate(alone, 100, OptionalInt.empty())
                .organAmongSingersDba()
                .orElseThrow();

        assertThat(during(alone, 100).choir().orElseThrow()).isEqualTo(organDba, within(1e-9));
        assertThat(during(sung, 100).choir().orElseThrow()).isGreaterThan(organDba);
    }

    @Test
    void singing_reaches_both_seats_without_any_organ() {
        Verse silent = verse(Mode.CONGREGATION, Singing.STRONG, Registration.silent(organ));
        EarSeats.Levels levels = during(silent, 300);
        double amongThemDba =
                sound.estimate(silent, 300, OptionalInt.empty()).singersDba().orElseThrow();

        assertThat(levels.organist()).isEqualTo(levels.choir());
        assertThat(levels.organist().orElseThrow()).isBetween(amongThemDba - 6, amongThemDba);
    }

    @Test
    void a_soloist_hears_the_organ_and_not_the_own_voice() {
        Verse solo = verse(Mode.SOLO_VOICE, Singing.STRONG, some());
        double organDba = sound.estimate(solo, 100, OptionalInt.empty())
                .organAmongSingersDba()
                .orElseThrow();

        assertThat(during(solo, 100).choir().orElseThrow()).isEqualTo(organDba, within(1e-9));
    }

    @Test
    void where_nothing_sounds_there_is_no_level() {
        Verse nothing = verse(Mode.CONGREGATION, Singing.ORDINARY, Registration.silent(organ))
                .withKind(VerseKind.INTERLUDE);

        assertThat(during(nothing, 100).organist()).isEmpty();
        assertThat(during(nothing, 100).choir()).isEmpty();
    }
}
