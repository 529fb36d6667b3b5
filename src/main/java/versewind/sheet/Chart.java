package versewind.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/**
 * The curve of a service as an SVG picture with its text beside it: a line for the organ, grey around it for the doubt,
 * a broken line for the singers, behind both the field in which the organ leads.
 */
public final class Chart {

    static final String KEY =
            "Line: the organ in the nave, in dB(A), its uncertainty in grey. Broken line: the singers."
                    + " Pale field: where the organ leads without overpowering.";

    static final double WIDTH = 660;
    static final double HEIGHT = 150;

    private static final double TOP = 8;
    private static final double BOTTOM = 126;
    private static final double LEFT = 36;
    private static final double ROOM_DB = 3;
    private static final int SCALE_DB = 10;
    private static final double LETTER = 9;

    private final List<Column> columns;
    private final double columnWidth;
    private final double lowDb;
    private final double highDb;

    /**
     * A verse in the picture.
     *
     * @param hymn what its hymn is called in short
     * @param index its place in the hymn
     * @param verse the verse
     */
    private record Column(HymnSheet hymn, int index, VerseSheet verse) {

        OptionalDouble organDba() {
            return verse.estimate().organDba();
        }

        OptionalDouble singersDba() {
            return verse.estimate().singersDba();
        }

        String words() {
            String singers = singersDba().isPresent() ? ", singers " + LevelText.whole(singersDba()) : "";
            return hymn.placed(verse) + ": organ " + verse.levelWords() + singers;
        }
    }

    Chart(List<HymnSheet> hymns) {
        List<Column> all = new ArrayList<>();
        for (HymnSheet hymn : hymns) {
            for (int i = 0; i < hymn.verses().size(); i++) {
                all.add(new Column(hymn, i, hymn.verses().get(i)));
            }
        }
        this.columns = List.copyOf(all);
        this.columnWidth = (WIDTH - LEFT) / Math.max(1, columns.size());
        double[] levels = columns.stream().flatMapToDouble(Chart::levels).toArray();
        this.lowDb = DoubleStream.of(levels).min().orElse(0) - ROOM_DB;
        this.highDb = DoubleStream.of(levels).max().orElse(0) + ROOM_DB;
    }

    private static DoubleStream levels(Column column) {
        double doubtDb = column.verse().estimate().plusMinus().organDb();
        return DoubleStream.concat(
                column.organDba().stream().flatMap(level -> DoubleStream.of(level - doubtDb, level + doubtDb)),
                column.singersDba().stream());
    }

    /** True if anything sounds. */
    boolean sounds() {
        return columns.stream().anyMatch(column -> column.organDba().isPresent());
    }

    void draw(HtmlWriter html) {
        html.block(
                "svg",
                () -> drawing(html),
                "class",
                "chart",
                "role",
                "img",
                "viewBox",
                "0 0 " + HtmlWriter.number(WIDTH) + " " + HtmlWriter.number(HEIGHT));
    }

    private void drawing(HtmlWriter html) {
        html.line(
                "title",
                "Levels of the organ and the singers. "
                        + columns.stream().map(Column::words).collect(Collectors.joining("; ")) + ".");
        scale(html);
        for (int at = 0; at < columns.size(); at++) {
            fields(html, at);
        }
        for (int at = 0; at < columns.size(); at++) {
            label(html, at);
        }
        line(html, "sung", Column::singersDba);
        line(html, "way", Column::organDba);
    }

    private double x(int column) {
        return LEFT + columnWidth * (column + 0.5);
    }

    private double y(double levelDb) {
        double within = Math.max(lowDb, Math.min(highDb, levelDb));
        return BOTTOM - (within - lowDb) / (highDb - lowDb) * (BOTTOM - TOP);
    }

    private void scale(HtmlWriter html) {
        int step = highDb - lowDb < 2 * SCALE_DB ? SCALE_DB / 2 : SCALE_DB;
        for (int level = (int) Math.ceil(lowDb / step) * step; level <= highDb; level += step) {
            html.empty("line", "class", "grid", "x1", LEFT, "x2", WIDTH, "y1", y(level), "y2", y(level));
            text(html, LEFT - 6, y(level) + 5, "end", Integer.toString(level));
        }
    }

    /** The field of the target and the doubt. */
    private void fields(HtmlWriter html, int at) {
        VerseSheet verse = columns.get(at).verse();
        OptionalDouble organDba = columns.get(at).organDba();
        if (organDba.isEmpty()) {
            return;
        }
        double nowDba = organDba.getAsDouble();
        double doubtDb = verse.estimate().plusMinus().organDb();
        verse.target()
                .ifPresent(band -> rectangle(html, "target", at, 1, nowDba + band.fromDb(), nowDba + band.toDb()));
        rectangle(html, "doubt", at, 0.3, nowDba - doubtDb, nowDba + doubtDb);
    }

    /** A rule before every hymn and its number below the first verse, as far as there is room. */
    private void label(HtmlWriter html, int at) {
        Column column = columns.get(at);
        if (column.index() > 0) {
            return;
        }
        double left = x(at) - columnWidth / 2;
        int room = (int) (columnWidth * column.hymn().verses().size() / LETTER);
        String name = column.hymn().shortName();
        html.empty("line", "class", "grid", "x1", left, "x2", left, "y1", TOP, "y2", HEIGHT);
        text(
                html,
                left + 4,
                HEIGHT - 6,
                "start",
                name.substring(0, name.offsetByCodePoints(0, Math.min(room, name.codePointCount(0, name.length())))));
    }

    /** A line through the levels there are, broken where there is none. */
    private void line(HtmlWriter html, String style, Function<Column, OptionalDouble> level) {
        StringBuilder strokes = new StringBuilder();
        String pen = "M";
        for (int at = 0; at < columns.size(); at++) {
            OptionalDouble here = level.apply(columns.get(at));
            if (here.isPresent()) {
                String height = HtmlWriter.number(y(here.getAsDouble()));
                strokes.append(pen)
                        .append(HtmlWriter.number(x(at) - columnWidth * 0.3))
                        .append(' ')
                        .append(height)
                        .append('H')
                        .append(HtmlWriter.number(x(at) + columnWidth * 0.3));
            }
            pen = here.isPresent() ? "L" : "M";
        }
        if (!strokes.isEmpty()) {
            html.empty("path", "class", style, "d", strokes);
        }
    }

    private void rectangle(HtmlWriter html, String style, int at, double share, double fromDb, double toDb) {
        double top = y(toDb);
        html.empty(
                "rect",
                "class",
                style,
                "x",
                x(at) - columnWidth * share / 2,
                "y",
                top,
                "width",
                columnWidth * share,
                "height",
                Math.max(0, y(fromDb) - top));
    }

    private static void text(HtmlWriter html, double x, double y, String anchor, String text) {
        html.line("text", text, "x", x, "y", y, "text-anchor", anchor);
    }
}
