package versewind.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import versewind.organ.NotationException;
import versewind.store.BadFile;
import versewind.terminal.NoTerminalException;

/** The declaration of a command: operands, options, exit statuses, examples, and its action. */
final class Command {

    static final String JSON = "--json";
    static final String WINDOW = "--window";
    static final String LARGE = "--large";
    static final String SPOKEN = "--spoken";
    /** The options of a full screen, which the editor and the desk have. */
    static final List<String> FULL_SCREEN = List.of(WINDOW, LARGE, SPOKEN);

    static final String PLAN = "A plan's file, or its name among the plans.";
    static final String INSTRUMENT = "An instrument's file, or its name among the instruments.";
    static final String OR_INPUT = "With - the standard input is read.";
    private static final int COLUMNS = 80;

    /** The action of a command. */
    @FunctionalInterface
    interface Action {
        Reply run(Typed typed, Commands commands) throws BadFile, NotationException, NoTerminalException;
    }

    private final CommandSpec spec;
    private final Action action;
    private final Map<String, String> statuses = new LinkedHashMap<>();
    private final List<String> examples = new ArrayList<>();

    private Command(String name, String description, Action action) {
        this.spec = CommandSpec.create().name(name);
        this.action = action;
        spec.usageMessage().description(description).width(COLUMNS).sortOptions(false);
    }

    /** A subcommand without operands and options yet. */
    static Command of(Subcommand subcommand, String description, Action action) {
        return new Command(subcommand.word(), description, action);
    }

    /** The program itself. */
    static Command program(String name, String description, Action action) {
        return new Command(name, description, action);
    }

    /** With a required operand. */
    Command operand(String label, String description) {
        return operand(label, "1", description);
    }

    /** With an optional operand. */
    Command optionalOperand(String label, String description) {
        return operand(label, "0..1", description);
    }

    /** With any number of words as its operand, one at least. */
    Command words(String label, String description) {
        spec.addPositional(PositionalParamSpec.builder()
                .paramLabel(label)
                .type(List.class)
                .auxiliaryTypes(String.class)
                .arity("1..*")
                .description(description)
                .build());
        return this;
    }

    private Command operand(String label, String arity, String description) {
        spec.addPositional(PositionalParamSpec.builder()
                .paramLabel(label)
                .type(String.class)
                .index(Integer.toString(spec.positionalParameters().size()))
                .arity(arity)
                .required(arity.equals("1"))
                .description(description)
                .build());
        return this;
    }

    /** With an option that takes a value; a short name may stand before it: "-o --output". */
    Command option(String names, String value, String description) {
        spec.addOption(valued(names, value, description).type(String.class).build());
        return this;
    }

    /** With a required option that takes a value. */
    Command neededOption(String names, String value, String description) {
        spec.addOption(valued(names, value, description)
                .type(String.class)
                .required(true)
                .build());
        return this;
    }

    /** With an option that takes a value and may be repeated. */
    Command repeatedOption(String names, String value, String description) {
        spec.addOption(valued(names, value, description)
                .type(List.class)
                .auxiliaryTypes(String.class)
                .build());
        return this;
    }

    private static OptionSpec.Builder valued(String names, String value, String description) {
        return OptionSpec.builder(names.split(" ", -1))
                .arity("1")
                .paramLabel(value)
                .description(description);
    }

    /** With an option without a value. */
    Command flag(String names, String description) {
        spec.addOption(flagged(names, description).build());
        return this;
    }

    private static OptionSpec.Builder flagged(String names, String description) {
        return OptionSpec.builder(names.split(" ", -1))
                .type(boolean.class)
                .arity("0")
                .description(description);
    }

    /** With the options of a full screen. */
    Command fullScreen() {
        return flag(WINDOW, "Open in a window, not in the terminal. Without a terminal a window opens by itself.")
                .flag(
                        LARGE,
                        "Write stops and verses in letters of two columns and three rows, where there are 120 columns"
                                + " and 36 rows. The key L turns them on and off.")
                .flag(
                        SPOKEN,
                        "For a screen reader or a braille line: one stop or verse in a row, in words, and after every"
                                + " key a sentence. The same if VERSEWIND_SPOKEN is set.");
    }

    /** With the option {@code --spoken} of a report. */
    Command spoken(String description) {
        return flag(SPOKEN, description + " The same if VERSEWIND_SPOKEN is set.");
    }

    /** With the option {@code --json}. */
    Command json() {
        return flag(JSON, "Write JSON instead of text.");
    }

    /** With a footer below its help. */
    Command footer(String... lines) {
        List<String> all = new ArrayList<>(List.of(""));
        all.addAll(List.of(lines));
        spec.usageMessage().footer(all.toArray(String[]::new));
        return this;
    }

    /** With examples for the manual page. */
    Command examples(String... lines) {
        examples.addAll(List.of(lines));
        return this;
    }

    /** With the exit statuses 0 and 2. */
    Command statuses() {
        statuses.put(" " + Reply.GOOD, "Done.");
        statuses.put(" " + Reply.BAD, "Something typed or read was wrong.");
        return this;
    }

    /** With the exit statuses 0, 1 and 2. */
    Command statuses(String attention) {
        statuses.put(" " + Reply.GOOD, "Done.");
        statuses.put(" " + Reply.WANTS_ATTENTION, attention);
        statuses.put(" " + Reply.BAD, "Something typed or read was wrong.");
        return this;
    }

    /** The declaration, with the options that all commands have. */
    CommandSpec spec() {
        if (spec.findOption("--help") == null) {
            if (!statuses.isEmpty()) {
                spec.usageMessage().exitCodeListHeading("%nExit status:%n").exitCodeList(statuses);
            }
            option(
                    LibraryLocator.OPTION,
                    "DIR",
                    "The folder that contains plans and instruments. If not given: the folder in "
                            + LibraryLocator.VARIABLE + ", or the working folder if it has both, or your own.");
            spec.addOption(
                    flagged("-h --help", "Show this help.").usageHelp(true).build());
            spec.addOption(flagged("-V --version", "Show the version.")
                    .versionHelp(true)
                    .build());
        }
        return spec;
    }

    /** Runs the command. */
    Reply run(Typed typed, Commands commands) throws BadFile, NotationException, NoTerminalException {
        return action.run(typed, commands);
    }

    /** The meaning of exit status 1; empty if the command never ends with it. */
    String attention() {
        return statuses.getOrDefault(" " + Reply.WANTS_ATTENTION, "");
    }

    /** Examples of a command line, for the manual page. */
    List<String> examples() {
        return List.copyOf(examples);
    }
}
