package versewind.screen.state;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import versewind.screen.toolkit.Letters;
import versewind.screen.toolkit.Marks;
import versewind.screen.toolkit.Notice;

/**
 * Everything the editor knows at one moment.
 *
 * @param columns width of the terminal in cells
 * @param rows height of the terminal in cells
 * @param marks the marks it is drawn with
 * @param letters how large the letters of stops and verses are to be
 * @param today the day, for new plans
 * @param doors to the screens of other packages
 * @param work the plan being worked on, if one is open
 * @param screens the plan, then what lies over it; the last has the keys
 * @param notice what was last said
 * @param wanted what is to be done outside, in this order
 */
public record State(
        int columns,
        int rows,
        Marks marks,
        Letters letters,
        LocalDate today,
        Doors doors,
        Optional<PlanEdit> work,
        List<Screen> screens,
        Notice notice,
        List<Effect> wanted) {

    /** The smallest screen with large letters. */
    private static final Screen.Size LEAST_LARGE = new Screen.Size(120, 36);

    public State {
        screens = List.copyOf(screens);
        wanted = List.copyOf(wanted);
    }

    /** An editor with nothing open yet. */
    public static State empty(int columns, int rows, Marks marks, LocalDate today, Doors doors) {
        return new State(
                columns,
                rows,
                marks,
                Letters.USUAL,
                today,
                doors,
                Optional.empty(),
                List.of(doors.ground()),
                Notice.NONE,
                List.of());
    }

    /** The screen that has the keys. */
    public Screen top() {
        return screens.get(screens.size() - 1);
    }

    /** The ground on which the top screen lies, or the top screen if it is one. */
    public Screen ground() {
        int at = screens.size() - 1;
        while (screens.get(at).layer() != Screen.Layer.GROUND) {
            at--;
        }
        return screens.get(at);
    }

    /** The topmost screen of a kind, if there is one. */
    public <S extends Screen> Optional<S> find(Class<S> kind) {
        return screens.stream().filter(kind::isInstance).map(kind::cast).reduce((lower, upper) -> upper);
    }

    /** With a screen over all others. */
    public State open(Screen screen) {
        List<Screen> more = new ArrayList<>(screens);
        more.add(screen);
        return with(more);
    }

    /** With another screen in the place of the top one. */
    public State show(Screen screen) {
        List<Screen> others = new ArrayList<>(screens);
        others.set(screens.size() - 1, screen);
        return with(others);
    }

    /** With the topmost screen of a kind changed, wherever it lies; the same where there is none. */
    public <S extends Screen> State update(Class<S> kind, UnaryOperator<S> change) {
        return with(screens.stream()
                .map(screen -> kind.isInstance(screen) ? change.apply(kind.cast(screen)) : screen)
                .toList());
    }

    /** Without the top screen. */
    public State close() {
        return with(screens.subList(0, Math.max(1, screens.size() - 1)));
    }

    /** With nothing over the plan. */
    public State closed() {
        return with(screens.subList(0, 1));
    }

    private State with(List<? extends Screen> others) {
        return new State(columns, rows, marks, letters, today, doors, work, List.copyOf(others), notice, wanted);
    }

    public State with(PlanEdit other) {
        return new State(columns, rows, marks, letters, today, doors, Optional.of(other), screens, notice, wanted);
    }

    public State with(Notice other) {
        return new State(columns, rows, marks, letters, today, doors, work, screens, other, wanted);
    }

    public State sized(int otherColumns, int otherRows) {
        return new State(otherColumns, otherRows, marks, letters, today, doors, work, screens, notice, wanted);
    }

    /** With letters of a size for stops and verses; says why they are not seen, if they are not. */
    public State lettered(Letters size) {
        Marks fitting = size == Letters.SPOKEN ? Marks.WORDS : marks;
        State next = new State(columns, rows, fitting, size, today, doors, work, screens, notice, wanted);
        if (size != Letters.LARGE || next.isLarge()) {
            return next;
        }
        return next.says(
                marks == Marks.ASCII
                        ? "Large letters need a terminal with UTF-8."
                        : "Large letters come where there are " + LEAST_LARGE.columns() + " columns and "
                                + LEAST_LARGE.rows() + " rows; here are " + columns + " by " + rows + ".");
    }

    /** With large letters for the usual ones, or the other way about; not where everything is spoken. */
    public State withOtherLetters() {
        return isSpoken() ? says("There are no large letters where everything is spoken.") : lettered(letters.other());
    }

    /** Whether stops and verses are written in large letters: that is wanted, and there is room. */
    public boolean isLarge() {
        return letters == Letters.LARGE && marks == Marks.UNICODE && LEAST_LARGE.fits(this);
    }

    /** Whether all is in words, to be read aloud. */
    public boolean isSpoken() {
        return letters == Letters.SPOKEN;
    }

    /** With a sentence said. */
    public State says(String sentence) {
        return with(Notice.says(sentence));
    }

    /** With something said that did not work. */
    public State warns(String sentence) {
        return with(Notice.warns(sentence));
    }

    /** With something more to be done outside. */
    public State wants(Effect effect) {
        return wants(List.of(effect));
    }

    /** With more to be done outside. */
    public State wants(List<Effect> effects) {
        List<Effect> more = new ArrayList<>(wanted);
        more.addAll(effects);
        return new State(columns, rows, marks, letters, today, doors, work, screens, notice, more);
    }

    public State wantingNothing() {
        return new State(columns, rows, marks, letters, today, doors, work, screens, notice, List.of());
    }

    /** What is done with the plan that is open; a sentence where none is. */
    public State onWork(Function<PlanEdit, State> action) {
        return work.map(action).orElseGet(() -> says("No plan is open. Press o to open one."));
    }

    /** Whether there is something that would be lost. */
    public boolean isUnsaved() {
        return work.map(open -> open.history().isUnsaved()).orElse(false)
                || screens.stream().anyMatch(Screen::isUnsaved);
    }

    /** Whether the terminal is too small for what is to be on it. */
    public boolean isTooSmall() {
        return !ground().least().fits(this);
    }

    /** After something else was written into the file of the ground; empty where that is no file's. */
    public Optional<State> withFileWritten() {
        return ground().withFileWritten()
                .map(written -> with(screens.stream()
                        .map(each -> each == ground() ? written : each)
                        .toList()));
    }
}
