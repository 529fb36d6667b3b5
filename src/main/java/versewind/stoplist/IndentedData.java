package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Data whose lines are indented: "stops:", and below it "- name: Gedackt" or "- {name: Gedackt, pitch: 8}". */
final class IndentedData {

    private static final Pattern LINE =
            Pattern.compile("(\\s*)((?:- +)?)(?:([\\p{L}_][\\w '-]{0,40}|\"[^\"]{1,40}\"):(?= |$))?(.*)");
    private static final Pattern REMARK = Pattern.compile("(?:^|\\s)#.*$");
    private static final int DEEPEST = 40;

    /**
     * A line.
     *
     * @param indent where it begins; of an entry in a list, where what is in it begins
     * @param dash where the dash of a list stands; -1 for none
     * @param name the name before a colon; "" for none
     * @param value what follows
     */
    private record Row(int number, int indent, int dash, String name, String value) {}

    private final List<Row> rows = new ArrayList<>();
    private int at;

    private IndentedData() {}

    /** The data; empty where a line is not of this form. */
    static Optional<DataText.Node> of(List<String> lines) {
        IndentedData data = new IndentedData();
        for (int i = 0; i < lines.size(); i++) {
            String line = REMARK.matcher(lines.get(i)).replaceFirst("");
            Matcher row = LINE.matcher(line);
            if (!line.isBlank() && row.matches()) {
                data.add(row, i + 1);
            }
        }
        Optional<DataText.Node> node = data.rows.isEmpty() ? Optional.empty() : data.node(0, 0);
        return data.at == data.rows.size() ? node : Optional.empty();
    }

    private void add(Matcher row, int number) {
        int dash = row.group(2).isEmpty() ? -1 : row.group(1).length();
        String name = row.group(3) == null ? "" : row.group(3).replace("\"", "");
        rows.add(new Row(
                number,
                row.group(1).length() + row.group(2).length(),
                dash,
                name,
                row.group(4).strip()));
    }

    /** What stands from here on at this indent or deeper. */
    private Optional<DataText.Node> node(int indent, int depth) {
        Row first = rows.get(at);
        if (depth > DEEPEST) {
            return Optional.empty();
        }
        if (first.dash() >= indent) {
            return items(first.dash(), depth);
        }
        return first.name().isEmpty() ? Optional.empty() : fields(first.indent(), depth);
    }

    private Optional<DataText.Node> items(int dash, int depth) {
        List<DataText.Node> items = new ArrayList<>();
        int begun = rows.get(at).number();
        while (at < rows.size() && rows.get(at).dash() == dash) {
            Row row = rows.get(at);
            rows.set(at, new Row(row.number(), row.indent(), -1, row.name(), row.value()));
            Optional<DataText.Node> item =
                    row.name().isEmpty() ? value(rows.get(at++)) : fields(row.indent(), depth + 1);
            if (item.isEmpty()) {
                return Optional.empty();
            }
            items.add(item.get());
        }
        return Optional.of(new DataText.Items(List.copyOf(items), begun));
    }

    private Optional<DataText.Node> fields(int indent, int depth) {
        List<DataText.Field> fields = new ArrayList<>();
        int begun = rows.get(at).number();
        while (at < rows.size()
                && rows.get(at).indent() == indent
                && rows.get(at).dash() < 0
                && !rows.get(at).name().isEmpty()) {
            Row row = rows.get(at++);
            boolean below = row.value().isEmpty()
                    && at < rows.size()
                    && (rows.get(at).indent() > indent || rows.get(at).dash() == indent);
            Optional<DataText.Node> node =
                    below ? node(Math.min(rows.get(at).indent(), indent), depth + 1) : value(row);
            if (node.isEmpty()) {
                return Optional.empty();
            }
            fields.add(new DataText.Field(row.name(), node.get()));
        }
        return Optional.of(new DataText.Fields(List.copyOf(fields), begun));
    }

    private static Optional<DataText.Node> value(Row row) {
        String value = row.value();
        boolean brackets = value.startsWith("{") || value.startsWith("[");
        boolean quoted = value.length() > 1 && value.startsWith("\"") && value.endsWith("\"");
        return brackets
                ? DataText.inBrackets(value, row.number())
                : Optional.of(
                        new DataText.Value(quoted ? value.substring(1, value.length() - 1) : value, row.number()));
    }
}
