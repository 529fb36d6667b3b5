package versewind.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import versewind.organ.NotationException;
import versewind.organ.Quoted;
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

    private SpreadsheetCommands() {}

    static Command exporting() {
        return Command.of(
                        Subcommand.EXPORT,
                        "Writes a plan as a spreadsheet, one row per verse, from which import makes the same plan"
                                + " again.",
                        SpreadsheetCommands::export)
                .operand("PLAN", Command.PLAN + " " + Command.OR_INPUT)
                .flag(CSV, "As comma-separated values in UTF-8, as without this option. No cell is read as a formula.")
                .statuses()
                .examples("versewind export harvest-festival > harvest.csv");
    }

    static Command importing() {
        return Command.of(
                        Subcommand.IMPORT,
                        "Makes a new plan from a spreadsheet written by export, and prints the name of its file. If"
                                + " any row is wrong, all wrong rows are listed and nothing is made.",
                        SpreadsheetCommands::load)
                .operand("FILE", "Comma-separated values in UTF-8. " + Command.OR_INPUT)
                .statuses()
                .examples("versewind import harvest.csv");
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
        Commands.requireSaved(
                library.savePlan(read, WhenChanged.REFUSE),
                "The new plan was not saved to " + read.path() + ": ",
                "Someone else has just made a plan of that name. Try again.");
        return Reply.good(read.path() + "\n");
    }

    private static Path path(String file) throws UsageException {
        try {
            return Path.of(file);
        } catch (InvalidPathException impossible) {
            throw new UsageException("No file can have the name " + Quoted.text(file) + ".");
        }
    }
}
