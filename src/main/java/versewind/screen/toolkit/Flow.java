package versewind.screen.toolkit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Words in paragraphs that fill a few rows of a frame; a piece, such as a stop's name, is never broken. */
public final class Flow {

    /**
     * What is not broken.
     *
     * @param text a few words
     * @param style how they look
     */
    record Piece(String text, Style style) {}

    private final List<List<Piece>> needed = new ArrayList<>();
    private final List<List<Piece>> more = new ArrayList<>();
    private List<List<Piece>> filling = needed;

    /** Begins a paragraph, which has lines of its own where there are enough. */
    public Flow paragraph() {
        filling.add(new ArrayList<>());
        return this;
    }

    /** What follows is left out where there is no room for all of it. */
    public Flow ifRoom() {
        filling = more;
        return paragraph();
    }

    /** Adds a piece, if it says anything. */
    public Flow add(String text, Style style) {
        if (text.isBlank()) {
            return this;
        }
        if (filling.isEmpty()) {
            paragraph();
        }
        filling.get(filling.size() - 1).add(new Piece(Text.clean(text), style));
        return this;
    }

    /** Adds names of knobs with commas between, after the place of the console that they are in. */
    public Flow addNames(String where, List<String> names, Style style) {
        for (int i = 0; i < names.size(); i++) {
            String place = i == 0 && !where.isEmpty() ? where + " " : "";
            add(place + names.get(i) + (i < names.size() - 1 ? "," : ""), style);
        }
        return this;
    }

    public boolean isEmpty() {
        return needed.isEmpty();
    }

    /** All that must not be left out, in one line. */
    public String text() {
        return joined(needed).get(0).stream().map(Piece::text).collect(Collectors.joining(" "));
    }

    /** Rows that it takes with every paragraph on lines of its own. */
    public int rows(int columns) {
        return needed.stream()
                .mapToInt(paragraph -> lines(paragraph, columns).size())
                .sum();
    }

    /** Whether all of it that must not be left out fits into a rectangle. */
    public boolean fits(int columns, int rows) {
        return lines(joined(needed).get(0), columns).size() <= rows;
    }

    /**
     * Fills a rectangle: with a line or more a paragraph, or all in one, or as much as fits and how many pieces are
     * left.
     */
    public void paint(Frame frame, Marks marks, int x, int y, int columns, int rows) {
        if (rows <= 0) {
            return;
        }
        List<List<Piece>> all = new ArrayList<>(needed);
        all.addAll(more);
        List<List<Piece>> lines = Stream.of(all, joined(all), needed, joined(needed))
                .map(paragraphs -> paragraphs.stream()
                        .flatMap(paragraph -> lines(paragraph, columns).stream())
                        .toList())
                .filter(each -> each.size() <= rows)
                .findFirst()
                .orElseGet(() -> cut(lines(joined(needed).get(0), columns), marks, columns, rows));
        for (int i = 0; i < lines.size(); i++) {
            int at = x;
            for (Piece piece : lines.get(i)) {
                at = frame.write(at, y + i, frame.fit(piece.text(), x + columns - at), piece.style()) + 1;
            }
        }
    }

    /** All paragraphs as one, with semicolons between. */
    private static List<List<Piece>> joined(List<List<Piece>> paragraphs) {
        List<Piece> all = new ArrayList<>();
        for (List<Piece> paragraph : paragraphs) {
            if (!all.isEmpty() && !paragraph.isEmpty()) {
                Piece last = all.remove(all.size() - 1);
                boolean isOpen = Character.isLetterOrDigit(
                        last.text().codePointBefore(last.text().length()));
                all.add(new Piece(last.text() + (isOpen ? ";" : ""), last.style()));
            }
            all.addAll(paragraph);
        }
        return List.of(all);
    }

    private static List<List<Piece>> lines(List<Piece> pieces, int columns) {
        List<List<Piece>> lines = new ArrayList<>();
        List<Piece> line = new ArrayList<>();
        for (Piece piece : pieces) {
            if (!line.isEmpty() && columns(line) + 1 + Text.columns(piece.text()) > columns) {
                lines.add(line);
                line = new ArrayList<>();
            }
            line.add(piece);
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        return lines;
    }

    private static int columns(List<Piece> line) {
        return line.stream().mapToInt(piece -> Text.columns(piece.text()) + 1).sum() - 1;
    }

    /** The first lines, the last of which says how many knobs are left. */
    private static List<List<Piece>> cut(List<List<Piece>> lines, Marks marks, int columns, int rows) {
        List<List<Piece>> kept = new ArrayList<>(lines.subList(0, rows));
        List<Piece> left = new ArrayList<>();
        lines.subList(rows, lines.size()).forEach(left::addAll);
        List<Piece> last = new ArrayList<>(kept.remove(rows - 1));
        while (last.size() > 1
                && columns(last) + 1 + Text.columns(more(marks, left).text()) > columns) {
            left.add(last.remove(last.size() - 1));
        }
        Piece more = more(marks, left);
        int room = Math.max(1, columns - 1 - Text.columns(more.text()));
        if (columns(last) > room) {
            last.set(
                    0,
                    new Piece(
                            Text.fit(last.get(0).text(), room, Mark.CUT.in(marks)),
                            last.get(0).style()));
        }
        last.add(more);
        kept.add(last);
        return kept;
    }

    private static Piece more(Marks marks, List<Piece> left) {
        long count =
                left.stream().filter(piece -> piece.style() != Style.HEADING).count();
        return new Piece(count == 0 ? Mark.CUT.in(marks) : Mark.CUT.in(marks) + count + " more", Style.NEAR);
    }
}
