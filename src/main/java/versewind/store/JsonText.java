package versewind.store;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import versewind.organ.Decimal;
import versewind.schema.Field;
import versewind.schema.Field.Layout;
import versewind.schema.Kinds;
import versewind.schema.OrganNames;
import versewind.schema.Table;

/** Writes the values of tables as JSON, laid out for a person to read. Source: RFC 8259. */
final class JsonText {
    /** The columns of a line that are filled before a part that can be broken is broken. */
    static final int COLUMNS = 120;

    private static final String STEP = "  ";
    private static final char NO_CHARACTER = '\uFFFD';

    private final OrganNames names;

    private JsonText(OrganNames names) {
        this.names = names;
    }

    /** The bytes of a file. */
    static <T> byte[] bytes(Table<T> table, T value, OrganNames names) {
        return (new JsonText(names).block(table, value, "") + "\n").getBytes(StandardCharsets.UTF_8);
    }

    /** The bytes of a file with these fields; each item of a list stands on a line of its own. */
    static byte[] bytes(Map<String, Object> fields) {
        JsonText json = new JsonText(OrganNames.NONE);
        List<String> rows = new ArrayList<>();
        fields.forEach((name, plain) -> rows.add(
                text(name) + ": " + (plain instanceof List ? json.broken(plain, STEP) : json.value(plain, STEP))));
        return (enclosed("{", rows, "}", "") + "\n").getBytes(StandardCharsets.UTF_8);
    }

    /** An object whose fields stand on lines of their own, two columns further in than itself. */
    private <T> String block(Table<T> table, T value, String margin) {
        List<String> rows = new ArrayList<>();
        StringBuilder row = new StringBuilder();
        for (Field<T, ?> field : table.fields()) {
            if (field.layout() != Layout.BESIDE && !row.isEmpty()) {
                rows.add(row.toString());
                row.setLength(0);
            }
            Optional<Object> plain = field.written(value, names);
            if (plain.isPresent()) {
                row.append(row.isEmpty() ? "" : ", ").append(field(field, plain.get(), margin + STEP));
            }
        }
        if (!row.isEmpty()) {
            rows.add(row.toString());
        }
        return enclosed("{", rows, "}", margin);
    }

    private String field(Field<?, ?> field, Object plain, String margin) {
        String name = text(field.name()) + ": ";
        return switch (field.layout()) {
            case LINE, BESIDE -> name + value(plain, margin);
            case BLOCK -> name + broken(plain, margin);
            case FIT ->
                fits(margin, name + value(plain, margin)) ? name + value(plain, margin) : name + broken(plain, margin);
        };
    }

    private static boolean fits(String margin, String row) {
        return margin.length() + row.codePointCount(0, row.length()) + 1 <= COLUMNS;
    }

    /** An object on one line, but for a field that may be broken where it is too long. */
    private <T> String line(Table<T> table, T value, String margin) {
        String line = line(table, value, margin, false);
        return fits(margin, line) ? line : line(table, value, margin, true);
    }

    private <T> String line(Table<T> table, T value, String margin, boolean isBroken) {
        StringJoiner line = new StringJoiner(", ", "{", "}");
        for (Field<T, ?> field : table.fields()) {
            field.written(value, names)
                    .ifPresent(plain -> line.add(text(field.name()) + ": "
                            + (isBroken && field.layout() == Layout.FIT
                                    ? broken(plain, margin)
                                    : value(plain, margin))));
        }
        return line.toString();
    }

    private <T> String row(Table.Row<T> row, String margin) {
        return row.table().isLine() ? line(row.table(), row.value(), margin) : block(row.table(), row.value(), margin);
    }

    /** A list or object with each of its parts on a line of its own. */
    private String broken(Object plain, String margin) {
        List<String> rows = new ArrayList<>();
        if (plain instanceof Map<?, ?> map) {
            map.forEach((name, each) -> rows.add(text((String) name) + ": " + value(each, margin + STEP)));
            return enclosed("{", rows, "}", margin);
        }
        for (Object each : (List<?>) plain) {
            rows.add(value(each, margin + STEP));
        }
        return enclosed("[", rows, "]", margin);
    }

    private static String enclosed(String open, List<String> rows, String close, String margin) {
        String inside = "\n" + margin + STEP;
        return rows.isEmpty() ? open + close : open + inside + String.join("," + inside, rows) + "\n" + margin + close;
    }

    private String value(Object plain, String margin) {
        if (plain instanceof Table.Row<?> row) {
            return row(row, margin);
        }
        if (plain instanceof Map<?, ?> map) {
            StringJoiner fields = new StringJoiner(", ", "{", "}");
            map.forEach((name, each) -> fields.add(text((String) name) + ": " + value(each, margin)));
            return fields.toString();
        }
        if (plain instanceof List<?> list) {
            StringJoiner items = new StringJoiner(", ", "[", "]");
            list.forEach(each -> items.add(value(each, margin)));
            return items.toString();
        }
        if (plain instanceof Kinds.Measured measured) {
            String number = Decimal.of(measured.value());
            return number.contains(".") ? number : number + ".0";
        }
        return plain instanceof String text
                ? text(text)
                : plain instanceof Number number ? Decimal.of(number.doubleValue()) : plain.toString();
    }

    /** A text in quotation marks. Half a surrogate pair, which is no character, becomes U+FFFD. */
    static String text(String value) {
        StringBuilder out = new StringBuilder("\"");
        value.codePoints().forEach(c -> {
            switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\n' -> out.append("\\n");
                case '\r' -> out.append("\\r");
                case '\t' -> out.append("\\t");
                default -> {
                    if (Character.getType(c) == Character.SURROGATE) {
                        out.append(NO_CHARACTER);
                    } else if (Character.isISOControl(c)) {
                        out.append(String.format("\\u%04x", c));
                    } else {
                        out.appendCodePoint(c);
                    }
                }
            }
        });
        return out.append('"').toString();
    }
}
