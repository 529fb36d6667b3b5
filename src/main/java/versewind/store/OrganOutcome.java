package versewind.store;

import java.util.List;

/**
 * The outcome of saving a changed instrument and its plans.
 *
 * @param saved what became of its file
 * @param open the instrument as its file has it now
 * @param rewritten ids of the plans that were written with the new names
 * @param missing the plans that draw what is gone, each with what that is; their files are as they were
 * @param troubles the plans that could not be brought up to date, each with the reason; they open all the same
 */
public record OrganOutcome(
        SaveOutcome saved, OpenOrgan open, List<String> rewritten, List<String> missing, List<String> troubles) {

    public OrganOutcome {
        rewritten = List.copyOf(rewritten);
        missing = List.copyOf(missing);
        troubles = List.copyOf(troubles);
    }
}
