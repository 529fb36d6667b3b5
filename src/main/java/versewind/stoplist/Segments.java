package versewind.stoplist;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A line of several stops or couplers, parted into one text for each. */
final class Segments {

    private static final int MOST_DIGITS = 3;
    private static final TokenForm SECOND = TokenForm.of("<bullet> [.]? #1");
    private static final Pattern BEFORE_SECOND = Pattern.compile("(?i),(?= n[or]\\b)");
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
        boolean isComma = line.isSign(token, ",") && !inNumber && !isSecond(line, token + 1);
        return isSentenceEnd(line, token) || line.isSign(token, SEPARATORS) || isComma;
    }

    /** "Open Diapason, No. 2" is one of several of its name; "No. 2 Dulciana" is a stop. */
    private static boolean isSecond(Line line, int token) {
        int length = SECOND.at(line, token);
        return length > 0 && !line.is(token + length, Token.Kind.WORD);
    }

    /** "Open Diapason, No. 2" without the comma, which in a list of names would part it in two. */
    static String withoutComma(String name) {
        return BEFORE_SECOND.matcher(name).replaceFirst("");
    }

    /** A point behind a pitch or ranks with their unit, before a word with a capital. */
    static boolean isSentenceEnd(Line line, int token) {
        return line.isSign(token, ".")
                && (line.is(token - 1, "feet")
                        || line.is(token - 1, "ranks")
                        || line.is(token - 1, "half stop")
                        || line.is(token - 1, Token.Kind.QUOTE))
                && (line.is(token - 2, Token.Kind.NUMBER)
                        || line.is(token - 2, Token.Kind.ROMAN)
                        || line.is(token - 2, Token.Kind.QUOTE))
                && line.is(token + 1, Token.Kind.WORD)
                && line.gap(token + 1) == 1
                && line.at(token + 1).text().length() > 3
                && Character.isUpperCase(line.at(token + 1).text().charAt(0));
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
        return joined(split(text, Segments::isSeparator), style).stream()
                .map(each -> withoutAnd(each, style))
                .flatMap(each -> signed(each, style))
                .flatMap(each -> runOn(each, style).stream())
                .toList();
    }

    /** "and Oboe 8": the last of a sentence. */
    private static String withoutAnd(String piece, ListStyle style) {
        Line line = new Line(piece);
        String rest = line.is(0, "and") ? line.part(1, line.size()) : "";
        return isNamed(rest, style) ? rest : piece;
    }

    /** "Open diapason, metal, 8 feet": what is no stop and gives the one before its pitch belongs to it. */
    private static List<String> joined(List<String> pieces, ListStyle style) {
        List<String> joined = new ArrayList<>();
        for (String piece : pieces) {
            int last = joined.size() - 1;
            if (last >= 0 && goesOn(joined.get(last), piece, style)) {
                Line line = new Line(piece);
                int figures = beforeFigures(line);
                String words = figures == 0 ? ", " : " (" + line.part(0, figures) + ") ";
                joined.set(last, joined.get(last) + words + line.part(figures, line.size()));
            } else {
                joined.add(piece);
            }
        }
        return joined;
    }

    private static int beforeFigures(Line line) {
        return IntStream.range(0, line.size())
                .filter(i -> figures(line, i) > 0)
                .findFirst()
                .orElse(line.size());
    }

    private static boolean goesOn(String before, String piece, ListStyle style) {
        List<String> words = Spelling.words(piece);
        Line line = new Line(piece);
        List<String> unfigured = Spelling.words(line.part(0, beforeFigures(line)));
        boolean isMadeOf = WordList.of("made of").isAll(words)
                || WordList.of("before pitch").isAll(unfigured)
                || (WordList.of("made of").isAll(unfigured)
                        && Character.isLowerCase(piece.charAt(0))
                        && !hasFigures(new Line(new Line(before).outside())));
        if ((StopLine.isHalf(piece) && piece.length() > 2) || isMadeOf) {
            return isNamed(before.split(", ", 2)[0], style);
        }
        boolean isPitch = figures(line, 0) == line.size() && Pitches.isMarked(line);
        if (isPitch && Spelling.hasWord(before) && !WordList.of("made of").isAll(Spelling.words(before))) {
            // "OP. DIAP. FRONT, 8 FT": whatever its name means
            return !hasFigures(new Line(new Line(before).outside())) && !Tremulants.isOne(before);
        }
        boolean remark = Character.isLowerCase(piece.charAt(0)) || hasFigures(new Line("x " + piece));
        return remark
                && !hasFigures(new Line(new Line(before).outside()))
                && (isNamed(before, style) || isNamed(before.split(" (?:and|und|et|e|y|en|i) ", 2)[0], style))
                && !isNamed(piece, style)
                && !Tremulants.isOne(piece)
                && DivisionWord.in(words, style.language()).isEmpty();
    }

    private static Stream<String> signed(String part, ListStyle style) {
        List<BiPredicate<Line, Integer>> ways = List.of((line, i) -> isApart(line, i, "/+-"), Segments::isAnd);
        return ways.stream()
                .map(way -> split(part, way))
                .filter(parts -> parts.size() > 1
                        && (parts.stream().allMatch(each -> isStop(each, style) || Tremulants.isOne(each))
                                || (parts.size() > 2 && parts.stream().allMatch(each -> isNamed(each, style)))))
                .findFirst()
                .map(List::stream)
                .orElse(Stream.of(part));
    }

    private static boolean isStop(String text, ListStyle style) {
        Line line = new Line(text);
        return Spelling.hasWord(text) && (Pitches.isMarked(line) || (hasFigures(line) && isNamed(text, style)));
    }

    private static boolean hasFigures(Line line) {
        return IntStream.range(1, line.size()).anyMatch(i -> figures(line, i) > 0);
    }

    /** How many tokens of pitch, ranks and numbers of pipes begin at a token; 0 where none do. */
    static int figures(Line line, int token) {
        int end = token;
        int length = 1;
        while (end < line.size() && length > 0) {
            length = Math.max(
                    Math.max(
                            Pitches.marked(line, end),
                            RankCount.marked(line, end).length()),
                    RankCount.numeral(line, end).length());
            boolean bare = line.at(end).isWhole(MOST_DIGITS) || Pitches.isBare(line, end);
            length = length > 0 ? length : bare && Pitches.isApart(line, end, "'") ? 1 : 0;
            end += length;
        }
        return end - token;
    }

    /**
     * "Principal 8 Octave 4 Mixtur IV" without anything between: parted behind the figures, or before them if they
     * lead.
     */
    static List<String> runOn(String part, ListStyle style) {
        Line line = new Line(part);
        List<Integer> starts = new ArrayList<>();
        List<Integer> ends = new ArrayList<>();
        BitSet brackets = line.brackets();
        for (int i = 0; i < line.size(); i++) {
            int length = brackets.get(i) ? 0 : figures(line, i);
            if (length > 0) {
                starts.add(line.at(i).start());
                ends.add(line.at(i + length - 1).end());
                i += length - 1;
            }
        }
        if (starts.size() < 2) {
            return List.of(part);
        }
        boolean leads = starts.get(0) == line.at(0).start()
                && ends.get(ends.size() - 1) < part.stripTrailing().length();
        List<Integer> cuts = leads ? starts.subList(1, starts.size()) : ends;
        List<String> texts = new ArrayList<>();
        int from = 0;
        for (int cut : cuts) {
            texts.add(part.substring(from, cut));
            from = cut;
        }
        texts.add(part.substring(from));
        texts.removeIf(String::isBlank);
        boolean isHalf = texts.stream().anyMatch(each -> StopLine.isHalf(new Line(each).letters()));
        if (isHalf) {
            return List.of(part);
        }
        long named = texts.stream().filter(each -> isNamed(each, style)).count();
        boolean rest = !hasFigures(new Line(texts.get(texts.size() - 1)));
        return named >= 2 && named >= texts.size() - (rest ? 1 : 0)
                ? texts.stream().map(String::strip).toList()
                : List.of(part);
    }

    /** True if a text holds the name of a known stop and nothing that is no part of it. */
    static boolean isNamed(String text, ListStyle style) {
        return style.names().of(text, each -> {
            String name = StopLine.of(each, style).name();
            return !name.isEmpty() && Lexicon.get().find(name, style.setting()).isPresent();
        });
    }
}
