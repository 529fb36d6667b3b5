package versewind;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import versewind.organ.Instrument;
import versewind.store.BadFile;
import versewind.store.Library;
import versewind.store.OpenPlan;

/** The instruments and plans that come with the program, each read once. */
public final class Shipped {
    private static final Library LIBRARY = new Library(Path.of(""));
    private static final Map<String, Instrument> INSTRUMENTS = new HashMap<>();
    private static final Map<String, OpenPlan> PLANS = new HashMap<>();

    /** The names of the organs, the smallest first. */
    public static final List<String> ORGANS = instrumentFiles().stream()
            .map(Shipped::id)
            .sorted(Comparator.comparing(id -> instrument(id).stops().size()))
            .toList();

    private Shipped() {}

    public static List<Path> instrumentFiles() {
        return files(Path.of("instruments"));
    }

    public static List<Path> planFiles() {
        return files(Path.of("plans"));
    }

    private static List<Path> files(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> !file.getFileName().toString().startsWith("."))
                    .sorted()
                    .toList();
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        }
    }

    /** The names of the plans. */
    public static List<String> plans() {
        return planFiles().stream().map(Shipped::id).toList();
    }

    private static String id(Path file) {
        return file.getFileName().toString().replace(".json", "");
    }

    public static Instrument instrument(String id) {
        return INSTRUMENTS.computeIfAbsent(id, wanted -> {
            try {
                return LIBRARY.openInstrument(wanted);
            } catch (BadFile bad) {
                throw new IllegalStateException(bad);
            }
        });
    }

    public static OpenPlan plan(String id) {
        return PLANS.computeIfAbsent(id, wanted -> {
            try {
                return LIBRARY.openPlan(wanted);
            } catch (BadFile bad) {
                throw new IllegalStateException(bad);
            }
        });
    }
}
