package versewind.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import versewind.organ.NotationException;
import versewind.store.BadFile;
import versewind.store.Library;

/**
 * Where the library lies: in the folder of {@code --library}, else in that of the variable {@code VERSEWIND_LIBRARY},
 * else in the working folder if that has {@code plans/} and {@code instruments/} and is not the program's own, else in
 * the user's data folder, where it is made on first use with the instruments and plans that are shipped.
 *
 * <p>The user's data folder is {@code $XDG_DATA_HOME/versewind}, or {@code ~/.local/share/versewind} where that
 * variable is not set or no absolute path. Source: XDG Base Directory Specification, version 0.8.
 */
public final class LibraryLocator {

    static final String OPTION = "--library";
    static final String VARIABLE = "VERSEWIND_LIBRARY";

    /** No library was named. */
    static final LibraryLocator NOT_TYPED = new LibraryLocator(Optional.empty(), List.of());

    private static final String END_OF_OPTIONS = "--";

    private final Optional<String> typedFolder;
    private final List<String> rest;

    private LibraryLocator(Optional<String> typedFolder, List<String> rest) {
        this.typedFolder = typedFolder;
        this.rest = List.copyOf(rest);
    }

    /**
     * Takes {@code --library} out of the arguments, wherever it stands; without a folder after it, it is left in place.
     */
    static LibraryLocator of(List<String> typed) throws NotationException {
        Optional<String> folder = Optional.empty();
        List<String> rest = new ArrayList<>();
        for (int i = 0; i < typed.size(); i++) {
            String word = typed.get(i);
            if (word.equals(END_OF_OPTIONS)) {
                rest.addAll(typed.subList(i, typed.size()));
                break;
            }
            boolean isApart = word.equals(OPTION) && i + 1 < typed.size();
            if (!isApart && !word.startsWith(OPTION + "=")) {
                rest.add(word);
                continue;
            }
            if (folder.isPresent()) {
                throw new UsageException(OPTION + " can be given only once.");
            }
            folder = Optional.of(isApart ? typed.get(++i) : word.substring(OPTION.length() + 1));
        }
        return new LibraryLocator(folder, rest);
    }

    /** The other arguments. */
    List<String> rest() {
        return rest;
    }

    /** Opens the library; the one in the user's data folder is made if it is not there yet. */
    Library library(Environment environment) throws BadFile, NotationException {
        Library library = found(environment);
        return state(environment.environment()).map(library::keepingElsewhere).orElse(library);
    }

    private Library found(Environment environment) throws BadFile, NotationException {
        if (typedFolder.isPresent()) {
            return new Library(existing(environment, typedFolder.get(), OPTION));
        }
        Optional<String> set = environment.variable(VARIABLE);
        if (set.isPresent()) {
            return new Library(existing(environment, set.get(), VARIABLE));
        }
        Path working = environment.workingFolder();
        if (isLibrary(working) && !isFolderOfProgram(environment)) {
            return new Library(working);
        }
        Optional<Path> own = own(environment);
        if (own.isEmpty()) {
            throw new UsageException(
                    "There is no home folder to keep your plans in. Name a folder with " + OPTION + ".");
        }
        return Library.founded(own.get(), environment.programFolder());
    }

    private static boolean isLibrary(Path folder) {
        return Files.isDirectory(folder.resolve("plans")) && Files.isDirectory(folder.resolve("instruments"));
    }

    /** True in the program's own folder, whose plans are examples and whose bin is not for discarded plans. */
    private static boolean isFolderOfProgram(Environment environment) {
        Path working = environment.workingFolder().toAbsolutePath().normalize();
        return environment
                .programFolder()
                .filter(program -> program.toAbsolutePath().normalize().equals(working))
                .isPresent();
    }

    private static Path existing(Environment environment, String folder, String named) throws NotationException {
        Optional<Path> path = path(folder).map(environment.workingFolder()::resolve);
        if (folder.isEmpty() || path.filter(Files::isDirectory).isEmpty()) {
            throw new UsageException("There is no folder \"" + folder + "\", which " + named
                    + " names. Create it, or name the folder that contains plans and instruments.");
        }
        return path.get();
    }

    /** The user's own library. */
    private static Optional<Path> own(Environment environment) {
        return folder(environment.environment(), "XDG_DATA_HOME", "share");
    }

    /** The folder for what a later session may need: edits that cannot be kept elsewhere, and logs. */
    public static Optional<Path> state(Map<String, String> environment) {
        return folder(environment, "XDG_STATE_HOME", "state");
    }

    private static Optional<Path> folder(Map<String, String> environment, String variable, String usual) {
        return absolute(environment.getOrDefault(variable, ""))
                .or(() -> absolute(environment.getOrDefault("HOME", ""))
                        .map(home -> home.resolve(".local").resolve(usual)))
                .map(parent -> parent.resolve("versewind"));
    }

    private static Optional<Path> absolute(String written) {
        return path(written).filter(Path::isAbsolute);
    }

    private static Optional<Path> path(String written) {
        try {
            return Optional.of(Path.of(written));
        } catch (InvalidPathException impossible) {
            return Optional.empty();
        }
    }
}
