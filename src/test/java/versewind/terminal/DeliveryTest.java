package versewind.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DeliveryTest {

    @TempDir
    private Path folder;

    private static String words(Map<String, String> environment, String file) {
        return new Delivery(environment).words(Path.of(file));
    }

    @Test
    void a_page_is_printed_by_a_browser() {
        assertThat(words(Map.of(), "/s/a.html"))
                .isEqualTo("The sheet is written to /s/a.html. To print it, open it in a browser.");
    }

    @Test
    void a_text_is_printed_by_lp_where_there_is_one() throws IOException {
        Map<String, String> path = Map.of("PATH", "/nowhere:" + folder);
        assertThat(words(path, "/s/a b.txt")).isEqualTo("The sheet is written to /s/a b.txt.");
        assertThat(Files.createFile(folder.resolve("lp")).toFile().setExecutable(true))
                .isTrue();
        assertThat(words(path, "/s/a b.txt")).endsWith(" Print it with: lp '/s/a b.txt'.");
    }

    @Test
    void from_another_computer_it_is_fetched_by_scp() {
        assertThat(words(Map.of("USER", "ines", "SSH_CONNECTION", "192.0.2.7 51512 192.0.2.1 22"), "/s/a.txt"))
                .endsWith(" with: scp ines@192.0.2.1:/s/a.txt .");
        assertThat(words(Map.of("SSH_CONNECTION", "2001:db8::7 51512 2001:db8::1 2222"), "/s/a.txt"))
                .endsWith(" with: scp -P 2222 [2001:db8::1]:/s/a.txt .");
    }
}
