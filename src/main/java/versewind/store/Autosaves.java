package versewind.store;

import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The names of the hidden files that held unsaved work before there were journals: {@code .harvest.unsaved.json}. */
final class Autosaves {
    private static final Pattern NAME = Pattern.compile("\\.(.+)\\.unsaved\\.json");

    private Autosaves() {}

    /** The file for unsaved work on a plan. */
    static Path pathOf(Path plan) {
        return plan.getFileName() == null ? plan : plan.resolveSibling("." + JsonFolder.stem(plan) + ".unsaved.json");
    }

    /** The plan's id, if a file holds unsaved work. */
    static Optional<String> idOf(Path file) {
        Matcher matcher = NAME.matcher(file.getFileName().toString());
        return matcher.matches() ? Optional.of(matcher.group(1)) : Optional.empty();
    }
}
