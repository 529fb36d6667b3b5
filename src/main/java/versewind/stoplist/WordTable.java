package versewind.stoplist;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * The tables of words that lie beside this package: fields parted by |, sources in lines beginning with #, a line of
 * heads.
 */
final class WordTable {

    private WordTable() {}

    /** The rows of a table without its heads, each split into its fields. */
    static List<List<String>> rows(String name) {
        List<List<String>> rows = new ArrayList<>();
        for (String line : text(name).split("\n", -1)) {
            if (!line.startsWith("#") && !line.isBlank()) {
                rows.add(List.of(line.strip().split("\\|", -1)));
            }
        }
        return List.copyOf(rows.subList(1, rows.size()));
    }

    /** The names in a field, parted by commas. */
    static List<String> names(String field) {
        return List.of(field.split(", ", -1));
    }

    private static String text(String name) {
        try (InputStream stream = WordTable.class.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalStateException("the table " + name + " is missing from the program");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("the table " + name + " cannot be read", unreadable);
        }
    }
}
