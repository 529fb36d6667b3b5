package versewind.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import versewind.organ.BoxPosition;
import versewind.organ.Nearest;
import versewind.organ.Quoted;
import versewind.organ.Worded;
import versewind.plan.HandsAndFeet;
import versewind.plan.HeardAs;
import versewind.plan.Singing;
import versewind.plan.SungBy;

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

    /**
     * The shell completion for bash and zsh: subcommands, options and the words that may follow them, and the names of
     * plans and instruments in the library.
     */
    private static final class Completion {

        private static final String COMMANDS = "@COMMANDS@";
        private static final String CASES = "@CASES@";
        private static final String WORDS = "@WORDS@";
        private static final String FORMER = "@FORMER@";
        private static final String CALC = Subcommand.CALC.word() + " | " + Subcommand.RECKON;

        private Completion() {}

        static String of(Syntax syntax) {
            String cases = syntax.subcommands().entrySet().stream()
                    .map(each -> line(
                            each.getKey() == Subcommand.CALC
                                    ? CALC
                                    : each.getKey().word(),
                            each.getValue().spec()))
                    .collect(Collectors.joining());
            String words = words("--mode", SungBy.values())
                    + words("--singing", Singing.values())
                    + words("--hands", HandsAndFeet.Layout.values())
                    + words("--heard", HeardAs.values())
                    + words("--felt", Stream.of(HeardAs.values()).map(HeardAs::felt))
                    + words("position", BoxPosition.values())
                    + words("--format", SheetCommand.FORMATS.stream())
                    + words(CALC, CalcCommand.WHAT.stream());
            return script().replace(WORDS, words)
                    .replace(FORMER, Subcommand.RECKON)
                    .replace(COMMANDS, String.join(" ", Subcommand.words()))
                    .replace(CASES, cases + line("*", syntax.program().spec()));
        }

        private static String words(String before, Worded... words) {
            return words(before, Stream.of(words).map(Worded::word));
        }

        private static String words(String before, Stream<String> words) {
            return "    " + before + ") printf '%s\\n' '" + words.collect(Collectors.joining("' '")) + "' ;;\n";
        }

        /** Options of a command, and the folder of the library in which names for its first operand lie. */
        private static String line(String pattern, CommandSpec spec) {
            String options = spec.options().stream()
                    .flatMap(option -> Arrays.stream(option.names()))
                    .collect(Collectors.joining(" "));
            String operand = spec.positionalParameters().stream()
                    .map(Syntax::name)
                    .findFirst()
                    .orElse("");
            return "    " + pattern + ") options='" + options + "' kind=" + kind(operand) + " ;;\n";
        }

        private static String kind(String operand) {
            return switch (operand) {
                case "PLAN" -> "plans";
                case "INSTRUMENT" -> "instruments";
                case "COMMAND" -> "commands";
                case "WHAT" -> "words";
                default -> "files";
            };
        }

        private static String script() {
            try (InputStream script = Completion.class.getResourceAsStream("/versewind/cli/completion.bash")) {
                return new String(script.readAllBytes(), StandardCharsets.US_ASCII);
            } catch (IOException unreadable) {
                throw new UncheckedIOException("the completion is part of the program", unreadable);
            }
        }
    }

    /** The manual page, made from the declarations of the commands, in the macros of man(7). */
    private static final class ManualPage {

        private final StringBuilder page = new StringBuilder();
        private final List<String> common;

        private ManualPage(CommandSpec program) {
            common = program.options().stream().map(OptionSpec::longestName).toList();
        }

        static String of(Syntax syntax) {
            CommandSpec program = syntax.program().spec();
            ManualPage manual = new ManualPage(program);
            manual.line(".TH " + program.name().toUpperCase(Locale.ROOT) + " 1");
            manual.section("NAME");
            manual.line(program.name() + " \\- plans, verse by verse, which organ stops to draw for hymns");
            manual.section("SYNOPSIS");
            manual.synopsis(program);
            syntax.subcommands().values().forEach(command -> manual.synopsis(command.spec()));
            manual.section("DESCRIPTION");
            manual.text(program.usageMessage().description());
            program.positionalParameters().forEach(manual::argument);
            manual.section("OPTIONS");
            manual.text("All commands have these options.");
            program.options().forEach(manual::argument);
            manual.section("COMMANDS");
            syntax.subcommands().values().forEach(command -> manual.command(command.spec()));
            manual.statuses(syntax.subcommands());
            manual.environment();
            manual.files();
            manual.section("EXAMPLES");
            syntax.subcommands().values().forEach(command -> command.examples().forEach(manual::example));
            manual.section("SEE ALSO");
            manual.line(".BR bash (1),");
            manual.line(".BR man (1)");
            return manual.page.toString();
        }

        private void line(String line) {
            page.append(line).append('\n');
        }

        private void section(String title) {
            line(".SH " + title);
        }

        private void text(String... sentences) {
            for (String sentence : sentences) {
                line(sentence.isBlank() ? ".PP" : escaped(sentence));
            }
        }

        /** A term and what it means. */
        private void term(String term, String... meaning) {
            line(".TP");
            line(".B " + escaped(term));
            text(meaning);
        }

        /**
         * A point or an apostrophe at the beginning of a line, and every backslash, mean something to the formatter.
         */
        private static String escaped(String text) {
            String plain = text.replace("%%", "%").replace("\\", "\\e").replace("-", "\\-");
            return plain.startsWith(".") || plain.startsWith("'") ? "\\&" + plain : plain;
        }

        private void synopsis(CommandSpec command) {
            line(".PP");
            Stream<String> needed =
                    command.options().stream().filter(OptionSpec::required).map(Syntax::name);
            Stream<String> operands = command.positionalParameters().stream()
                    .map(operand ->
                            operand.arity().min() == 0 ? "[" + operand.paramLabel() + "]" : operand.paramLabel());
            line(escaped(Stream.of(Stream.of(command.qualifiedName(), "[options]"), needed, operands)
                    .flatMap(parts -> parts)
                    .collect(Collectors.joining(" "))));
        }

        private void command(CommandSpec command) {
            line(".SS " + escaped(command.name()));
            text(command.usageMessage().description());
            text(command.usageMessage().footer());
            command.positionalParameters().forEach(this::argument);
            command.options().stream()
                    .filter(option -> !common.contains(option.longestName()))
                    .forEach(this::argument);
        }

        private void argument(ArgSpec argument) {
            String name = argument instanceof OptionSpec option
                    ? (String.join(", ", option.names()) + (option.arity().max() == 0 ? "" : " " + option.paramLabel()))
                    : argument.paramLabel();
            term(name, argument.description());
        }

        private void statuses(Map<Subcommand, Command> commands) {
            section("EXIT STATUS");
            term(Integer.toString(Reply.GOOD), "The command did what was asked.");
            term(Integer.toString(Reply.WANTS_ATTENTION), "It did, and something needs attention:");
            commands.forEach((subcommand, command) -> {
                if (!command.attention().isEmpty()) {
                    line(".br");
                    text(subcommand.word() + ": " + command.attention());
                }
            });
            term(Integer.toString(Reply.BAD), "Something typed or read is wrong; nothing was written.");
        }

        private void environment() {
            section("ENVIRONMENT");
            term(LibraryLocator.VARIABLE, "The folder of the library, if " + LibraryLocator.OPTION + " is not given.");
            term(
                    "XDG_DATA_HOME",
                    "Where your own library is made, in versewind/, if nothing else names one; ~/.local/share if it is"
                            + " not set.");
            term("COLUMNS", "How wide printed reports are, 40 to 200; 80 if it is not set.");
            term("NO_COLOR", "If it is set, the screen has no colours.");
        }

        private void files() {
            section("FILES");
            term("plans/*.json", "The plans of the library, one file each.");
            term("instruments/*.json", "Its instruments.");
            term("bin/*.json", "Plans that were deleted, or replaced by propose --write. Move one back to restore it.");
            term("plans/.NAME.*.journal", "Unsaved work on a plan, offered when the plan is opened.");
            term(
                    "plans/.versions/NAME/",
                    "The last versions of a plan that were saved; Ctrl-V in the library restores one.");
        }

        private void example(String example) {
            line(".PP");
            line(".nf");
            line(escaped(example));
            line(".fi");
        }
    }
}
