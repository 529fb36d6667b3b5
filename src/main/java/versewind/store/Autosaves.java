package versewind.store;

import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The names of the hidden files that hold unsaved work: {@code plans/.harvest.unsaved.json}. */
final class Autosaves {
    private static final String ENDING = ".json";
    private static final Pattern NAME = Pattern.compile("\\.(.+)\\.unsaved\\.json");

    private Autosaves() {}

    /** The file for unsaved work on a plan. */
    static Path pathOf(Path plan) {
        return hidden(plan, ".unsaved");
    }

    /** A file for unsaved work that could not be read. */
    static Path asidePathOf(Path plan, int number) {
        return hidden(plan, ".unreadable-" + number);
    }

    private static Path hidden(Path plan, String what) {
        Path name = plan.getFileName();
        return name == null ? plan : plan.resolveSibling("." + stem(name.toString()) + what + ENDING);
    }

    private static String stem(String name) {
        return name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
    }

    /** The plan's id, if a file holds unsaved work. */
    static Optional<String> idOf(Path file) {
        Matcher matcher = NAME.matcher(file.getFileName().toString());
        return matcher.matches() ? Optional.of(matcher.group(1)) : Optional.empty();
    }
}
