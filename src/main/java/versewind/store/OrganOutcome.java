package versewind.store;

import java.util.List;

/**
 * The outcome of saving a changed instrument and its plans.
 *
 * @param saved what became of its file
 * @param open the instrument as its file has it now
 * @param rewritten ids of the plans that were written with the new names
 * @param missing the plans that draw what is gone, each with what that is; their files are as they were
 * @param forgotten what was kept of the organ and draws what is gone: usual registrations by name, answers, readings
 * @param troubles the plans that could not be brought up to date, each with the reason; they open all the same
 * @param left how many plans were not looked at, since it was stopped; they open all the same
 */
public record OrganOutcome(
        SaveOutcome saved,
        OpenOrgan open,
        List<String> rewritten,
        List<String> missing,
        List<String> forgotten,
        List<String> troubles,
        int left) {

    public OrganOutcome {
        rewritten = List.copyOf(rewritten);
        missing = List.copyOf(missing);
        forgotten = List.copyOf(forgotten);
        troubles = List.copyOf(troubles);
    }

    /** Where the organ's file was not written. */
    static OrganOutcome unsaved(SaveOutcome saved, OpenOrgan open) {
        return new OrganOutcome(saved, open, List.of(), List.of(), List.of(), List.of(), 0);
    }
}
