package versewind.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import versewind.store.FiguresJson;

/** Numbers that were reckoned, each with its name and unit, and a table of more; as text and as JSON. */
final class ComputedFigures {

    private static final int NAME = 34;
    private static final int CELL = 10;
    private static final String SOURCE = "Source: ";

    private final String source;
    private final List<String> lines = new ArrayList<>();
    private final List<String> table = new ArrayList<>();
    private final Map<String, Object> byKey = new LinkedHashMap<>();

    /**
     * Nothing yet.
     *
     * @param source the method, with its standard and edition
     */
    ComputedFigures(String source) {
        this.source = source;
        byKey.put("source", source);
    }

    /** Adds a number. */
    ComputedFigures with(String name, String key, double value, int decimals, String unit) {
        lines.add(padded(name) + " " + (number(value, decimals) + " " + unit).strip());
        byKey.put(key, value);
        return this;
    }

    /** Adds a word. */
    ComputedFigures with(String name, String key, String word) {
        lines.add(padded(name) + " " + word);
        byKey.put(key, word);
        return this;
    }

    /** Adds numbers that are for other programs alone. */
    ComputedFigures with(String key, double[] values) {
        byKey.put(key, values.clone());
        return this;
    }

    /** Begins a table. */
    ComputedFigures heads(String... heads) {
        StringBuilder line = new StringBuilder();
        for (String head : heads) {
            line.append(" ".repeat(Math.max(0, CELL - head.length()))).append(head);
        }
        table.add(line.toString());
        return this;
    }

    /** Adds a row to the table: whole numbers of a band first, then numbers with some decimals. */
    ComputedFigures row(double head, int decimals, double... cells) {
        StringBuilder line = new StringBuilder(cell(number(head, head == Math.rint(head) ? 0 : 1)));
        for (double each : cells) {
            line.append(cell(number(each, decimals)));
        }
        table.add(line.toString());
        return this;
    }

    private static String cell(String text) {
        return " ".repeat(Math.max(0, CELL - text.length())) + text;
    }

    private static String padded(String name) {
        return name + " ".repeat(Math.max(0, NAME - name.length()));
    }

    private static String number(double value, int decimals) {
        return Double.isInfinite(value) ? LevelText.NONE : String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    /** As lines of text. */
    String text(CharsetFallback lettering) {
        Page page = new Page(lettering);
        lines.forEach(page::line);
        if (!table.isEmpty()) {
            page.blank();
            table.forEach(page::line);
        }
        page.blank();
        page.paragraph(SOURCE + source);
        return page.text();
    }

    /** As JSON. */
    String json() {
        return FiguresJson.of(byKey);
    }
}
