package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import versewind.stoplist.Token.Kind;

/**
 * A form in which tokens follow each other, such as "pitch [-]? &lt;feet&gt; ~[.]?".
 *
 * <p>Its elements are: the name of a kind of token in small letters; "pitch", a number that can be one; "#" with a
 * digit, a whole number of at most so many digits; "##", of just two; "count", a number to 99 or a Roman one; "letter",
 * a word of one letter; "octave", figures or signs behind the name of a key; "[...]" one of these signs; "&lt;...&gt;"
 * a word or phrase of a kind of {@code words.csv}; "=..." that word. "|" stands between alternatives, "~" before what
 * touches the token before it and "_" before what does not, "?" behind what may be missing and "*" behind what may
 * occur any number of times.
 */
final class TokenForm {

    private final List<List<Element>> ways = new ArrayList<>();

    /** Something that may stand at a token: how many tokens it takes there; 0 where it does not fit. */
    private interface Choice {
        int length(Line line, int token);
    }

    /** One element: what it may be, how near it stands ('~', '_' or ' '), and how often ('?', '*' or '1'). */
    private record Element(List<Choice> choices, char near, char times) {

        static Element of(String written) {
            boolean placed = written.startsWith("~") || written.startsWith("_");
            char last = written.charAt(written.length() - 1);
            boolean timed = last == '?' || last == '*';
            String choices = written.substring(placed ? 1 : 0, written.length() - (timed ? 1 : 0));
            return new Element(
                    Stream.of(choices.split("\\|(?![^\\[]*])", -1))
                            .map(Element::choice)
                            .toList(),
                    placed ? written.charAt(0) : ' ',
                    timed ? last : '1');
        }

        private static Choice choice(String written) {
            String inside =
                    written.substring(1, Math.max(1, written.length() - 1)).replace('_', ' ');
            return switch (written.charAt(0)) {
                case '<' -> (line, at) -> line.phrase(inside, at);
                case '[' -> one(token -> token.isSign(inside));
                case '=' -> one(token -> token.plain().equals(written.substring(1)));
                case '#' ->
                    written.equals("##")
                            ? one(token -> token.isWhole(2) && token.text().length() == 2)
                            : one(token -> token.isWhole(Character.digit(written.charAt(1), 10)));
                default -> one(named(written));
            };
        }

        private static Choice one(Predicate<Token> fits) {
            return (line, at) -> fits.test(line.at(at)) ? 1 : 0;
        }

        private static Predicate<Token> named(String name) {
            return switch (name) {
                case "pitch" -> Token::isPitch;
                case "count" -> token -> token.count() > 0;
                case "letter" -> token -> token.is(Kind.WORD) && token.text().length() == 1;
                case "octave" -> token -> token.isWhole(2) || token.is(Kind.QUOTE) || token.isSign("\u00b0");
                default -> {
                    Kind kind = Kind.of(name);
                    yield token -> token.is(kind);
                }
            };
        }

        /** How many tokens of a line it takes from one on; 0 where it does not fit. */
        int length(Line line, int token) {
            if (token >= line.size() || (near == '~' && line.gap(token) > 0) || (near == '_' && line.gap(token) == 0)) {
                return 0;
            }
            int longest = 0;
            for (Choice choice : choices) {
                longest = Math.max(longest, choice.length(line, token));
            }
            return longest;
        }
    }

    private TokenForm() {}

    /** A form that can be written in several ways; the first that fits counts. */
    static TokenForm of(String... ways) {
        TokenForm form = new TokenForm();
        for (String way : ways) {
            form.ways.add(Stream.of(way.split(" ", -1)).map(Element::of).toList());
        }
        return form;
    }

    /** How many tokens it takes from one on; 0 where it does not fit there. */
    int at(Line line, int token) {
        for (List<Element> way : ways) {
            int end = end(line, token, way, 0);
            if (end > token) {
                return end - token;
            }
        }
        return 0;
    }

    /** The first token at which it fits; -1 where there is none. */
    int in(Line line) {
        for (int i = 0; i < line.size(); i++) {
            if (at(line, i) > 0) {
                return i;
            }
        }
        return -1;
    }

    /** True if it is the whole line. */
    boolean is(Line line) {
        return line.size() > 0 && at(line, 0) == line.size();
    }

    private static int end(Line line, int token, List<Element> way, int place) {
        if (place == way.size()) {
            return token;
        }
        Element element = way.get(place);
        int length = element.length(line, token);
        if (length > 0) {
            int end = end(line, token + length, way, element.times() == '*' ? place : place + 1);
            if (end >= 0) {
                return end;
            }
        }
        return element.times() == '1' ? -1 : end(line, token, way, place + 1);
    }
}
