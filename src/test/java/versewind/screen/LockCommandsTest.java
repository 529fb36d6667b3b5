package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import versewind.Shipped;
import versewind.organ.IndexSet;
import versewind.plan.Locks;
import versewind.plan.Mood;
import versewind.screen.library.LibraryEvent;
import versewind.screen.state.Effect;

/** Stops locked in and out, and the mood of a verse. */
class LockCommandsTest {

    private final Desk desk = Desk.with("harvest-festival", 80, 24).press("<Home>");

    @Test
    void one_key_locks_a_stop_as_it_is_then_the_other_way_then_sets_it_free() {
        assertThat(desk.press("v").verse().locks()).isEqualTo(new Locks(IndexSet.EMPTY, IndexSet.of(0)));
        assertThat(desk.said()).isEqualTo("Proposals never draw Great: Bourdon 16.");
        assertThat(desk.press("v").verse().locks()).isEqualTo(new Locks(IndexSet.of(0), IndexSet.EMPTY));
        assertThat(desk.said()).isEqualTo("Proposals always draw Great: Bourdon 16.");
        assertThat(desk.press("v").verse().locks()).isEqualTo(Locks.NONE);

        desk.press("<Down>");
        assertThat(desk.press("v").verse().locks()).isEqualTo(new Locks(IndexSet.of(1), IndexSet.EMPTY));
        assertThat(desk.press("v").verse().locks()).isEqualTo(new Locks(IndexSet.EMPTY, IndexSet.of(1)));
        assertThat(desk.press("v").verse().locks()).isEqualTo(Locks.NONE);
    }

    @Test
    void a_lock_is_seen_before_the_name() {
        assertThat(desk.press("v").screen()).contains("·×Bourdon");
        assertThat(desk.press("v").screen()).contains("·!Bourdon");
    }

    @Test
    void a_stop_can_be_locked_throughout_the_service_and_that_be_taken_back() {
        var before = desk.plan();
        desk.press("v", "V", "<Enter>");
        assertThat(desk.plan().hymns()).allSatisfy(hymn -> assertThat(hymn.verses())
                .allSatisfy(verse -> assertThat(verse.locks().never()).isEqualTo(IndexSet.of(0))));
        assertThat(desk.press("u", "u").plan()).isEqualTo(before);
    }

    @Test
    void what_is_locked_throughout_is_locked_in_new_verses_and_hymns() {
        desk.press("v", "V", "<Enter>", "/", "'trumpet'", "<Enter>", "v", "i");
        assertThat(desk.verse().locks()).isEqualTo(new Locks(IndexSet.EMPTY, IndexSet.of(0)));
        desk.press("I", "<Tab>", "'Fields of barley'", "<Enter>");
        assertThat(desk.hymn().verses()).hasSize(5).allSatisfy(verse -> assertThat(verse.locks())
                .isEqualTo(new Locks(IndexSet.EMPTY, IndexSet.of(0))));
    }

    @Test
    void what_is_locked_throughout_is_locked_in_a_hymn_brought_over() {
        desk.press("v", "V", "<Enter>")
                .answer(new LibraryEvent.HymnBrought(
                        Shipped.plan("harvest-festival")
                                .plan()
                                .hymns()
                                .get(1)
                                .locking(new Locks(IndexSet.of(0, 1), IndexSet.EMPTY)),
                        desk.work().instrument(),
                        Effect.Bringing.NEW_HYMN));
        assertThat(desk.work().place().hymn()).isEqualTo(1);
        assertThat(desk.hymn().verses())
                .allSatisfy(verse -> assertThat(verse.locks()).isEqualTo(new Locks(IndexSet.of(1), IndexSet.of(0))));
    }

    @Test
    void a_coupler_cannot_be_locked() {
        assertThat(desk.press("<End>", "v").verse().locks()).isEqualTo(Locks.NONE);
        assertThat(desk.said()).isEqualTo("Only stops can be locked.");
    }

    @Test
    void hands_feet_and_swell_boxes_are_kept_and_freed_by_one_key() {
        assertThat(desk.press("H").verse().locks().kept()).isEqualTo(Locks.Kept.HANDS_AND_FEET);
        assertThat(desk.said()).isEqualTo("Proposals keep hands and feet in Intro: four parts on Great.");
        assertThat(desk.press("H").verse().locks().kept()).isEqualTo(Locks.Kept.HANDS_FEET_AND_BOXES);
        assertThat(desk.said()).isEqualTo("Proposals keep hands, feet and swell boxes in Intro: four parts on Great.");
        assertThat(desk.press("H").verse().locks().kept()).isEqualTo(Locks.Kept.BOXES);
        assertThat(desk.said()).isEqualTo("Proposals keep swell boxes in Intro.");
        assertThat(desk.press("H").verse().locks()).isEqualTo(Locks.NONE);
        assertThat(desk.said()).isEqualTo("Proposals may change hands, feet and swell boxes in Intro.");
    }

    @Test
    void one_key_goes_through_the_moods() {
        assertThat(desk.press("g").verse().mood()).isEqualTo(Mood.BRIGHT);
        assertThat(desk.press("g").verse().mood()).isEqualTo(Mood.FESTAL);
        assertThat(desk.said()).isEqualTo("Intro is to sound festal. E sets the whole hymn.");
        assertThat(desk.press("g").verse().mood()).isEqualTo(Mood.GENTLE);
        assertThat(desk.press("g").verse().mood()).isEqualTo(Mood.PLAIN);
    }
}
