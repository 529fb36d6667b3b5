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

    /** True if a file lies in a folder or below it, whatever links lead there. */
    boolean isInside(Path file, Path folder);

    /** Makes an empty file, which must not exist, with the mode, owner and attributes of another or the usual ones. */
    void create(Path file, Optional<Path> like) throws IOException;

    /**
     * Makes a file, which must not exist, to be appended to, with no more permissions than another has. The file is
     * held until it is closed or the process ends.
     */
    Appending append(Path file, Optional<Path> like) throws IOException;

    /**
     * Takes a file that {@link #create} made, by this process or another, so that no other can: until it is given back
     * or the process ends. Empty where another process has it, or it is gone.
     */
    Optional<Turn> hold(Path file) throws IOException;

    /** True if a living process holds a file that {@link #append} made; also if that cannot be found out. */
    boolean isHeld(Path file);

    /** The bytes of a file that this program made: never through a link, never from a pipe. */
    byte[] readOwn(Path file, int limit) throws IOException;

    /** The name of a file's owner; "" where there is none. */
    String owner(Path file);

    /** How many bytes a file has that this program made; 0 if there is no such file. */
    long sizeOfOwn(Path file);

    /** Writes into a file that {@link #create} made. */
    void write(Path file, byte[] bytes) throws IOException;

    /** Has the contents of a file written to the medium. */
    void force(Path file) throws IOException;

    /** Gives a file another name in the same folder in one step; what had that name is gone. */
    void move(Path from, Path to) throws IOException;

    /** Has the names in a folder written to the medium, where the system can. */
    void forceFolder(Path folder) throws IOException;

    /** Waits a millisecond for another program. */
    void pause();

    /** Takes a file away, if it is there. */
    void delete(Path file) throws IOException;

    /** A file that only one process holds. */
    interface Turn {

        /** Deletes the file, unless it is another's by now; may be tried again where it fails. */
        void giveBack() throws IOException;
    }

    /** A file that is appended to. */
    interface Appending {

        /** Puts bytes at the end; whoever reads the file sees them. */
        void append(byte[] bytes) throws IOException;

        /** Cuts the file off after a number of bytes. */
        void cut(long length) throws IOException;

        /** Has everything written to the medium; may be called while another thread appends. */
        void force() throws IOException;

        /** Lets go of the file. */
        void close() throws IOException;
    }
}
