package versewind.stoplist;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The heading of a part of a list that holds no stops.
 *
 * @param kind what the part holds
 * @param head its words
 * @param inline what follows on the same line
 */
record SectionWord(Kind kind, String head, String inline) {

    /** The kinds of part that hold no stops. */
    enum Kind {
        COUPLERS("part couplers"),
        ACCESSORIES("part accessories"),
        TREMULANTS("part tremulants"),
        PISTONS("part pistons"),
        NOTES("part notes"),
        /** A line that only says that a list follows. */
        TITLE("part title");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        private WordList words() {
            return WordList.of(words);
        }

        /** True if a word may stand in such a heading beside the words that make it one. */
        private boolean isFiller(String word) {
            boolean other = WordList.of("part couplers").has(word)
                    || WordList.of("part accessories").has(word)
                    || WordList.of("part tremulants").has(word)
                    || WordList.of("part pistons").has(word);
            return switch (this) {
                case COUPLERS, ACCESSORIES, TREMULANTS, PISTONS ->
                    other || WordList.of("part filler").has(word);
                case NOTES -> WordList.of("part filler").has(word);
                case TITLE -> false;
            };
        }
    }

    private static final int MOST_WORDS = 6;

    /** Reads the heading of such a part, if a line is one. */
    static Optional<SectionWord> read(String line, String language) {
        int colon = line.indexOf(':');
        if (colon > 0) {
            Optional<SectionWord> before =
                    head(line.substring(0, colon), line.substring(colon + 1).strip(), true, language);
            if (before.isPresent()) {
                return before;
            }
        }
        // "8 general pistons" says how many there are, and heads nothing
        return head(new Line(line).outside(), "", line.stripTrailing().endsWith(":"), language)
                .filter(head -> head.kind != Kind.PISTONS
                        || !PistonLine.read(line, language).saysAnything());
    }

    private static Optional<SectionWord> head(String head, String inline, boolean colon, String language) {
        List<String> words = Spelling.words(new Line(head).outside());
        // "54 notes:" ends the heading of a division
        if (words.isEmpty()
                || words.size() > MOST_WORDS
                || Compass.keys(head, false).isPresent()) {
            return Optional.empty();
        }
        boolean one = WordList.of("one coupler").in(words)
                && !WordList.of("collective").in(words);
        if (!colon && one && !(words.size() == 1 && language.equals("nordic"))) {
            return Optional.empty();
        }
        return Stream.of(Kind.values())
                .filter(kind -> kind.words().in(words)
                        && words.stream().allMatch(word -> kind.words().has(word) || kind.isFiller(word)))
                .findFirst()
                .map(kind -> new SectionWord(kind, head.strip().toLowerCase(Locale.ROOT), inline));
    }
}
