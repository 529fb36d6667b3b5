package versewind.cli;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import versewind.plan.Sought;
import versewind.store.Nearest;

/**
 * Finds what a typed name means among the names there are.
 *
 * <p>Capitals, accents and hyphens make no difference, nor does "8 ft" or "8'" for "8". A name that is typed whole is
 * meant; else the one whose first words begin as those typed; else the one that has words that begin so, in that order.
 * Numbers are typed whole. Where several fit equally, none is meant.
 */
final class Names {
    private static final Pattern FEET = Pattern.compile("(?<=\\d) ?(?:ft\\b\\.?|['\u2019\u2032])");
    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final Pattern NUMBER = Pattern.compile("[\\d/]+|[ivx]+");

    private final String none;
    private final String someAre;
    private final List<String> names;

    /**
     * The names there are.
     *
     * @param none how a sentence begins that says that a name is not there: "the organ has no coupler"
     * @param someAre how a sentence begins that lists the names: "The couplers are"
     * @param names the names
     */
    Names(String none, String someAre, List<String> names) {
        this.none = none;
        this.someAre = someAre;
        this.names = List.copyOf(names);
    }

    /** Place in the list of the name that is meant. */
    int find(String typed) throws UsageException {
        if (names.contains(typed)) {
            return names.indexOf(typed);
        }
        List<String> words = words(typed);
        for (Likeness likeness : Likeness.values()) {
            List<Integer> fitting = IntStream.range(0, names.size())
                    .filter(i -> !words.isEmpty() && likeness.holds(words, words(names.get(i))))
                    .boxed()
                    .toList();
            if (fitting.size() == 1) {
                return fitting.get(0);
            }
            if (fitting.size() > 1) {
                throw ambiguous(typed, fitting);
            }
        }
        throw new UsageException(none + " \"" + typed + "\". " + Nearest.sentence(typed, names, someAre));
    }

    /** How what is typed may be like a name, the nearest first. */
    private enum Likeness {
        WHOLE,
        BEGUN,
        SHORTENED;

        boolean holds(List<String> typed, List<String> name) {
            return switch (this) {
                case WHOLE -> typed.equals(name);
                case BEGUN -> typed.size() <= name.size() && shortens(typed, name.subList(0, typed.size()));
                case SHORTENED -> shortens(typed, name);
            };
        }
    }

    private UsageException ambiguous(String typed, List<Integer> fitting) {
        String these = fitting.stream().map(i -> '"' + names.get(i) + '"').collect(Collectors.joining(" or "));
        return new UsageException('"' + typed + "\" may mean " + these + ". Write more of the name.");
    }

    /** The words of a name, without what makes no difference. */
    static List<String> words(String name) {
        String plain = FEET.matcher(Sought.plain(name)).replaceAll("").replace('-', ' ');
        return BLANKS.splitAsStream(plain).filter(word -> !word.isEmpty()).toList();
    }

    private static boolean shortens(List<String> typed, List<String> name) {
        int at = 0;
        for (String word : name) {
            if (at < typed.size() && isShort(typed.get(at), word)) {
                at++;
            }
        }
        return at == typed.size();
    }

    private static boolean isShort(String typed, String word) {
        return word.startsWith(typed)
                && (word.equals(typed) || !NUMBER.matcher(word).matches());
    }
}
