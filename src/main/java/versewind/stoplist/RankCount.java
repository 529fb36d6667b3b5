package versewind.stoplist;

import java.util.List;
import java.util.regex.Pattern;
import versewind.stoplist.Token.Kind;

/**
 * Ranks of a compound stop as people write them: III, III-V, 4f., 4 fach, 3-4 sterk, 3 rgs, 4 ranks, V file; and the
 * scale numbers of a mixture, 15.19.22.
 *
 * @param length how many tokens they take; 0 where there are none
 * @param count how many ranks; of "III-V" the five
 * @param range whether two numbers are written
 */
record RankCount(int length, int count, boolean range) {

    private static final Pattern MIXED = Pattern.compile("\\d+[ +-]+\\d/\\d");
    static final RankCount NONE = new RankCount(0, 0, false);
    private static final TokenForm MARKED = TokenForm.of(
            "count [-/] count [-/] count [-/] count [.-]* <ranks> ~[.]?",
            "count [-/] count [-/] count [.-]* <ranks> ~[.]?",
            "count [-/] count [.-]* <ranks> ~[.]?",
            "count [.-]* <ranks> ~[.]?");
    private static final TokenForm NUMERAL = TokenForm.of("roman [-/] roman [-/] roman", "roman [-/] roman", "roman");
    private static final TokenForm BARE = TokenForm.of("#2 [-/] #2", "pitch");
    private static final TokenForm NEXT_SCALE = TokenForm.of("[.,\u00b7-] number");

    private static RankCount of(Line line, int token, int length) {
        List<Token> numbers = line.tokens().subList(token, token + length).stream()
                .filter(each -> each.count() > 0 && !each.is(Kind.WORD))
                .toList();
        if (numbers.isEmpty()) {
            return NONE;
        }
        boolean range = numbers.size() > 1 || numbers.get(0).text().contains("/");
        return new RankCount(length, numbers.get(numbers.size() - 1).count(), range);
    }

    /** A number with a word for ranks that begins at a token. */
    static RankCount marked(Line line, int token) {
        boolean mixed = MIXED.matcher(line.at(token).text()).matches();
        int length = !mixed && Pitches.isApart(line, token, "/.,'") ? MARKED.at(line, token) : 0;
        char after = length == 0 ? ' ' : line.after(token + length - 1);
        return length == 0 || Character.isDigit(after) || after == '\'' ? NONE : of(line, token, length);
    }

    /** A Roman numeral that begins at a token and stands apart. */
    static RankCount numeral(Line line, int token) {
        int length = Pitches.isApart(line, token, "'") ? NUMERAL.at(line, token) : 0;
        int whole = length > 1 && line.at(token + length - 1).count() == 0 ? 1 : length;
        boolean fits = whole > 0 && line.at(token).count() > 0 && line.after(token + whole - 1) != '\'';
        return fits ? of(line, token, whole) : NONE;
    }

    /** A number without a word that begins at a token and can be ranks. */
    static RankCount bare(Line line, int token) {
        int length = Pitches.isApart(line, token, "/.,") ? BARE.at(line, token) : 0;
        char after = length == 0 ? ' ' : line.after(token + length - 1);
        boolean fits = length > 0 && !Character.isLetterOrDigit(after) && after != '/' && after != '\'';
        return fits ? of(line, token, length) : NONE;
    }

    /** Scale numbers that begin at a token: how many tokens they take; 0 where none do. */
    static int scale(Line line, int token) {
        boolean apart = line.is(token, Kind.NUMBER) && Pitches.isApart(line, token, "/'");
        if (!apart
                || !WordList.of("first scale number").has(numbers(line, token).get(0))
                || !areScale(line, token, 1)) {
            return 0;
        }
        int end = token + 1;
        while (NEXT_SCALE.at(line, end) > 0 && areScale(line, end + 1, 0)) {
            end += 2;
        }
        boolean several = end > token + 1 || numbers(line, token).size() > 1;
        end += several && line.isSign(end, ".") ? 1 : 0;
        char after = line.after(end - 1);
        return several && !Character.isDigit(after) && after != '/' && after != '\'' ? end - token : 0;
    }

    private static List<String> numbers(Line line, int token) {
        return List.of(line.at(token).text().split("[.,]", -1));
    }

    private static boolean areScale(Line line, int token, int from) {
        List<String> numbers = numbers(line, token);
        return numbers.subList(from, numbers.size()).stream().allMatch(WordList.of("scale number")::has);
    }
}
