package versewind.cli;

import java.util.List;
import versewind.plan.Hymn;
import versewind.plan.Verse;
import versewind.proposal.Proposal;
import versewind.proposal.RegistrationProposer;
import versewind.store.OpenPlan;

/** The proposals for one verse, the best first, each with its reasons. */
record VerseProposalReport(OpenPlan open, RegistrationProposer.OfVerse found) implements Report {

    @Override
    public void print(Page page) {
        Hymn hymn = open.plan().hymn(found.place());
        Verse verse = hymn.verses().get(found.place().verse());
        page.heading(open.plan().heading(), open.instrument());
        page.hymn(hymn);
        page.line(verse.label() + ", " + verse.sungBy().word() + ", "
                + verse.mood().word());
        found.none(open.plan()).ifPresent(page::paragraph);
        for (int i = 0; i < found.proposals().size(); i++) {
            page.blank();
            proposal(page, i + 1, found.proposals().get(i));
        }
    }

    private void proposal(Page page, int number, Proposal proposal) {
        page.hanging(number + "  ", proposal.why());
        if (!proposal.unlike().isEmpty()) {
            page.hanging("   ", "Compared with no. " + best() + ": " + proposal.unlike() + ".");
        }
        ServiceProposalReport.drawn(page, "   ", open.organ().sound(), proposal);
        proposal.furtherRemarks().forEach(remark -> page.hanging("   - ", remark));
    }

    /** The number of the best proposal: the first, or the second after what is usual. */
    private long best() {
        return found.proposals().stream()
                .filter(each -> each.unlike().isEmpty())
                .count();
    }

    @Override
    public Json json() {
        Json verse = ServiceProposalReport.verse(open.plan(), found.place())
                .list(
                        "proposals",
                        found.proposals(),
                        proposal -> ServiceProposalReport.proposal(open.instrument(), proposal, ""))
                .putIfPresent("none", found.none(open.plan()));
        Json hymn =
                ServiceProposalReport.hymn(open.plan(), found.place().hymn()).put("verses", List.of(verse));
        return ServiceProposalReport.heading(open.plan()).put("hymns", List.of(hymn));
    }
}
