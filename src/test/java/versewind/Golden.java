package versewind;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Texts that were looked at once and found good. A missing one fails; {@code -Dgolden.update=true} writes them anew,
 * but not where CI=true.
 *
 * <p>Every file has a test that names it: either it is named in a literal, or its folder is asked for by {@link
 * #names} and compared with the cases that there are.
 */
public final class Golden {

    static final Path FOLDER = Path.of("src/test/resources/golden");

    private Golden() {}

    /**
     * The text is what it was.
     *
     * @param name of its file: "assess/wedding.txt"
     */
    public static void check(String name, String text) {
        Path file = FOLDER.resolve(name);
        if (Boolean.getBoolean("golden.update")) {
            update(file, text);
        }
        compare(file, text);
    }

    private static void update(Path file, String text) {
        assertThat(System.getenv("CI"))
                .as("golden files are looked at by a person before they are changed")
                .isNotEqualTo("true");
        try {
            Files.createDirectories(file.getParent());
            Files.writeString(file, text);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    static void compare(Path file, String text) {
        assertThat(file)
                .as("golden file; if it is new, write it with -Dgolden.update=true")
                .isRegularFile();
        try {
            assertThat(text).as(file.toString()).isEqualTo(Files.readString(file));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The names of all golden files in a folder, "wedding.txt"; for a test that every one of them has its case. */
    public static List<String> names(String folder) {
        try (Stream<Path> files = Files.list(FOLDER.resolve(folder))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The files that no test source names, neither by name nor by their folder. */
    static List<String> orphans(Path golden, Path testSources) throws IOException {
        StringBuilder sources = new StringBuilder();
        try (Stream<Path> files = Files.walk(testSources)) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".java")).toList()) {
                sources.append(Files.readString(file, StandardCharsets.UTF_8));
            }
        }
        try (Stream<Path> files = Files.walk(golden)) {
            return files.filter(Files::isRegularFile)
                    .map(golden::relativize)
                    .filter(file -> sources.indexOf('"' + slashed(file) + '"') < 0
                            && sources.indexOf("Golden.names(\"" + slashed(file.getParent()) + "\")") < 0)
                    .map(Golden::slashed)
                    .sorted()
                    .toList();
        }
    }

    private static String slashed(Path file) {
        return file == null ? "" : file.toString().replace('\\', '/');
    }
}
