package versewind.store;

import java.util.ArrayList;
import java.util.List;

/** Names in one cell, parted by commas, semicolons or colons; one of these in a name has a backslash before it. */
final class CsvList {

    private CsvList() {}

    static String written(String name) {
        return name.replaceAll("[\\\\,;:]", "\\\\$0");
    }

    static String name(String written) {
        return written.replaceAll("\\\\(.)", "$1").strip();
    }

    /** The parts of a text between separators that have no backslash before them; none of a blank text. */
    static List<String> parts(String text, char separator) {
        List<String> parts = new ArrayList<>();
        StringBuilder part = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == separator) {
                parts.add(part.toString());
                part.setLength(0);
                continue;
            }
            part.append(c);
            if (c == '\\' && i + 1 < text.length()) {
                part.append(text.charAt(++i));
            }
        }
        parts.add(part.toString());
        parts.removeIf(String::isBlank);
        return parts;
    }
}
