package versewind.stoplist;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A text of one line, taken apart into tokens; time grows with its length. */
final class Line {

    /** The sign that marks where something was cut out of a text. */
    static final char GAP = '\u0001';

    private static final int MOST_WORDS = 3;
    private static final Pattern NUMBER = Pattern.compile(
            "\\d{1,2}[ .+-]{0,2}\\d\\s?/\\s?\\d{1,2}|\\d{2,3}/\\d" + "|\\d\\s?/\\s?\\d{1,2}|\\d{1,2}[.,]\\d{1,2}|\\d+");
    private static final String NUMERALS = "IVX";
    private static final String QUOTES = "'\"";
    private static final String OPENING = "([{";
    private static final String CLOSING = ")]}";
    private static final String BLANKS = " \t\n\u000b\f\r";
    /** What may stand between the figures of one number, and how much of it. */
    private static final String IN_NUMBERS = " .+-,\t\n\u000b\f\r";

    private static final int MOST_IN_NUMBERS = 3;

    private final String text;
    private final List<Token> tokens = new ArrayList<>();

    Line(String text) {
        this.text = text;
        int at = 0;
        while (at < text.length()) {
            at = BLANKS.indexOf(text.charAt(at)) >= 0 ? at + 1 : add(at);
        }
    }

    /** Adds the token that begins at a place, and says where it ends. */
    private int add(int at) {
        int sign = text.codePointAt(at);
        if (sign >= '0' && sign <= '9') {
            return add(Token.Kind.NUMBER, at, endOfNumber(at));
        }
        if (Character.isLetter(sign)) {
            int end = endOfNumeral(at);
            return end > at ? add(Token.Kind.ROMAN, at, end) : add(Token.Kind.WORD, at, endOfWord(at));
        }
        Token.Kind kind = QUOTES.indexOf(sign) >= 0
                ? Token.Kind.QUOTE
                : OPENING.indexOf(sign) >= 0
                        ? Token.Kind.OPEN
                        : CLOSING.indexOf(sign) >= 0 ? Token.Kind.CLOSE : Token.Kind.SIGN;
        return add(kind, at, at + Character.charCount(sign));
    }

    private int add(Token.Kind kind, int from, int to) {
        String part = text.substring(from, to);
        boolean hasLetters = kind == Token.Kind.WORD || kind == Token.Kind.ROMAN;
        tokens.add(new Token(kind, part, hasLetters ? Spelling.spelled(part) : "", from));
        return to;
    }

    private int endOfNumber(int from) {
        int end = from;
        while (isDigit(end)) {
            end++;
        }
        int next = end;
        while (next < text.length() && next < end + MOST_IN_NUMBERS && IN_NUMBERS.indexOf(text.charAt(next)) >= 0) {
            next++;
        }
        if (!isDigit(next) && !text.startsWith("/", next)) {
            return end;
        }
        Matcher number = NUMBER.matcher(text).region(from, text.length());
        return number.lookingAt() ? number.end() : end;
    }

    private boolean isDigit(int at) {
        return at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9';
    }

    /** Where the letters I, V and X end, if no other letter or figure follows; where they begin otherwise. */
    private int endOfNumeral(int from) {
        int end = from;
        while (end < text.length() && NUMERALS.indexOf(text.charAt(end)) >= 0) {
            end++;
        }
        boolean goesOn = end < text.length() && (isDigit(end) || Character.isLetter(text.codePointAt(end)));
        return goesOn ? from : end;
    }

    private int endOfWord(int from) {
        int end = from;
        while (end < text.length() && (Character.isLetter(text.codePointAt(end)) || isMark(text.codePointAt(end)))) {
            end += Character.charCount(text.codePointAt(end));
        }
        return end;
    }

    private static boolean isMark(int sign) {
        int kind = Character.getType(sign);
        return kind == Character.NON_SPACING_MARK
                || kind == Character.COMBINING_SPACING_MARK
                || kind == Character.ENCLOSING_MARK;
    }

    String text() {
        return text;
    }

    List<Token> tokens() {
        return tokens;
    }

    int size() {
        return tokens.size();
    }

    Token at(int token) {
        return tokens.get(token);
    }

    /** True if there is such a token. */
    boolean is(int token) {
        return token >= 0 && token < size();
    }

    /** True if there is such a token and it is of a kind. */
    boolean is(int token, Token.Kind kind) {
        return is(token) && at(token).is(kind);
    }

    boolean is(int token, String words) {
        return is(token) && at(token).is(words);
    }

    boolean isSign(int token, String signs) {
        return is(token) && at(token).isSign(signs);
    }

    /** The number of characters between a token and the one before it; 0 beyond the end. */
    int gap(int token) {
        if (token >= size()) {
            return 0;
        }
        return token == 0 ? at(0).start() : at(token).start() - at(token - 1).end();
    }

    /** Where a token begins in the text; its end for the one after the last. */
    int start(int token) {
        return token >= size() ? text.length() : at(token).start();
    }

    /** The character before a token; a blank at the beginning. */
    char before(int token) {
        int start = at(token).start();
        return start == 0 ? ' ' : text.charAt(start - 1);
    }

    /** The character after a token; a blank at the end. */
    char after(int token) {
        int end = at(token).end();
        return end == text.length() ? ' ' : text.charAt(end);
    }

    /** The text from a token up to another. */
    String part(int from, int to) {
        return from >= to ? "" : text.substring(at(from).start(), at(to - 1).end());
    }

    /**
     * The number of tokens of the longest phrase of a class that begins at a token; points and quotes in it do not
     * count.
     */
    int phrase(String kind, int token) {
        if (!is(token, Token.Kind.WORD)) {
            return 0;
        }
        List<String> words = new ArrayList<>();
        List<Integer> ends = new ArrayList<>();
        for (int i = token; i < size() && words.size() < MOST_WORDS; i++) {
            if (at(i).is(Token.Kind.WORD)) {
                words.add(at(i).plain());
                ends.add(i + 1 - token);
            } else if (!isSign(i, ".") && !at(i).is(Token.Kind.QUOTE)) {
                break;
            }
        }
        int length = WordList.of(kind).at(words, 0);
        return length == 0 ? 0 : ends.get(length - 1);
    }

    /** The tokens of everything that begins at any token and takes as many as this says; 0 for nothing. */
    BitSet all(IntUnaryOperator length) {
        BitSet found = new BitSet();
        for (int i = 0; i < size(); i++) {
            int tokens = length.applyAsInt(i);
            found.set(i, i + tokens);
            i += Math.max(0, tokens - 1);
        }
        return found;
    }

    /** The text with some tokens taken away, and a sign for every run of them. */
    String without(BitSet cut, char sign) {
        StringBuilder left = new StringBuilder();
        int end = 0;
        for (int i = cut.nextSetBit(0); i >= 0; i = cut.nextSetBit(cut.nextClearBit(i))) {
            int to = cut.nextClearBit(i);
            left.append(text, end, at(i).start()).append(sign);
            end = at(to - 1).end();
        }
        return left.append(text.substring(end)).toString();
    }

    /** The tokens of every closed bracket, with what is inside. */
    BitSet brackets() {
        return brackets(0);
    }

    /** The tokens of every bracket, with what is inside; one that is not closed goes on to the end. */
    BitSet bracketsToEnd() {
        return brackets(size());
    }

    private BitSet brackets(int end) {
        BitSet inside = new BitSet();
        int open = -1;
        for (int i = 0; i < size(); i++) {
            if (open < 0 && at(i).is(Token.Kind.OPEN)) {
                open = i;
            } else if (open >= 0 && at(i).is(Token.Kind.CLOSE)) {
                inside.set(open, i + 1);
                open = -1;
            }
        }
        if (open >= 0 && open < end) {
            inside.set(open, end);
        }
        return inside;
    }

    /** Its words without figures and signs. */
    String letters() {
        return tokens.stream().filter(Token::isWord).map(Token::text).collect(Collectors.joining(" "));
    }

    /** The text without what stands in brackets. */
    String outside() {
        return without(bracketsToEnd(), ' ');
    }
}
