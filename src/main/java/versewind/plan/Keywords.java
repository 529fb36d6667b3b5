package versewind.plan;

import java.util.Locale;
import java.util.Map;

/** Keywords of files and of the command line that have changed, or have another name. */
public final class Keywords {

    /** What some were called before, or are called too. */
    private static final Map<String, String> FORMER = Map.of(
            "solo voice",
            "soloist",
            "coupled down",
            "pedal by coupler",
            "tracker",
            "mechanical",
            "pneumatic",
            "electric",
            "electropneumatic",
            "electric",
            "electro-pneumatic",
            "electric");

    private Keywords() {}

    /** Today's word for one that is written. */
    public static String today(String word) {
        return FORMER.getOrDefault(word.strip().toLowerCase(Locale.ROOT), word);
    }
}
