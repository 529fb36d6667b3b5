package versewind.plan;

import java.util.Optional;

/**
 * A plan with its edits since it was opened, for unlimited undo and redo.
 *
 * @param plan the current plan
 * @param saved the plan as last saved, if it was
 * @param done edits that can be undone, the last first
 * @param undone edits that can be redone, the next first
 */
public record History(Plan plan, Optional<Plan> saved, Trail done, Trail undone) {

    /** A list of edits that shares its tail with the lists it came from. */
    public sealed interface Trail {
        /** No edits. */
        record End() implements Trail {}

        /** An edit, what takes it back, and the edits before it. */
        record Link(Edit edit, Edit inverse, Trail rest) implements Trail {}
    }

    private static final Trail END = new Trail.End();

    /** A plan just opened. */
    public static History of(Plan plan) {
        return new History(plan, Optional.of(plan), END, END);
    }

    /** A plan that was never saved. */
    public static History ofUnsaved(Plan plan) {
        return new History(plan, Optional.empty(), END, END);
    }

    /** After an edit; nothing can be redone any more. */
    public History after(Edit edit) {
        Plan next = edit.apply(plan);
        if (next.equals(plan)) {
            return this;
        }
        return new History(next, saved, new Trail.Link(edit, edit.inverse(plan), done), END);
    }

    /** The last edit, if there is one to undo. */
    public Optional<Edit> toUndo() {
        return done instanceof Trail.Link link ? Optional.of(link.inverse()) : Optional.empty();
    }

    /** The edit undone last, if there is one to redo. */
    public Optional<Edit> toRedo() {
        return undone instanceof Trail.Link link ? Optional.of(link.edit()) : Optional.empty();
    }

    /** Without the last edit; the same if there is none. */
    public History undo() {
        if (!(done instanceof Trail.Link link)) {
            return this;
        }
        Plan before = link.inverse().apply(plan);
        return new History(before, saved, link.rest(), new Trail.Link(link.edit(), link.inverse(), undone));
    }

    /** With the edit undone last; the same if there is none. */
    public History redo() {
        if (!(undone instanceof Trail.Link link)) {
            return this;
        }
        Plan again = link.edit().apply(plan);
        return new History(again, saved, new Trail.Link(link.edit(), link.inverse(), done), link.rest());
    }

    /** With this plan as the one last saved. */
    public History savedAs(Plan written) {
        return new History(plan, Optional.of(written), done, undone);
    }

    /** True if the plan differs from what was last saved, or was never saved. */
    public boolean isUnsaved() {
        return !Optional.of(plan).equals(saved);
    }
}
