package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Supplier;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.plan.Plan;
import versewind.screen.plan.StopGridLayout;
import versewind.screen.state.Event;
import versewind.screen.state.PlanEdit;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Key;
import versewind.screen.toolkit.Letters;
import versewind.screen.toolkit.Text;

/**
 * A cat on the keyboard: whatever is pressed and however the window is pulled, everything still holds, and can be
 * undone to the start. {@code -Dkeys.count=100000} presses so many.
 */
@Tag("slow")
class MashingTest {

    private static final int KEYS = Integer.getInteger("keys.count", 20_000) / 7;
    private static final List<String> PASTES = List.of(
            "",
            "one\ntwo\r\n",
            "\u001B[31m\u0000",
            "赞美诗",
            "\uD83C\uDFB9\uD83C\uDFB9",
            "e\u0301",
            "\uD800",
            "480",
            "2026-10-04",
            "x".repeat(3000));
    private static final int[] CHARACTERS =
            "aeiolsK 089+-<>[]{}.,/?#=éß赞\u0301\u202E\uD83C\uDFB9".codePoints().toArray();

    /** Columns of the characters that stood in cells so far, 0 for those that should not. */
    private static final Map<Integer, Integer> CELLS = new HashMap<>();

    private final Random random = new Random(20_000);

    @ParameterizedTest
    @CsvSource({
        "harvest-festival,80,24,USUAL",
        "easter-cathedral,60,18,USUAL",
        "easter-cathedral,60,18,SPOKEN",
        "wedding,200,60,USUAL",
        "ash-wednesday,120,40,USUAL",
        "advent-candlelight,80,24,USUAL",
        "advent-candlelight,80,24,SPOKEN"
    })
    void twenty_thousand_keys_in_all_break_nothing_and_are_undone_to_the_start(
            String plan, int columns, int rows, Letters letters) {
        Desk desk = Desk.with(plan, columns, rows).lettered(letters);
        Clerk clerk = Clerk.at(desk);
        Plan start = desk.plan();
        for (int i = 0; i < KEYS; i++) {
            Event input = input();
            desk.answer(input);
            clerk.saving(Clerk.Saving.values()[random.nextInt(3)]).serve();
            check(desk, () -> plan + ", " + input);
            start = desk.work().history().past().isEmpty() ? desk.plan() : start;
        }
        undoAll(desk, clerk);
        assertThat(desk.plan()).isEqualTo(start);
    }

    /** Leaves whatever is open on top of the plan, and undoes one edit after the other. */
    private static void undoAll(Desk desk, Clerk clerk) {
        desk.answer(new Event.Resize(80, 24));
        clerk.saving(Clerk.Saving.WRITTEN);
        for (int edits = desk.work().history().past().size(); edits > 0; edits--) {
            for (int tries = 0; desk.work().history().past().size() == edits; tries++) {
                assertThat(tries).as(desk.characters()).isLessThan(20);
                clerk.press("u");
                if (desk.work().history().past().size() == edits) {
                    clerk.press("<Esc>");
                }
            }
            assertThat(desk.work().history().past()).hasSize(edits - 1);
        }
    }

    private Event input() {
        int lot = random.nextInt(100);
        if (lot < 4) {
            return new Event.Resize(random.nextInt(180), random.nextInt(60));
        }
        if (lot < 8) {
            return new Event.Resize(60 + random.nextInt(100), 18 + random.nextInt(40));
        }
        return lot < 12 ? new Event.Paste(PASTES.get(random.nextInt(PASTES.size()))) : new Event.Press(key());
    }

    private Key key() {
        int lot = random.nextInt(100);
        if (lot < 35) {
            Key.Named[] named = Key.Named.values();
            return Key.of(named[1 + random.nextInt(named.length - 1)]);
        }
        if (lot < 45) {
            return Key.control((char) ('a' + random.nextInt(26)));
        }
        return lot < 75
                ? Key.of(' ' + random.nextInt('~' - ' ' + 1))
                : Key.of(CHARACTERS[random.nextInt(CHARACTERS.length)]);
    }

    private static void check(Desk desk, Supplier<String> after) {
        PlanEdit work = desk.work();
        Plan plan = work.plan();
        assertThat(plan.fits(work.instrument())).as(after).isTrue();
        assertThat(work.place().within(plan)).as(after).isEqualTo(work.place());
        assertThat(work.item())
                .as(after)
                .isBetween(0, StopGridLayout.items(work.instrument()).size() - 1);
        if (work.history().before().isPresent()) {
            assertThat(work.history().undo().redo().now()).as(after).isEqualTo(plan);
        }
        checkFrame(desk.frame(), after);
    }

    private static void checkFrame(Frame frame, Supplier<String> after) {
        for (int y = 0; y < frame.height(); y++) {
            for (int x = 0; x < frame.width(); x++) {
                boolean isFollowed = x + 1 < frame.width() && frame.character(x + 1, y) == Frame.SECOND_HALF;
                if (!fits(frame.character(x, y), isFollowed)) {
                    throw new AssertionError("column " + x + " of row " + y + " after " + after.get());
                }
            }
        }
    }

    /** Whether a cell holds something harmless, and a second half follows wide characters only. */
    private static boolean fits(int point, boolean isFollowedByHalf) {
        if (point == Frame.SECOND_HALF || (point >= ' ' && point <= '~')) {
            return !isFollowedByHalf;
        }
        return CELLS.computeIfAbsent(point, MashingTest::columnsIfHarmless) == (isFollowedByHalf ? 2 : 1);
    }

    private static int columnsIfHarmless(int point) {
        String text = Character.toString(point);
        return Text.clean(text).equals(text) ? Text.columns(text) : 0;
    }
}
