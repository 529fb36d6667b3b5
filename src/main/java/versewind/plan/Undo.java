package versewind.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * An immutable value with all that it was since it was opened, to be undone and redone without limit.
 *
 * @param now the value as it is
 * @param saved as it was last saved, if it ever was
 * @param past the values before, the last first
 * @param future the values that were undone, the next first
 */
public record Undo<T>(T now, Optional<T> saved, List<T> past, List<T> future) {

    public Undo {
        past = List.copyOf(past);
        future = List.copyOf(future);
    }

    /** A value just opened. */
    public static <T> Undo<T> of(T opened) {
        return new Undo<>(opened, Optional.of(opened), List.of(), List.of());
    }

    /** A value that was never saved. */
    public static <T> Undo<T> ofUnsaved(T made) {
        return new Undo<>(made, Optional.empty(), List.of(), List.of());
    }

    /** After a change; what had been undone can no longer be redone. */
    public Undo<T> to(T next) {
        return next.equals(now) ? this : new Undo<>(next, saved, before(now, past), List.of());
    }

    /** Without the last change; the same if there is none. */
    public Undo<T> undo() {
        return past.isEmpty()
                ? this
                : new Undo<>(past.get(0), saved, past.subList(1, past.size()), before(now, future));
    }

    /** With the change undone last; the same if there is none. */
    public Undo<T> redo() {
        return future.isEmpty()
                ? this
                : new Undo<>(future.get(0), saved, before(now, past), future.subList(1, future.size()));
    }

    /** As it was before the last change; empty if there is none. */
    public Optional<T> before() {
        return past.stream().findFirst();
    }

    /** As it was before the last undoing; empty if nothing was undone. */
    public Optional<T> after() {
        return future.stream().findFirst();
    }

    /** After it was saved as it is. */
    public Undo<T> savedAs(T written) {
        return new Undo<>(now, Optional.of(written), past, future);
    }

    /** Whether the value differs from what was last saved, or never was. */
    public boolean isUnsaved() {
        return !Optional.of(now).equals(saved);
    }

    /**
     * After it was saved.
     *
     * @param written the value as it was written
     * @param other what becomes of the values before and of those that were undone
     */
    public Undo<T> savedAs(T written, UnaryOperator<T> other) {
        return new Undo<>(
                written,
                Optional.of(written),
                past.stream().map(other).toList(),
                future.stream().map(other).toList());
    }

    /** The same steps of other values. */
    public <R> Undo<R> map(Function<? super T, ? extends R> change) {
        Function<T, R> each = change::apply;
        return new Undo<>(
                each.apply(now),
                saved.map(each),
                past.stream().map(each).toList(),
                future.stream().map(each).toList());
    }

    private static <T> List<T> before(T first, List<T> rest) {
        List<T> all = new ArrayList<>(rest.size() + 1);
        all.add(first);
        all.addAll(rest);
        return all;
    }
}
