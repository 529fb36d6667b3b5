package versewind.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import versewind.organ.NotationException;
import versewind.store.BadFile;
import versewind.terminal.NoTerminalException;

/** {@code versewind desk PLAN}: the verses of a service one after another over the whole screen, to be played from. */
final class DeskCommand {

    static final String NAME = "desk";

    private DeskCommand() {}

    static CommandSpec spec() {
        CommandSpec spec = Options.command(
                NAME,
                "Shows a service verse by verse over the whole screen, to be played from; afterwards it asks how the"
                        + " organ was in each. Nothing but the answers is written to the plan.");
        spec.addPositional(Options.operand("PLAN", "The plan to play from: its file, or its name among the plans."));
        return Options.withHelp(spec);
    }

    static Reply run(ParseResult typed, Commands commands) throws BadFile, NotationException, NoTerminalException {
        return commands.desk(Options.operand(typed));
    }
}
