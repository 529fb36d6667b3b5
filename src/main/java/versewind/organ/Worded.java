package versewind.organ;

import java.util.Locale;

/** One of a few things that have their names in words: "chorus reed". */
public interface Worded {

    /** The name of the constant: "CHORUS_REED". */
    String name();

    /** In words, as in files and on screens. */
    default String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
