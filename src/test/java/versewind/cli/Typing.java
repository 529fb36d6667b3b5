package versewind.cli;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Types commands in a folder. */
final class Typing {

    /** The folder with the shipped instruments and plans. */
    static final Path SHIPPED = Path.of("");

    private Typing() {}

    static Reply typed(String... arguments) {
        return typedIn(SHIPPED, StandardCharsets.UTF_8, arguments);
    }

    static Reply typedIn(Path folder, Charset charset, String... arguments) {
        return Commands.run(
                List.of(arguments),
                new Surroundings(folder, Optional.empty(), charset, LocalDate.of(2026, 11, 1), "1.2.3"));
    }
}
