package versewind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GoldenTest {

    @Test
    void no_golden_file_is_an_orphan() throws IOException {
        assertThat(Golden.orphans(Golden.FOLDER, Path.of("src/test/java"))).isEmpty();
    }

    @Test
    void a_file_that_no_test_names_is_an_orphan(@TempDir Path folder) throws IOException {
        Path golden = Files.createDirectories(folder.resolve("golden/some"));
        Files.writeString(golden.resolve("named.txt"), "a");
        Files.writeString(golden.resolve("forgotten.txt"), "b");
        Path sources = Files.createDirectories(folder.resolve("java"));
        Files.writeString(sources.resolve("A.java"), "Golden.check(\"some/named.txt\", text);");

        assertThat(Golden.orphans(folder.resolve("golden"), sources)).containsExactly("some/forgotten.txt");
    }

    @Test
    void a_folder_whose_names_a_test_asks_for_has_no_orphans(@TempDir Path folder) throws IOException {
        Path golden = Files.createDirectories(folder.resolve("golden/some"));
        Files.writeString(golden.resolve("one.txt"), "a");
        Path sources = Files.createDirectories(folder.resolve("java"));
        Files.writeString(sources.resolve("A.java"), "assertThat(Golden.names(\"some\")).isEqualTo(cases);");

        assertThat(Golden.orphans(folder.resolve("golden"), sources)).isEmpty();
    }

    @Test
    void a_missing_golden_file_fails(@TempDir Path folder) {
        assertThatThrownBy(() -> Golden.compare(folder.resolve("such.txt"), "text"))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("such.txt");
    }

    @Test
    void another_text_fails(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("such.txt"), "text\n");
        assertThatThrownBy(() -> Golden.compare(file, "text")).isInstanceOf(AssertionError.class);
    }
}
