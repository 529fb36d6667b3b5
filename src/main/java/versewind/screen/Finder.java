package versewind.screen;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import versewind.organ.Instrument;

/** Finds knobs by parts of their names. */
public final class Finder {

    private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");

    private Finder() {}

    /** The knobs whose full names hold every word typed, those first whose own name begins with it. */
    static List<Integer> fitting(Instrument instrument, List<Item> items, String typed) {
        String plain = plain(typed).strip();
        if (plain.isEmpty()) {
            return List.of();
        }
        String[] words = plain.split(" +", -1);
        List<Integer> beginning = new ArrayList<>();
        List<Integer> holding = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            if (plain(Words.name(instrument, items.get(i))).startsWith(plain)) {
                beginning.add(i);
            } else if (holds(Words.fullName(instrument, items.get(i)), words)) {
                holding.add(i);
            }
        }
        beginning.addAll(holding);
        return beginning;
    }

    /** Whether a text holds every one of some plain words. */
    static boolean holds(String text, String[] words) {
        String plain = plain(text);
        for (String word : words) {
            if (!plain.contains(word)) {
                return false;
            }
        }
        return true;
    }

    /** Without accents and capitals. */
    public static String plain(String text) {
        return ACCENTS.matcher(Normalizer.normalize(text, Normalizer.Form.NFD))
                .replaceAll("")
                .toLowerCase(Locale.ROOT);
    }
}
