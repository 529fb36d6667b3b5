package versewind.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import versewind.organ.NotationException;
import versewind.plan.Edit;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.proposal.RegistrationProposer;
import versewind.proposal.SearchProgress;
import versewind.proposal.ServiceProposal;
import versewind.store.BadFile;
import versewind.store.Fingerprint;
import versewind.store.Library;
import versewind.store.OpenPlan;
import versewind.store.ProposalJson;
import versewind.store.SaveOutcome;
import versewind.store.WhenChanged;

/** {@code versewind propose PLAN}: what to draw, for a verse, a hymn or the service. */
final class ProposeCommand {

    static final String NAME = "propose";

    private static final String HYMN = "--hymn";
    private static final String VERSE = "--verse";
    private static final String WRITE = "--write";

    private ProposeCommand() {}

    static CommandSpec spec() {
        CommandSpec spec = Options.command(
                NAME,
                "Proposes what to draw, and says why: one registration for every verse of the service or of a hymn,"
                        + " chosen together with the pistons there are, or up to five for one verse.");
        spec.addPositional(Options.operand("PLAN", Options.PLAN + " " + Options.OR_INPUT));
        spec.addOption(Options.valued(
                HYMN, "N", "Only this hymn: its place in the plan, counted from 1, or its number in the book."));
        spec.addOption(Options.valued(
                VERSE,
                "V",
                "Only this verse of the hymn: its label, like V2 or Last, or its place in the hymn, counted from 1."));
        spec.addOption(Options.flag(
                        "Write what is proposed into the plan, the best where there are several, and the pistons.",
                        WRITE)
                .build());
        spec.addOption(Options.json());
        return Options.withExitStatus(spec, "For some verse nothing could be proposed, or the search was stopped.");
    }

    static Reply run(ParseResult typed, Commands commands) throws BadFile, NotationException {
        OpenPlan open = commands.plan(Options.operand(typed));
        boolean writes = typed.hasMatchedOption(WRITE);
        if (writes) {
            refuseWhereUnsafe(open);
        }
        Optional<Integer> hymn = hymn(typed, open.plan());
        Optional<VersePlace> place = verse(typed, open.plan(), hymn);
        RegistrationProposer registrant = RegistrationProposer.of(open.organ().sound());
        Progress meanwhile = commands.surroundings().meanwhile();
        return place.isPresent()
                ? forVerse(
                        typed,
                        open,
                        registrant.forVerse(open.plan(), place.get(), () -> !meanwhile.isInterrupted()),
                        commands)
                : together(typed, open, hymn, registrant, commands);
    }

    private static void refuseWhereUnsafe(OpenPlan open) throws NotationException {
        if (open.fingerprint().equals(Fingerprint.NO_FILE)) {
            throw new UsageException("The plan has no file to write to. Leave " + WRITE + " out.");
        }
        if (open.draft().isPresent()) {
            throw new UsageException(
                    "Unsaved work on this plan is kept beside its file. Open the plan to take it up first, or"
                            + " leave " + WRITE + " out.");
        }
    }

    private static Optional<Integer> hymn(ParseResult typed, Plan plan) throws NotationException {
        if (!typed.hasMatchedOption(HYMN)) {
            return Optional.empty();
        }
        String wanted = typed.matchedOptionValue(HYMN, "").strip();
        List<Hymn> hymns = plan.hymns();
        if (wanted.matches("[0-9]{1,4}")) {
            int place = Integer.parseInt(wanted);
            if (place >= 1 && place <= hymns.size()) {
                return Optional.of(place - 1);
            }
        }
        Optional<Integer> numbered = IntStream.range(0, hymns.size())
                .boxed()
                .filter(each -> hymns.get(each).number().equalsIgnoreCase(wanted))
                .findFirst();
        if (wanted.isEmpty() || numbered.isEmpty()) {
            throw new UsageException("The plan has no hymn \"" + wanted + "\". It has "
                    + (hymns.isEmpty() ? "none." : "the hymns " + numbers(hymns) + "."));
        }
        return numbered;
    }

    /** What hymns can be asked for by: their numbers in the book, or where one has none, its place in the plan. */
    private static String numbers(List<Hymn> hymns) {
        return IntStream.range(0, hymns.size())
                .mapToObj(each -> hymns.get(each).number().isBlank()
                        ? (each + 1) + " (without a number)"
                        : hymns.get(each).number())
                .collect(Collectors.joining(", "));
    }

    private static Optional<VersePlace> verse(ParseResult typed, Plan plan, Optional<Integer> hymn)
            throws NotationException {
        if (!typed.hasMatchedOption(VERSE)) {
            return Optional.empty();
        }
        if (hymn.isEmpty() && plan.hymns().size() != 1) {
            throw new UsageException(VERSE + " needs " + HYMN + ", for the plan has "
                    + plan.hymns().size() + " hymns.");
        }
        String wanted = typed.matchedOptionValue(VERSE, "").strip();
        int of = hymn.orElse(0);
        List<Verse> verses = plan.hymns().get(of).verses();
        Optional<Integer> labelled = IntStream.range(0, verses.size())
                .boxed()
                .filter(each -> verses.get(each).label().equalsIgnoreCase(wanted))
                .findFirst();
        if (labelled.isPresent() && !wanted.isEmpty()) {
            return Optional.of(new VersePlace(of, labelled.get()));
        }
        if (wanted.matches("[0-9]{1,4}")
                && Integer.parseInt(wanted) >= 1
                && Integer.parseInt(wanted) <= verses.size()) {
            return Optional.of(new VersePlace(of, Integer.parseInt(wanted) - 1));
        }
        List<String> labels = verses.stream().map(Verse::label).toList();
        throw new UsageException("The hymn has no verse \"" + wanted + "\". It has "
                + (labels.isEmpty() ? "none." : String.join(", ", labels) + "."));
    }

    private static Reply forVerse(
            ParseResult typed, OpenPlan open, RegistrationProposer.OfVerse found, Commands commands)
            throws BadFile, NotationException {
        String words = AssessCommand.unsavedWork(open, "looked at");
        Plan plan = open.plan();
        if (typed.hasMatchedOption(WRITE) && !found.proposals().isEmpty()) {
            VersePlace place = found.place();
            Verse drawn = found.proposals().get(0).on(plan, place, open.instrument());
            Plan written = new Edit.SetVerse(place.hymn(), place.verse(), drawn).apply(plan);
            words += write(commands.library(), open, written, 1);
        }
        String results = typed.hasMatchedOption(Options.JSON)
                ? ProposalJson.of(plan, open.instrument(), found)
                : ProposalText.of(open, found, commands.lettering());
        boolean isStopped = commands.surroundings().meanwhile().isInterrupted();
        String stopped = isStopped ? "versewind: The search was stopped; these are the best so far.\n" : "";
        boolean isWhole = !isStopped && !found.proposals().isEmpty();
        return new Reply(isWhole ? Reply.GOOD : Reply.WANTS_ATTENTION, results, words + stopped);
    }

    private static Reply together(
            ParseResult typed,
            OpenPlan open,
            Optional<Integer> hymn,
            RegistrationProposer registrant,
            Commands commands)
            throws BadFile, NotationException {
        SearchProgress watcher = watcher(commands.surroundings().meanwhile());
        ServiceProposal found = hymn.isPresent()
                ? registrant.forHymn(open.plan(), hymn.get(), watcher)
                : registrant.forService(open.plan(), watcher);
        String words = AssessCommand.unsavedWork(open, "looked at") + stopped(found);
        if (typed.hasMatchedOption(WRITE) && !found.verses().isEmpty()) {
            words += write(
                    commands.library(),
                    open,
                    found.on(open.plan()),
                    found.verses().size());
        }
        List<Integer> hymns = hymn.map(List::of)
                .orElseGet(() ->
                        IntStream.range(0, open.plan().hymns().size()).boxed().toList());
        String results = typed.hasMatchedOption(Options.JSON)
                ? ProposalJson.of(open.plan(), open.instrument(), hymns, found)
                : ProposalText.of(open, hymns, found, commands.lettering());
        int verses = hymns.stream()
                .mapToInt(each -> open.plan().hymns().get(each).verses().size())
                .sum();
        return new Reply(found.verses().size() < verses ? Reply.WANTS_ATTENTION : Reply.GOOD, results, words);
    }

    private static SearchProgress watcher(Progress meanwhile) {
        return new SearchProgress() {
            @Override
            public boolean goesOn() {
                return !meanwhile.isInterrupted();
            }

            @Override
            public void searched(int verses, int of) {
                meanwhile.tell("versewind: " + verses + " of " + of + " verses searched; Ctrl-C stops.");
            }
        };
    }

    private static String stopped(ServiceProposal found) {
        return found.unsearched() == 0
                ? ""
                : "versewind: The search was stopped; " + found.unsearched()
                        + (found.unsearched() == 1 ? " verse was" : " verses were") + " not reached.\n";
    }

    private static String write(Library library, OpenPlan open, Plan plan, int verses) throws NotationException {
        SaveOutcome outcome = library.savePlan(open.with(plan), WhenChanged.REFUSE);
        if (outcome instanceof SaveOutcome.NotSaved notSaved) {
            throw new UsageException("The plan was not saved to " + notSaved.path() + ": " + notSaved.why());
        }
        if (outcome instanceof SaveOutcome.ChangedOnDisk) {
            throw new UsageException("Somebody else has just changed the plan. Nothing was written. Try again.");
        }
        return "versewind: " + verses + (verses == 1 ? " verse is" : " verses are") + " written to " + open.path()
                + ".\n";
    }
}
