package versewind.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import versewind.organ.BoxPosition;
import versewind.organ.Worded;
import versewind.plan.HandsAndFeet;
import versewind.plan.HeardAs;
import versewind.plan.Singing;
import versewind.plan.SungBy;

/**
 * The shell completion for bash and zsh: subcommands, options and the words that may follow them, and the names of
 * plans and instruments in the library.
 */
final class Completion {

    private static final String COMMANDS = "@COMMANDS@";
    private static final String CASES = "@CASES@";
    private static final String WORDS = "@WORDS@";
    private static final String FORMER = "@FORMER@";
    private static final String CALC = Subcommand.CALC.word() + " | " + Subcommand.RECKON;

    private Completion() {}

    static String of(Syntax syntax) {
        String cases = syntax.subcommands().entrySet().stream()
                .map(each -> line(
                        each.getKey() == Subcommand.CALC ? CALC : each.getKey().word(),
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
