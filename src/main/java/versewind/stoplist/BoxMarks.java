package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The sign of stops that stand in a box, or outside one, where a legend gives it that meaning ("* unenclosed", "* =
 * in the swell box", "enclosed except *"): it is written out as a remark on each of them, and the legend taken off.
 */
final class BoxMarks {

    private static final String SIGNS = "*\u2020\u2021#+";
    private static final String END_OF_LEGEND = ";.)]";
    private static final int MOST_SIGNS = 3;
    private static final int MOST_WORDS = 8;

    /** Where the name and pitch of one stop end: at a comma, or where after a gap the name of another begins. */
    private static final String ONE_STOP = "([^,;]{1,80}?)(?=[,;]|\\s{3,}\\p{L}|$)";

    private static final Pattern EXCEPTED = Pattern.compile(",?\\s*(?:except(?: for)?|excepting|save|but)\\s*$");

    private static final Pattern MARKED = Pattern.compile("(?i)[\\s,;:(-]*(?:all )?stops (?:marked|with) $");

    private BoxMarks() {}

    /**
     * What a sign means.
     *
     * @param line the place of the line in which that is said
     * @param from where the legend begins
     * @param to where it ends
     * @param sign the sign
     * @param meaning what stands for it: "enclosed" or "unenclosed"
     */
    private record Legend(int line, int from, int to, char sign, String meaning) {}

    /** The lines with a remark in the place of every sign; the same lines where there is no legend. */
    static List<PageText.Numbered> spelledOut(List<PageText.Numbered> lines) {
        List<Legend> legends = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            legend(lines.get(i).text(), i, legends);
        }
        if (legends.isEmpty()) {
            return lines;
        }
        List<PageText.Numbered> spelled = new ArrayList<>(lines);
        for (Legend legend : legends) {
            Pattern before = Pattern.compile(Pattern.quote(legend.sign + "") + "\\s?(?=\\p{L})" + ONE_STOP);
            Pattern after = Pattern.compile(
                    "(?<=[\\p{L}\\d)'])\\s?" + Pattern.quote(legend.sign + "") + "(?=\\s*(?:[,;]|$)|\\s{2})");
            for (int i = 0; i < lines.size(); i++) {
                String text = spelled.get(i).text();
                if (i == legend.line) {
                    int end = Math.min(text.length(), legend.to);
                    text = text.substring(0, legend.from) + text.substring(end);
                } else if (text.indexOf(legend.sign) >= 0) {
                    text = before.matcher(text).replaceAll("$1 (" + legend.meaning + ")");
                    text = after.matcher(text).replaceAll(" (" + legend.meaning + ")");
                }
                spelled.set(i, new PageText.Numbered(lines.get(i).number(), text));
            }
        }
        return spelled;
    }

    private static void legend(String text, int line, List<Legend> legends) {
        int signs = 0;
        for (int at = 0; at < text.length() && signs < MOST_SIGNS; at++) {
            if (SIGNS.indexOf(text.charAt(at)) < 0 || isPaired(text, at)) {
                continue;
            }
            signs++;
            int end = at + 1;
            while (end < text.length() && END_OF_LEGEND.indexOf(text.charAt(end)) < 0) {
                end++;
            }
            List<String> words = Spelling.words(text.substring(at + 1, end));
            char sign = text.charAt(at);
            boolean isNew = legends.stream().noneMatch(each -> each.sign == sign);
            Matcher excepted = EXCEPTED.matcher(text.substring(0, at));
            if (isNew && words.isEmpty() && excepted.find() && isOfBoxes(Spelling.words(text.substring(0, at)))) {
                legends.add(new Legend(line, excepted.start(), at + 1, sign, "unenclosed"));
                return;
            }
            if (isNew && words.size() <= MOST_WORDS && isOfBoxes(words)) {
                String meaning = WordList.of("unenclosed").in(words) ? "unenclosed" : "enclosed";
                Matcher marked = MARKED.matcher(text.substring(0, at));
                legends.add(new Legend(line, marked.find() ? marked.start() : at, end, sign, meaning));
                return;
            }
        }
    }

    /** True for one of two such signs, which set a word in bold. */
    private static boolean isPaired(String text, int at) {
        char sign = text.charAt(at);
        return (at > 0 && text.charAt(at - 1) == sign) || (at + 1 < text.length() && text.charAt(at + 1) == sign);
    }

    private static boolean isOfBoxes(List<String> words) {
        List<String> rest = new ArrayList<>(words);
        for (String kind : List.of("unenclosed", "enclosed", "heading filler", "box legend")) {
            rest = WordList.of(kind).without(rest);
        }
        return (WordList.of("enclosed").in(words) || WordList.of("unenclosed").in(words))
                && rest.stream()
                        .allMatch(word -> DivisionWord.at(List.of(word), 0, "").isPresent());
    }
}
