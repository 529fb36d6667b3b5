package versewind.cli;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;
import versewind.organ.Nearest;
import versewind.organ.NotationException;
import versewind.organ.Quoted;
import versewind.store.BadFile;
import versewind.terminal.NoTerminalException;

/** Reads a command line, and finds the command to run. */
final class Syntax {

    static final String NAME = "versewind";

    private final Map<Subcommand, Command> commands = new EnumMap<>(Subcommand.class);
    private final Command program = Command.program(
                    NAME,
                    "Plans, verse by verse, which stops to draw for a service's hymns, and estimates whether the organ"
                            + " leads the singing. Without a command the editor opens.",
                    (typed, all) -> all.edit(typed.operand(0)))
            .optionalOperand(
                    "PLAN",
                    "The plan to work on: its file, or its name among the plans. Without it the plans are listed.")
            .fullScreen();
    private final CommandLine line = new CommandLine(program.spec());

    private Syntax(List<Subcommand> known) {
        for (Subcommand subcommand : known) {
            commands.put(subcommand, command(subcommand));
            line.addSubcommand(subcommand.word(), commands.get(subcommand).spec());
        }
        line.setExpandAtFiles(false);
    }

    private Command command(Subcommand subcommand) {
        return switch (subcommand) {
            case DESK -> DeskCommand.command();
            case ASSESS -> AssessCommand.command();
            case PROPOSE -> ProposeCommand.command();
            case CHANGE -> ChangeCommand.command();
            case LIST -> ListCommand.command();
            case FIND -> FindCommand.command();
            case USUAL -> UsualCommand.command();
            case CALIBRATE -> CalibrateCommand.command();
            case ESTIMATE -> EstimateCommand.command();
            case READ_STOPS -> ReadStopsCommand.command();
            case SHOW -> ShowCommand.command();
            case ROOM -> RoomCommand.command();
            case SHEET -> SheetCommand.command();
            case CALC -> CalcCommand.command();
            case EXPORT -> SpreadsheetCommands.exporting();
            case IMPORT -> SpreadsheetCommands.importing();
            case HELP -> HelpCommand.command(this);
        };
    }

    /** Runs the command. */
    static Reply reply(List<String> typed, Commands commands) throws BadFile, NotationException, NoTerminalException {
        List<String> today = today(typed);
        return new Syntax(needed(today)).run(today, commands);
    }

    /** A command that is named needs none of the others, whose declarations would take longer than the command. */
    private static List<Subcommand> needed(List<String> typed) {
        return typed.stream()
                .findFirst()
                .flatMap(Subcommand::of)
                .filter(named -> named != Subcommand.HELP)
                .map(List::of)
                .orElseGet(() -> List.of(Subcommand.values()));
    }

    private Reply run(List<String> typed, Commands all) throws BadFile, NotationException, NoTerminalException {
        ParseResult whole = read(typed);
        if (whole.isUsageHelpRequested() || whole.isVersionHelpRequested()) {
            if (whole.hasMatchedPositional(0)) {
                Commands.refuseIfNearSubcommand(new Typed(whole).operand());
            }
            return about(whole, all);
        }
        if (!whole.hasSubcommand()) {
            return program.run(new Typed(whole), all);
        }
        ParseResult last = whole.subcommand();
        String word = last.commandSpec().name();
        if (whole.hasMatchedPositional(0)) {
            throw new UsageException(
                    "Write " + Quoted.text(new Typed(whole).operand()) + " after the command " + word + ".");
        }
        if (last.isUsageHelpRequested() || last.isVersionHelpRequested()) {
            return about(last, all);
        }
        return commands.get(Subcommand.of(word).orElseThrow()).run(new Typed(last), all);
    }

    /** With the current name of the subcommand in place of an earlier one. */
    private static List<String> today(List<String> typed) {
        List<String> today = new ArrayList<>(typed);
        if (!typed.isEmpty()) {
            Subcommand.of(typed.get(0)).ifPresent(subcommand -> today.set(0, subcommand.word()));
        }
        return today;
    }

    private static Reply about(ParseResult typed, Commands all) {
        return Reply.good(
                typed.isUsageHelpRequested()
                        ? typed.commandSpec().commandLine().getUsageMessage(Ansi.OFF)
                        : all.version());
    }

    private ParseResult read(List<String> typed) throws UsageException {
        try {
            return line.parseArgs(typed.toArray(String[]::new));
        } catch (ParameterException wrong) {
            String command = wrong.getCommandLine().getCommandSpec().qualifiedName();
            throw new UsageException(sentence(wrong, typed) + " See " + command + " --help.");
        }
    }

    private static String sentence(ParameterException wrong, List<String> typed) throws UsageException {
        if (wrong instanceof UnmatchedArgumentException unmatched) {
            CommandLine at = wrong.getCommandLine();
            String word = unmatched.getUnmatched().get(0);
            if (unmatched.isUnknownOption()) {
                return "There is no option " + Quoted.text(word) + ". "
                        + Nearest.sentence(word, options(at), "The options are");
            }
            Optional<String> before = new Typed(at.getParseResult()).operand(0);
            if (at.getParent() == null && before.isPresent()) {
                Commands.refuseIfNearSubcommand(before.get());
            }
            return Quoted.text(word) + " is one word too many.";
        }
        if (wrong instanceof MissingParameterException missing) {
            List<String> names = missing.getMissing().stream().map(Syntax::name).toList();
            return String.join(" and ", names) + (names.size() == 1 ? " is" : " are") + " missing.";
        }
        if (wrong instanceof OverwrittenOptionException twice) {
            return name(twice.getOverwritten()) + " can be given only once.";
        }
        Optional<OptionSpec> flag = valued(wrong, typed);
        if (flag.isPresent()) {
            return flag.get().longestName() + " takes no value. Leave out what follows the equals sign.";
        }
        return Quoted.plain(wrong.getMessage()) + ".";
    }

    /** An option without a value to which one was typed all the same, as "--json=yes". */
    private static Optional<OptionSpec> valued(ParameterException wrong, List<String> typed) {
        return typed.stream()
                .filter(word -> word.indexOf('=') > 0)
                .flatMap(word -> Optional.ofNullable(
                        wrong.getCommandLine().getCommandSpec().findOption(word.substring(0, word.indexOf('='))))
                        .stream())
                .filter(option -> option.arity().max() == 0)
                .findFirst();
    }

    private static List<String> options(CommandLine at) {
        return at.getCommandSpec().options().stream()
                .map(OptionSpec::longestName)
                .toList();
    }

    /** An operand or option as it is written in help. */
    static String name(ArgSpec argument) {
        return argument instanceof OptionSpec option
                ? (option.longestName() + " " + (option.arity().max() == 0 ? "" : option.paramLabel())).strip()
                : argument.paramLabel();
    }

    /** The help of the program, or of a subcommand. */
    String help(Optional<Subcommand> of) {
        return of.map(subcommand -> line.getSubcommands().get(subcommand.word()))
                .orElse(line)
                .getUsageMessage(Ansi.OFF);
    }

    /** The program itself. */
    Command program() {
        return program;
    }

    /** All subcommands, in the order of the table. */
    Map<Subcommand, Command> subcommands() {
        return commands;
    }
}
