package versewind.terminal;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The folder that the build makes, which is the program. */
@Tag("slow")
class BuiltFolderTest {

    private static final Path FOLDER = Path.of("target/versewind").toAbsolutePath();
    private static final Path ARCHIVE = FOLDER.resolve("lib/versewind.jsa");

    @BeforeAll
    static void package_first() {
        assumeTrue(Files.isRegularFile(FOLDER.resolve("lib/versewind.jar")), "mvn package makes the folder");
    }

    private static List<Path> jars() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER.resolve("lib"))) {
            return files.filter(file -> file.toString().endsWith(".jar"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void every_library_is_named_with_its_licence_and_no_other_lies_there() throws IOException {
        List<String> named = Files.readAllLines(FOLDER.resolve("LIBRARIES")).stream()
                .filter(line -> line.startsWith(" "))
                .map(line ->
                        line.replaceFirst(" +\\([\\w-][\\w ,.-]+\\) .*\\([^:]+:([^:]+):([^: ]+) - .*", "$1-$2.jar"))
                .toList();
        assertThat(jars().stream().map(jar -> jar.getFileName().toString()))
                .hasSizeGreaterThan(4)
                .filteredOn(name -> !name.equals("versewind.jar"))
                .containsExactlyInAnyOrderElementsOf(named);
    }

    @Test
    void the_bill_of_materials_has_every_library_and_lanternas_licence_lies_beside_it() throws IOException {
        String bill = Files.readString(FOLDER.resolve("bom.json"));
        for (Path jar : jars()) {
            String name = jar.getFileName().toString().replaceFirst("-?[0-9.]*\\.jar$", "");
            assertThat(bill).contains("\"name\" : \"" + name + "\"");
        }
        assertThat(FOLDER.resolve("lib/LGPL-3.0.txt")).content().contains("GNU LESSER GENERAL PUBLIC LICENSE");
        assertThat(FOLDER.resolve("lib/GPL-3.0.txt")).content().contains("GNU GENERAL PUBLIC LICENSE");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "--version"})
    void what_is_told_without_java_is_what_java_would_tell(String option) throws IOException {
        Path text = FOLDER.resolve("share/versewind/" + option.substring(2) + ".txt");
        Process java = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin/java").toString(),
                        "-cp",
                        FOLDER.resolve("lib") + "/*",
                        "versewind.Main",
                        option)
                .start();
        String told = new String(java.getInputStream().readAllBytes(), UTF_8);
        assertThat(Files.readString(text)).isEqualTo(told).isNotBlank();
    }

    @Test
    void the_archive_of_classes_fits_the_java_and_the_libraries_of_the_build() throws Exception {
        // the launcher has the program's own jar first
        String classpath = jars().stream()
                .sorted(Comparator.comparing(jar -> !jar.endsWith("versewind.jar")))
                .map(Path::toString)
                .collect(Collectors.joining(":"));
        assertThat(Files.readString(ARCHIVE.resolveSibling("versewind.jsa.stamp")))
                .startsWith(classpath + " ");
        Process java = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin/java").toString(),
                        "-XX:+UseSerialGC",
                        "-Xms8m",
                        "-Xmn6m",
                        "-Xmx128m",
                        "-Xshare:on",
                        "-XX:SharedArchiveFile=" + ARCHIVE,
                        "-cp",
                        classpath,
                        "versewind.Main",
                        "--version")
                .redirectErrorStream(true)
                .start();
        assertThat(new String(java.getInputStream().readAllBytes(), UTF_8)).startsWith("versewind ");
        assertThat(java.waitFor()).isZero();
    }
}
