package versewind;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;

class MainTest {

    private static ProcessBuilder builder(String... arguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Dnative.encoding=UTF-8",
                "-cp",
                System.getProperty("java.class.path"),
                "versewind.Main"));
        command.addAll(Arrays.asList(arguments));
        return new ProcessBuilder(command);
    }

    private static Process started(String... arguments) throws IOException {
        return builder(arguments).start();
    }

    private static String words(Process process) throws IOException {
        return new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    @Test
    void results_go_to_the_standard_output_and_the_exit_status_says_how_it_went() throws Exception {
        Process process = started("assess", "harvest-festival");
        String results = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

        assertThat(words(process)).isEmpty();
        assertThat(process.waitFor()).isZero();
        Golden.check("assess/harvest-festival.txt", results);
    }

    @Test
    void a_reader_that_has_had_enough_is_no_trouble() throws Exception {
        Process process = started("assess", "wedding");
        process.getInputStream().close();

        assertThat(words(process)).isEmpty();
        assertThat(process.waitFor()).isZero();
    }

    @Test
    void bad_use_is_a_sentence_on_the_standard_error_and_no_more() throws Exception {
        Process process = started("assess", "nothing-of-the-kind");

        assertThat(words(process))
                .startsWith("versewind: plans: there is no \"nothing-of-the-kind\" here.")
                .hasLineCount(1);
        assertThat(process.getInputStream().readAllBytes()).isEmpty();
        assertThat(process.waitFor()).isEqualTo(2);
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void a_full_disk_is_told() throws Exception {
        Process process = builder("assess", "wedding")
                .redirectOutput(new File("/dev/full"))
                .start();

        assertThat(words(process))
                .startsWith("versewind: The results could not be written: ")
                .hasLineCount(1);
        assertThat(process.waitFor()).isEqualTo(2);
    }
}
