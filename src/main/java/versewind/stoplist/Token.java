package versewind.stoplist;

import java.util.Locale;
import versewind.organ.Stop;

/**
 * A piece of a line that is not divided further.
 *
 * @param kind what it is made of
 * @param text as it stands in the line
 * @param plain its letters small and without accents; "" for what has none
 * @param start index of its first character in the line
 */
record Token(Kind kind, String text, String plain, int start) {

    /** The kinds of token. */
    enum Kind {
        /** Figures: "8", "2 2/3", "22/3", "2.66"; any number of digits. */
        NUMBER,
        /** The letters I, V and X alone. */
        ROMAN,
        /** Letters. */
        WORD,
        /** Signs for feet or inches: ', ". */
        QUOTE,
        OPEN,
        CLOSE,
        /** One sign of any other kind. */
        SIGN;

        static Kind of(String word) {
            return valueOf(word.toUpperCase(Locale.ROOT));
        }
    }

    /** Index of the character after it. */
    int end() {
        return start + text.length();
    }

    boolean is(Kind other) {
        return kind == other;
    }

    boolean isWord() {
        return kind == Kind.WORD || kind == Kind.ROMAN;
    }

    /** True if it is one of these signs. */
    boolean isSign(String signs) {
        return (kind == Kind.SIGN || kind == Kind.QUOTE) && signs.contains(text);
    }

    /** True if it is a word of a kind. */
    boolean is(String words) {
        return kind == Kind.WORD && WordList.of(words).has(plain);
    }

    /** True if it is a whole number of at most some digits. */
    boolean isWhole(int digits) {
        return kind == Kind.NUMBER && text.length() <= digits && text.chars().allMatch(Character::isDigit);
    }

    /** True if it is a number that can be a pitch in feet. */
    boolean isPitch() {
        return kind == Kind.NUMBER && (text.length() <= 2 || !isWhole(Integer.MAX_VALUE));
    }

    /** A number of one or two digits, or a Roman one from I to XII; 0 where it is none; of "3/5" the last. */
    int count() {
        return number(text.substring(text.indexOf('/') + 1).strip());
    }

    /** A number of one or two digits, or a Roman one from I to XII; 0 for what is none. */
    static int number(String figures) {
        boolean digits = !figures.isEmpty()
                && figures.length() <= 2
                && figures.chars().allMatch(each -> each >= '0' && each <= '9');
        return digits ? Integer.parseInt(figures) : Stop.NUMERALS.indexOf(figures.toUpperCase(Locale.ROOT)) + 1;
    }
}
