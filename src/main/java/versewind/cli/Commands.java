package versewind.cli;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import versewind.organ.NotationException;
import versewind.store.BadFile;
import versewind.store.Library;
import versewind.store.OpenPlan;
import versewind.terminal.Editor;
import versewind.terminal.NoTerminalException;

/** All that can be typed after the program's name. */
public final class Commands {

    private static final Set<String> PRINTING = Set.of(
            AssessCommand.NAME,
            CalibrateCommand.NAME,
            EstimateCommand.NAME,
            ExportCommand.NAME,
            FindCommand.NAME,
            HelpCommand.NAME,
            ImportCommand.NAME,
            ListCommand.NAME,
            ProposeCommand.NAME,
            ReckonCommand.NAME,
            ReadStopsCommand.NAME,
            SheetCommand.NAME,
            ShowCommand.NAME);

    private final Environment surroundings;
    private final CharsetFallback lettering;
    private LibraryLocator whereabouts = LibraryLocator.NOT_TYPED;
    private Optional<Library> library = Optional.empty();

    private Commands(Environment surroundings) {
        this.surroundings = surroundings;
        this.lettering = new CharsetFallback(surroundings.charset());
    }

    /** Does what was typed. The editor runs in here until it is left; everything else only replies. */
    public static Reply run(List<String> typed, Environment surroundings) {
        Commands commands = new Commands(surroundings);
        Reply reply = commands.reply(typed);
        return new Reply(reply.status(), reply.results(), commands.lettering.ofLines(reply.words()), reply.letters());
    }

    private Reply reply(List<String> typed) {
        try {
            whereabouts = LibraryLocator.of(typed);
            List<String> rest = whereabouts.rest();
            if (opensDesk(rest)) {
                return desk(rest.get(1));
            }
            return opensEditor(rest) ? edit(rest.stream().findFirst()) : Syntax.reply(rest, this);
        } catch (BadFile | NotationException | NoTerminalException sentence) {
            return Reply.bad(sentence.getMessage());
        }
    }

    /**
     * Whether no more is typed than a plan to edit, or nothing. This is asked first, and {@link Syntax} left alone, so that
     * the editor need not wait an eighth of a second for the classes that read options.
     */
    private static boolean opensEditor(List<String> typed) {
        return typed.isEmpty()
                || (typed.size() == 1
                        && !typed.get(0).startsWith("-")
                        && !typed.get(0).equals(DeskCommand.NAME)
                        && !PRINTING.contains(typed.get(0)));
    }

    /** Whether no more is typed than the desk and its plan; asked before {@link Syntax} for the same reason. */
    private static boolean opensDesk(List<String> typed) {
        return typed.size() == 2
                && typed.get(0).equals(DeskCommand.NAME)
                && !typed.get(1).startsWith("-");
    }

    /** The plan that an operand means: a file, a name among the plans, or "-" for the standard input. */
    OpenPlan plan(String operand) throws BadFile, NotationException {
        return operand.equals(Options.INPUT)
                ? library().readPlan(surroundings.standardInput())
                : library().openPlan(operand);
    }

    /** Runs the editor. */
    Reply edit(Optional<String> plan) throws BadFile, NotationException, NoTerminalException {
        Library library = library();
        Optional<OpenPlan> open = plan.isPresent() ? Optional.of(library.openPlan(plan.get())) : Optional.empty();
        Editor.run(library, open, surroundings.today());
        return Reply.good("");
    }

    /** Runs the desk. */
    Reply desk(String plan) throws BadFile, NotationException, NoTerminalException {
        Editor.runDesk(library(), library().openPlan(plan), surroundings.today());
        return Reply.good("");
    }

    Environment surroundings() {
        return surroundings;
    }

    /** The library; it is looked for, and made if it has to be, only when it is needed. */
    Library library() throws BadFile, NotationException {
        if (library.isEmpty()) {
            library = Optional.of(whereabouts.library(surroundings));
        }
        return library.get();
    }

    CharsetFallback lettering() {
        return lettering;
    }
}
