package versewind.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import versewind.organ.NotationException;
import versewind.store.BadFile;
import versewind.store.BadRows;
import versewind.store.Library;
import versewind.store.OpenPlan;
import versewind.store.SaveOutcome;
import versewind.store.Spreadsheet;
import versewind.store.WhenChanged;

/** {@code versewind import FILE}: a new plan from a spreadsheet. */
final class ImportCommand {

    static final String NAME = "import";

    private static final int MOST_SENTENCES = 20;

    private ImportCommand() {}

    static CommandSpec spec() {
        CommandSpec spec = Options.command(
                NAME,
                "Makes a new plan from a spreadsheet that export has written, and says in which file. If any row is"
                        + " wrong, all that are wrong are told and nothing is made.");
        spec.addPositional(Options.operand("FILE", "Comma-separated values in UTF-8. " + Options.OR_INPUT));
        return Options.withExitStatus(spec);
    }

    static Reply run(ParseResult typed, Commands commands) throws BadFile, NotationException {
        String file = Options.operand(typed);
        Library library = commands.library();
        OpenPlan read;
        try {
            read = file.equals(Options.INPUT)
                    ? Spreadsheet.read(commands.surroundings().standardInput(), library)
                    : Spreadsheet.read(path(file), library);
        } catch (BadRows bad) {
            return new Reply(Reply.BAD, "", words(file, bad.sentences()));
        }
        SaveOutcome outcome = library.savePlan(read, WhenChanged.REFUSE);
        if (outcome instanceof SaveOutcome.NotSaved notSaved) {
            throw new UsageException("The new plan was not saved to " + notSaved.path() + ": " + notSaved.why());
        }
        if (outcome instanceof SaveOutcome.ChangedOnDisk) {
            throw new UsageException("A plan of that name has just been made by somebody else. Try again.");
        }
        return Reply.good(read.path() + "\n");
    }

    private static Path path(String file) throws NotationException {
        try {
            return Path.of(file);
        } catch (InvalidPathException impossible) {
            throw new UsageException("No file can have the name \"" + file + "\".");
        }
    }

    private static String words(String file, List<String> sentences) {
        String from = file.equals(Options.INPUT) ? "standard input" : file;
        String some = sentences.stream()
                .limit(MOST_SENTENCES)
                .map(sentence -> "versewind: " + from + ", " + sentence + "\n")
                .collect(Collectors.joining());
        int more = sentences.size() - MOST_SENTENCES;
        return some + (more > 0 ? "versewind: And " + more + " more.\n" : "") + "versewind: Nothing was imported.\n";
    }
}
