package versewind.organ;

import java.util.List;
import java.util.stream.Collectors;

/** Text from files, shortened and free of control characters, for use in a sentence. */
public final class Quoted {
    private static final int LONGEST = 60;
    private static final int LONGEST_PLAIN = 200;
    private static final int MOST_NAMES = 12;

    private Quoted() {}

    /** In quotation marks. */
    public static String text(String text) {
        return '"' + shortened(text, LONGEST) + '"';
    }

    /** Without quotation marks. */
    public static String plain(String text) {
        return shortened(text, LONGEST_PLAIN);
    }

    /** The first names in quotation marks, separated by commas. */
    public static String names(List<String> names) {
        String some = names.stream().limit(MOST_NAMES).map(Quoted::text).collect(Collectors.joining(", "));
        return names.size() > MOST_NAMES ? some + " and " + (names.size() - MOST_NAMES) + " more" : some;
    }

    private static String shortened(String text, int longest) {
        StringBuilder kept = new StringBuilder();
        text.codePoints()
                .limit(longest)
                .map(c -> Character.isISOControl(c) || Character.getType(c) == Character.FORMAT ? ' ' : c)
                .forEach(kept::appendCodePoint);
        return text.codePointCount(0, text.length()) > longest
                ? kept.append("...").toString()
                : kept.toString();
    }
}
