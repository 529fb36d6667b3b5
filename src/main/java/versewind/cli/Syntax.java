package versewind.cli;

import java.util.List;
import java.util.Optional;
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
import versewind.organ.Nearest;
import versewind.organ.NotationException;
import versewind.store.BadFile;
import versewind.terminal.NoTerminalException;

/** Commands and options: which there are, and what was meant by those that there are not. */
final class Syntax {

    private static final String NAME = "versewind";

    private Syntax() {}

    /** Does what was typed. */
    static Reply reply(List<String> typed, Commands commands) throws BadFile, NotationException, NoTerminalException {
        CommandLine line = new CommandLine(spec());
        line.setExpandAtFiles(false);
        ParseResult whole = read(line, typed);
        if (whole.isUsageHelpRequested() || whole.isVersionHelpRequested()) {
            return about(whole, commands);
        }
        if (whole.hasSubcommand() && whole.hasMatchedPositional(0)) {
            throw new UsageException("\"" + Options.operand(whole) + "\" stands before the command "
                    + whole.subcommand().commandSpec().name() + ". Write it after it.");
        }
        ParseResult last = whole.hasSubcommand() ? whole.subcommand() : whole;
        if (last.isUsageHelpRequested() || last.isVersionHelpRequested()) {
            return about(last, commands);
        }
        return switch (last.commandSpec().name()) {
            case AssessCommand.NAME -> AssessCommand.run(last, commands);
            case DeskCommand.NAME -> DeskCommand.run(last, commands);
            case ExportCommand.NAME -> ExportCommand.run(last, commands);
            case ImportCommand.NAME -> ImportCommand.run(last, commands);
            case HelpCommand.NAME -> HelpCommand.run(last, line);
            case ListCommand.NAME -> ListCommand.run(last, commands);
            case FindCommand.NAME -> FindCommand.run(last, commands.library(), commands.lettering());
            case CalibrateCommand.NAME -> CalibrateCommand.run(last, commands.library(), commands.lettering());
            case ReckonCommand.NAME -> ReckonCommand.run(last, commands.lettering());
            case EstimateCommand.NAME -> EstimateCommand.run(last, commands.library(), commands.lettering());
            case ReadStopsCommand.NAME -> ReadStopsCommand.run(last, commands.library(), commands.lettering());
            case ShowCommand.NAME -> ShowCommand.run(last, commands.library());
            case SheetCommand.NAME -> SheetCommand.run(last, commands);
            case ProposeCommand.NAME -> ProposeCommand.run(last, commands);
            default ->
                commands.edit(last.hasMatchedPositional(0) ? Optional.of(Options.operand(last)) : Optional.empty());
        };
    }

    private static Reply about(ParseResult typed, Commands commands) {
        return Reply.good(
                typed.isUsageHelpRequested()
                        ? typed.commandSpec().commandLine().getUsageMessage(Ansi.OFF)
                        : NAME + " " + commands.surroundings().version() + "\n");
    }

    private static ParseResult read(CommandLine line, List<String> typed) throws NotationException {
        try {
            return line.parseArgs(typed.toArray(String[]::new));
        } catch (ParameterException wrong) {
            String command = wrong.getCommandLine().getCommandSpec().qualifiedName();
            throw new UsageException(sentence(wrong, command) + " See " + command + " --help.");
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
                    + missing.getMissing().stream().map(Syntax::name).collect(Collectors.joining(" and ")) + ".";
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
                "Plans, verse by verse, which stops to draw for a service's hymns, and estimates whether the organ"
                        + " leads the singing. Without a command the editor opens.");
        spec.addPositional(PositionalParamSpec.builder()
                .paramLabel("PLAN")
                .type(String.class)
                .arity("0..1")
                .description("The plan to work on: its file, or its name among the plans. Without it the plans are"
                        + " listed.")
                .build());
        Options.withHelp(spec);
        spec.addSubcommand(DeskCommand.NAME, new CommandLine(DeskCommand.spec()));
        spec.addSubcommand(AssessCommand.NAME, new CommandLine(AssessCommand.spec()));
        spec.addSubcommand(ProposeCommand.NAME, new CommandLine(ProposeCommand.spec()));
        spec.addSubcommand(ListCommand.NAME, new CommandLine(ListCommand.spec()));
        spec.addSubcommand(FindCommand.NAME, new CommandLine(FindCommand.spec()));
        spec.addSubcommand(CalibrateCommand.NAME, new CommandLine(CalibrateCommand.spec()));
        spec.addSubcommand(EstimateCommand.NAME, new CommandLine(EstimateCommand.spec()));
        spec.addSubcommand(ReadStopsCommand.NAME, new CommandLine(ReadStopsCommand.spec()));
        spec.addSubcommand(ShowCommand.NAME, new CommandLine(ShowCommand.spec()));
        spec.addSubcommand(SheetCommand.NAME, new CommandLine(SheetCommand.spec()));
        spec.addSubcommand(ReckonCommand.NAME, new CommandLine(ReckonCommand.spec()));
        spec.addSubcommand(ExportCommand.NAME, new CommandLine(ExportCommand.spec()));
        spec.addSubcommand(ImportCommand.NAME, new CommandLine(ImportCommand.spec()));
        spec.addSubcommand(HelpCommand.NAME, new CommandLine(HelpCommand.spec()));
        return spec;
    }
}
