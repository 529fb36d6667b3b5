package versewind.cli;

import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Where the program was started.
 *
 * @param workingFolder the folder it was started in
 * @param programFolder the folder it lies in, if that is known
 * @param charset the terminal's character set
 * @param today the day
 * @param version the program's version
 */
public record Surroundings(
        Path workingFolder, Optional<Path> programFolder, Charset charset, LocalDate today, String version) {

    /**
     * The folder of the library: the working folder if it has plans and instruments, else the program's own if that is
     * known.
     */
    Path libraryFolder() {
        return holdsLibrary(workingFolder) ? workingFolder : programFolder.orElse(workingFolder);
    }

    private static boolean holdsLibrary(Path folder) {
        return Files.isDirectory(folder.resolve("plans")) && Files.isDirectory(folder.resolve("instruments"));
    }
}
