package versewind.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
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
        return Commands.run(List.of(arguments), surroundings(folder, Optional.empty(), charset));
    }

    static Environment surroundings(Path folder, Optional<Path> programFolder, Charset charset) {
        return new Environment(
                folder,
                programFolder,
                Map.of(),
                InputStream.nullInputStream(),
                charset,
                LocalDate.of(2026, 11, 1),
                "1.2.3");
    }

    /** Makes a library of a shipped instrument and one plan, {@code plans/odd.json}. */
    static void makeLibrary(Path folder, String plan) throws IOException {
        Path instrument = Path.of("instruments", "st-tethwin.json");
        Files.createDirectories(folder.resolve("plans"));
        Files.createDirectories(folder.resolve("instruments"));
        Files.copy(instrument, folder.resolve(instrument));
        Files.writeString(folder.resolve("plans/odd.json"), plan);
    }
}
