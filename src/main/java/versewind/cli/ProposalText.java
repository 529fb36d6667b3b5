package versewind.cli;

import java.util.List;
import java.util.Locale;
import versewind.organ.Instrument;
import versewind.organ.RegistrationText;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.proposal.Proposal;
import versewind.proposal.RegistrationProposer;
import versewind.proposal.ScorePart;
import versewind.proposal.ServiceProposal;
import versewind.store.OpenPlan;

/** What is proposed, 80 columns wide. */
final class ProposalText {

    private static final int LABEL = 7;
    private static final int WHERE = 12;
    private static final int POINTS = 6;
    private static final double WORTH_A_LINE = 0.05;

    private final Page page;
    private final Plan plan;
    private final Instrument instrument;

    private ProposalText(Page page, Plan plan, Instrument instrument) {
        this.page = page;
        this.plan = plan;
        this.instrument = instrument;
    }

    /** For one verse: all that is proposed, each with its score taken apart. */
    static String of(OpenPlan open, RegistrationProposer.OfVerse found, CharsetFallback lettering) {
        ProposalText text = new ProposalText(new Page(lettering), open.plan(), open.instrument());
        AssessmentText.heading(text.page, open.plan().heading(), open.instrument());
        text.page.blank();
        text.verse(found);
        return text.page.text();
    }

    /** For some hymns: what is proposed for each verse. */
    static String of(OpenPlan open, List<Integer> hymns, ServiceProposal found, CharsetFallback lettering) {
        ProposalText text = new ProposalText(new Page(lettering), open.plan(), open.instrument());
        AssessmentText.heading(text.page, open.plan().heading(), open.instrument());
        hymns.forEach(hymn -> text.hymn(hymn, found));
        text.page.blank();
        text.sum(found);
        return text.page.text();
    }

    private void verse(RegistrationProposer.OfVerse found) {
        Hymn hymn = plan.hymns().get(found.place().hymn());
        Verse verse = hymn.verses().get(found.place().verse());
        page.line(AssessmentText.name(hymn));
        page.line(
                verse.label() + ", " + verse.mode().word() + ", " + verse.mood().word());
        found.none().ifPresent(page::paragraph);
        for (int i = 0; i < found.proposals().size(); i++) {
            Proposal proposal = found.proposals().get(i);
            page.blank();
            page.hanging((i + 1) + "  ", proposal.why());
            drawn("   ", proposal);
            page.line("   " + page.left("score", WHERE)
                    + page.right(points(proposal.score().points()), POINTS) + "  the lower the better");
            proposal.score().parts().stream()
                    .filter(part -> part.points() >= WORTH_A_LINE)
                    .forEach(this::part);
        }
    }

    private void part(ScorePart part) {
        page.hanging(
                "     " + page.left(part.kind().word(), WHERE - 2) + page.right(points(part.points()), POINTS) + "  ",
                part.sentence());
    }

    private static String points(double points) {
        return String.format(Locale.ROOT, "%.2f", points);
    }

    private void drawn(String indent, Proposal proposal) {
        for (RegistrationText.Part part : new RegistrationText(instrument).parts(proposal.registration())) {
            page.hanging(indent + page.left(part.where(), WHERE), part.text());
        }
        page.hanging(indent + page.left("hands", WHERE), EstimateText.hands(instrument, proposal.hands()));
    }

    private void hymn(int index, ServiceProposal found) {
        Hymn hymn = plan.hymns().get(index);
        page.blank();
        page.line(AssessmentText.name(hymn));
        if (hymn.verses().isEmpty()) {
            page.line("no verse yet");
        }
        for (int verse = 0; verse < hymn.verses().size(); verse++) {
            VersePlace place = new VersePlace(index, verse);
            String label = hymn.verses().get(verse).label();
            found.verses().stream()
                    .filter(each -> each.place().equals(place))
                    .findFirst()
                    .ifPresentOrElse(
                            each -> verse(label, each),
                            () -> page.line(page.left(label, LABEL) + "  nothing is proposed"));
        }
    }

    private void verse(String label, ServiceProposal.OfVerse of) {
        String piston = of.piston().isBlank() ? "" : of.piston() + ": ";
        page.hanging(page.left(label, LABEL) + "  ", piston + of.proposal().why());
        drawn(" ".repeat(LABEL + 2), of.proposal());
    }

    private void sum(ServiceProposal found) {
        page.paragraph(String.format(
                Locale.ROOT,
                "Together %.2f points, the lower the better; verse by verse it would be %.2f.",
                found.cost(),
                found.greedyCost()));
        if (found.cost() - found.bound() >= WORTH_A_LINE) {
            page.paragraph(
                    String.format(Locale.ROOT, "No choice of the same candidates has less than %.2f.", found.bound()));
        }
        if (instrument.pistons().generals() > 0) {
            page.paragraph(found.pistons() + " of " + instrument.pistons().generals() + " general pistons are set.");
        }
    }
}
