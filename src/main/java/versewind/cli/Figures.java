package versewind.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import versewind.sheet.LevelText;

/** Calculated numbers, each with its name and unit, perhaps a table, and the source of the method. */
final class Figures implements Report {

    private static final int NAME = 34;
    private static final int CELL = 10;
    private static final int JSON_DECIMALS = 6;

    private final String source;
    private final List<String[]> lines = new ArrayList<>();
    private final List<String[]> table = new ArrayList<>();
    private final Json json = new Json();

    /**
     * No numbers yet.
     *
     * @param source the method, with its standard and edition
     */
    Figures(String source) {
        this.source = source;
        json.put("source", source);
    }

    /** Adds a number; with six decimals in JSON. */
    Figures with(String name, String key, double value, int decimals, String unit) {
        lines.add(new String[] {name, (number(value, decimals) + " " + unit).strip()});
        json.put(key, value, JSON_DECIMALS);
        return this;
    }

    /** Adds a word. */
    Figures with(String name, String key, String word) {
        lines.add(new String[] {name, word});
        json.put(key, word);
        return this;
    }

    /** Adds numbers to the JSON alone. */
    Figures with(String key, double[] values) {
        json.list(key, Arrays.stream(values).boxed().toList(), value -> Json.number(value, JSON_DECIMALS));
        return this;
    }

    /** Begins a table. */
    Figures heads(String... heads) {
        table.add(heads);
        return this;
    }

    /** Adds a row to the table: the number of a band, then numbers with some decimals. */
    Figures row(double head, int decimals, double... cells) {
        List<String> row = new ArrayList<>(List.of(number(head, head == Math.rint(head) ? 0 : 1)));
        for (double cell : cells) {
            row.add(number(cell, decimals));
        }
        table.add(row.toArray(String[]::new));
        return this;
    }

    private static String number(double value, int decimals) {
        return Double.isInfinite(value) ? LevelText.NONE : String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    @Override
    public void print(Page page) {
        lines.forEach(line -> page.hanging(page.left(line[0], NAME) + " ", line[1]));
        if (!table.isEmpty()) {
            page.blank();
        }
        for (String[] row : table) {
            int[] widths = new int[row.length];
            Arrays.fill(widths, -CELL);
            page.line(page.cells("", widths, row));
        }
        page.blank();
        page.paragraph("Source: " + source);
    }

    @Override
    public Json json() {
        return json;
    }
}
