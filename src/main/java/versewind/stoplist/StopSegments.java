package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A line of several stops, parted into one text for each. */
final class StopSegments {

    private static final Pattern SEPARATORS = Pattern.compile("[;\u2022\u25cf\u00b7]|(?<!\\d),|,(?!\\d)");
    private static final Pattern SIGNS = Pattern.compile("\\s[/+-]\\s");
    private static final Pattern AND = Pattern.compile("(?i)\\s(?:und|and|et|en|e|y|och|og|&)\\s");
    private static final Pattern PARENTHESES = Pattern.compile("[(\\[][^)\\]]*[)\\]]");
    private static final char COMMA = '\u0001';
    private static final char SEMICOLON = '\u0002';

    private StopSegments() {}

    /** The texts, in their order. */
    static List<String> of(String line, ListStyle style) {
        String kept = PARENTHESES
                .matcher(line)
                .replaceAll(match -> Matcher.quoteReplacement(
                        match.group().replace(',', COMMA).replace(';', SEMICOLON)));
        List<String> segments = new ArrayList<>();
        for (String part : SEPARATORS.split(kept, -1)) {
            signed(part).flatMap(each -> runOn(each, style).stream()).forEach(each -> {
                String text = each.replace(COMMA, ',').replace(SEMICOLON, ';').strip();
                if (!text.isEmpty()) {
                    segments.add(text);
                }
            });
        }
        return segments;
    }

    private static Stream<String> signed(String part) {
        for (Pattern pattern : List.of(SIGNS, AND)) {
            String[] parts = pattern.split(part, -1);
            if (parts.length > 1 && Stream.of(parts).allMatch(StopSegments::isStop)) {
                return Stream.of(parts);
            }
        }
        return Stream.of(part);
    }

    private static boolean isStop(String text) {
        return text.matches(".*\\p{L}{3,}.*") && Feet.MARKED.matcher(text).find();
    }

    /** "Principal 8' Octave 4' Mixtur 4f." without anything between. */
    private static List<String> runOn(String part, ListStyle style) {
        List<Integer> ends = new ArrayList<>();
        Matcher matcher = Feet.MARKED.matcher(part);
        List<int[]> pitches = new ArrayList<>();
        while (matcher.find()) {
            pitches.add(new int[] {matcher.start(), matcher.end()});
        }
        if (pitches.size() < 2) {
            return List.of(part);
        }
        boolean first = part.substring(0, pitches.get(0)[0])
                .strip()
                .replaceAll("^\\d{1,3}[.)]?", "")
                .isBlank();
        for (int i = first ? 1 : 0; i < pitches.size(); i++) {
            int cut = first ? pitches.get(i)[0] : pitches.get(i)[1];
            ends.add(cut);
        }
        List<String> pieces = new ArrayList<>();
        int from = 0;
        for (int cut : ends) {
            pieces.add(part.substring(from, cut));
            from = cut;
        }
        pieces.add(part.substring(from));
        List<String> texts = pieces.stream().filter(each -> !each.isBlank()).toList();
        long named = texts.stream().filter(each -> isNamed(each, style)).count();
        boolean rest = !texts.isEmpty()
                && !Feet.MARKED.matcher(texts.get(texts.size() - 1)).find();
        return named >= 2 && named >= texts.size() - (rest ? 1 : 0) ? texts : List.of(part);
    }

    private static boolean isNamed(String text, ListStyle style) {
        String name = StopLine.of(text, style).name();
        return !name.isEmpty() && Lexicon.get().known(name, style.setting()).isPresent();
    }
}
