package versewind.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import versewind.organ.DayWords;
import versewind.organ.NotationException;
import versewind.organ.Quoted;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.rules.Caution;
import versewind.store.BadFile;
import versewind.store.BadRows;
import versewind.store.Library;
import versewind.store.OpenPlan;
import versewind.store.PlanCsv;
import versewind.store.Spreadsheet;
import versewind.store.WhenChanged;

/** {@code versewind export PLAN} and {@code versewind import FILE}: a plan as a spreadsheet, and a plan from one. */
final class SpreadsheetCommands {

    private static final String CSV = "--csv";
    private static final String REPLACE = "--replace";

    private SpreadsheetCommands() {}

    static Command exporting() {
        return Command.of(
                        Subcommand.EXPORT,
                        "Writes a plan as a spreadsheet, one row per verse, from which import makes the same plan"
                                + " again.",
                        SpreadsheetCommands::export)
                .operand("PLAN", Command.PLAN + " " + Command.OR_INPUT)
                .flag(
                        CSV,
                        "Comma-separated values in UTF-8, which is what it writes anyway. No cell is read as a"
                                + " formula.")
                .statuses()
                .examples("versewind export harvest-festival > harvest.csv");
    }

    static Command importing() {
        return Command.of(
                        Subcommand.IMPORT,
                        "Makes a new plan from a spreadsheet, such as export writes, and prints the name of its file."
                                + " If any row is wrong, all wrong rows are listed and nothing is made.",
                        SpreadsheetCommands::load)
                .operand("FILE", "Comma-separated values in UTF-8. " + Command.OR_INPUT)
                .option(
                        REPLACE,
                        "PLAN",
                        "Put it in the place of this plan, whose present version is kept among its versions.")
                .footer("The first row names the columns: " + String.join(", ", PlanCsv.needed())
                        + "; export writes all there are. Each row below is a verse. What belongs to the service or to"
                        + " the hymn may stand in its first row only.")
                .statuses()
                .examples("versewind import harvest.csv", "versewind import harvest.csv --replace harvest-festival");
    }

    private static Reply export(Typed typed, Commands commands) throws BadFile, NotationException {
        OpenPlan open = commands.plan(typed.operand());
        return Reply.utf8(PlanCsv.of(open.plan(), open.instrument()));
    }

    private static Reply load(Typed typed, Commands commands) throws BadFile, NotationException {
        String file = typed.operand();
        Library library = commands.library();
        OpenPlan read;
        try {
            read = file.equals(Typed.INPUT)
                    ? Spreadsheet.read(commands.environment().standardInput(), library)
                    : Spreadsheet.read(path(file), library);
        } catch (BadRows bad) {
            String place = file.equals(Typed.INPUT) ? "standard input" : file;
            return Reply.bad(place + ", ", bad.sentences(), "Nothing was imported.");
        }
        Optional<OpenPlan> old = Optional.empty();
        if (typed.has(REPLACE)) {
            OpenPlan there = commands.plan(typed.value(REPLACE).orElse(""));
            VerseOptions.refuseWhereUnsafe(there, "");
            read = new OpenPlan(read.plan(), read.organ(), there.path(), there.fingerprint(), there.draft());
            old = Optional.of(there);
        }
        Commands.requireSaved(
                library.savePlan(read, WhenChanged.REFUSE),
                "The plan was not saved to " + read.path() + ": ",
                "Someone else has just changed or made that plan. Try again.");
        String words = old.isEmpty()
                ? ""
                : Reply.line("Replaced " + heading(old.get()) + " by " + heading(read) + ".")
                        + WrittenOver.plan(old.get(), commands);
        String crowds = Caution.crowds(read.plan(), read.instrument().room()).stream()
                .map(Reply::line)
                .collect(Collectors.joining());
        return new Reply(Reply.GOOD, read.path() + "\n", words + crowds + sameLabels(read.plan()));
    }

    /** "Harvest Festival" (st-tethwin, Sun 4 Oct 2026). */
    private static String heading(OpenPlan open) {
        ServiceHeading heading = open.plan().heading();
        return Quoted.text(heading.title()) + " (" + open.plan().instrument()
                + heading.date().map(date -> ", " + DayWords.of(date)).orElse("") + ")";
    }

    /** The verses of a hymn with one number, which may be a slip; refrains and interludes have the same label often. */
    private static String sameLabels(Plan plan) {
        return IntStream.range(0, plan.hymns().size())
                .mapToObj(hymn -> plan.hymns().get(hymn).verses().stream()
                        .filter(verse -> verse.kind() == VerseKind.VERSE)
                        .collect(Collectors.groupingBy(Verse::label, TreeMap::new, Collectors.counting()))
                        .entrySet()
                        .stream()
                        .filter(label -> label.getValue() > 1)
                        .map(label -> Reply.line("Hymn " + (hymn + 1) + " has " + label.getValue() + " verses labelled "
                                + Quoted.text(label.getKey()) + ".")))
                .flatMap(lines -> lines)
                .collect(Collectors.joining());
    }

    private static Path path(String file) throws UsageException {
        try {
            return Path.of(file);
        } catch (InvalidPathException impossible) {
            throw new UsageException("No file can have the name " + Quoted.text(file) + ".");
        }
    }
}
