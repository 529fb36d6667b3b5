package versewind.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import versewind.calibration.RightShare;
import versewind.organ.Count;
import versewind.organ.Instrument;
import versewind.organ.NotationException;
import versewind.organ.Pistons;
import versewind.organ.Pressed;
import versewind.organ.RegistrationText;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.proposal.Proposal;
import versewind.proposal.RegistrationProposer;
import versewind.proposal.ScorePart;
import versewind.proposal.SearchProgress;
import versewind.proposal.ServiceProposal;
import versewind.proposal.Usual;
import versewind.sheet.DivisionLine;
import versewind.sheet.Wording;
import versewind.sound.OrganSound;
import versewind.store.BadFile;
import versewind.store.OpenPlan;
import versewind.store.WhenChanged;

/** {@code versewind propose PLAN}: registrations for a verse, a hymn or the whole service. */
final class ProposeCommand {

    private static final String WRITE = "--write";
    private static final String STOPPED_AT_ONCE = "The search was stopped before anything was found.";

    private final Typed typed;
    private final Commands commands;
    private final OpenPlan open;
    private final Plan plan;
    private final Progress progress;

    private ProposeCommand(Typed typed, Commands commands, OpenPlan open) {
        this.typed = typed;
        this.commands = commands;
        this.open = open;
        this.plan = open.plan();
        this.progress = commands.environment().progress();
    }

    static Command command() {
        return VerseOptions.addTo(Command.of(
                                Subcommand.PROPOSE,
                                "Proposes registrations and gives reasons: one for every verse of the service or of a"
                                        + " hymn, with shared pistons, or up to five for one verse.",
                                ProposeCommand::run)
                        .operand("PLAN", Command.PLAN + " " + Command.OR_INPUT))
                .flag(
                        WRITE,
                        "Write the best proposals and the pistons into the plan. A copy of the previous version goes"
                                + " to the bin.")
                .json()
                .statuses("A verse has no proposal. After Ctrl-C it is 130, and the best so far is printed, if there is"
                        + " any.")
                .examples(
                        "versewind propose harvest-festival --hymn 2 --verse V1",
                        "versewind propose harvest-festival --write");
    }

    private static Reply run(Typed typed, Commands commands) throws BadFile, NotationException {
        commands.environment().progress().begin();
        return new ProposeCommand(typed, commands, commands.plan(typed.operand())).reply();
    }

    private Reply reply() throws BadFile, NotationException {
        if (typed.has(WRITE)) {
            VerseOptions.refuseWhereUnsafe(open, ", or leave out " + WRITE);
        }
        VerseOptions options = new VerseOptions(typed, plan);
        Optional<Integer> hymn = options.hymn();
        Optional<VersePlace> place = options.verse(hymn);
        OrganSound sound = open.organ().sound();
        RegistrationProposer proposer = RegistrationProposer.of(
                sound,
                new RightShare(open.organ().experience(), sound)::of,
                open.organ().experience().usualStops());
        return place.isPresent()
                ? forVerse(proposer.forVerse(plan, place.get(), () -> !progress.isInterrupted())
                        .after(usual(sound, place.get())))
                : together(hymn, proposer);
    }

    private Optional<Proposal> usual(OrganSound sound, VersePlace place) {
        Verse verse = plan.verse(place);
        return open.organ()
                .experience()
                .nearest(verse, verse.people().orElse(plan.heading().people()))
                .flatMap(usual ->
                        new Usual(usual.name(), usual.registration(), usual.hands()).proposal(sound, plan, place));
    }

    private Reply forVerse(RegistrationProposer.OfVerse found) throws BadFile, NotationException {
        String words = AssessCommand.unsavedWork(open, "used");
        if (typed.has(WRITE) && !found.proposals().isEmpty()) {
            VersePlace place = found.place();
            Verse drawn = found.proposals().get(0).on(plan, place, open.instrument());
            words += write(plan.withVerse(place, drawn), 1);
        }
        boolean isStopped = progress.isInterrupted();
        return new Reply(
                isStopped || found.proposals().isEmpty() ? Reply.WANTS_ATTENTION : Reply.GOOD,
                commands.shown(typed, new VerseProposalReport(open, found)),
                words
                        + Reply.line(
                                !isStopped
                                        ? ""
                                        : found.proposals().isEmpty()
                                                ? STOPPED_AT_ONCE
                                                : "The search was stopped; these are the best so far."));
    }

    private Reply together(Optional<Integer> hymn, RegistrationProposer proposer) throws BadFile, NotationException {
        ServiceProposal found =
                hymn.isPresent() ? proposer.forHymn(plan, hymn.get(), watcher()) : proposer.forService(plan, watcher());
        String words = AssessCommand.unsavedWork(open, "used")
                + (progress.isInterrupted() && found.verses().isEmpty()
                        ? Reply.line(STOPPED_AT_ONCE)
                        : stopped(found.unsearched()));
        if (typed.has(WRITE) && !found.verses().isEmpty()) {
            words += write(found.on(plan), found.verses().size());
        }
        List<Integer> hymns = hymn.map(List::of)
                .orElseGet(() -> IntStream.range(0, plan.hymns().size()).boxed().toList());
        int verses = hymns.stream()
                .mapToInt(each -> plan.hymns().get(each).verses().size())
                .sum();
        return new Reply(
                found.verses().size() < verses ? Reply.WANTS_ATTENTION : Reply.GOOD,
                commands.shown(typed, new ServiceProposalReport(open, hymns, found)),
                words);
    }

    private SearchProgress watcher() {
        return new SearchProgress() {
            @Override
            public boolean goesOn() {
                return !progress.isInterrupted();
            }

            @Override
            public void searched(int verses, int of) {
                progress.tell("versewind: " + verses + " of " + of + " verses searched; Ctrl-C stops.");
            }
        };
    }

    private static String stopped(int unsearched) {
        return unsearched == 0
                ? ""
                : Reply.line("The search was stopped; " + unsearched + (unsearched == 1 ? " verse was" : " verses were")
                        + " not searched.");
    }

    /** The verses that are now set by hand, and were on a piston, which sets something else in others. */
    private String offTheirPistons(Plan written) {
        String verses = ReportFields.names(
                written,
                written.places().stream()
                        .filter(place -> written.verse(place).piston().isBlank()
                                && !open.plan().verse(place).piston().isBlank()));
        return verses.isEmpty() ? "" : Reply.line("Set by hand now, and no longer by a piston: " + verses + ".");
    }

    private String write(Plan written, int verses) throws BadFile, NotationException {
        Path before = commands.library().keepCopy(open);
        Commands.requireSaved(
                commands.library().savePlan(open.with(written), WhenChanged.REFUSE),
                "The plan was not saved to " + open.path() + ": ",
                "Someone else has just changed the plan. Nothing was written. Try again.");
        return Reply.line(Count.of(verses, "verse") + " written to " + open.path() + ".")
                + offTheirPistons(written)
                + WrittenOver.feedback(open.plan(), written)
                + WrittenOver.binned(before)
                + WrittenOver.openElsewhere(open, commands);
    }

    /** The proposals for one verse, the best first, each with its reasons. */
    private record VerseProposalReport(OpenPlan open, RegistrationProposer.OfVerse found) implements Report {

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
            Json hymn = ServiceProposalReport.hymn(open.plan(), found.place().hymn())
                    .put("verses", List.of(verse));
            return ServiceProposalReport.heading(open.plan()).put("hymns", List.of(hymn));
        }
    }

    /** The proposals for every verse of some hymns. */
    private record ServiceProposalReport(OpenPlan open, List<Integer> hymns, ServiceProposal found) implements Report {

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
                            instrument,
                            proposal.registration(),
                            sound.sounding(proposal.registration(), proposal.hands()))
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
            return new Json()
                    .put("place", index + 1)
                    .put("number", hymn.number())
                    .put("title", hymn.title());
        }

        static Json verse(Plan plan, VersePlace place) {
            return new Json()
                    .put("place", place.verse() + 1)
                    .with(ReportFields.verse(plan.verse(place)))
                    .put("mood", plan.verse(place).mood().word());
        }

        static Json proposal(Instrument organ, Proposal proposal, String piston) {
            return new Json()
                    .list(
                            "draw",
                            proposal.registration().stops().stream().boxed().toList(),
                            stop -> new Json()
                                    .put(
                                            "division",
                                            organ.stops().get(stop).name().division())
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
}
