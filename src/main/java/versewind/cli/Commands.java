package versewind.cli;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;
import versewind.store.BadFile;
import versewind.store.Library;
import versewind.store.Nearest;
import versewind.store.OpenPlan;
import versewind.terminal.Editor;
import versewind.terminal.NoTerminalException;

/** All that can be typed after the program's name. */
public final class Commands {

    private static final String NAME = "versewind";
    private static final Set<String> PRINTING = Set.of(AssessCommand.NAME, EstimateCommand.NAME);

    private final Surroundings surroundings;
    private final Library library;
    private final Lettering lettering;

    private Commands(Surroundings surroundings) {
        this.surroundings = surroundings;
        this.library = new Library(surroundings.libraryFolder());
        this.lettering = new Lettering(surroundings.charset());
    }

    /** Does what was typed. The editor runs in here until it is left; everything else only replies. */
    public static Reply run(List<String> typed, Surroundings surroundings) {
        Commands commands = new Commands(surroundings);
        Reply reply = commands.reply(typed);
        return new Reply(reply.status(), reply.results(), commands.lettering.ofLines(reply.words()));
    }

    private Reply reply(List<String> typed) {
        try {
            return opensEditor(typed) ? edit(typed.stream().findFirst()) : parsed(typed);
        } catch (BadFile | Misuse | NoTerminalException sentence) {
            return Reply.bad(sentence.getMessage());
        }
    }

    /** The editor's whole syntax is so small that it need not wait an eighth of a second until options can be read. */
    private static boolean opensEditor(List<String> typed) {
        return typed.isEmpty()
                || (typed.size() == 1 && !typed.get(0).startsWith("-") && !PRINTING.contains(typed.get(0)));
    }

    private Reply edit(Optional<String> plan) throws BadFile, Misuse, NoTerminalException {
        Optional<OpenPlan> open = plan.isPresent() ? Optional.of(library.openPlan(plan.get())) : Optional.empty();
        if (open.isPresent()) {
            Organs.sound(open.get().instrument());
        }
        Editor.run(library, open, surroundings.today());
        return Reply.good("");
    }

    private Reply parsed(List<String> typed) throws BadFile, Misuse, NoTerminalException {
        CommandLine line = new CommandLine(spec());
        line.setExpandAtFiles(false);
        ParseResult whole = read(line, typed);
        ParseResult last = whole.hasSubcommand() ? whole.subcommand() : whole;
        if (last.isUsageHelpRequested()) {
            return Reply.good(last.commandSpec().commandLine().getUsageMessage(Ansi.OFF));
        }
        if (last.isVersionHelpRequested()) {
            return Reply.good(NAME + " " + surroundings.version() + "\n");
        }
        return switch (last.commandSpec().name()) {
            case AssessCommand.NAME -> AssessCommand.run(last, library, lettering);
            case EstimateCommand.NAME -> EstimateCommand.run(last, library, lettering);
            default -> edit(last.hasMatchedPositional(0) ? Optional.of(Options.operand(last)) : Optional.empty());
        };
    }

    private static ParseResult read(CommandLine line, List<String> typed) throws Misuse {
        try {
            return line.parseArgs(typed.toArray(String[]::new));
        } catch (ParameterException wrong) {
            String command = wrong.getCommandLine().getCommandSpec().qualifiedName();
            throw new Misuse(sentence(wrong, command) + " See " + command + " --help.");
        }
    }

    private static String sentence(ParameterException wrong, String command) {
        if (wrong instanceof UnmatchedArgumentException unmatched) {
            String word = unmatched.getUnmatched().get(0);
            return unmatched.isUnknownOption()
                    ? command + " has no option \"" + word + "\". "
                            + Nearest.sentence(word, options(wrong.getCommandLine()), "It has")
                    : command + " has no use for \"" + word + "\".";
        }
        if (wrong instanceof MissingParameterException missing) {
            return command + " needs "
                    + missing.getMissing().stream().map(Commands::name).collect(Collectors.joining(" and ")) + ".";
        }
        if (wrong instanceof OverwrittenOptionException twice) {
            return name(twice.getOverwritten()) + " can be given only once.";
        }
        return wrong.getMessage() + ".";
    }

    private static List<String> options(CommandLine line) {
        return line.getCommandSpec().options().stream()
                .map(OptionSpec::longestName)
                .toList();
    }

    private static String name(ArgSpec argument) {
        return argument instanceof OptionSpec option
                ? (option.longestName() + " " + (option.arity().max() == 0 ? "" : option.paramLabel())).strip()
                : argument.paramLabel();
    }

    private static CommandSpec spec() {
        CommandSpec spec = Options.command(
                NAME,
                "Plans, verse by verse, which stops to draw for a service's hymns, and estimates whether the organ leads"
                        + " the singing. Without a command the editor opens.");
        spec.addPositional(PositionalParamSpec.builder()
                .paramLabel("PLAN")
                .type(String.class)
                .arity("0..1")
                .description("The plan to work on: its file, or its name among the plans. Without it the plans are"
                        + " listed.")
                .build());
        Options.withHelp(spec);
        spec.addSubcommand(AssessCommand.NAME, new CommandLine(AssessCommand.spec()));
        spec.addSubcommand(EstimateCommand.NAME, new CommandLine(EstimateCommand.spec()));
        return spec;
    }
}
