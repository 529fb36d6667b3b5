package versewind.stoplist;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import versewind.stoplist.Token.Kind;

/** A line of several stops or couplers, parted into one text for each. */
final class Segments {

    private static final String SEPARATORS = ";\u2022\u25cf\u00b7";

    private Segments() {}

    /** A line without the tokens that part it, each piece stripped, blank ones left out; brackets are never parted. */
    static List<String> split(String text, BiPredicate<Line, Integer> parts) {
        Line line = new Line(text);
        BitSet brackets = line.brackets();
        List<String> segments = new ArrayList<>();
        int from = 0;
        for (int i = 0; i <= line.size(); i++) {
            if (i == line.size() || (!brackets.get(i) && parts.test(line, i))) {
                String segment = line.text()
                        .substring(
                                from,
                                i == line.size()
                                        ? line.text().length()
                                        : line.at(i).start())
                        .strip();
                if (!segment.isEmpty()) {
                    segments.add(segment);
                }
                from = i == line.size() ? from : line.at(i).end();
            }
        }
        return segments;
    }

    /** A comma that is not part of a number, or another sign between the entries of a list. */
    static boolean isSeparator(Line line, int token) {
        boolean inNumber = Character.isDigit(line.before(token)) && Character.isDigit(line.after(token));
        return line.isSign(token, SEPARATORS) || (line.isSign(token, ",") && !inNumber);
    }

    /** A sign with blanks around it. */
    static boolean isApart(Line line, int token, String signs) {
        return line.isSign(token, signs) && line.before(token) == ' ' && line.after(token) == ' ';
    }

    /** The word "and" between two others. */
    static boolean isAnd(Line line, int token) {
        boolean between = token > 0 && token + 1 < line.size();
        return between
                && line.before(token) == ' '
                && (line.after(token) == ' ' && (line.is(token, "and") || line.isSign(token, "&")));
    }

    /** The texts of the stops of a line, in their order. */
    static List<String> ofStops(String text, ListStyle style) {
        return split(text, Segments::isSeparator).stream()
                .flatMap(Segments::signed)
                .flatMap(each -> runOn(each, style).stream())
                .toList();
    }

    private static Stream<String> signed(String part) {
        List<BiPredicate<Line, Integer>> ways = List.of((line, i) -> isApart(line, i, "/+-"), Segments::isAnd);
        return ways.stream()
                .map(way -> split(part, way))
                .filter(parts -> parts.size() > 1 && parts.stream().allMatch(Segments::isStop))
                .findFirst()
                .map(List::stream)
                .orElse(Stream.of(part));
    }

    private static boolean isStop(String text) {
        Line line = new Line(text);
        return Spelling.hasWord(text) && Pitches.isMarked(line);
    }

    /**
     * "Principal 8' Octave 4' Mixtur 4f." without anything between: parted behind the pitches, or before them if one
     * leads.
     */
    private static List<String> runOn(String part, ListStyle style) {
        Line line = new Line(part);
        List<Integer> starts = new ArrayList<>();
        List<Integer> ends = new ArrayList<>();
        int first = -1;
        for (int i = 0; i < line.size(); i++) {
            int length = Pitches.marked(line, i);
            if (length > 0) {
                first = first < 0 ? i : first;
                starts.add(line.at(i).start());
                ends.add(line.at(i + length - 1).end());
                i += length - 1;
            }
        }
        if (starts.size() < 2) {
            return List.of(part);
        }
        boolean leads = first == 0
                || (first == 1 && line.is(0, Kind.NUMBER))
                || (first == 2 && line.is(0, Kind.NUMBER) && !line.is(1, Kind.WORD));
        List<Integer> cuts = leads ? starts.subList(1, starts.size()) : ends;
        List<String> texts = new ArrayList<>();
        int from = 0;
        for (int cut : cuts) {
            texts.add(part.substring(from, cut));
            from = cut;
        }
        texts.add(part.substring(from));
        texts.removeIf(String::isBlank);
        long named = texts.stream().filter(each -> isNamed(each, style)).count();
        boolean rest = !Pitches.isMarked(texts.get(texts.size() - 1));
        return named >= 2 && named >= texts.size() - (rest ? 1 : 0)
                ? texts.stream().map(String::strip).toList()
                : List.of(part);
    }

    private static boolean isNamed(String text, ListStyle style) {
        String name = StopLine.of(text, style).name();
        return !name.isEmpty() && Lexicon.get().known(name, style.setting()).isPresent();
    }
}
