package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The lines of a page as it was copied, without the marks of HTML and of wiki pages. Rows of its tables become lines
 * whose cells are parted by bars. Time grows with the length of the text.
 */
final class PageText {

    /**
     * A line.
     *
     * @param number where it begins in what was copied, counted from 1
     * @param text what it says, made plain
     */
    record Numbered(int number, String text) {}

    static final int LONGEST_LINE = 5_000;
    private static final int LONGEST_TAG = 400;
    private static final int FEWEST_COLUMNS = 3;
    private static final int LONGEST_NAME = 12;
    private static final int LONGEST_LINK = 300;
    private static final String CELL = " | ";
    private static final Pattern CHAPTER =
            Pattern.compile("^\\s*(\\d{1,2}(?:\\.\\d{1,2}){2,4}\\.?\\s+(?=\\p{L})|[ivx]{1,5}[.)]?\\s+(?=\\p{Lu}))");
    /** "i Octave   ii Unison Off": numbers of several knobs in a line. */
    private static final Pattern SMALL_NUMERAL = Pattern.compile("(^\\s*|\\s{2,})[ivx]{1,5}[.)]?\\s+(?=\\p{Lu})");

    /** Marks of an answered letter. */
    private static final Pattern QUOTED = Pattern.compile("^(?:> ?)+");

    private static final String TEX_ROW = "\\\\";
    private static final Pattern TEX_COMMAND = Pattern.compile("\\\\[a-z]{1,20}\\{([^{}]{0,200})}");
    private static final Pattern WIKI_SIGNS =
            Pattern.compile("(?<!(?<!\\p{L})[a-h](?:is)?)'''+|(?<!\\p{L}[a-h])''(?=\\p{Lu})|(?<=[:.])''(?=\\s)");
    private static final Pattern WIKI_HEAD = Pattern.compile("^={2,6} ?([^=]{1,200}?) ?={2,6}$");
    private static final Pattern WIKI_CELL = Pattern.compile("\\s*[|!][^|}-]");
    private static final Pattern ATTRIBUTES =
            Pattern.compile("(?:(?:colspan|rowspan|align|valign|style|width|class|scope|bgcolor)="
                    + "(?:\"[^\"|]*\"|[^\\s|]+)\\s*)+\\|(?!\\|)");

    private final String text;
    private final List<Numbered> lines = new ArrayList<>();
    private final StringBuilder line = new StringBuilder();
    private int at;
    private int number = 1;
    private int begun = 1;
    private boolean inRow;

    private PageText(String text) {
        this.text = text;
    }

    /** True if a line is not longer than any line of a list. */
    static boolean isRead(CharSequence line) {
        return line.length() <= LONGEST_LINE;
    }

    /** The lines of a page. */
    static List<Numbered> lines(String text) {
        if (OwnData.isOne(text) && OwnData.isWhole(text)) {
            return OwnData.lines(text);
        }
        PageText page = new PageText(text);
        page.read();
        List<Numbered> rows = StopTable.spelledOut(Wiki.rows(page.lines));
        return isCsv(rows) ? rows.stream().map(PageText::cells).toList() : rows;
    }

    /** True if the first line names the columns of a table whose cells are parted by commas. */
    private static boolean isCsv(List<Numbered> rows) {
        String head = rows.stream()
                .map(Numbered::text)
                .filter(each -> !each.isBlank())
                .findFirst()
                .orElse("");
        List<String> names = List.of(head.split("[,;]", -1));
        long known = names.stream()
                .filter(each -> WordList.of("part title").isAll(Spelling.words(each)))
                .count();
        return names.size() >= FEWEST_COLUMNS && known >= 2 && names.stream().noneMatch(Pitches::isMarked);
    }

    /** A row whose cells are parted by tabs in place of commas that are not in quotes. */
    private static Numbered cells(Numbered row) {
        StringBuilder cells = new StringBuilder();
        boolean quoted = false;
        for (char each : row.text().toCharArray()) {
            quoted ^= each == '"';
            cells.append(each == '"' ? "" : (each == ',' || each == ';') && !quoted ? "\t" : Character.toString(each));
        }
        return new Numbered(row.number(), cells.toString());
    }

    private void read() {
        while (at < text.length()) {
            char next = text.charAt(at);
            if (next == '<' && tag()) {
                continue;
            }
            if (next == '[' && link()) {
                continue;
            }
            if (next == '{' && template()) {
                continue;
            }
            at++;
            if (next == '\n') {
                number++;
                end();
            } else if (next != '\r') {
                line.append(next);
            }
        }
        end();
    }

    /** Ends a line, if it is not within a row of a table. */
    private void end() {
        if (inRow) {
            line.append(' ');
            return;
        }
        String said = QUOTED.matcher(line).replaceFirst("");
        lines.add(new Numbered(begun, isRead(said) ? unnumbered(Typography.plain(said)) : said));
        line.setLength(0);
        begun = number;
    }

    /** Without the number of a chapter, "3.2.1 Hauptwerk", or "iv Swell to Great"; scale numbers of a mixture stay. */
    private static String unnumbered(String plain) {
        if (SMALL_NUMERAL.matcher(plain).results().count() > 1) {
            return SMALL_NUMERAL.matcher(plain).replaceAll("$1");
        }
        Matcher chapter = CHAPTER.matcher(plain);
        return chapter.find() && RankCount.scale(new Line(chapter.group(1)), 0) == 0
                ? plain.substring(chapter.end())
                : plain;
    }

    /** A mark in angle brackets; false where there is none. */
    private boolean tag() {
        int close = near(">", LONGEST_TAG);
        if (text.startsWith("<!--", at)) {
            skipTo("-->", close);
            return true;
        }
        int from = at + (text.startsWith("</", at) ? 2 : 1);
        int end = from;
        while (end < text.length() && end < from + LONGEST_NAME && Character.isLetterOrDigit(text.charAt(end))) {
            end++;
        }
        String name = text.substring(from, end).toLowerCase(Locale.ROOT);
        if (close < 0 || !WordList.of("page mark").has(name)) {
            return false;
        }
        boolean opens = from == at + 1 && text.charAt(close - 1) != '/';
        if (opens && WordList.of("page mark unread").has(name)) {
            skipTo("</" + text.substring(from, end), close);
            return true;
        }
        at = close + 1;
        mark(name, from == at + 1 || opens);
        return true;
    }

    /** Where a sign stands at most so many characters ahead; -1 where it does not. */
    private int near(String sign, int most) {
        int found = text.substring(at, Math.min(text.length(), at + most)).indexOf(sign);
        return found < 0 ? -1 : at + found;
    }

    private void mark(String name, boolean opens) {
        if (name.equals("tr")) {
            inRow = false;
            flush();
            inRow = opens;
        } else if (name.equals("table")) {
            inRow = false;
            flush();
        } else if (WordList.of("page mark of cell").has(name)) {
            line.append(opens ? CELL : " ");
        } else if (WordList.of("page mark of line").has(name)) {
            breakLine();
        }
    }

    /** A new line, but within a cell of a table of a wiki page. */
    private void breakLine() {
        if (WIKI_CELL.matcher(line).lookingAt()) {
            line.append(", ");
        } else {
            flush();
        }
    }

    /** Ends a line that has anything. */
    private void flush() {
        if (line.toString().isBlank()) {
            line.setLength(0);
            begun = number;
        } else {
            end();
        }
    }

    /** Goes on behind the next such end; where there is none, behind the mark alone. */
    private void skipTo(String end, int close) {
        int found = text.indexOf(end, at);
        int last = found < 0 ? close : Math.max(found, text.indexOf('>', found));
        int to = last < 0 ? at + 1 : last + 1;
        number += (int)
                text.substring(at, to).chars().filter(each -> each == '\n').count();
        at = to;
    }

    /** "[[page|words]]" gives its words; false where there is none. */
    private boolean link() {
        int end = text.startsWith("[[", at) ? near("]]", LONGEST_LINK) : -1;
        if (end < 0) {
            return false;
        }
        String inside = text.substring(at + 2, end);
        line.append(inside.substring(inside.lastIndexOf('|') + 1));
        at = end + 2;
        return true;
    }

    /** "{{frac|1|1|3}}" gives "1 1/3", "{{lang|de|Hauptwerk}}" its last word; false where there is none. */
    private boolean template() {
        int end = text.startsWith("{{", at) ? near("}}", LONGEST_LINK) : -1;
        if (end < 0 || text.substring(at, end).contains("\n")) {
            return false;
        }
        List<String> parts = List.of(text.substring(at + 2, end).split("\\|", -1));
        List<String> values = parts.subList(1, parts.size());
        boolean isFraction = values.size() > 1 && values.stream().allMatch(each -> each.matches("\\d{1,3}"));
        if (isFraction) {
            int last = values.size() - 1;
            line.append(String.join(" ", values.subList(0, last - 1)))
                    .append(last > 1 ? " " : "")
                    .append(values.get(last - 1))
                    .append('/')
                    .append(values.get(last));
        } else {
            line.append(values.isEmpty() ? " " : values.get(values.size() - 1));
        }
        at = end + 2;
        return true;
    }

    /** The rows of tables of wiki pages, whose cells stand in lines of their own. */
    private static final class Wiki {
        private final List<Numbered> rows = new ArrayList<>();
        private final StringBuilder cells = new StringBuilder();
        private int begun;
        private int depth;

        static List<Numbered> rows(List<Numbered> lines) {
            Wiki wiki = new Wiki();
            lines.forEach(wiki::line);
            wiki.end();
            return List.copyOf(wiki.rows);
        }

        private void line(Numbered line) {
            if (!isRead(line.text())) {
                rows.add(line);
                return;
            }
            String text = line.text().strip();
            boolean edge = text.startsWith("{|") || text.startsWith("|}") || text.startsWith("|-");
            depth += text.startsWith("{|") ? 1 : text.startsWith("|}") && depth > 0 ? -1 : 0;
            boolean caption = depth > 0 && text.startsWith("|+");
            if (caption) {
                end();
                rows.add(new Numbered(line.number(), withoutMarks(text.substring(2))));
            } else if (edge) {
                end();
            } else if (depth > 0 && (text.startsWith("|") || text.startsWith("!"))) {
                begun = cells.isEmpty() ? line.number() : begun;
                cells.append(CELL).append(withoutMarks(text.substring(1).replace("!!", "||")));
            } else if (depth == 0 || !text.isEmpty()) {
                end();
                rows.add(new Numbered(line.number(), withoutMarks(line.text())));
            }
        }

        private void end() {
            if (!cells.toString().isBlank()) {
                rows.add(new Numbered(begun, cells.toString()));
            }
            cells.setLength(0);
        }

        private static String withoutMarks(String text) {
            if (text.endsWith(TEX_ROW)) {
                return TEX_COMMAND
                        .matcher(text)
                        .replaceAll("$1")
                        .replace("&", CELL)
                        .replace(TEX_ROW, "");
            }
            String cells =
                    text.indexOf('|') < 0 ? text : ATTRIBUTES.matcher(text).replaceAll("");
            String plain = WIKI_SIGNS.matcher(cells).replaceAll("");
            return !plain.contains("==")
                    ? plain
                    : Optional.of(WIKI_HEAD.matcher(plain.strip()))
                            .filter(Matcher::matches)
                            .map(head -> head.group(1))
                            .orElse(plain);
        }
    }
}
