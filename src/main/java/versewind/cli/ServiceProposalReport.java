package versewind.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import versewind.organ.Instrument;
import versewind.organ.Pistons;
import versewind.organ.Pressed;
import versewind.organ.RegistrationText;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.VersePlace;
import versewind.proposal.Proposal;
import versewind.proposal.ScorePart;
import versewind.proposal.ServiceProposal;
import versewind.sheet.DivisionLine;
import versewind.sheet.Wording;
import versewind.sound.OrganSound;
import versewind.store.OpenPlan;

/** The proposals for every verse of some hymns. */
record ServiceProposalReport(OpenPlan open, List<Integer> hymns, ServiceProposal found) implements Report {

    private static final int LABEL = 7;
    private static final int WHERE = 12;

    @Override
    public void print(Page page) {
        page.heading(open.plan().heading(), open.instrument());
        for (int hymn : hymns) {
            page.hymn(open.plan().hymns().get(hymn));
            open.plan().places(hymn).forEach(place -> verse(page, place));
        }
        Pistons pistons = open.instrument().pistons();
        if (pistons.any()) {
            page.blank();
            int divisionals = pistons.divisionals().values().stream()
                    .mapToInt(each -> each)
                    .sum();
            page.paragraph(pressed() + " of "
                    + (pistons.generals() > 0 ? pistons.generals() + " general" : divisionals + " divisional")
                    + " pistons are used.");
        }
    }

    private long pressed() {
        return found.verses().stream()
                .flatMap(verse -> Pressed.of(open.instrument(), verse.piston()).pistons().stream())
                .distinct()
                .count();
    }

    private Optional<ServiceProposal.OfVerse> at(VersePlace place) {
        return found.verses().stream()
                .filter(each -> each.place().equals(place))
                .findFirst();
    }

    private void verse(Page page, VersePlace place) {
        String head = page.left(open.plan().verse(place).label(), LABEL) + "  ";
        Optional<ServiceProposal.OfVerse> of = at(place);
        if (of.isEmpty()) {
            page.line(head + "no proposal");
            return;
        }
        String piston = of.get().piston().isBlank() ? "" : of.get().piston() + ": ";
        page.hanging(head, piston + of.get().proposal().why());
        drawn(page, " ".repeat(LABEL + 2), open.organ().sound(), of.get().proposal());
    }

    /** What is drawn, and where the hands play. */
    static void drawn(Page page, String indent, OrganSound sound, Proposal proposal) {
        Instrument instrument = sound.organ();
        for (RegistrationText.Part part : new RegistrationText(instrument).parts(proposal.registration())) {
            page.hanging(indent + page.left(part.where(), WHERE), part.text());
        }
        String waiting = DivisionLine.of(
                        instrument, proposal.registration(), sound.sounding(proposal.registration(), proposal.hands()))
                .stream()
                .filter(DivisionLine::waits)
                .map(DivisionLine::where)
                .collect(Collectors.joining(", "));
        if (!waiting.isEmpty()) {
            page.hanging(indent + page.left("not heard", WHERE), waiting);
        }
        page.hanging(indent + page.left("hands", WHERE), Wording.hands(instrument, proposal.hands()));
    }

    @Override
    public Json json() {
        return heading(open.plan())
                .put("cost", found.cost(), 3)
                .put("bound", found.bound(), 3)
                .put("greedyCost", found.greedyCost(), 3)
                .put("pistons", found.pistons())
                .put("unsearched", found.unsearched())
                .list("hymns", hymns, hymn -> hymn(open.plan(), hymn)
                        .list("verses", open.plan().places(hymn), this::verse));
    }

    private Json verse(VersePlace place) {
        return verse(open.plan(), place)
                .list(
                        "proposals",
                        at(place).stream().toList(),
                        each -> proposal(open.instrument(), each.proposal(), each.piston()));
    }

    static Json heading(Plan plan) {
        return new Json()
                .put("plan", plan.heading().title())
                .put("instrument", plan.instrument())
                .put("people", plan.heading().people());
    }

    static Json hymn(Plan plan, int index) {
        Hymn hymn = plan.hymns().get(index);
        return new Json().put("place", index + 1).put("number", hymn.number()).put("title", hymn.title());
    }

    static Json verse(Plan plan, VersePlace place) {
        return new Json()
                .put("place", place.verse() + 1)
                .with(ReportFields.verse(plan.verse(place)))
                .put("mood", plan.verse(place).mood().word());
    }

    static Json proposal(Instrument organ, Proposal proposal, String piston) {
        return new Json()
                .list("draw", proposal.registration().stops().stream().boxed().toList(), stop -> new Json()
                        .put("division", organ.stops().get(stop).name().division())
                        .put("stop", organ.stops().get(stop).name().label()))
                .put("couplers", ReportFields.couplers(organ, proposal.registration()))
                .put("box", ReportFields.boxes(organ, proposal.registration()))
                .with(ReportFields.hands(organ, proposal.hands()))
                .putIfPresent("piston", Optional.of(piston).filter(each -> !each.isBlank()))
                .put("score", proposal.score().points(), 3)
                .list("parts", proposal.score().parts(), ServiceProposalReport::part)
                .put("sound", proposal.sound())
                .putIfPresent("unlike", Optional.of(proposal.unlike()).filter(each -> !each.isBlank()))
                .put("why", proposal.why());
    }

    private static Json part(ScorePart part) {
        return new Json()
                .put("kind", part.kind().word())
                .put("points", part.points(), 3)
                .put("sentence", part.sentence());
    }
}
