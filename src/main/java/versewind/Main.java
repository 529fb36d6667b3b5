package versewind;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import versewind.store.Library;
import versewind.terminal.Editor;

/** Starts the program. */
public final class Main {
    private Main() {}

    public static void main(String[] args) throws Exception {
        Library library = new Library(Path.of("."));
        Editor.run(
                library,
                args.length == 0 ? Optional.empty() : Optional.of(library.openPlan(args[0])),
                LocalDate.now(java.time.ZoneId.systemDefault()));
        System.exit(0);
    }
}
