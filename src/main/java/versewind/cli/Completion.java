package versewind.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;

/**
 * The shell completion for bash and zsh: subcommands, options, and the names of plans and instruments in the library.
 */
final class Completion {

    private static final String COMMANDS = "@COMMANDS@";
    private static final String CASES = "@CASES@";

    private Completion() {}

    static String of(Syntax syntax) {
        String cases = syntax.subcommands().entrySet().stream()
                .map(each -> line(each.getKey().word(), each.getValue().spec()))
                .collect(Collectors.joining());
        return script().replace(COMMANDS, String.join(" ", Subcommand.words()))
                .replace(CASES, cases + line("*", syntax.program().spec()));
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
