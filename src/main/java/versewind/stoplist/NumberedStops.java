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

    /** "(22)", "(21, ext.)" */
    private static final TokenForm LENDER = TokenForm.of("open #3 close", "open #3 [,;] <lent_by>");

    private static final String FROM = "from ";

    /** Lines begin with these, or their numbers are no running ones but pitches. */
    private static final List<String> FIRST = List.of("1", "2", "3");

    private NumberedStops() {}

    /** The lines with names in the place of numbers; the same lines where none stands for a name. */
    static List<PageText.Numbered> spelledOut(List<PageText.Numbered> lines) {
        Map<String, String> names = new HashMap<>();
        lines.forEach(line -> names(new Line(line.text()), names));
        return !names.keySet().containsAll(FIRST)
                ? lines
                : lines.stream()
                        .map(line -> new PageText.Numbered(line.number(), spelledOut(line.text(), names)))
                        .toList();
    }

    /** The names behind the numbers at the beginning of a line, and behind a wide blank. */
    private static void names(Line line, Map<String, String> names) {
        for (int i = 0; i < line.size(); i++) {
            int begin = i == 0 || line.gap(i) > 1 ? i + NUMBERED.at(line, i) : i;
            int end = begin;
            while (begin > i && (line.is(end, Token.Kind.WORD) || line.is(end, Token.Kind.ROMAN))) {
                end++;
            }
            if (end > begin) {
                String name = line.part(begin, end);
                line.tokens().subList(i, begin).stream()
                        .filter(each -> each.is(Token.Kind.NUMBER))
                        .forEach(each -> names.putIfAbsent(each.text(), name));
            }
        }
    }

    private static String spelledOut(String text, Map<String, String> names) {
        Line line = new Line(text);
        StringBuilder spelled = new StringBuilder();
        int from = 0;
        for (int i = 0; i < line.size(); i++) {
            boolean alone = LENDER.at(line, i) > 0;
            int number = alone ? i + 1 : i + LENT.at(line, i) - 2;
            String name = number > i ? names.get(line.at(number).text()) : null;
            if (name != null) {
                spelled.append(text, from, line.start(number))
                        .append(alone ? FROM : "")
                        .append(name);
                from = line.at(number).end();
                i = number;
            }
        }
        return from == 0 ? text : spelled.append(text.substring(from)).toString();
    }
}
