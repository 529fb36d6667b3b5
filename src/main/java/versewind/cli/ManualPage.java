package versewind.cli;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The manual page, made from the declarations of the commands, in the macros of man(7). */
final class ManualPage {

    private final StringBuilder page = new StringBuilder();

    private ManualPage() {}

    static String of(CommandSpec program) {
        ManualPage manual = new ManualPage();
        manual.line(".TH " + program.name().toUpperCase(Locale.ROOT) + " 1");
        manual.line(".SH NAME");
        manual.line(program.name() + " \\- plans, verse by verse, which organ stops to draw for hymns");
        manual.line(".SH SYNOPSIS");
        manual.synopsis(program);
        program.subcommands().values().forEach(command -> manual.synopsis(command.getCommandSpec()));
        manual.line(".SH DESCRIPTION");
        manual.text(program.usageMessage().description());
        manual.arguments(program);
        manual.line(".SH COMMANDS");
        program.subcommands().values().forEach(command -> manual.command(command.getCommandSpec()));
        manual.environment();
        return manual.page.toString();
    }

    private void line(String line) {
        page.append(line).append('\n');
    }

    private void text(String... sentences) {
        for (String sentence : sentences) {
            line(sentence.isBlank() ? ".PP" : escaped(sentence));
        }
    }

    /** A point or an apostrophe at the beginning of a line, and every backslash, mean something to the formatter. */
    private static String escaped(String text) {
        String plain = text.replace("%%", "%").replace("\\", "\\e").replace("-", "\\-");
        return plain.startsWith(".") || plain.startsWith("'") ? "\\&" + plain : plain;
    }

    private void synopsis(CommandSpec command) {
        line(".PP");
        String operands = command.positionalParameters().stream()
                .map(operand -> operand.arity().min() == 0 ? "[" + operand.paramLabel() + "]" : operand.paramLabel())
                .collect(Collectors.joining(" "));
        String needed = command.options().stream()
                .filter(OptionSpec::required)
                .map(ManualPage::written)
                .collect(Collectors.joining(" "));
        line(escaped(Arrays.stream(new String[] {command.qualifiedName(), "[options]", needed, operands})
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(" "))));
    }

    private void command(CommandSpec command) {
        line(".SS " + escaped(command.name()));
        text(command.usageMessage().description());
        text(command.usageMessage().footer());
        arguments(command);
        command.usageMessage().exitCodeList().forEach((status, meaning) -> {
            line(".TP");
            line("exit status " + status.strip());
            text(meaning);
        });
    }

    private void arguments(CommandSpec command) {
        for (PositionalParamSpec operand : command.positionalParameters()) {
            argument(operand.paramLabel(), operand);
        }
        for (OptionSpec option : command.options()) {
            argument(String.join(", ", option.names()) + value(option), option);
        }
    }

    private void argument(String name, ArgSpec argument) {
        line(".TP");
        line(".B " + escaped(name));
        text(argument.description());
    }

    private static String written(OptionSpec option) {
        return option.longestName() + value(option);
    }

    private static String value(OptionSpec option) {
        return option.arity().max() == 0 ? "" : " " + option.paramLabel();
    }

    private void environment() {
        line(".SH ENVIRONMENT");
        line(".TP");
        line(".B " + LibraryLocator.VARIABLE);
        text("The folder of the library, if " + LibraryLocator.OPTION + " is not given.");
        line(".TP");
        line(".B XDG_DATA_HOME");
        text("Where your own library is made, in versewind/, if nothing else names one; ~/.local/share if it is not"
                + " set.");
        line(".TP");
        line(".B NO_COLOR");
        text("If it is set, the screen has no colours.");
    }
}
