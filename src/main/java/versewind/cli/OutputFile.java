package versewind.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import versewind.organ.NotationException;

/** The file that {@code -o} names. Its folder has to be there: one that is misspelt is not to be made. */
final class OutputFile {

    private OutputFile() {}

    /** The path of a file as it was typed in a folder. */
    static Path of(String name, Path workingFolder) throws NotationException {
        Path file = path(name, workingFolder);
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null && !Files.isDirectory(folder)) {
            throw new UsageException("There is no folder " + folder + " for \"" + name
                    + "\". Make it first, or write another" + " name after -o.");
        }
        return file;
    }

    private static Path path(String name, Path workingFolder) throws NotationException {
        try {
            return workingFolder.resolve(name);
        } catch (InvalidPathException wrong) {
            throw new UsageException("No file can be called \"" + name + "\". Choose another name.");
        }
    }
}
