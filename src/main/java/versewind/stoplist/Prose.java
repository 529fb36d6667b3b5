package versewind.stoplist;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Paragraphs in sentences, "On the Great you will find an Open Diapason 8, a Principal 4 and a Fifteenth 2. The Swell,
 * enclosed, has ...", spelled out as the lines of a list. A paragraph that does not name several stops so stays.
 */
final class Prose {

    /** A paragraph without two of these is a list, however it is punctuated. */
    private static final int FEWEST_STOPS = 2;

    /** "Eight feet", "three ranks"; "of eight" at the end of a line. */
    private static final Pattern IN_WORDS =
            Pattern.compile("(?i)\\b\\p{L}{3,7}(?:-two)?(?:(?=[ -](?:feet|foot|ranks?)\\b)|(?<=\\bof \\w{3,7})$)");

    private static final List<Integer> WRITTEN_OUT = List.of(1, 2, 3, 4, 5, 8, 16, 32);

    private static final int LONGEST = 20_000;
    private static final int LONGEST_SHORTENED = 4;

    private final List<PageText.Numbered> source;
    private final String text;
    private final List<PageText.Numbered> lines = new ArrayList<>();
    private int stops;
    private int headings;
    private boolean coupled;

    private Prose(List<PageText.Numbered> source) {
        this.source = source.stream()
                .map(each -> new PageText.Numbered(each.number(), inFigures(each.text())))
                .toList();
        this.text = String.join(
                " ", this.source.stream().map(each -> each.text().strip()).toList());
    }

    private static String inFigures(String text) {
        return IN_WORDS.matcher(text).replaceAll(word -> figures(word.group()));
    }

    private static String figures(String word) {
        return WRITTEN_OUT.stream()
                .filter(number -> WordList.of("figure " + number).isAll(Spelling.words(word)))
                .map(String::valueOf)
                .findFirst()
                .orElse(word);
    }

    /** The lines with all such paragraphs spelled out; the same lines where there are none. */
    static List<PageText.Numbered> spelledOut(List<PageText.Numbered> lines) {
        List<PageText.Numbered> spelled = new ArrayList<>();
        boolean any = false;
        int from = 0;
        for (int i = 0; i <= lines.size(); i++) {
            if (i < lines.size() && !lines.get(i).text().isBlank()) {
                continue;
            }
            List<PageText.Numbered> paragraph = lines.subList(from, i);
            List<PageText.Numbered> read = mayBe(paragraph) ? new Prose(paragraph).read() : List.of();
            any |= !read.isEmpty();
            spelled.addAll(read.isEmpty() ? paragraph : read);
            if (i < lines.size()) {
                spelled.add(lines.get(i));
            }
            from = i + 1;
        }
        return any ? List.copyOf(spelled) : lines;
    }

    /** True if articles, verbs and the ends of sentences stand in it. */
    private static boolean mayBe(List<PageText.Numbered> paragraph) {
        int length = paragraph.stream().mapToInt(each -> each.text().length()).sum();
        boolean plain = paragraph.stream()
                .noneMatch(each -> each.text().contains("|") || each.text().contains("\t"));
        return plain
                && length <= LONGEST
                && paragraph.stream().anyMatch(each -> each.text().contains("."))
                && paragraph.stream().anyMatch(each -> WordList.of("article").in(each.text()))
                && paragraph.stream()
                        .anyMatch(each -> WordList.of("listing verb").in(each.text()));
    }

    private List<PageText.Numbered> read() {
        Line line = new Line(text);
        int from = 0;
        for (int i = 0; i <= line.size(); i++) {
            if (i == line.size() || isEnd(line, i)) {
                sentence(new Line(line.part(from, i)), line.start(from));
                from = i + 1;
            }
        }
        return (stops >= FEWEST_STOPS && headings > 0) || coupled ? lines : List.of();
    }

    private static boolean isEnd(Line line, int token) {
        boolean shortened = line.is(token - 1, Token.Kind.WORD)
                && line.at(token - 1).text().length() <= LONGEST_SHORTENED
                && Character.isUpperCase(line.at(token - 1).text().charAt(0))
                && !DivisionWord.entries(line.at(token - 1).plain()).isEmpty();
        boolean next = !line.is(token + 1)
                || (line.gap(token + 1) > 0
                        && Character.isUpperCase(line.at(token + 1).text().charAt(0)));
        return line.isSign(token, ";") || (line.isSign(token, ".") && next && !shortened);
    }

    /** One sentence: its pieces between commas and "and", of which some begin with the name of a stop. */
    private void sentence(Line line, int place) {
        if (line.size() == 0) {
            return;
        }
        List<String> read = new ArrayList<>();
        StringBuilder before = new StringBuilder();
        int found = 0;
        boolean opened = false;
        String pitch = "";
        Deque<String> pieces = new ArrayDeque<>(Segments.split(line.text(), Prose::isBetween));
        while (!pieces.isEmpty()) {
            String piece = pieces.pop();
            Line words = new Line(piece);
            int same = IntStream.range(1, pitch.isEmpty() ? 0 : words.size())
                    .filter(i -> words.phrase("same pitch", i) > 0)
                    .findFirst()
                    .orElse(0);
            if (same > 0) {
                pieces.push("both of " + pitch);
                pieces.push(words.part(0, same));
                continue;
            }
            int stop = stop(words);
            if (stop < 0 && !before.isEmpty() && isOfBoth(words)) {
                List<String> stops = new ArrayList<>(Segments.split(before.toString(), Prose::isBetween));
                Collections.reverse(stops);
                stops.forEach(each -> pieces.push(each + " " + words.part(1, words.size())));
                before.setLength(0);
                continue;
            }
            if (stop < 0) {
                before.append(before.isEmpty() ? "" : ", ").append(piece);
                continue;
            }
            String head = (before + " " + words.part(0, stop)).strip();
            Optional<String> division = division(head, found == 0);
            if (division.isPresent()) {
                read.add("");
                read.add(division.get());
                opened |= isVerbal(new Line(head));
            } else if (!before.isEmpty()) {
                read.add(before.toString());
            }
            before.setLength(0);
            pitch = pitch(words, stop);
            String rest = words.part(end(words, stop), words.size());
            boolean several = stop(new Line(rest)) >= 0;
            if (several) {
                pieces.push(rest);
            }
            read.add(several ? words.part(stop, end(words, stop)) : entry(words, stop));
            found++;
        }
        if (!before.isEmpty()) {
            read.add(before.toString());
        }
        if (found == 0) {
            read = List.of(couplers(line));
        }
        stops += found;
        headings += opened ? 1 : 0;
        int number = number(place);
        read.forEach(each -> lines.add(new PageText.Numbered(number, each)));
    }

    private static boolean isBetween(Line line, int token) {
        // "a Twelfth, 2 2/3 feet"
        boolean pitch = line.is(token + 1) && Pitches.marked(line, token + 1) > 0;
        return (line.isSign(token, ",") && !Character.isDigit(line.after(token)) && !pitch)
                || Segments.isAnd(line, token);
    }

    /** "The couplers are Swell to Great and Swell to Pedal" with a colon in the place of the verb. */
    private String couplers(Line line) {
        int head = IntStream.range(0, line.size())
                .filter(i -> line.is(i, "part couplers"))
                .findFirst()
                .orElse(-1);
        int verb = head + 1;
        int follows = verb + line.phrase("as follows", verb);
        if (head > 1 && follows > verb && line.isSign(follows, ":")) {
            coupled = true;
            return line.at(head).text() + ": " + line.part(follows + 1, line.size());
        }
        boolean lists = head >= 0
                && head <= 1
                && verb + 1 < line.size()
                && (line.phrase("listing verb", verb) > 0 || line.isSign(verb, ":"));
        coupled |= lists;
        int rest = verb + (line.is(verb, Token.Kind.WORD) ? Math.max(1, line.phrase("listing verb", verb)) : 1);
        return lists ? line.at(head).text() + ": " + line.part(rest, line.size()) : line.text();
    }

    /** Where the name of a stop with its pitch begins, behind an article, a verb or nothing; -1 where none does. */
    private static int stop(Line line) {
        int known =
                stop(line, name -> Lexicon.get().exact(name, NameContext.NONE).isPresent());
        return known >= 0
                ? known
                : stop(line, name -> Lexicon.get().known(name, NameContext.NONE).isPresent());
    }

    private static int stop(Line line, Predicate<String> isNamed) {
        for (int i = 0; i < line.size(); i++) {
            boolean begins = i == 0 || line.is(i - 1, "article") || line.is(i - 1, "listing verb");
            int end = begins && line.is(i, Token.Kind.WORD) && !line.is(i, "article") ? end(line, i) : -1;
            String name =
                    end > 0 ? StopLine.of(line.part(i, end), ListStyle.PLAIN).name() : "";
            if (!name.isEmpty() && isNamed.test(name)) {
                return i;
            }
        }
        return -1;
    }

    /** "A Flute and a Diapason, both of 8 feet". */
    private static boolean isOfBoth(Line line) {
        return line.is(0, "both") && end(line, 0) == line.size();
    }

    /** Where the first figures behind a name end; -1 where there are none. */
    private static int end(Line line, int from) {
        for (int i = from + 1; i < line.size(); i++) {
            int figures = Segments.figures(line, i);
            if (figures > 0) {
                return i + figures;
            }
        }
        return -1;
    }

    /** The figures behind a name. */
    private static String pitch(Line line, int from) {
        int end = end(line, from);
        int first = IntStream.range(from, end)
                .filter(i -> Segments.figures(line, i) > 0)
                .findFirst()
                .orElse(end);
        return line.part(first, end);
    }

    /** A stop, with what is said of it behind its pitch in brackets. */
    private static String entry(Line line, int from) {
        int end = end(line, from);
        String rest = line.part(end, line.size());
        boolean within = line.part(from, end).contains("(");
        boolean bare = rest.isEmpty() || within || line.is(end, Token.Kind.OPEN);
        return line.part(from, end) + (bare ? " " + rest : " (" + rest + ")");
    }

    /** The division that the words before a stop name: at the beginning of a sentence, or with a verb. */
    private static Optional<String> division(String head, boolean isFirst) {
        Line line = new Line(head);
        boolean named = (isFirst || isVerbal(line)) && !WordList.of("borrowed").in(head);
        List<String> words = line.tokens().stream().map(Token::plain).toList();
        for (int i = 0; named && i < words.size(); i++) {
            Optional<DivisionWord.Spotted> found =
                    words.get(i).length() > 1 ? DivisionWord.at(words, i, "") : Optional.empty();
            boolean place = line.is(i, "article") || (line.is(i, "heading place") && i + 1 < words.size());
            if (found.isPresent() && !place) {
                boolean boxed = WordList.of("enclosed").in(head)
                        && !WordList.of("unenclosed").in(head);
                return Optional.of(line.part(i, i + found.get().length()) + (boxed ? " (enclosed)" : ""));
            }
        }
        return Optional.empty();
    }

    private static boolean isVerbal(Line line) {
        return IntStream.range(0, line.size()).anyMatch(i -> line.phrase("listing verb", i) > 0);
    }

    /** The line that a place in the paragraph stands in. */
    private int number(int place) {
        int end = 0;
        for (PageText.Numbered line : source) {
            end += line.text().strip().length() + 1;
            if (place < end) {
                return line.number();
            }
        }
        return source.get(source.size() - 1).number();
    }
}
