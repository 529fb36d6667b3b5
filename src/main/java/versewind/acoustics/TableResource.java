package versewind.acoustics;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Reads tables among the resources: comma-separated, comment lines with the sources (#), then a header line. */
public final class TableResource {

    private TableResource() {}

    /** The rows of a table of the sound model without its header, split into fields. */
    public static List<List<String>> rows(String name) {
        return rows("sound", name);
    }

    /** The rows of a table of a package, likewise. */
    public static List<List<String>> rows(String packageName, String name) {
        List<List<String>> rows = new ArrayList<>();
        for (String line : text("/versewind/" + packageName + "/" + name).split("\n", -1)) {
            if (!line.startsWith("#") && !line.isBlank()) {
                rows.add(List.of(line.strip().split(",", -1)));
            }
        }
        return List.copyOf(rows.subList(1, rows.size()));
    }

    private static String text(String name) {
        try (InputStream stream = TableResource.class.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalStateException("the table " + name + " is missing from the program");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("the table " + name + " cannot be read", unreadable);
        }
    }
}
