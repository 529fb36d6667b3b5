package versewind.stoplist;

import versewind.stoplist.Token.Kind;

/**
 * Ranks of a compound stop as people write them: III, III-V, 4f., 4 fach, 3-4 sterk, 3 rgs, 4 ranks, V file.
 *
 * @param length how many tokens they take; 0 where there are none
 * @param count how many ranks; of "III-V" the five
 * @param range whether two numbers are written
 */
record Ranks(int length, int count, boolean range) {

    static final Ranks NONE = new Ranks(0, 0, false);

    /** A number, or two with - or / between, that begins at a token. */
    private static Ranks number(Line line, int token, boolean digits, boolean romans) {
        int first = count(line, token, digits, romans);
        if (first == 0) {
            return NONE;
        }
        boolean joined = line.isSign(token + 1, "-/") && line.gap(token + 1) <= 1;
        int second = joined && token + 2 < line.size() && line.gap(token + 2) <= 1
                ? count(line, token + 2, digits, romans)
                : 0;
        return second > 0 ? new Ranks(3, second, true) : new Ranks(1, first, false);
    }

    private static int count(Line line, int token, boolean digits, boolean romans) {
        Token at = line.at(token);
        boolean fits = at.is(Kind.NUMBER) ? digits : romans && (at.is(Kind.ROMAN) || at.is(Kind.WORD));
        return fits ? at.count() : 0;
    }

    /** A number with a word for ranks that begins at a token. */
    static Ranks marked(Line line, int token) {
        if (!Pitches.isApart(line, token, "/.,'")) {
            return NONE;
        }
        Ranks number = slashed(line, token);
        if (number.length == 0) {
            number = number(line, token, true, false).length > 0
                    ? number(line, token, true, false)
                    : number(line, token, false, true);
        }
        int unit = token + number.length;
        while (number.length > 0 && line.isSign(unit, ".-")) {
            unit++;
        }
        boolean fits = number.length > 0
                && line.is(unit, WordClass.RANKS)
                && line.at(unit).start() - line.at(token + number.length - 1).end() <= 2
                && !Character.isDigit(line.after(unit))
                && line.after(unit) != '\'';
        boolean point = fits && line.isSign(unit + 1, ".") && line.gap(unit + 1) == 0;
        return fits ? new Ranks(unit + 1 - token + (point ? 1 : 0), number.count, number.range) : NONE;
    }

    /** "3/5", which is one token. */
    private static Ranks slashed(Line line, int token) {
        String text = line.at(token).text();
        int slash = line.is(token, Kind.NUMBER) ? text.indexOf('/') : -1;
        int last = slash < 0 ? 0 : Numerals.number(text.substring(slash + 1).strip());
        return last > 0 && Numerals.number(text.substring(0, slash).strip()) > 0 ? new Ranks(1, last, true) : NONE;
    }

    /** A Roman numeral that begins at a token and stands apart. */
    static Ranks numeral(Line line, int token) {
        Ranks numeral = line.is(token, Kind.ROMAN) && Pitches.isApart(line, token, "'")
                ? number(line, token, false, true)
                : NONE;
        int end = token + numeral.length;
        return numeral.length > 0 && line.is(end - 1, Kind.ROMAN) && line.after(end - 1) != '\'' ? numeral : NONE;
    }

    /** A number without a word that begins at a token and can be ranks. */
    static Ranks bare(Line line, int token) {
        if (!line.is(token, Kind.NUMBER) || !Pitches.isApart(line, token, "/.,")) {
            return NONE;
        }
        Ranks number = slashed(line, token);
        number = number.length > 0 ? number : number(line, token, true, false);
        char after = number.length == 0 ? ' ' : line.after(token + number.length - 1);
        return Character.isLetterOrDigit(after) || after == '/' || after == '\'' ? NONE : number;
    }
}
