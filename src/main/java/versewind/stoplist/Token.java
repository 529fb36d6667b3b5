package versewind.stoplist;

/**
 * A piece of a line that is not divided further.
 *
 * @param kind what it is made of
 * @param text as it stands in the line
 * @param plain its letters small and without accents; "" for what has none
 * @param start index of its first character in the line
 */
record Token(Kind kind, String text, String plain, int start) {

    /** What a token is made of. */
    enum Kind {
        /** Figures: "8", "2 2/3", "22/3", "2.66"; any number of digits. */
        NUMBER,
        /** Capital letters that make a Roman numeral up to XXXIX, alone. */
        ROMAN,
        /** Letters. */
        WORD,
        /** Signs for feet or inches: ', ". */
        QUOTE,
        OPEN,
        CLOSE,
        /** One sign of any other kind. */
        SIGN
    }

    /** Index of the character after it. */
    int end() {
        return start + text.length();
    }

    boolean is(Kind other) {
        return kind == other;
    }

    /** Whether it is one of these signs. */
    boolean isSign(String signs) {
        return kind == Kind.SIGN && signs.contains(text);
    }

    /** Whether it is a word of a class. */
    boolean is(WordClass words) {
        return kind == Kind.WORD && words.has(plain);
    }

    /** Whether it is a whole number of at most some digits. */
    boolean isWhole(int digits) {
        return kind == Kind.NUMBER
                && text.length() <= digits
                && text.chars().allMatch(Character::isDigit);
    }

    /** A whole or Roman number to 99; 0 where it is none. */
    int count() {
        return Numerals.number(text);
    }
}
