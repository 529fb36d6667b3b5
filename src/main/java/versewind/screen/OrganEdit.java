package versewind.screen;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import versewind.organ.Instrument;
import versewind.workshop.Change;
import versewind.workshop.DraftHistory;
import versewind.workshop.DraftLine;
import versewind.workshop.OrganDraft;
import versewind.workshop.Problem;

/**
 * An organ that is being changed.
 *
 * @param id name of its file without the ending
 * @param organ as it lies saved
 * @param history its draft
 * @param at index of the line where we are
 * @param freshness whether its file is still the one that was opened
 */
record OrganEdit(String id, Instrument organ, DraftHistory history, int at, Freshness freshness) {

    /** Whether the organ was written since it was opened, so that a plan that is open has to be read again. */
    enum Freshness {
        AS_OPENED,
        WRITTEN
    }

    static OrganEdit of(String id, Instrument organ) {
        return new OrganEdit(id, organ, DraftHistory.of(OrganDraft.of(organ)), 0, Freshness.AS_OPENED);
    }

    OrganDraft draft() {
        return history.draft();
    }

    DraftLine line() {
        return draft().lines().get(at);
    }

    OrganEdit at(int line) {
        int last = draft().lines().size() - 1;
        return new OrganEdit(id, organ, history, Math.max(0, Math.min(line, last)), freshness);
    }

    OrganEdit with(DraftHistory other) {
        return new OrganEdit(id, organ, other, at, freshness).at(at);
    }

    /** After it was written. */
    OrganEdit savedAs(Instrument written) {
        return new OrganEdit(id, written, history.savedAs(OrganDraft.of(written)), at, Freshness.WRITTEN);
    }

    /** What is wrong with the draft, and what would have plans take one thing for another. */
    List<Problem> problems() {
        return problems(organ, draft());
    }

    static List<Problem> problems(Instrument organ, OrganDraft draft) {
        List<Problem> all = new ArrayList<>(draft.problems());
        all.addAll(Change.of(organ, draft).problems());
        all.sort(Comparator.comparingInt(Problem::line));
        return all;
    }
}
