package versewind.terminal;

import java.io.IOException;
import java.io.OutputStream;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;

/** The program installed in a folder with a blank in its name, with {@link Echo} in the editor's place. */
record Installed(Path folder) {

    static Installed in(@TempDir Path parent) throws IOException, URISyntaxException {
        Path folder = Files.createDirectories(parent.resolve("organ loft"));
        Path bin = Files.createDirectories(folder.resolve("bin"));
        Path lib = Files.createDirectories(folder.resolve("lib"));
        String launcher = Files.readString(Path.of("src/main/launcher/versewind"));
        Path script =
                Files.writeString(bin.resolve("versewind"), launcher.replace("versewind.Main", Echo.class.getName()));
        if (!script.toFile().setExecutable(true)) {
            throw new IOException("cannot be made executable: " + script);
        }
        // Classes and tests may have been compiled into one folder.
        jar(
                lib.resolve("versewind.jar"),
                Stream.of(home(Console.class), home(Echo.class)).distinct().toList());
        Path lanterna = home(com.googlecode.lanterna.input.KeyStroke.class);
        Files.copy(lanterna, lib.resolve(lanterna.getFileName().toString()));
        Files.createDirectories(folder.resolve("instruments"));
        Files.createFile(Files.createDirectories(folder.resolve("plans")).resolve("harvest-festival.json"));
        Files.createSymbolicLink(parent.resolve("versewind"), script);
        return new Installed(folder);
    }

    private static Path home(Class<?> of) throws URISyntaxException {
        return Path.of(of.getProtectionDomain().getCodeSource().getLocation().toURI());
    }

    private static void jar(Path target, List<Path> folders) throws IOException {
        try (OutputStream out = Files.newOutputStream(target);
                JarOutputStream jar = new JarOutputStream(out)) {
            for (Path root : folders) {
                for (Path file : classes(root)) {
                    jar.putNextEntry(new JarEntry(root.relativize(file).toString()));
                    Files.copy(file, jar);
                }
            }
        }
    }

    private static List<Path> classes(Path root) throws IOException {
        try (Stream<Path> files = Files.walk(root)) {
            return files.filter(file -> file.toString().endsWith(".class")).toList();
        }
    }

    /** The launcher by way of a symbolic link. */
    Path link() {
        return folder.resolveSibling("versewind");
    }

    /** The processes that run from this folder and whose command begins so. */
    Stream<ProcessHandle> processes(String program) {
        return ProcessHandle.allProcesses().filter(process -> {
            ProcessHandle.Info info = process.info();
            return info.command().filter(command -> command.endsWith(program)).isPresent()
                    && info.commandLine()
                            .filter(line -> line.contains(folder.getParent().toString()))
                            .isPresent();
        });
    }
}
