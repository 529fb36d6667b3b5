package versewind.stoplist;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Stops that a list numbers, where it refers to them by their numbers: "28. Bass Flute 8 (from 26)". The number of a
 * lender is written out as its name.
 */
final class NumberedStops {

    private static final TokenForm NUMBERED = TokenForm.of("<bullet>? [.]? #3 [.:]?");
    private static final TokenForm LENT = TokenForm.of(
            "<lent_by> ~[.]? <lent_of>? [.]? <bullet>? [.]? #3 close", "<lent_of> <bullet>? [.]? #3 close");

    /** Lines begin with these, or their numbers are no running ones but pitches. */
    private static final List<String> FIRST = List.of("1", "2", "3");

    private NumberedStops() {}

    /** The lines with names in the place of numbers; the same lines where none stands for a name. */
    static List<PageText.Numbered> spelledOut(List<PageText.Numbered> lines) {
        Map<String, String> names = new HashMap<>();
        lines.forEach(line -> name(new Line(line.text()), names));
        return !names.keySet().containsAll(FIRST)
                ? lines
                : lines.stream()
                        .map(line -> new PageText.Numbered(line.number(), spelledOut(line.text(), names)))
                        .toList();
    }

    private static void name(Line line, Map<String, String> names) {
        int begin = NUMBERED.at(line, 0);
        int end = begin;
        while (begin > 0 && (line.is(end, Token.Kind.WORD) || line.is(end, Token.Kind.ROMAN))) {
            end++;
        }
        if (end > begin) {
            for (int i = 0; i < begin; i++) {
                if (line.is(i, Token.Kind.NUMBER)) {
                    names.putIfAbsent(line.at(i).text(), line.part(begin, end));
                }
            }
        }
    }

    private static String spelledOut(String text, Map<String, String> names) {
        Line line = new Line(text);
        int lent = LENT.in(line);
        if (lent < 0) {
            return text;
        }
        Token number = line.at(lent + LENT.at(line, lent) - 2);
        String name = names.get(number.text());
        return name == null
                ? text
                : text.substring(0, number.start())
                        + name
                        + text.substring(number.start() + number.text().length());
    }
}
