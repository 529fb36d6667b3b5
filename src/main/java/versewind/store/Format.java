package versewind.store;

import java.util.regex.Pattern;

/** What the two formats have in common. */
final class Format {
    /** The number of the format that is written, and the only one that is read. */
    static final int NUMBER = 1;

    /** A file's name without its ending: letters and digits first, so that it is neither hidden nor elsewhere. */
    private static final Pattern ID = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} ._-]{0,99}");

    private Format() {}

    /** Whether a text can be the name of a file, without its ending. */
    static boolean isId(String text) {
        return ID.matcher(text).matches();
    }

    /** Refuses a file of a later format before anything else in it can be misunderstood. */
    static void check(LocatedValue root) throws BadFile {
        LocatedValue format = new Fields(root, root.entries()).at("format");
        if (format.whole() != NUMBER) {
            throw format.bad(
                    "this program reads format " + NUMBER + ", not format " + format.whole(),
                    "Use the version of the program that wrote the file.");
        }
    }
}
