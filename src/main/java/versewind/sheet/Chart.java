package versewind.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * The organ and the singers, verse by verse, as an SVG picture with its text beside it: a bar for the organ, grey
 * around it for the doubt, a ring for the singers, behind them the field where the organ would be right, above them a
 * mark where something should be done.
 */
final class Chart {

    private static final double HEIGHT = 160;
    private static final double TOP = 30;
    private static final double BOTTOM = 130;
    private static final double LEFT = 40;
    private static final double ROOM_DB = 3;
    private static final int SCALE_DB = 10;

    private final HtmlWriter html;
    private final List<Column> columns;
    private final double columnWidth;
    private final double lowDb;
    private final double highDb;

    /**
     * A verse in the picture.
     *
     * @param label what stands below it; may be blank
     * @param words what stands for it in the text: "V1"
     * @param verse the verse
     */
    record Column(String label, String words, VerseSheet verse) {

        OptionalDouble organDba() {
            return verse.estimate().organDba();
        }

        OptionalDouble singersDba() {
            return verse.estimate().singersDba();
        }
    }

    private Chart(HtmlWriter html, List<Column> columns, double columnWidth) {
        this.html = html;
        this.columns = columns;
        this.columnWidth = columnWidth;
        double[] levels = columns.stream().flatMapToDouble(Chart::levels).toArray();
        this.lowDb = DoubleStream.of(levels).min().orElse(0) - ROOM_DB;
        this.highDb = DoubleStream.of(levels).max().orElse(0) + ROOM_DB;
    }

    private static DoubleStream levels(Column column) {
        double doubtDb = column.verse().plusMinusDb().orElse(0);
        return DoubleStream.concat(
                column.organDba().stream().flatMap(level -> DoubleStream.of(level - doubtDb, level + doubtDb)),
                column.singersDba().stream());
    }

    /** Draws the picture of a hymn. */
    static void draw(HtmlWriter html, HymnSheet hymn) {
        List<Column> columns = hymn.verses().stream()
                .map(verse -> new Column(verse.verse().label(), verse.verse().label(), verse))
                .toList();
        new Chart(html, columns, 58).svg("Levels of the organ and the singers");
    }

    /** Draws the picture of a whole service. */
    static void draw(HtmlWriter html, List<HymnSheet> hymns) {
        List<Column> columns = new ArrayList<>();
        for (HymnSheet hymn : hymns) {
            for (int i = 0; i < hymn.verses().size(); i++) {
                VerseSheet verse = hymn.verses().get(i);
                String label = i == 0 ? hymn.shortName() : "";
                columns.add(
                        new Column(label, hymn.shortName() + " " + verse.verse().label(), verse));
            }
        }
        new Chart(html, columns, Math.max(22, 620.0 / Math.max(1, columns.size())))
                .svg("Levels of the organ and the singers through the service");
    }

    /** Nothing, where nothing sounds. */
    private void svg(String title) {
        if (columns.stream().allMatch(column -> column.organDba().isEmpty())) {
            return;
        }
        String words = columns.stream().map(Chart::words).collect(Collectors.joining("; ")) + ".";
        html.block(
                "figure",
                () -> html.block(
                        "svg",
                        () -> drawing(title + ". " + words),
                        "class",
                        "chart",
                        "role",
                        "img",
                        "viewBox",
                        "0 0 " + HtmlWriter.number(width()) + " " + HtmlWriter.number(HEIGHT),
                        "style",
                        "max-width:" + HtmlWriter.number(width()) + "px"));
    }

    private void drawing(String title) {
        html.line("title", title);
        scale();
        IntStream.range(0, columns.size()).forEach(this::behind);
        line("sung", Column::singersDba);
        line("way", Column::organDba);
        IntStream.range(0, columns.size()).forEach(this::before);
    }

    private static String words(Column column) {
        VerseSheet verse = column.verse();
        String singers = column.singersDba().isPresent()
                ? ", singers " + Math.round(column.singersDba().getAsDouble())
                : "";
        return column.words() + ": organ " + verse.level() + singers + ", "
                + Wording.verdict(verse.estimate().balance());
    }

    private double width() {
        return LEFT + columnWidth * columns.size() + 6;
    }

    private double x(int column) {
        return LEFT + columnWidth * (column + 0.5);
    }

    private double y(double levelDb) {
        double within = Math.max(lowDb, Math.min(highDb, levelDb));
        return BOTTOM - (within - lowDb) / (highDb - lowDb) * (BOTTOM - TOP);
    }

    private void scale() {
        int step = highDb - lowDb < 2 * SCALE_DB ? SCALE_DB / 2 : SCALE_DB;
        for (int level = (int) Math.ceil(lowDb / step) * step; level <= highDb; level += step) {
            html.empty("line", "class", "grid", "x1", LEFT, "x2", width() - 6, "y1", y(level), "y2", y(level));
            text("scale", LEFT - 6, y(level) + 4, "end", Integer.toString(level));
        }
    }

    /** The field of the target and the doubt. */
    private void behind(int at) {
        VerseSheet verse = columns.get(at).verse();
        OptionalDouble organDba = columns.get(at).organDba();
        verse.target().ifPresent(band -> {
            double nowDba = organDba.orElseThrow();
            double high = y(nowDba + band.toDb());
            rectangle("target", x(at), columnWidth * 0.86, high, y(nowDba + band.fromDb()));
        });
        if (organDba.isPresent() && verse.plusMinusDb().isPresent()) {
            double levelDb = organDba.getAsDouble();
            double doubtDb = verse.plusMinusDb().getAsDouble();
            rectangle("doubt", x(at), barWidth() * 0.7, y(levelDb + doubtDb), y(levelDb - doubtDb));
        }
    }

    private double barWidth() {
        return columnWidth * 0.62;
    }

    /** The bar, the ring, the mark and the label. */
    private void before(int at) {
        Column column = columns.get(at);
        double half = barWidth() / 2;
        column.organDba()
                .ifPresent(level -> html.empty(
                        "line",
                        "class",
                        "organ",
                        "x1",
                        x(at) - half,
                        "x2",
                        x(at) + half,
                        "y1",
                        y(level),
                        "y2",
                        y(level)));
        column.singersDba().ifPresent(level -> circle("singers", x(at), y(level), Math.min(5, columnWidth / 5)));
        if (column.verse().wantsAttention()) {
            circle("warn", x(at), 14, Math.min(11, columnWidth / 2.1));
            text("warned", x(at), 19, "middle", "!");
        }
        if (!column.label().isBlank()) {
            text("label", labelX(at), HEIGHT - 10, labelAnchor(), fitting(column.label()));
        }
    }

    private boolean isNarrow() {
        return columnWidth < 50;
    }

    private double labelX(int at) {
        return isNarrow() ? x(at) - columnWidth / 2 : x(at);
    }

    private String labelAnchor() {
        return isNarrow() ? "start" : "middle";
    }

    private String fitting(String label) {
        int most = isNarrow() ? 12 : 7;
        return label.length() <= most ? label : label.substring(0, label.offsetByCodePoints(0, most - 1)) + "\u2026";
    }

    /** A line through the levels there are, broken where there is none. */
    private void line(String style, Function<Column, OptionalDouble> level) {
        StringBuilder strokes = new StringBuilder();
        String pen = "M";
        for (int at = 0; at < columns.size(); at++) {
            OptionalDouble here = level.apply(columns.get(at));
            if (here.isPresent()) {
                strokes.append(pen)
                        .append(HtmlWriter.number(x(at)))
                        .append(' ')
                        .append(HtmlWriter.number(y(here.getAsDouble())));
            }
            pen = here.isPresent() ? "L" : "M";
        }
        if (!strokes.isEmpty()) {
            html.empty("path", "class", style, "d", strokes);
        }
    }

    private void rectangle(String style, double middle, double width, double top, double bottom) {
        double height = Math.max(0, bottom - top);
        html.empty("rect", "class", style, "x", middle - width / 2, "y", top, "width", width, "height", height);
    }

    private void circle(String style, double x, double y, double radius) {
        html.empty("circle", "class", style, "cx", x, "cy", y, "r", radius);
    }

    private void text(String style, double x, double y, String anchor, String text) {
        html.line("text", text, "class", style, "x", x, "y", y, "text-anchor", anchor);
    }
}
