package versewind.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * An object of JSON, with its fields in the order in which they were put. Written indented and in printable ASCII, so
 * that neither a character set nor a terminal can be disturbed. Source: RFC 8259.
 */
final class Json {

    private final Map<String, Object> fields = new LinkedHashMap<>();

    /**
     * With a field.
     *
     * @param value a text, a whole number, a truth value, an object or a list of these; an empty option for null
     */
    Json put(String name, Object value) {
        fields.put(name, value instanceof Optional<?> option ? option.orElse(null) : value);
        return this;
    }

    /** With a field if there is a value for it. */
    Json putIfPresent(String name, Optional<?> value) {
        return value.isPresent() ? put(name, value) : this;
    }

    /** With a number of some decimals; null if it is not finite. */
    Json put(String name, double value, int decimals) {
        return put(name, number(value, decimals));
    }

    /** With a number of some decimals; null if there is none. */
    Json put(String name, OptionalDouble value, int decimals) {
        return put(name, value.orElse(Double.NaN), decimals);
    }

    /** With a list. */
    <T> Json list(String name, Collection<T> items, Function<T, ?> item) {
        return put(name, items.stream().<Object>map(item).toList());
    }

    /** With the fields of another object. */
    Json with(Json other) {
        fields.putAll(other.fields);
        return this;
    }

    boolean isEmpty() {
        return fields.isEmpty();
    }

    /** A number with some decimals; empty, to be written as null, if it is not finite. */
    static Optional<BigDecimal> number(double value, int decimals) {
        return Double.isFinite(value)
                ? Optional.of(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP))
                : Optional.empty();
    }

    /** The text, with a line end after it. */
    String text() {
        StringBuilder text = new StringBuilder();
        write(text, this, "\n");
        return text.append('\n').toString();
    }

    private static void write(StringBuilder text, Object value, String line) {
        String inside = line + "  ";
        if (value instanceof Json object) {
            text.append('{');
            String between = inside;
            for (Map.Entry<String, Object> field : object.fields.entrySet()) {
                text.append(between);
                quote(text, field.getKey());
                write(text.append(": "), field.getValue(), inside);
                between = "," + inside;
            }
            text.append(object.fields.isEmpty() ? " }" : line + "}");
        } else if (value instanceof List<?> list) {
            text.append('[');
            String between = inside;
            for (Object item : list) {
                write(text.append(between), item, inside);
                between = "," + inside;
            }
            text.append(list.isEmpty() ? " ]" : line + "]");
        } else if (value instanceof Optional<?> option) {
            write(text, option.orElse(null), line);
        } else if (value instanceof String string) {
            quote(text, string);
        } else {
            text.append(value);
        }
    }

    private static void quote(StringBuilder text, String string) {
        text.append('"');
        for (int i = 0; i < string.length(); i++) {
            char c = string.charAt(i);
            switch (c) {
                case '"', '\\' -> text.append('\\').append(c);
                case '\b' -> text.append("\\b");
                case '\t' -> text.append("\\t");
                case '\n' -> text.append("\\n");
                case '\f' -> text.append("\\f");
                case '\r' -> text.append("\\r");
                default ->
                    text.append(c >= ' ' && c <= '~' ? Character.toString(c) : String.format("\\u%04X", (int) c));
            }
        }
        text.append('"');
    }
}
