package versewind.cli;

import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The environment in which the program was started.
 *
 * @param workingFolder the folder it was started in
 * @param programFolder the folder it lies in, with the instruments and plans that are shipped, if that is known
 * @param environment the variables of the environment
 * @param standardInput what is read for the operand "-"
 * @param charset the terminal's character set
 * @param today today's date
 * @param version the program's version
 * @param progress shows the progress of long commands
 * @param columns width of the terminal that shows the results; empty where none does
 */
public record Environment(
        Path workingFolder,
        Optional<Path> programFolder,
        Map<String, String> environment,
        InputStream standardInput,
        Charset charset,
        LocalDate today,
        String version,
        Progress progress,
        OptionalInt columns) {

    public Environment {
        environment = Map.copyOf(environment);
    }

    /** An environment without a terminal. */
    public Environment(
            Path workingFolder,
            Optional<Path> programFolder,
            Map<String, String> environment,
            InputStream standardInput,
            Charset charset,
            LocalDate today,
            String version) {
        this(
                workingFolder,
                programFolder,
                environment,
                standardInput,
                charset,
                today,
                version,
                Progress.QUIET,
                OptionalInt.empty());
    }

    /** An environment variable, if it is set and not blank. */
    Optional<String> variable(String name) {
        return Optional.ofNullable(environment.get(name)).filter(value -> !value.isEmpty());
    }
}
