package versewind.organ;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Suggestions for a name that does not exist. */
public final class Nearest {
    private static final int LONGEST = 80;
    private static final int FEWEST_BEGUN = 3;

    private Nearest() {}

    /**
     * A helpful sentence: the name probably meant, or the names there are.
     *
     * @param typed what was typed
     * @param names the names that exist
     * @param otherwise how a sentence with the names begins: "Great has"
     */
    public static String sentence(String typed, Collection<String> names, String otherwise) {
        Optional<String> near = to(typed, names);
        if (near.isPresent()) {
            return "Did you mean " + Quoted.text(near.get()) + "?";
        }
        return names.isEmpty() ? otherwise + " none." : otherwise + " " + Quoted.names(List.copyOf(names)) + ".";
    }

    /** The most similar name if at most two letters in five differ; else the first that starts with the typed text. */
    public static Optional<String> to(String typed, Collection<String> names) {
        if (typed.length() > LONGEST) {
            return Optional.empty();
        }
        Optional<String> nearest = names.stream()
                .filter(name -> name.length() <= LONGEST && distance(typed, name) <= bound(typed, name))
                .min(Comparator.comparingInt(name -> distance(typed, name)));
        return nearest.or(() -> names.stream()
                .filter(name -> typed.length() >= FEWEST_BEGUN && name.startsWith(typed))
                .findFirst());
    }

    private static int bound(String typed, String name) {
        return Math.max(1, 2 * Math.min(typed.length(), name.length()) / 5);
    }

    /** Levenshtein distance, ignoring case. */
    static int distance(String one, String other) {
        String a = one.toLowerCase(Locale.ROOT);
        String b = other.toLowerCase(Locale.ROOT);
        int[] above = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] row = new int[b.length() + 1];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int replaced = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(replaced, Math.min(above[j], row[j - 1]) + 1);
            }
            above = row;
        }
        return above[b.length()];
    }
}
