package versewind.stoplist;

import java.util.BitSet;
import java.util.OptionalInt;
import java.util.Set;
import versewind.organ.Division;
import versewind.stoplist.Token.Kind;

/** The compass of a keyboard as a heading gives it, "C-g3", "CC to A", "56 notes", and of a stop: "from tenor C". */
final class Compass {

    private static final String STEPS = "c d ef g a h";
    private static final Set<String> SYLLABLES = Set.of("do", "re", "mi", "fa", "sol", "la", "si", "ut");
    private static final int OCTAVE = 12;
    private static final int SMALL_C = Division.BOTTOM_KEY + OCTAVE;
    private static final int MOST_OCTAVE_SIGNS = 4;

    private Compass() {}

    /** A text without what it says of a compass. */
    static String without(String text) {
        Line line = new Line(text);
        BitSet cut = new BitSet();
        for (int i = 0; i < line.size(); i++) {
            int length = Math.max(notes(line, i), Math.max(0, spanEnd(line, i) - i));
            cut.set(i, i + length);
            i += Math.max(0, length - 1);
        }
        return line.without(cut, ' ');
    }

    /** The number of keys, if it is said and can be. */
    static OptionalInt keys(String text, boolean isPedal) {
        Line line = new Line(text);
        for (int i = 0; i < line.size(); i++) {
            if (notes(line, i) > 0) {
                return sensible(Integer.parseInt(line.at(i).text()), isPedal);
            }
        }
        for (int i = 0; i < line.size(); i++) {
            int end = spanEnd(line, i);
            if (end > 0) {
                return sensible(top(line, i, end) - Division.BOTTOM_KEY + 1, isPedal);
            }
        }
        return OptionalInt.empty();
    }

    /** "56 notes": how many tokens it takes. */
    private static int notes(Line line, int token) {
        int unit = token + 1 + (line.isSign(token + 1, "-") ? 1 : 0);
        boolean fits = line.is(token, Kind.NUMBER)
                && line.at(token).isWhole(2)
                && line.at(token).text().length() == 2
                && line.is(unit, WordClass.KEYS);
        return fits ? unit + 1 - token + (line.isSign(unit + 1, ".") ? 1 : 0) : 0;
    }

    /** "C-g3", "C,D to f'", "Do1-Sol5": the token after it; 0 where none begins at a token. */
    private static int spanEnd(Line line, int token) {
        boolean bottom = line.is(token, Kind.WORD) && Pitches.isApart(line, token, "");
        String name = bottom ? line.at(token).plain() : "";
        if (!name.equals("do") && !name.equals("ut") && !(bottom && name.matches("[cfga]{1,3}"))) {
            return 0;
        }
        int at = octaveEnd(line, token + 1, 2);
        if (line.isSign(at, ",") && line.is(at + 1, Kind.WORD) && line.at(at + 1).plain().equals("d")) {
            at += 2;
        }
        int joined = line.isSign(at, "-") ? 1 : line.isSign(at + 1, "/") ? 3 : 1;
        boolean joins = line.isSign(at, "-") || line.phrase(WordClass.SPAN, at) > 0 || (joined == 3 && line.part(at, Math.min(line.size(), at + 3)).equals("t/m"));
        if (!joins || at + joined >= line.size() || line.gap(at) > 1 || line.gap(at + joined) > 1) {
            return 0;
        }
        int note = at + joined;
        if (step(line, note) < 0) {
            return 0;
        }
        int sharp = note + 1 + (line.isSign(note + 1, "#\u266f") ? 1 : 0);
        int end = sharp < line.size() && line.gap(sharp) <= 1 ? octaveEnd(line, sharp, 1) : sharp;
        return Character.isLetter(line.after(end - 1)) ? 0 : end;
    }

    /** The token after figures or signs of an octave: "3", "'''", "°". */
    private static int octaveEnd(Line line, int token, int digits) {
        if (line.is(token, Kind.NUMBER)) {
            return line.at(token).isWhole(digits) ? token + 1 : token;
        }
        int at = token;
        while (at < token + MOST_OCTAVE_SIGNS
                && (line.is(at, Kind.QUOTE) || line.isSign(at, "\u00b0"))
                && (at == token || line.gap(at) == 0)) {
            at++;
        }
        return at;
    }

    /** The half steps of a note above C; -1 where a token is no note. */
    private static int step(Line line, int token) {
        String name = line.is(token, Kind.WORD) ? line.at(token).plain() : "";
        if (SYLLABLES.contains(name)) {
            return 0;
        }
        if (name.isEmpty() || name.charAt(0) < 'a' || name.charAt(0) > 'h' || !Set.of("", "is", "b").contains(name.substring(1))) {
            return -1;
        }
        int step = name.charAt(0) == 'b' ? 10 : STEPS.indexOf(name.charAt(0));
        return step + (name.endsWith("is") ? 1 : 0);
    }

    /** The key that a span ends with; 0 where it does not say the octave. */
    private static int top(Line line, int from, int end) {
        int note = end - 1;
        int octaves = 0;
        boolean said = false;
        while (note > from && !line.is(note, Kind.WORD)) {
            Token token = line.at(note--);
            said |= !token.isSign("#\u266f");
            octaves += token.is(Kind.NUMBER) ? Integer.parseInt(token.text()) : token.text().equals("'") ? 1 : token.text().equals("\"") ? 2 : 0;
        }
        boolean syllable = SYLLABLES.contains(line.at(note).plain());
        boolean sharp = line.isSign(note + 1, "#\u266f");
        return said && !syllable ? SMALL_C + OCTAVE * octaves + step(line, note) + (sharp ? 1 : 0) : 0;
    }

    private static OptionalInt sensible(int keys, boolean isPedal) {
        boolean possible = isPedal ? keys >= 12 && keys <= 37 : keys >= 24 && keys <= 73;
        return possible ? OptionalInt.of(keys) : OptionalInt.empty();
    }

    /** What a stop says of where it begins, "from tenor C", "C-f'": how many tokens it takes from a token on. */
    static int ofStop(Line line, int token) {
        if (line.is(token, WordClass.GROOVED)) {
            return line.size() - token;
        }
        int begins = line.phrase(WordClass.BEGINS, token);
        if (begins > 0) {
            int at = token + begins;
            at += line.isSign(at, ".") ? 1 : 0;
            at += line.is(at, Kind.WORD) && line.at(at).plain().equals("the") ? 1 : 0;
            at += line.is(at, WordClass.MIDDLE) ? 1 : 0;
            int end = noteEnd(line, at);
            if (end > 0) {
                return end - token;
            }
        }
        if (line.is(token, WordClass.MIDDLE) && noteEnd(line, token + 1) > 0) {
            return noteEnd(line, token + 1) - token;
        }
        int first = noteEnd(line, token);
        int second = first > 0 && line.isSign(first, "-") ? noteEnd(line, first + 1) : 0;
        boolean octave = second > 0 && !line.is(second - 1, Kind.WORD);
        return octave && "cfga".contains(line.at(token).plain()) && !Character.isLetterOrDigit(line.after(second - 1))
                ? second - token
                : 0;
    }

    /** The token after a note with its octave, where one begins at a token; else 0. */
    private static int noteEnd(Line line, int token) {
        if (step(line, token) < 0 || SYLLABLES.contains(line.at(token).plain()) || line.at(token).plain().startsWith("h")) {
            return 0;
        }
        int at = token + 1 + (line.isSign(token + 1, "#") ? 1 : 0);
        int end = at < line.size() && line.gap(at) <= 1 ? octaveEnd(line, at, 2) : at;
        return Character.isLetter(line.after(end - 1)) ? 0 : end;
    }
}
