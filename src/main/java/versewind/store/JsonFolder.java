package versewind.store;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import versewind.organ.Nearest;
import versewind.organ.Quoted;
import versewind.schema.FileFormat;

/** One of the two folders of a library: files that are named by an id and end in ".json". */
final class JsonFolder {
    private static final String ENDING = ".json";

    private final Path home;
    private final Disk disk;
    private final String usualId;

    /**
     * A folder.
     *
     * @param home the folder
     * @param usualId the id for what has a title without a letter
     */
    JsonFolder(Path home, Disk disk, String usualId) {
        this.home = home;
        this.disk = disk;
        this.usualId = usualId;
    }

    /** The file of an id, there or not. */
    Path path(String id) {
        return home.resolve(id + ENDING);
    }

    /** The file of a new id. */
    Path newPath(String id) {
        if (!FileFormat.isId(id)) {
            throw new IllegalArgumentException(Quoted.text(id) + " cannot be the name of a file");
        }
        return path(id);
    }

    /** All files in the folder in the order of their names, also those that are not named by an id. */
    List<Path> inOrder() throws BadFile {
        return files().stream().sorted().toList();
    }

    /** The same in no order: many are listed sooner so. */
    List<Path> files() throws BadFile {
        try {
            return disk.list(home);
        } catch (IOException trouble) {
            throw BadFile.whole(
                    home.normalize().toString(),
                    "the folder could not be read: " + Quoted.plain(String.valueOf(trouble.getMessage())),
                    "Ask its owner for the permission to read it.");
        }
    }

    /** The ids of the files. */
    List<String> ids() throws BadFile {
        return inOrder().stream().map(JsonFolder::idOf).filter(FileFormat::isId).toList();
    }

    /** Name of a file without its ending; "" for what is no JSON file. */
    static String idOf(Path file) {
        String name = file.getFileName().toString();
        return name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : "";
    }

    /** Name of a file without the ending of JSON, if it has that. */
    static String stem(Path file) {
        String name = file.getFileName().toString();
        return name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
    }

    /** The file of an id in this folder, which is there, or of a path, which may not be. */
    Path find(String idOrPath) throws BadFile {
        if (idOrPath.endsWith(ENDING) || idOrPath.contains("/") || idOrPath.contains("\\")) {
            try {
                return Path.of(idOrPath);
            } catch (InvalidPathException impossible) {
                throw BadFile.whole(Quoted.plain(idOrPath), "no file can have this name", "Check the name.");
            }
        }
        if (!FileFormat.isId(idOrPath) || !isTaken(idOrPath)) {
            throw BadFile.whole(
                    home.normalize().toString(),
                    "there is no " + Quoted.text(idOrPath) + " here",
                    Nearest.sentence(idOrPath, ids(), "There are"));
        }
        return path(idOrPath);
    }

    /** True if there is a file of this id, or unsaved work on one. */
    boolean isTaken(String id) {
        return disk.exists(path(id))
                || disk.exists(Autosaves.pathOf(path(id)))
                || !new JournalFiles(disk, Optional.empty()).all(path(id)).isEmpty();
    }

    /** An id for something new of this title: ASCII, lower case, hyphens, and not taken. */
    String freeId(String title) {
        String stem = Slug.of(title).orElse(usualId);
        String id = stem;
        for (int i = 2; isTaken(id); i++) {
            id = stem + "-" + i;
        }
        return id;
    }
}
