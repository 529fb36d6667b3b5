package versewind.workshop;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * A draft with all that it was since it was opened, to be undone and redone without limit.
 *
 * @param draft as it is now
 * @param saved as it was last saved
 * @param done the drafts before, the last first
 * @param undone the drafts that were undone, the next first
 */
public record DraftHistory(OrganDraft draft, OrganDraft saved, List<OrganDraft> done, List<OrganDraft> undone) {

    public DraftHistory {
        done = List.copyOf(done);
        undone = List.copyOf(undone);
    }

    /** A draft just opened. */
    public static DraftHistory of(OrganDraft draft) {
        return new DraftHistory(draft, draft, List.of(), List.of());
    }

    /** After a change; what had been undone can no longer be redone. */
    public DraftHistory after(OrganDraft next) {
        return next.equals(draft) ? this : new DraftHistory(next, saved, before(draft, done), List.of());
    }

    /** Without the last change; the same if there is none. */
    public DraftHistory undo() {
        return done.isEmpty()
                ? this
                : new DraftHistory(done.get(0), saved, done.subList(1, done.size()), before(draft, undone));
    }

    /** With the change undone last; the same if there is none. */
    public DraftHistory redo() {
        return undone.isEmpty()
                ? this
                : new DraftHistory(undone.get(0), saved, before(draft, done), undone.subList(1, undone.size()));
    }

    /** Whether it differs from what was last saved. */
    public boolean isUnsaved() {
        return !draft.equals(saved);
    }

    /**
     * After it was saved, as it was written. In all drafts before, every line now comes from the place that it has in what
     * was written.
     */
    public DraftHistory savedAs(OrganDraft written) {
        return new DraftHistory(
                written,
                written,
                done.stream().map(this::moved).toList(),
                undone.stream().map(this::moved).toList());
    }

    private OrganDraft moved(OrganDraft other) {
        return new OrganDraft(other.lines().stream()
                .map(line -> new DraftLine(line.part(), place(line), line.values()))
                .toList());
    }

    private OptionalInt place(DraftLine line) {
        int place = 0;
        for (DraftLine each : draft.lines()) {
            if (each.part() != line.part()) {
                continue;
            }
            if (line.origin().isPresent() && each.origin().equals(line.origin())) {
                return OptionalInt.of(place);
            }
            place++;
        }
        return OptionalInt.empty();
    }

    private static List<OrganDraft> before(OrganDraft first, List<OrganDraft> rest) {
        List<OrganDraft> all = new ArrayList<>();
        all.add(first);
        all.addAll(rest);
        return all;
    }
}
