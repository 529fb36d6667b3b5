package versewind.cli;

import java.util.Optional;
import versewind.organ.Nearest;
import versewind.organ.Quoted;

/** {@code versewind help COMMAND}: help for a command; also the manual page and the shell completion. */
final class HelpCommand {

    private static final String MANUAL = "--man";
    private static final String COMPLETION = "--completion";

    private HelpCommand() {}

    static Command command(Syntax syntax) {
        return Command.of(Subcommand.HELP, "Shows how to use a command.", (typed, commands) -> run(typed, syntax))
                .optionalOperand("COMMAND", "The command; without one, all of them are listed.")
                .flag(MANUAL, "Write the manual page of all commands instead.")
                .flag(COMPLETION, "Write the completion of commands and options for bash and zsh instead.")
                .statuses()
                .examples("versewind help --man | man -l -", "versewind help --completion > ~/.versewind-completion");
    }

    private static Reply run(Typed typed, Syntax syntax) throws UsageException {
        if (typed.has(MANUAL)) {
            return Reply.good(ManualPage.of(syntax));
        }
        if (typed.has(COMPLETION)) {
            return Reply.good(Completion.of(syntax));
        }
        String word = typed.operand();
        Optional<Subcommand> subcommand = Subcommand.of(word);
        if (subcommand.isEmpty() && !word.isEmpty()) {
            throw new UsageException("There is no command " + Quoted.text(word) + ". "
                    + Nearest.to(word, Subcommand.words())
                            .map(near -> "Did you mean \"" + near + "\"?")
                            .orElse("The commands are " + String.join(", ", Subcommand.words()) + "."));
        }
        return Reply.good(syntax.help(subcommand));
    }
}
