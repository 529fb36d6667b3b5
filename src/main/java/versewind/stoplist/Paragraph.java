package versewind.stoplist;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * A line that holds several parts of a list, each with its heading: "Great: Open Diapason 8, Principal 4. Swell: Oboe
 * 8. Couplers: Swell to Great".
 */
final class Paragraph {

    private static final int SHORTEST = 12;
    private static final int LONGEST_HEADING = 7;
    private static final int SHORTEST_SET_OFF = 4;

    /** "Pedal, of 30 notes: ..." */
    private static final TokenForm COMPASS =
            TokenForm.of("[,] <lent_of>|=with|=mit|=met|=con|=di|=med ## <keys> [,:;]");

    private Paragraph() {}

    /** Its parts, each from its heading on; the whole where no heading stands within. */
    static List<String> parts(String whole, LineReader.Readings readings) {
        if (whole.length() < SHORTEST) {
            return List.of(whole);
        }
        String text = withColons(withCompassInBrackets(whole));
        Line line = new Line(text);
        BitSet brackets = line.brackets();
        List<String> parts = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < line.size(); i++) {
            boolean begins = i == 0 || (!brackets.get(i) && isPause(line, i) && hasWord(line, from, i));
            int signed = begins ? headed(line, i, brackets, readings) : 0;
            int heading = begins && signed == 0 ? setOff(line, i, readings) : signed;
            boolean couplers = begins
                    && line.is(i, "part couplers")
                    && line.is(i + 1)
                    && line.at(i + 1).isWord();
            couplers |= begins
                    && line.is(i, "coupler")
                    && line.isSign(i - 1, ".")
                    && line.is(i - 2, Token.Kind.NUMBER)
                    && Character.isUpperCase(line.at(i).text().charAt(0));
            boolean sentence = begins && i > 0 && Segments.isSentenceEnd(line, i - 1);
            if ((heading > 0 || couplers || sentence) && i > 0) {
                int dash = Segments.isApart(line, i - 1, "-") ? i - 1 : i;
                parts.add(text.substring(from == 0 ? 0 : line.start(from), line.start(dash)));
                from = i;
            }
            if (heading > 0 && !line.isSign(i + heading, ":")) {
                parts.add(line.part(i, i + heading));
                from = i + heading + (signed > 0 ? 1 : 0);
                i = from - 1;
            }
        }
        parts.add(from == 0 ? text : text.substring(line.start(from)));
        return List.copyOf(parts);
    }

    /** What a heading says of its compass between commas stands in brackets, and a colon behind it. */
    private static String withCompassInBrackets(String text) {
        Line line = new Line(text);
        StringBuilder bracketed = new StringBuilder();
        int from = 0;
        for (int i = 1; i < line.size(); i++) {
            int length = line.is(i - 1, Token.Kind.WORD) ? COMPASS.at(line, i) : 0;
            if (length > 0) {
                bracketed
                        .append(text, from, line.at(i).start())
                        .append(" (")
                        .append(line.part(i + 2, i + length - 1))
                        .append("):");
                from = line.start(i + length - 1) + 1;
            }
        }
        return from == 0 ? text : bracketed.append(text.substring(from)).toString();
    }

    /** "On the Great (C-g3) stand Principal 8 ...": a colon in the place of the verb behind a division. */
    private static String withColons(String text) {
        Line line = new Line(text);
        BitSet brackets = line.brackets();
        StringBuilder colons = new StringBuilder();
        int from = 0;
        for (int i = 1; i + 1 < line.size(); i++) {
            int before = i - 1;
            while (before > 0 && brackets.get(before)) {
                before--;
            }
            boolean isVerb = line.is(i, "prose verb")
                    && isName(line, i + 1)
                    && line.is(before, Token.Kind.WORD)
                    && endsInDivision(line, before);
            if (isVerb) {
                colons.append(text.substring(from, line.at(i).start()).stripTrailing())
                        .append(':');
                from = line.at(i).end();
            }
        }
        return from == 0 ? text : colons.append(text.substring(from)).toString();
    }

    /** "Grand-Orgue", "r\u00e9cit expressif": the words that end at a token name a division. */
    private static boolean endsInDivision(Line line, int last) {
        String words = "";
        for (int i = last; i >= 0 && i > last - SHORTEST_SET_OFF && (line.is(i) || line.isSign(i, "-")); i--) {
            words = line.at(i).plain() + words;
            if (words.length() >= SHORTEST_SET_OFF
                    && !DivisionWord.entries(words).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    private static boolean hasWord(Line line, int from, int to) {
        return IntStream.range(from, to).anyMatch(i -> line.is(i, Token.Kind.WORD));
    }

    /** True if something may end before a token: a sentence, a pitch, a bracket. */
    private static boolean isPause(Line line, int token) {
        boolean word = line.at(token).isWord() || line.is(token, Token.Kind.NUMBER);
        boolean ordinal = line.isSign(token - 1, ".")
                && line.is(token - 2)
                && line.at(token - 2).count() > 0
                && (!line.is(token - 3, Token.Kind.WORD) || line.is(token - 3, "manual"));
        boolean ranks = line.is(token - 3, Token.Kind.NUMBER) && line.gap(token - 2) == 0;
        boolean comma = line.isSign(token - 1, ",") && !line.is(token - 2, Token.Kind.WORD);
        boolean ended = comma
                || (line.isSign(token - 1, ".;") && (!ordinal || ranks))
                || (line.isSign(token - 1, ":") && line.is(token, "heading place"))
                || (line.isSign(token - 1, "-")
                        && (Segments.isApart(line, token - 1, "-") || line.isSign(token - 2, ":")))
                || line.is(token - 1, Token.Kind.CLOSE)
                || line.is(token - 1, Token.Kind.QUOTE)
                || (line.is(token - 1, Token.Kind.NUMBER) && !line.is(token, "keys"))
                || line.is(token - 1, Token.Kind.ROMAN)
                || line.is(token - 1, "feet")
                || line.is(token - 1, "ranks");
        return word && ended && (line.gap(token) > 0 || line.isSign(token - 2, ":"));
    }

    /** How many tokens a heading has that begins at a token and ends in a colon, a dash or a point; 0 for none. */
    private static int headed(Line line, int token, BitSet brackets, LineReader.Readings readings) {
        boolean to = line.is(token, "coupled to");
        if ((to && token > 0 && !line.isSign(token - 1, ".;:")) || isCoupled(line, token, readings)) {
            return 0;
        }
        int most = Math.min(line.size() - 1, token + LONGEST_HEADING);
        for (int i = token + 1; i <= most && !isAfterPitch(line, token, i); i++) {
            if (brackets.get(i)) {
                most = Math.min(line.size() - 1, most + 1);
                continue;
            }
            if (line.isSign(i, ";,")) {
                return 0;
            }
            boolean dash = Segments.isApart(line, i, "-")
                    || (line.isSign(i, ".") && line.gap(i + 1) > 0 && line.is(i - 1, Token.Kind.WORD));
            boolean isOver = i > token + 1 && line.isSign(i - 1, ":") && readings.isHeading(line.part(token, i - 1));
            if (isOver) {
                return 0;
            }
            boolean couplers = line.is(i - 1, "part couplers") && line.is(i + 1, Token.Kind.ROMAN);
            boolean coupler = line.is(i + 1, Token.Kind.WORD) && line.is(i + 1, "coupler");
            boolean stops = dash
                    && !to
                    && !coupler
                    && (isName(line, i + 1) || couplers)
                    && !isHeading(next(line, i + 1), readings);
            String head = line.part(token, i);
            if ((line.isSign(i, ":") && (token > 0 || stops)) || stops) {
                boolean apart = line.isSign(i, ":")
                        || head.length() >= SHORTEST_SET_OFF
                        || (token == 0 && Segments.isNamed(line.part(i + 1, line.size()), readings.style()));
                boolean title = line.isSign(i, ":")
                        && readings.part(head + ":")
                                .filter(part -> part.kind() == SectionWord.Kind.TITLE)
                                .isPresent();
                return apart
                                && !readings.mayBeStop(head)
                                && (title || isHeading(head + (line.isSign(i, ":") ? ":" : ""), readings))
                        ? i - token
                        : 0;
            }
        }
        return 0;
    }

    /** "Pedaal - Rugwerk": the second of two divisions that a dash joins. */
    private static boolean isCoupled(Line line, int token, LineReader.Readings readings) {
        if (!line.isSign(token - 1, "-")) {
            return false;
        }
        int from = token - 1;
        while (from > 0 && token - from <= LONGEST_HEADING && !line.isSign(from - 1, ",;:.")) {
            from--;
        }
        return from > 0
                && from < token - 1
                && readings.heading(line.part(from, token - 1)).isPresent();
    }

    /** True if a point ends a sentence whose last word is a number: "trompette de 8. Au r\u00e9cit". */
    private static boolean isAfterPitch(Line line, int from, int token) {
        boolean unit = token > from + 2
                && line.is(token - 2, Token.Kind.NUMBER)
                && (line.is(token - 1, "ranks") || line.is(token - 1, "feet"));
        return line.isSign(token, ".") && token > from + 1 && (unit || line.is(token - 1, Token.Kind.NUMBER));
    }

    /** True if a word in capitals or with a capital stands at a token. */
    private static boolean isName(Line line, int token) {
        return line.is(token, Token.Kind.WORD)
                && Character.isUpperCase(line.at(token).text().charAt(0));
    }

    /** What follows up to the next sign. */
    private static String next(Line line, int token) {
        int end = token;
        while (end < line.size() && !line.isSign(end, ";,:") && !line.is(end, Token.Kind.OPEN)) {
            end++;
        }
        return line.part(token, end);
    }

    private static boolean isHeading(String head, LineReader.Readings readings) {
        return readings.heading(head).isPresent()
                || readings.part(head + ":")
                        .filter(part -> part.kind() != SectionWord.Kind.TITLE)
                        .isPresent();
    }

    /** How many tokens a heading in capitals has that begins at a token, before a word that is not; 0 for none. */
    private static int setOff(Line line, int token, LineReader.Readings readings) {
        int end = token;
        while (end < line.size() && end < token + LONGEST_HEADING && isCapitals(line.at(end))) {
            end++;
        }
        boolean goesOn = end > token
                && isName(line, end)
                && line.gap(end) == 1
                && Spelling.hasWord(line.at(end).text())
                && line.is(end - 1, Token.Kind.WORD)
                && line.part(token, end).length() >= SHORTEST_SET_OFF;
        return goesOn && readings.heading(line.part(token, end)).isPresent() ? end - token : 0;
    }

    private static boolean isCapitals(Token token) {
        String text = token.text();
        return token.is(Token.Kind.ROMAN)
                || token.isSign(".")
                || (token.is(Token.Kind.WORD) && text.length() > 1 && text.equals(text.toUpperCase(Locale.ROOT)));
    }
}
