package versewind.stoplist;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The ranks of a unit organ, each with a letter, above stops that tell by it whose pipes they use: "B Gedeckt 16', 104
 * pipes", and below "4' Flute B". The second stop of a rank and all others borrow from the first.
 */
final class UnitRanks {

    private static final TokenForm RANK = TokenForm.of("letter [.:=-]|close? _word");
    private static final TokenForm USE = TokenForm.of("_letter", "open letter close");
    private static final String HEADING = "List of ranks:";
    private static final int FEWEST = 2;

    private UnitRanks() {}

    /** The lines with the ranks below a heading and names in the place of letters; the same where there are none. */
    static List<PageText.Numbered> spelledOut(List<PageText.Numbered> lines) {
        for (int from = 0; from + FEWEST <= lines.size(); from++) {
            int count = 0;
            while (from + count < lines.size() && isRank(lines.get(from + count), count)) {
                count++;
            }
            int end = from + count;
            int most = count;
            boolean isUsed = count >= FEWEST
                    && lines.subList(end, lines.size()).stream()
                                    .filter(each -> use(new Line(each.text()), most) > 0)
                                    .count()
                            > count;
            if (isUsed) {
                List<PageText.Numbered> spelled = new ArrayList<>(lines.subList(0, end));
                spelled.add(from, new PageText.Numbered(lines.get(from).number(), HEADING));
                Map<String, String> first = new HashMap<>();
                lines.subList(end, lines.size()).forEach(each -> spelled.add(named(each, most, first)));
                return spelled;
            }
        }
        return lines;
    }

    private static boolean isRank(PageText.Numbered numbered, int place) {
        Line line = new Line(numbered.text());
        return RANK.at(line, 0) > 0 && line.at(0).text().charAt(0) == 'A' + place;
    }

    /** How many tokens at the end of a line are one of so many letters; 0 for none. */
    private static int use(Line line, int letters) {
        for (int length : List.of(1, 3)) {
            int at = line.size() - length;
            int letter = at > 0 && USE.at(line, at) == length
                    ? line.at(at + length / 2).text().charAt(0) - 'A'
                    : -1;
            if (letter >= 0 && letter < letters) {
                return length;
            }
        }
        return 0;
    }

    private static PageText.Numbered named(PageText.Numbered numbered, int letters, Map<String, String> first) {
        Line line = new Line(numbered.text());
        int use = use(line, letters);
        if (use == 0) {
            return numbered;
        }
        int at = line.size() - use;
        String text = line.text().substring(0, line.start(at)).stripTrailing();
        String lender = first.putIfAbsent(
                line.at(at + use / 2).text(), StopLine.of(text, ListStyle.PLAIN).name());
        return new PageText.Numbered(numbered.number(), lender == null ? text : text + " (from " + lender + ")");
    }
}
