package versewind.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * The organ and the singers, verse by verse, as an SVG picture with its text beside it: a bar for the organ, grey around it
 * for the doubt, a ring for the singers, behind them the field where the organ would be right, above them a mark where
 * something should be done.
 */
final class Chart {

    private static final double HEIGHT = 160;
    private static final double TOP = 30;
    private static final double BOTTOM = 130;
    private static final double LEFT = 40;
    private static final double ROOM_DB = 3;
    private static final int SCALE_DB = 10;

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

    private Chart(List<Column> columns, double columnWidth) {
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

    /** The picture of a hymn. */
    static String of(HymnSheet hymn) {
        List<Column> columns = hymn.verses().stream()
                .map(verse -> new Column(verse.verse().label(), verse.verse().label(), verse))
                .toList();
        return new Chart(columns, 58).svg("Levels of the organ and the singers");
    }

    /** The picture of a whole service. */
    static String of(List<HymnSheet> hymns) {
        List<Column> columns = new ArrayList<>();
        for (HymnSheet hymn : hymns) {
            for (int i = 0; i < hymn.verses().size(); i++) {
                VerseSheet verse = hymn.verses().get(i);
                String label = i == 0 ? hymn.shortName() : "";
                columns.add(
                        new Column(label, hymn.shortName() + " " + verse.verse().label(), verse));
            }
        }
        return new Chart(columns, Math.max(22, 620.0 / Math.max(1, columns.size())))
                .svg("Levels of the organ and the singers through the service");
    }

    /** Nothing, where nothing sounds. */
    private String svg(String title) {
        if (columns.stream().allMatch(column -> column.organDba().isEmpty())) {
            return "";
        }
        String drawing = scale()
                + each(this::behind)
                + line("sung", Column::singersDba)
                + line("way", Column::organDba)
                + each(this::before);
        String words = columns.stream().map(Chart::words).collect(Collectors.joining("; ")) + ".";
        return Html.block(
                "figure",
                Html.block(
                        "svg class=\"chart\" role=\"img\" viewBox=\"0 0 " + number(width()) + " " + number(HEIGHT)
                                + "\" style=\"max-width:" + number(width()) + "px\"",
                        Html.line("title", title + ". " + words) + drawing));
    }

    private String each(IntFunction<String> drawing) {
        return IntStream.range(0, columns.size()).mapToObj(drawing).collect(Collectors.joining());
    }

    private static String words(Column column) {
        VerseSheet verse = column.verse();
        String organ = column.organDba().isPresent() ? SheetLevels.level(verse) : "silent";
        String singers = column.singersDba().isPresent()
                ? ", singers " + Math.round(column.singersDba().getAsDouble())
                : "";
        return column.words() + ": organ " + organ + singers + ", "
                + Wording.verdict(verse.estimate().margin());
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

    private String scale() {
        StringBuilder lines = new StringBuilder();
        int step = highDb - lowDb < 2 * SCALE_DB ? SCALE_DB / 2 : SCALE_DB;
        for (int level = (int) Math.ceil(lowDb / step) * step; level <= highDb; level += step) {
            lines.append(tag("line class=\"grid\"", "x1", LEFT, "x2", width() - 6, "y1", y(level), "y2", y(level)));
            lines.append(text("scale", LEFT - 6, y(level) + 4, "end", Integer.toString(level)));
        }
        return lines.toString();
    }

    /** The field of the target and the doubt. */
    private String behind(int at) {
        Column column = columns.get(at);
        String field = column.verse()
                .target()
                .map(band -> {
                    double high = y(band.highDba());
                    double low = y(band.lowDba().orElse(lowDb));
                    return rectangle("target", x(at), columnWidth * 0.86, high, low);
                })
                .orElse("");
        if (column.organDba().isEmpty() || column.verse().plusMinusDb().isEmpty()) {
            return field;
        }
        double levelDb = column.organDba().getAsDouble();
        double doubtDb = column.verse().plusMinusDb().getAsDouble();
        return field + rectangle("doubt", x(at), barWidth() * 0.7, y(levelDb + doubtDb), y(levelDb - doubtDb));
    }

    private double barWidth() {
        return columnWidth * 0.62;
    }

    /** The bar, the ring, the mark and the label. */
    private String before(int at) {
        Column column = columns.get(at);
        StringBuilder drawn = new StringBuilder();
        column.organDba()
                .ifPresent(level -> drawn.append(tag(
                        "line class=\"organ\"",
                        "x1",
                        x(at) - barWidth() / 2,
                        "x2",
                        x(at) + barWidth() / 2,
                        "y1",
                        y(level),
                        "y2",
                        y(level))));
        column.singersDba()
                .ifPresent(level -> drawn.append(tag(
                        "circle class=\"singers\"", "cx", x(at), "cy", y(level), "r", Math.min(5, columnWidth / 5))));
        if (column.verse().wantsAttention()) {
            drawn.append(tag("circle class=\"warn\"", "cx", x(at), "cy", 14, "r", Math.min(11, columnWidth / 2.1)));
            drawn.append(text("warned", x(at), 19, "middle", "!"));
        }
        if (!column.label().isBlank()) {
            drawn.append(text("label", labelX(at), HEIGHT - 10, labelAnchor(), fitting(column.label())));
        }
        return drawn.toString();
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

    private interface Level {
        OptionalDouble of(Column column);
    }

    /** A line through the levels there are, broken where there is none. */
    private String line(String style, Level level) {
        List<String> strokes = new ArrayList<>();
        String pen = "M";
        for (int at = 0; at < columns.size(); at++) {
            OptionalDouble here = level.of(columns.get(at));
            if (here.isPresent()) {
                strokes.add(pen + number(x(at)) + " " + number(y(here.getAsDouble())));
            }
            pen = here.isPresent() ? "L" : "M";
        }
        return strokes.isEmpty() ? "" : "<path class=\"" + style + "\" d=\"" + String.join("", strokes) + "\"/>\n";
    }

    private static String rectangle(String style, double middle, double width, double top, double bottom) {
        double height = Math.max(0, bottom - top);
        return tag("rect class=\"" + style + "\"", "x", middle - width / 2, "y", top, "width", width, "height", height);
    }

    private static String text(String style, double x, double y, String anchor, String text) {
        return Html.element(
                        "text class=\"" + style + "\" x=\"" + number(x) + "\" y=\"" + number(y) + "\" text-anchor=\""
                                + anchor + "\"",
                        Html.text(text))
                + "\n";
    }

    /** An element without content; names of attributes and their numbers in turn. */
    private static String tag(String start, Object... attributes) {
        StringBuilder tag = new StringBuilder("<").append(start);
        for (int i = 0; i < attributes.length; i += 2) {
            tag.append(' ')
                    .append(attributes[i])
                    .append("=\"")
                    .append(number(((Number) attributes[i + 1]).doubleValue()))
                    .append('"');
        }
        return tag.append("/>\n").toString();
    }

    private static String number(double value) {
        String written = String.format(Locale.ROOT, "%.1f", value);
        return written.endsWith(".0") ? written.substring(0, written.length() - 2) : written;
    }
}
