package versewind.store;

import java.nio.file.Path;

/**
 * An instrument in the list of instruments; only the head of its file was read.
 *
 * @param id name of its file, without its ending
 * @param path its file
 * @param name what the organ is called; the id where the file has no name that can be read
 * @param place where it stands; blank where the file does not say
 */
public record InstrumentEntry(String id, Path path, String name, String place) {}
