package versewind.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import versewind.organ.Nearest;
import versewind.organ.NotationException;
import versewind.organ.Quoted;
import versewind.screen.plan.SheetText;
import versewind.screen.toolkit.Letters;
import versewind.store.BadFile;
import versewind.store.Library;
import versewind.store.OpenPlan;
import versewind.store.PlainText;
import versewind.store.SaveOutcome;
import versewind.terminal.Editor;
import versewind.terminal.NoTerminalException;
import versewind.terminal.Place;

/** The subcommands and the editor, as they are started from the command line. */
public final class Commands {

    /** Told without the classes that read options, which would take three times as long. */
    private static final String VERSION = "--version";

    private final Environment environment;
    private final CharsetFallback letters;
    private LibraryLocator locator = LibraryLocator.NOT_TYPED;
    private Place place = Place.HERE;
    private Letters size = Letters.USUAL;
    private Optional<Library> library = Optional.empty();

    private Commands(Environment environment) {
        this.environment = environment;
        this.letters = new CharsetFallback(environment.charset());
    }

    /** Runs a command line. The editor runs here until it is closed; every other command only returns a reply. */
    public static Reply run(List<String> typed, Environment environment) {
        Commands commands = new Commands(environment);
        Reply reply = commands.reply(typed);
        return new Reply(reply.status(), reply.results(), commands.letters.ofLines(reply.words()), reply.letters());
    }

    private Reply reply(List<String> typed) {
        try {
            locator = LibraryLocator.of(typed);
            List<String> rest = new ArrayList<>(locator.rest());
            List<String> words = new ArrayList<>(rest);
            words.removeAll(Command.FULL_SCREEN);
            Optional<Subcommand> command = words.stream().findFirst().flatMap(Subcommand::of);
            if (command.isEmpty() || command.get() == Subcommand.DESK) {
                place = rest.contains(Command.WINDOW) ? Place.WINDOW : place;
                size = rest.contains(Command.SPOKEN)
                                || environment.variable("VERSEWIND_SPOKEN").isPresent()
                        ? Letters.SPOKEN
                        : rest.contains(Command.LARGE) ? Letters.LARGE : size;
                rest = words;
            }
            String first = rest.isEmpty() ? "" : rest.get(0);
            // asked before Syntax, whose classes the full screen need not wait for
            if (rest.size() < 2 && !first.startsWith("-") && command.isEmpty()) {
                return edit(rest.stream().findFirst());
            }
            if (rest.size() == 2
                    && first.equals(Subcommand.DESK.word())
                    && !rest.get(1).startsWith("-")) {
                return desk(rest.get(1));
            }
            if (rest.size() == 1 && first.equals(VERSION)) {
                return Reply.good(version());
            }
            return Syntax.reply(rest, this);
        } catch (BadFile | NotationException | NoTerminalException sentence) {
            return Reply.bad(sentence.getMessage());
        }
    }

    /** The program and its version, a line. */
    String version() {
        return Syntax.NAME + " " + environment.version() + "\n";
    }

    /** Runs the editor. */
    Reply edit(Optional<String> plan) throws BadFile, NotationException, NoTerminalException {
        Editor.warmUp(environment.today());
        Optional<OpenPlan> open = plan.isPresent() ? Optional.of(named(plan.get())) : Optional.empty();
        return new Reply(Editor.run(library(), open, environment.today(), place, size), "", "");
    }

    /** The plan with this name; a name close to a subcommand is taken for a typing error. */
    private OpenPlan named(String word) throws BadFile, NotationException {
        try {
            return library().openPlan(word);
        } catch (BadFile bad) {
            if (bad.line().isEmpty()) {
                refuseIfNearSubcommand(word);
            }
            throw bad;
        }
    }

    /** Refuses a word that is nearly a subcommand. */
    static void refuseIfNearSubcommand(String word) throws UsageException {
        Optional<String> near = Nearest.to(word, Subcommand.words());
        if (near.isPresent() && near.get().equals(word)) {
            throw new UsageException("Behind -- a word is the name of a plan, and there is no plan " + Quoted.text(word)
                    + ". To give the command, leave out the --.");
        }
        if (near.isPresent()) {
            throw new UsageException("There is no command " + Quoted.text(word) + ". Did you mean \"" + near.get()
                    + "\"? See versewind --help.");
        }
    }

    /** Runs the desk. */
    Reply desk(String plan) throws BadFile, NotationException, NoTerminalException {
        return new Reply(Editor.runDesk(library(), library().openPlan(plan), environment.today(), place, size), "", "");
    }

    /** The plan that an operand names: a file, a name among the plans, or "-" for the standard input. */
    OpenPlan plan(String operand) throws BadFile, NotationException {
        return operand.equals(Typed.INPUT)
                ? library().readPlan(environment.standardInput())
                : library().openPlan(operand);
    }

    /** The text that an operand names: a file, or "-" for the standard input. */
    String text(String operand) throws BadFile {
        return operand.equals(Typed.INPUT) ? PlainText.of(environment.standardInput()) : PlainText.of(operand);
    }

    /** The file of an option. Its folder must exist: a mistyped one is not created. */
    Path newFile(String name) throws UsageException {
        try {
            Path file = environment.workingFolder().resolve(name);
            Path folder = file.toAbsolutePath().getParent();
            if (folder != null && !Files.isDirectory(folder)) {
                throw new UsageException("There is no folder " + folder + " for \"" + name
                        + "\". Create it first, or choose another name.");
            }
            return file;
        } catch (InvalidPathException wrong) {
            throw new UsageException("No file can be called \"" + name + "\". Choose another name.");
        }
    }

    /** Refuses an outcome other than that the file was saved. */
    static void requireSaved(SaveOutcome outcome, String notSaved, String changed) throws UsageException {
        if (outcome instanceof SaveOutcome.ChangedOnDisk) {
            throw new UsageException(changed);
        }
        if (outcome instanceof SaveOutcome.NotSaved failed) {
            throw new UsageException(notSaved + failed.why());
        }
    }

    /** A report as text, or as JSON if that was asked for. */
    String shown(Typed typed, Report report) {
        int columns = environment
                .variable("COLUMNS")
                .filter(each -> each.matches("[0-9]{2,3}"))
                .map(Integer::parseInt)
                .orElse(Page.COLUMNS);
        return shown(
                typed, report, new Page(letters, Math.max(SheetText.NARROWEST, Math.min(SheetText.WIDEST, columns))));
    }

    /** Whether a report is for who hears it. */
    boolean isSpoken(Typed typed) {
        return typed.has(Command.SPOKEN)
                || environment.variable("VERSEWIND_SPOKEN").isPresent();
    }

    /** A report as text on a page, or as JSON if that was asked for. */
    String shown(Typed typed, Report report, Page page) {
        if (typed.wantsJson()) {
            return report.json().text();
        }
        report.print(page);
        return page.text();
    }

    /** A page as wide as the terminal. */
    Page widePage() {
        return Page.asWideAs(environment.columns(), letters);
    }

    CharsetFallback letters() {
        return letters;
    }

    Environment environment() {
        return environment;
    }

    /** The library, located and if necessary created on first use. */
    Library library() throws BadFile, NotationException {
        if (library.isEmpty()) {
            library = Optional.of(locator.library(environment));
        }
        return library.get();
    }
}
