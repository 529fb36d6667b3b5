package versewind.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import versewind.calibration.RightShare;
import versewind.organ.Count;
import versewind.organ.NotationException;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.proposal.Proposal;
import versewind.proposal.RegistrationProposer;
import versewind.proposal.SearchProgress;
import versewind.proposal.ServiceProposal;
import versewind.proposal.Usual;
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
                + WrittenOver.restore(before, open.path())
                + WrittenOver.openElsewhere(open, commands);
    }
}
