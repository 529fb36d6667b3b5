package versewind.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;
import versewind.organ.Nearest;
import versewind.organ.NotationException;

/** {@code versewind help COMMAND}: how a command is used; also the manual page, and what shells complete. */
final class HelpCommand {

    static final String NAME = "help";

    private static final String MANUAL = "--man";
    private static final String COMPLETION = "--completion";

    private HelpCommand() {}

    static CommandSpec spec() {
        CommandSpec spec = Options.command(NAME, "Says how a command is used.");
        spec.addPositional(PositionalParamSpec.builder()
                .paramLabel("COMMAND")
                .type(String.class)
                .arity("0..1")
                .description("The command; without one, all of them are listed.")
                .build());
        spec.addOption(Options.flag("Write the manual page of all commands instead.", MANUAL)
                .build());
        spec.addOption(
                Options.flag("Write the completion of commands and options for bash and zsh instead.", COMPLETION)
                        .build());
        return Options.withExitStatus(spec);
    }

    static Reply run(ParseResult typed, CommandLine line) throws NotationException {
        if (typed.hasMatchedOption(MANUAL)) {
            return Reply.good(ManualPage.of(line.getCommandSpec()));
        }
        if (typed.hasMatchedOption(COMPLETION)) {
            return Reply.good(AutoComplete.bash(line.getCommandName(), line).replace(System.lineSeparator(), "\n"));
        }
        String command = Options.operand(typed);
        if (command.isEmpty()) {
            return Reply.good(line.getUsageMessage(Ansi.OFF));
        }
        List<String> commands = new ArrayList<>(line.getSubcommands().keySet());
        if (!commands.contains(command)) {
            throw new UsageException("There is no command \"" + command + "\". "
                    + Nearest.sentence(command, commands, "The commands are"));
        }
        return Reply.good(line.getSubcommands().get(command).getUsageMessage(Ansi.OFF));
    }
}
