package versewind.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static versewind.rules.Loft.CATHEDRAL;
import static versewind.rules.Loft.VILLAGE;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import versewind.organ.Registration;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;

/** All of it common practice, no source. */
class TouchTest {

    private static final Verse SOFT = VILLAGE.verse("Manual", "Manual: Stopped Diap 8");
    private static final Verse FULL = CATHEDRAL.verse("Great").withRegistration(Registration.full(CATHEDRAL.organ()));

    private static Touch touch(Loft loft, int people, int tempo, Verse verse) {
        Plan plan = loft.plan(people, verse);
        Hymn hymn = plan.hymns().get(0);
        Hymn timed = new Hymn(hymn.number(), hymn.title(), "", "", "", OptionalInt.of(tempo), "", hymn.verses());
        return loft.advice().touch(plan.withHymn(0, timed), new VersePlace(0, 0));
    }

    @Test
    void soft_stops_in_a_dry_church_are_played_legato() {
        assertThat(touch(VILLAGE, 6, 66, SOFT.withSinging(Singing.GENTLE)).sentence())
                .isEqualTo("Legato, each note held the whole beat: the sound is thin and it lasts about 2 beats in"
                        + " the church.");
    }

    @Test
    void full_organ_in_a_live_church_is_played_detached() {
        Touch touch = touch(CATHEDRAL, 60, 120, FULL);

        assertThat(touch.manner()).isEqualTo(Touch.Manner.DETACHED);
        assertThat(touch.holdBeats()).isEqualTo(0.75);
    }

    @Test
    void where_no_more_organ_is_left_touch_is_the_lead_that_remains() {
        Touch touch = touch(CATHEDRAL, 2000, 96, FULL.withSinging(Singing.FULL_VOICE));

        assertThat(touch.isLastMeans()).isTrue();
        assertThat(touch.sentence())
                .isEqualTo("Well detached, each note held 5/8 of the beat: the sound is thick, it lasts about 4"
                        + " beats in the church and the lead only just holds. No more organ is left: lead by"
                        + " touch and a steady beat.");
    }

    @Test
    void where_there_is_more_organ_touch_is_not_the_last_means() {
        assertThat(touch(CATHEDRAL, 1400, 96, CATHEDRAL.verse("Great", "Great: Stopped Diap 8"))
                        .isLastMeans())
                .isFalse();
    }

    @Test
    void the_breath_is_as_long_as_people_need() {
        assertThat(touch(VILLAGE, 30, 90, SOFT).breath())
                .isEqualTo("Breathe 2 beats between verses, always the same: that is the time people need.");
        assertThat(touch(VILLAGE, 30, 50, SOFT).breathBeats()).isEqualTo(1);
    }

    @Test
    void a_very_live_room_has_a_beat_more_to_clear() {
        assertThat(touch(CATHEDRAL, 60, 90, FULL).breath())
                .isEqualTo("Breathe 3 beats between verses, always the same: that is the time people need, and the"
                        + " sound to clear.");
    }

    @Test
    void a_soloist_is_no_farthest_singer() {
        assertThat(touch(CATHEDRAL, 60, 90, FULL.withMode(Mode.SOLO_VOICE)).lag())
                .isEmpty();
    }

    @Test
    void the_farthest_singers_are_not_waited_for() {
        assertThat(touch(CATHEDRAL, 60, 90, FULL).lag())
                .contains(
                        "The farthest singers hear 198 ms late, 0.30 of a beat: do not wait for them; keep the beat.");
    }

    @Test
    void a_lag_of_a_twentieth_of_the_beat_is_not_worth_a_sentence() {
        assertThat(touch(VILLAGE, 30, 66, SOFT).lagBeats()).hasValueCloseTo(0.05, within(0.005));
        assertThat(touch(VILLAGE, 30, 66, SOFT).lag()).isEmpty();
    }

    @Test
    void nobody_is_late_where_nobody_sings() {
        assertThat(touch(VILLAGE, 30, 66, SOFT.withKind(VerseKind.INTERLUDE)).lag())
                .isEmpty();
    }
}
