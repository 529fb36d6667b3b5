package versewind.cli;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** The manual page, made from the declarations of the commands, in the macros of man(7). */
final class ManualPage {

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

    /** A point or an apostrophe at the beginning of a line, and every backslash, mean something to the formatter. */
    private static String escaped(String text) {
        String plain = text.replace("%%", "%").replace("\\", "\\e").replace("-", "\\-");
        return plain.startsWith(".") || plain.startsWith("'") ? "\\&" + plain : plain;
    }

    private void synopsis(CommandSpec command) {
        line(".PP");
        Stream<String> needed =
                command.options().stream().filter(OptionSpec::required).map(Syntax::name);
        Stream<String> operands = command.positionalParameters().stream()
                .map(operand -> operand.arity().min() == 0 ? "[" + operand.paramLabel() + "]" : operand.paramLabel());
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
                "Where your own library is made, in versewind/, if nothing else names one; ~/.local/share if it is not"
                        + " set.");
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
