package versewind.cli;

import java.util.List;
import java.util.Locale;
import versewind.plan.Hymn;
import versewind.plan.Verse;
import versewind.proposal.Proposal;
import versewind.proposal.RegistrationProposer;
import versewind.proposal.ScorePart;
import versewind.store.OpenPlan;

/** The proposals for one verse, the best first, each with its reasons. */
record VerseProposalReport(OpenPlan open, RegistrationProposer.OfVerse found) implements Report {

    private static final int[] SCORE = {12, -6};
    private static final int[] PART = {10, -6};
    private static final double WORTH_A_LINE = 0.05;

    @Override
    public void print(Page page) {
        Hymn hymn = open.plan().hymns().get(found.place().hymn());
        Verse verse = hymn.verses().get(found.place().verse());
        page.heading(open.plan().heading(), open.instrument());
        page.hymn(hymn);
        page.line(
                verse.label() + ", " + verse.mode().word() + ", " + verse.mood().word());
        found.none().ifPresent(page::paragraph);
        for (int i = 0; i < found.proposals().size(); i++) {
            page.blank();
            proposal(page, i + 1, found.proposals().get(i));
        }
    }

    private void proposal(Page page, int number, Proposal proposal) {
        page.hanging(number + "  ", proposal.why());
        ServiceProposalReport.drawn(page, "   ", open.instrument(), proposal);
        page.line("   " + page.cells("", SCORE, "score", points(proposal.score().points())) + "  lower is better");
        proposal.score().parts().stream()
                .filter(part -> part.points() >= WORTH_A_LINE)
                .forEach(part -> part(page, part));
    }

    private static void part(Page page, ScorePart part) {
        page.hanging("     " + page.cells("", PART, part.kind().word(), points(part.points())) + "  ", part.sentence());
    }

    private static String points(double points) {
        return String.format(Locale.ROOT, "%.2f", points);
    }

    @Override
    public Json json() {
        Json verse = ServiceProposalReport.verse(open.plan(), found.place())
                .list(
                        "proposals",
                        found.proposals(),
                        proposal -> ServiceProposalReport.proposal(open.instrument(), proposal, ""))
                .putIfPresent("none", found.none());
        Json hymn =
                ServiceProposalReport.hymn(open.plan(), found.place().hymn()).put("verses", List.of(verse));
        return ServiceProposalReport.heading(open.plan()).put("hymns", List.of(hymn));
    }
}
