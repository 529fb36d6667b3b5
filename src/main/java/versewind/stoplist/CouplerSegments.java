package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** A line of several couplers, parted into one text for each. */
final class CouplerSegments {

    private static final int LONGEST_SHORTENED = 3;

    private CouplerSegments() {}

    /** The texts of the couplers of a line, in their order. */
    static List<String> of(String text, String language) {
        return numbered(text).stream()
                .flatMap(part -> Segments.split(part, CouplerSegments::isBetween).stream())
                .flatMap(part -> dashed(part).stream())
                .flatMap(part -> halves(part, language).stream())
                .flatMap(part -> pairs(part).stream())
                .toList();
    }

    /** "Swell to Great, Sub-octave", and no other coupler on the line, without the comma; any other line as it is. */
    static String joined(String text, String language) {
        int comma = text.indexOf(", ");
        if (comma < 0 || comma < text.lastIndexOf(',')) {
            return text;
        }
        String pair = Spelling.unnumbered(text.substring(0, comma));
        String pitch = text.substring(comma);
        CouplerWords words = CouplerWords.of(pair, language);
        boolean joins =
                words.joins() && words.divisions().size() == 2 && words.kinds().isEmpty();
        boolean isPitch = CouplerWords.of(pitch, language).isOnlyPitches()
                && pitch.chars().noneMatch(Character::isDigit);
        return joins && (isPitch || Spelling.words(pitch).equals(List.of("unison"))) ? pair + pitch.substring(1) : text;
    }

    /** "IV. Swell Octave V. Swell Sub-Octave": a numeral before each, one after the other. */
    private static List<String> numbered(String text) {
        if (text.isEmpty() || Token.number(text.substring(0, 1)) == 0) {
            return List.of(text);
        }
        Line line = new Line(text);
        int next = line.is(0, Token.Kind.ROMAN) ? Token.number(line.at(0).text()) : 0;
        List<Integer> starts = new ArrayList<>();
        for (int i = 0; next > 0 && i + 2 < line.size(); i++) {
            boolean isNext = line.is(i, Token.Kind.ROMAN)
                    && Token.number(line.at(i).text()) == next
                    && line.isSign(i + 1, ".")
                    && line.is(i + 2, Token.Kind.WORD)
                    && !line.is(i + 2, "manual");
            if (isNext) {
                starts.add(i);
                next++;
            }
        }
        boolean isNumbered = starts.size() > 1
                || (starts.size() == 1
                        && !DivisionWord.entries(line.at(2).plain()).isEmpty());
        if (!isNumbered) {
            return List.of(text);
        }
        return IntStream.range(0, starts.size())
                .mapToObj(i -> line.part(starts.get(i) + 2, i + 1 < starts.size() ? starts.get(i + 1) : line.size()))
                .toList();
    }

    /** True if a token parts two couplers: a sign, or a point before a new sentence. */
    private static boolean isBetween(Line line, int token) {
        boolean sentence = line.isSign(token, ".")
                && !isShortened(line, token - 1)
                && !(line.is(token - 1, Token.Kind.NUMBER) && (token == 1 || line.isSign(token - 2, ".,;")))
                && line.is(token + 1, Token.Kind.WORD)
                && line.gap(token + 1) > 0
                && (line.at(token + 1).text().length() > 3 || line.is(token + 1, "heading place"))
                && line.at(token + 1).text().length() > 1
                && Character.isUpperCase(line.at(token + 1).text().charAt(0))
                && Character.isLowerCase(line.at(token + 1).text().charAt(1))
                && !line.is(token + 1, "pitch of coupler")
                && !(line.is(token - 1) && line.at(token - 1).count() > 0 && line.is(token + 1, "manual"));
        boolean counted = line.isSign(token, ".")
                && line.is(token - 1, Token.Kind.WORD)
                && line.at(token - 1).text().length() > LONGEST_SHORTENED
                && line.is(token + 1, Token.Kind.NUMBER)
                && line.gap(token + 1) > 0
                && line.is(token + 2, Token.Kind.WORD);
        boolean numbered = line.isSign(token, ".")
                && line.is(token - 1, Token.Kind.WORD)
                && line.is(token + 1, Token.Kind.NUMBER)
                && line.isSign(token + 2, ".");
        boolean roman = line.isSign(token, ".")
                && line.is(token - 1, Token.Kind.WORD)
                && line.is(token + 1, Token.Kind.ROMAN)
                && line.is(token + 2, Token.Kind.WORD);
        return sentence || counted || numbered || roman || line.isSign(token, ",;\u2022\u00b7|");
    }

    /** "Sw. Octave": a division shortened in English. */
    private static boolean isShortened(Line line, int token) {
        return line.is(token, Token.Kind.WORD)
                && line.at(token).text().length() <= LONGEST_SHORTENED
                && (line.is(token + 2, "octave") || line.is(token + 2, "sub") || line.is(token + 2, "super"))
                && DivisionWord.entries(line.at(token).plain()).stream()
                        .anyMatch(each -> each.language().equals("en"))
                && Character.isUpperCase(line.at(token).text().charAt(0))
                && !line.isSign(token - 1, ",");
    }

    /** "II to I - III to I". */
    private static List<String> dashed(String part) {
        boolean joins = part.contains("/")
                || part.contains("+")
                || WordList.of("coupled to").in(part);
        boolean worded =
                WordList.of("coupled to").in(part) && !WordList.of("coupler").in(part);
        return Segments.split(
                part,
                (line, i) -> joins
                        ? Segments.isApart(line, i, worded ? "-/" : "-")
                        : Segments.isApart(line, i, "-") && line.is(i + 1) && line.is(i + 1, "coupler"));
    }

    /** "II/P and I/P". */
    private static List<String> halves(String part, String language) {
        List<String> halves = Segments.split(part, Segments::isAnd);
        boolean all = halves.stream()
                .map(half -> CouplerWords.of(half, language))
                .allMatch(half -> half.joins()
                        || (half.divisions().size() == 1
                                && half.unknown() == 0
                                && !half.kinds().isEmpty()));
        return all ? halves : List.of(part);
    }

    /** "II/I III/I" without anything between. */
    private static List<String> pairs(String part) {
        Line line = new Line(part);
        List<Integer> signs = IntStream.range(1, line.size() - 1)
                .filter(i -> line.isSign(i, "/+"))
                .boxed()
                .toList();
        List<String> pairs = new ArrayList<>();
        int from = 0;
        for (int sign : signs) {
            int start = line.at(sign - 1).is(Token.Kind.SIGN) ? sign - 2 : sign - 1;
            boolean apart = signs.size() > 1
                    && start > 0
                    && line.gap(start) > 0
                    && !line.is(start - 1, "to pedal")
                    && !line.isSign(start - 1, "/+");
            if (apart) {
                pairs.add(part.substring(from, line.at(start).start()).strip());
                from = line.at(start).start();
            }
        }
        pairs.add(part.substring(from));
        return pairs;
    }
}
