package versewind.store;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Steps on the disk, one at a time, so that a test can stop the program between any two. */
interface Disk {

    /** True if there is anything under this name. */
    boolean exists(Path file);

    /** True if an existing file may be written. */
    boolean isWritable(Path file);

    /** All bytes of a file, but no more than a limit. */
    byte[] read(Path file, int limit) throws IOException;

    /** When a file was last written. */
    Instant modified(Path file) throws IOException;

    /** The files in a folder, in no order; none if there is no such folder. */
    List<Path> list(Path folder) throws IOException;

    /** Makes a folder and those above it, if they are not there. */
    void makeFolder(Path folder) throws IOException;

    /** The file that a name leads to: itself, or the end of a chain of symbolic links, there or not. */
    Path follow(Path file) throws IOException;

    /** Makes an empty file, which must not exist, with the permissions of another or with the usual ones. */
    void create(Path file, Optional<Path> like) throws IOException;

    /** Writes into a file that {@link #create} made. */
    void write(Path file, byte[] bytes) throws IOException;

    /** Has the contents of a file written to the medium. */
    void force(Path file) throws IOException;

    /** Gives a file another name in the same folder in one step; what had that name is gone. */
    void move(Path from, Path to) throws IOException;

    /** Has the names in a folder written to the medium, where the system can. */
    void forceFolder(Path folder) throws IOException;

    /** Takes a file away, if it is there. */
    void delete(Path file) throws IOException;
}
