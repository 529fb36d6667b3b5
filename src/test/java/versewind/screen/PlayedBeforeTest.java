package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import versewind.Shipped;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.screen.library.LibraryEvent;
import versewind.screen.state.Chooser;
import versewind.screen.state.Effect;
import versewind.store.OpenPlan;

/** What was done with a hymn or its tune before, offered for a new one. */
class PlayedBeforeTest {

    private final OpenPlan earlier = Shipped.plan("harvest-festival");
    private final Hymn corvening = earlier.plan().hymns().get(0);
    private final Desk desk = Desk.blank().press("I", "'31'", "<Tab>", "<Tab>", "'corvening'", "<Enter>");

    private LibraryEvent.HymnsFound found(Effect.Telling telling) {
        return new LibraryEvent.HymnsFound(
                desk.hymn(),
                List.of(new Chooser.Row("harvest-festival\n0", "Harvest Festival", "St Tethwin")),
                telling);
    }

    @Test
    void a_new_hymn_is_told_where_its_tune_was_played() {
        assertThat(corvening.isLike(desk.hymn())).isTrue();
        assertThat(desk.answer(found(Effect.Telling.IN_A_SENTENCE)).said())
                .isEqualTo("corvening is also in Harvest Festival. B shows it, to draw the same.");
    }

    @Test
    void what_was_drawn_is_taken_and_what_was_typed_stays() {
        Plan before = desk.plan();
        desk.press("B").effects();
        desk.answer(found(Effect.Telling.LISTED)).press("<Enter>");
        assertThat(desk.effects()).contains(Wanted.of("bringHymn", "harvest-festival", 0, Effect.Bringing.VERSES));
        desk.answer(new LibraryEvent.HymnBrought(corvening, earlier.instrument(), Effect.Bringing.VERSES));

        long sung = corvening.verses().stream().filter(Verse::isSung).count();
        long was = before.hymns().get(0).verses().stream().filter(Verse::isSung).count();
        assertThat(desk.said()).isEqualTo("Copied, with its " + sung + " verses in place of " + was + "; u to undo.");
        assertThat(desk.hymn().number()).isEqualTo("31");
        assertThat(desk.hymn().title()).isEqualTo("Hymn 31");
        assertThat(desk.hymn().key()).isEqualTo(corvening.key());
        assertThat(desk.hymn().verses())
                .extracting(Verse::registration)
                .isEqualTo(corvening.verses().stream().map(Verse::registration).toList());
        assertThat(desk.press("u").plan()).isEqualTo(before);
    }

    @Test
    void a_hymn_that_is_no_longer_current_is_not_told_of() {
        LibraryEvent.HymnsFound late = found(Effect.Telling.LISTED);
        assertThat(desk.press("u").answer(late).said()).startsWith("Undid");
    }
}
