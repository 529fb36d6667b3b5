package versewind.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.Main;

class WindowDisplayTest {

    private static final File PICTURE = new File("target/window.png");

    @ParameterizedTest
    @CsvSource({
        "Linux, '', '', false",
        "Linux, :0, '', true",
        "Linux, '', wayland-0, true",
        "Mac OS X, '', '', true",
        "Windows 11, '', '', true"
    })
    void a_window_is_tried_only_where_one_may_be_shown(String system, String x11, String wayland, boolean may) {
        assertThat(Place.mayHaveWindows(system, Map.of("DISPLAY", x11, "WAYLAND_DISPLAY", wayland)))
                .isEqualTo(may);
    }

    @Test
    void without_windows_a_sentence_says_so(@TempDir Path folder) throws IOException, InterruptedException {
        Files.createDirectories(folder.resolve("plans"));
        Files.createDirectories(folder.resolve("instruments"));
        List<String> said = run("", folder, Main.class, "--window", "--library", folder.toString());

        assertThat(said)
                .singleElement()
                .asString()
                .startsWith("versewind: a window cannot be opened: ")
                .endsWith("; `versewind assess PLAN` works without one.");
    }

    @Test
    void a_terminal_is_taken_where_no_window_opens_and_no_class_of_windows_is_loaded_where_none_is_wanted(
            @TempDir Path folder) throws IOException {
        assumeTrue(Pane.isPossible(), "tmux is not here, so no terminal can be played");
        for (String shelf : List.of("plans", "instruments")) {
            copy(Path.of(shelf), Files.createDirectories(folder.resolve(shelf)));
        }
        Path loaded = folder.resolve("loaded");
        Files.writeString(
                folder.resolve("java"),
                "-Djava.awt.headless=true -Xlog:class+load:file=" + loaded + " -cp "
                        + System.getProperty("java.class.path") + " " + Main.class.getName() + " --library " + folder);
        try (Pane pane = new Pane(folder)) {
            String java = Path.of(System.getProperty("java.home"), "bin", "java") + " @java";
            pane.command(java + " harvest-festival");
            pane.await("Open Diapason");
            pane.type("n");
            pane.await("\u25B8V1");
            pane.type("q");
            pane.await(screen -> screen.strip().endsWith("$"));
            assertThat(Files.readString(loaded))
                    .contains("com.googlecode.lanterna")
                    .doesNotContain("java.awt", "javax.swing", "sun.awt");

            pane.command(java + " --window harvest-festival");
            pane.await("A window cannot be opened: this machine shows none");
            assertThat(pane.screen()).contains("Open Diapason");
            pane.type("q");
        }
    }

    @Test
    @Tag("slow")
    void the_program_in_a_window_draws_grows_its_letters_asks_before_it_closes_and_ends(@TempDir Path folder)
            throws IOException, InterruptedException {
        assumeTrue(isThere("Xvfb"), "Xvfb is not installed");
        assumeTrue(
                Files.exists(Path.of(System.getProperty("java.home"), "lib", "libawt_xawt.so")),
                "this Java has no windows");
        for (String shelf : List.of("plans", "instruments")) {
            copy(Path.of(shelf), Files.createDirectories(folder.resolve(shelf)));
        }
        Process screen = new ProcessBuilder("Xvfb", "-displayfd", "1", "-screen", "0", "1280x900x24")
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            String number = screen.inputReader().readLine();
            List<String> said = played(":" + number, folder);

            assertThat(said).contains("columns: 100", "status: 0").anyMatch(line -> line.startsWith("columns with"));
            assertThat(columns(said, "columns with larger letters")).isBetween(70, 95);
            BufferedImage picture = ImageIO.read(PICTURE);
            assertThat(colours(picture))
                    .as("paper, ink, and the green of a verse that is led")
                    .contains(0xFFFFFF, 0x101010, 0x006400);
        } finally {
            screen.destroy();
        }
    }

    private static int columns(List<String> said, String what) {
        return said.stream()
                .filter(line -> line.startsWith(what))
                .mapToInt(line -> Integer.parseInt(line.substring(what.length() + 2)))
                .findFirst()
                .orElse(0);
    }

    private static List<Integer> colours(BufferedImage picture) {
        return Stream.iterate(0, y -> y < picture.getHeight(), y -> y + 1)
                .flatMap(y -> Stream.iterate(0, x -> x < picture.getWidth(), x -> x + 1)
                        .map(x -> picture.getRGB(x, y) & 0xFFFFFF))
                .distinct()
                .toList();
    }

    private static List<String> played(String display, Path library) throws IOException, InterruptedException {
        return run(display, library, WindowProbe.class, library.toString(), PICTURE.getPath());
    }

    /** What a program says that runs in a process of its own. */
    private static List<String> run(String display, Path folder, Class<?> program, String... arguments)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                program.getName()));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said").toFile());
        builder.environment().keySet().removeAll(List.of("DISPLAY", "WAYLAND_DISPLAY"));
        if (!display.isEmpty()) {
            builder.environment().put("DISPLAY", display);
        }
        Process process = builder.start();
        boolean ended = process.waitFor(90, TimeUnit.SECONDS);
        process.destroyForcibly();
        List<String> said = Files.readAllLines(folder.resolve("said"));
        assertThat(ended).as(String.join("\n", said)).isTrue();
        return said;
    }

    private static boolean isThere(String program) {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator, -1))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.list(from)) {
            for (Path file : files.toList()) {
                Files.copy(file, to.resolve(file.getFileName().toString()));
            }
        }
    }
}
