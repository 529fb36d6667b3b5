package versewind.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;
import versewind.store.BadFile;
import versewind.store.Library;

/**
 * Prints one table of what the program costs, each figure beside a reference measured in the same run. Needs Linux and
 * its {@code script}; what else is missing is said below the table.
 */
public final class Bench {

    private Bench() {}

    /** The built folder, then perhaps which rows: start, keys or growth. */
    public static void main(String[] arguments) throws IOException, InterruptedException, BadFile {
        String which = arguments.length > 1 ? arguments[1] : "start keys growth";
        Path scratch = Files.createTempDirectory("versewind-bench");
        try {
            Programs programs = new Programs(Path.of(arguments[0]), scratch);
            ResultTable table = new ResultTable();
            if (which.contains("start")) {
                new StartRows(programs, table).print();
            }
            if (which.contains("keys")) {
                new KeyRows(programs, table).print();
            }
            if (which.contains("growth")) {
                new GrowthRows(new Library(scratch), table).print();
            }
            table.end();
        } finally {
            try (Stream<Path> files = Files.walk(scratch)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }
}
