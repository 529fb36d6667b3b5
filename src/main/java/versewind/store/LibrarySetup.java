package versewind.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import versewind.organ.Quoted;
import versewind.schema.FileFormat;

/**
 * Makes a new library with the instruments and plans that are shipped. It is put together beside its place and moved
 * there in one step, so that it is whole or not there, and of two programs that make one at once neither spoils the
 * other's.
 */
final class LibrarySetup {

    private static final List<String> SHELVES = List.of("instruments", "plans");

    private LibrarySetup() {}

    /**
     * Makes a library.
     *
     * @param folder its place, where nothing is yet
     * @param examples the folder whose instruments and plans are copied
     */
    static void of(Path folder, Path examples) throws BadFile {
        try {
            make(folder, examples);
        } catch (IOException trouble) {
            throw BadFile.whole(
                    folder,
                    "the folder for your plans could not be made: "
                            + Quoted.plain(String.valueOf(trouble.getMessage())),
                    "Name another with --library.");
        }
    }

    private static void make(Path folder, Path examples) throws IOException {
        Files.createDirectories(folder.toAbsolutePath().getParent());
        Path making = Files.createTempDirectory(folder.toAbsolutePath().getParent(), ".versewind-");
        try {
            for (String shelf : SHELVES) {
                copy(examples.resolve(shelf), Files.createDirectory(making.resolve(shelf)));
            }
            Files.move(making, folder, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException | UncheckedIOException trouble) {
            remove(making);
            if (!Files.isDirectory(folder)) {
                throw trouble instanceof IOException plain ? plain : ((UncheckedIOException) trouble).getCause();
            }
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        if (!Files.isDirectory(from)) {
            return;
        }
        try (Stream<Path> files = Files.list(from)) {
            for (Path file :
                    files.filter(each -> FileFormat.isId(JsonFolder.idOf(each))).toList()) {
                Files.copy(file, to.resolve(file.getFileName().toString()));
            }
        }
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(each);
            }
        }
    }
}
