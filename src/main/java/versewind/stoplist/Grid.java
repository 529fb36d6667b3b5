package versewind.stoplist;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * The lines of a page with what stands side by side on each: one division a column, or names and pitches in columns.
 */
final class Grid {

    private static final Pattern RUN = Pattern.compile("\\s{2,}|(?<=[\\d'.)IVX]) (?=\\d{1,2}\\. \\p{Lu})");
    private static final Pattern BAR = Pattern.compile("\\t|\\|{1,2}");
    /** "22 Open Diapason": a pitch left of it is not its own. */
    private static final TokenForm KNOB = TokenForm.of("open #3 close word", "#3 _word");

    private static final int MOST_DIGITS = 4;
    private static final int MOST_HEADING_TOKENS = 16;

    private Grid() {}

    /**
     * Cells of a line that belong together, such as a name and its pitch.
     *
     * @param x where it begins: the cell in a table, else the column of characters
     * @param text what it says
     */
    record Group(int x, String text) {}

    /**
     * A line.
     *
     * @param number counted from 1
     * @param afterBlank whether a blank line stands before it
     * @param table whether its cells are parted by tabs or bars
     * @param missing how many entries fewer it has than divisions stand side by side, where their places are lost
     * @param groups from left to right, one at least
     */
    record Row(int number, boolean afterBlank, boolean table, int missing, List<Group> groups) {}

    private enum Kind {
        WORDS,
        PITCH,
        EXTRA
    }

    private record Cell(int x, String text, Kind kind) {}

    /** The rows of plain lines; blank lines have none. */
    static List<Row> rows(List<PageText.Numbered> lines, LineReader.Readings readings) {
        List<Row> rows = new ArrayList<>();
        boolean afterBlank = true;
        int packed = 0;
        int[] last = {};
        for (int at = 0; at < lines.size(); at++) {
            PageText.Numbered numbered = lines.get(at);
            String line = numbered.text();
            if (Spelling.isSigns(line)) {
                afterBlank |= line.isBlank() || line.strip().length() > 2;
                continue;
            }
            boolean goesOn = !rows.isEmpty() && rows.get(rows.size() - 1).table() && !afterBlank;
            boolean table = BAR.matcher(goesOn ? line : line.strip()).find();
            packed = table ? 0 : packed;
            for (String part : table ? List.of(line) : Paragraph.parts(line, readings)) {
                List<Cell> cells = table ? tableCells(part, readings) : spacedCells(part, readings);
                List<Group> groups = grouped(cells, readings);
                List<Group> split =
                        groups.size() > 1 || table ? groups : packed(groups, part, packed, after(lines, at), readings);
                boolean heads = split.stream().allMatch(each -> readings.isHeading(each.text()));
                packed = heads ? (split.size() > 1 && groups.size() == 1 ? split.size() : 0) : packed;
                last = heads ? new int[packed] : last;
                List<Group> placed = packed > 1 && !heads ? byNumber(split, last) : split;
                int missing = placed == split ? Math.max(0, (heads ? 0 : packed) - split.size()) : 0;
                rows.add(new Row(numbered.number(), afterBlank, table || packed > 0, missing, placed));
                afterBlank = false;
            }
        }
        return List.copyOf(rows);
    }

    /** The text of the next line that is not blank; "" for none. */
    private static String after(List<PageText.Numbered> lines, int at) {
        return lines.subList(at + 1, lines.size()).stream()
                .map(PageText.Numbered::text)
                .filter(each -> !each.isBlank())
                .findFirst()
                .orElse("");
    }

    /**
     * What stands side by side with single blanks between: "Great Swell", and below it "Open Diapason 8 Oboe 8".
     *
     * @param whole the text as one group
     * @param columns how many headings stand above; 0 for none
     * @param next the line below
     */
    private static List<Group> packed(
            List<Group> whole, String text, int columns, String next, LineReader.Readings readings) {
        List<String> found = headings(text, readings);
        boolean several = found.size() > 1
                && (Segments.runOn(next, readings.style()).size() > 1
                        || RUN.matcher(next.strip()).find());
        List<String> headings = several ? found : List.of();
        List<String> stops = columns < 2 ? List.of(text) : Segments.runOn(text, readings.style());
        List<String> parts = headings.size() > 1 ? headings : stops.size() <= columns ? stops : List.of(text);
        return columns < 2 && parts.size() == 1
                ? whole
                : IntStream.range(0, parts.size())
                        .mapToObj(i -> new Group(i, parts.get(i).strip()))
                        .toList();
    }

    /** The headings of a line that holds several divisions and nothing else; none where it does not. */
    private static List<String> headings(String text, LineReader.Readings readings) {
        Line line = new Line(Compass.without(text));
        List<String> words = line.tokens().stream().map(Token::plain).toList();
        List<Integer> starts = new ArrayList<>();
        Set<String> roles = new HashSet<>();
        for (int i = 0; i < words.size() && words.size() <= MOST_HEADING_TOKENS; i++) {
            Optional<DivisionWord.Spotted> spotted =
                    DivisionWord.at(words, i, readings.style().language());
            if (spotted.isPresent() && roles.add(spotted.get().word().role())) {
                boolean numbered = i > 0 && line.at(i - 1).count() > 0;
                int behind =
                        i > 1 && isBehindNumber(line, i - 1) ? i - 2 : i > 2 && isBehindNumber(line, i - 2) ? i - 3 : i;
                starts.add(starts.isEmpty() ? 0 : numbered ? i - 1 : behind);
                i += spotted.get().length() - 1;
            }
        }
        List<String> found = IntStream.range(0, starts.size())
                .mapToObj(i -> line.part(starts.get(i), i + 1 < starts.size() ? starts.get(i + 1) : line.size()))
                .toList();
        boolean all = found.stream().allMatch(each -> readings.heading(each).isPresent());
        boolean joins = IntStream.range(0, line.size())
                .anyMatch(i -> line.isSign(i, "/+&>:,") || (line.isSign(i, "-") && !isBehindNumber(line, i)));
        return all && !joins ? found : List.of();
    }

    /** "I - Positivo": a dash between a manual's number and its name. */
    private static boolean isBehindNumber(Line line, int token) {
        return Segments.isApart(line, token, "-") && line.is(token - 1, Token.Kind.ROMAN) && line.is(token + 1);
    }

    /** Groups of a row with running numbers, each in the column whose last number is the one before its own. */
    private static List<Group> byNumber(List<Group> groups, int[] last) {
        List<Group> placed = new ArrayList<>();
        for (Group group : groups) {
            Line line = new Line(group.text());
            int number = line.is(0) && line.at(0).isWhole(2) && line.isSign(1, ".")
                    ? line.at(0).count()
                    : 0;
            int column = number == 0
                    ? -1
                    : IntStream.range(0, last.length)
                            .filter(i -> last[i] == number - 1 && number > 1)
                            .findFirst()
                            .orElse(placed.size());
            if (column < 0 || column >= last.length) {
                return groups;
            }
            last[column] = number;
            placed.add(new Group(column, group.text()));
        }
        return placed;
    }

    private static List<Cell> tableCells(String line, LineReader.Readings readings) {
        List<Cell> cells = new ArrayList<>();
        String[] parts = BAR.split(line, -1);
        for (int i = 0; i < parts.length; i++) {
            if (!parts[i].isBlank()) {
                cells.add(cell(i, parts[i].strip(), readings));
            }
        }
        boolean numbered = cells.size() > 2
                && cells.get(0).text().chars().allMatch(Character::isDigit)
                && readings.heading(cells.get(1).text()).isPresent();
        return numbered ? cells.subList(1, cells.size()) : cells;
    }

    private static List<Cell> spacedCells(String line, LineReader.Readings readings) {
        List<Cell> cells = new ArrayList<>();
        Matcher matcher = RUN.matcher(line);
        int from = 0;
        while (from < line.length()) {
            int to = matcher.find(from) ? matcher.start() : line.length();
            if (to > from) {
                cells.add(cell(from, line.substring(from, to).strip(), readings));
            }
            from = to == line.length() ? to : matcher.end();
        }
        int last = cells.size() - 1;
        boolean isMade = last > 1
                && cells.stream().anyMatch(each -> each.kind() == Kind.PITCH)
                && Character.isLowerCase(cells.get(last).text().charAt(0))
                && WordList.of("stopped").isAll(Spelling.words(cells.get(last).text()));
        if (isMade) {
            // "gedackt" in a last column of remarks
            cells.set(last, new Cell(cells.get(last).x(), cells.get(last).text(), Kind.EXTRA));
        }
        return cells;
    }

    private static Cell cell(int x, String text, LineReader.Readings readings) {
        if (isPitch(text)) {
            return new Cell(x, text, Kind.PITCH);
        }
        boolean extra = isExtra(text)
                && (Character.isLowerCase(text.charAt(0))
                        || Lexicon.get().exact(text, readings.style().setting()).isEmpty())
                && !Pitches.isMarked(text);
        return new Cell(x, text, extra ? Kind.EXTRA : Kind.WORDS);
    }

    /**
     * True if a cell says something of the stop left of it: from where it borrows, of what it is made, how many pipes.
     */
    private static boolean isExtra(String text) {
        Line line = new Line(text);
        boolean count = line.is(0, Token.Kind.NUMBER) && (line.isSign(1, "%") || line.is(1, "extra count"));
        return count || line.is(0, "extra column");
    }

    /** True if a cell holds figures, Roman numerals and halves of the keyboard alone. */
    private static boolean isPitch(String text) {
        Line line = new Line(new Line(text).outside());
        int figures = 0;
        for (int i = line.is(0, "before pitch") ? 1 : 0; i < line.size(); i++) {
            Token token = line.at(i);
            boolean half = token.is("half column");
            int length = Math.max(
                    Pitches.marked(line, i),
                    Math.max(
                            RankCount.marked(line, i).length(),
                            RankCount.numeral(line, i).length()));
            boolean bare = token.is(Token.Kind.NUMBER)
                    && (Pitches.isBare(line, i) || (token.isWhole(MOST_DIGITS) && line.size() <= 2));
            boolean sign = !token.is(Token.Kind.WORD) && !token.is(Token.Kind.NUMBER) && !token.is(Token.Kind.ROMAN);
            if ((!half && length == 0 && !bare && !sign) || (half && figures == 0)) {
                return false;
            }
            figures += half || sign ? 0 : 1;
            i += Math.max(0, length - 1);
        }
        return figures > 0;
    }

    private static List<Group> grouped(List<Cell> cells, LineReader.Readings readings) {
        boolean headings = cells.size() > 1
                && cells.stream()
                        .allMatch(cell -> LineReader.isHalf(cell.text())
                                || new Line(cell.text()).outside().isBlank()
                                || readings.heading(cell.text()).isPresent());
        if (headings) {
            return cells.stream().map(cell -> new Group(cell.x(), cell.text())).toList();
        }
        List<List<Cell>> groups = new ArrayList<>();
        List<Cell> pending = new ArrayList<>();
        boolean first = cells.get(0).kind() == Kind.PITCH;
        boolean last = cells.get(cells.size() - 1).kind() != Kind.WORDS;
        for (int i = 0; i < cells.size(); i++) {
            Cell cell = cells.get(i);
            boolean beforeWords = i + 1 < cells.size()
                    && cells.get(i + 1).kind() == Kind.WORDS
                    && starts(cells.get(i + 1).text(), readings);
            boolean beforeKnob =
                    i + 1 < cells.size() && KNOB.at(new Line(cells.get(i + 1).text()), 0) > 0;
            boolean toNext =
                    cell.kind() == Kind.PITCH && (groups.isEmpty() || (first && !beforeKnob && (!last || beforeWords)));
            if (toNext) {
                pending.add(cell);
            } else if (groups.isEmpty() || (cell.kind() == Kind.WORDS && starts(cell.text(), readings))) {
                List<Cell> group = new ArrayList<>(pending);
                pending.clear();
                group.add(cell);
                groups.add(group);
            } else {
                groups.get(groups.size() - 1).addAll(pending);
                pending.clear();
                groups.get(groups.size() - 1).add(cell);
            }
        }
        if (!pending.isEmpty()) {
            groups.add(pending);
        }
        return groups.stream().map(Grid::group).toList();
    }

    private static Group group(List<Cell> cells) {
        StringBuilder text = new StringBuilder();
        boolean named = false;
        for (Cell cell : cells) {
            boolean extra = named && cell.kind() != Kind.PITCH;
            named |= cell.kind() == Kind.WORDS;
            text.append(text.isEmpty() ? "" : " ")
                    .append(extra && !cell.text().startsWith("(") ? aside(cell.text()) : cell.text());
        }
        return new Group(cells.get(0).x(), text.toString());
    }

    /** In brackets; "metal (17.19.22)" in two of them. */
    private static String aside(String text) {
        return "(" + (text.endsWith(")") ? text.replace(" (", ") (") : text + ")");
    }

    /** "25. XXVI e XXIX" */
    private static boolean isNumbered(Line line) {
        return line.is(0)
                && line.at(0).isWhole(MOST_DIGITS)
                && line.isSign(1, ".")
                && line.is(2)
                && line.at(2).isWord()
                && line.gap(2) > 0;
    }

    /** True if words begin something of their own rather than go on with what stands left of them. */
    private static boolean starts(String text, LineReader.Readings readings) {
        if (LineReader.isHalf(text)
                || readings.heading(text).isPresent()
                || readings.part(text).isPresent()
                || Tremulants.isOne(text)
                || WordList.of("toy").at(Spelling.words(text), 0) > 0
                || isNumbered(new Line(text))
                || PistonLine.read(text, readings.style().language()).saysAnything()) {
            return true;
        }
        StopLine stop = StopLine.of(text, readings.style());
        boolean named = !stop.name().isEmpty() && stop.mark() != StopLine.Mark.NONE;
        return named
                || (Lexicon.get().known(stop.name(), readings.style().setting()).isPresent()
                        && !stop.name().isEmpty())
                || !CouplerLine.read(
                                text,
                                CouplerLine.Where.ELSEWHERE,
                                Set.of(),
                                readings.style().language())
                        .couplers()
                        .isEmpty();
    }
}
