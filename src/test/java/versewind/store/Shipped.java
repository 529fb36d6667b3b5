package versewind.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The instruments and plans that come with the program. */
final class Shipped {
    static final Path INSTRUMENTS = Path.of("instruments");
    static final Path PLANS = Path.of("plans");

    private Shipped() {}

    static List<Path> instruments() {
        return files(INSTRUMENTS);
    }

    static List<Path> plans() {
        return files(PLANS);
    }

    static Path smallest(List<Path> files) {
        return files.stream()
                .min((a, b) -> Long.compare(a.toFile().length(), b.toFile().length()))
                .orElseThrow();
    }

    private static List<Path> files(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> !file.getFileName().toString().startsWith("."))
                    .sorted()
                    .toList();
        } catch (IOException trouble) {
            throw new IllegalStateException(trouble);
        }
    }
}
