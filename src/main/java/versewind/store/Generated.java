package versewind.store;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;

/** Writes JSON for other programs, in printable ASCII, indented. */
final class Generated {
    private static final int HIGHEST_PRINTABLE_ASCII = 0x7E;
    private static final DefaultIndenter INDENT = new DefaultIndenter("  ", "\n");

    private static final Separators SEPARATORS =
            Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER);

    private Generated() {}

    /** What is written inside an object. */
    @FunctionalInterface
    interface Fields {
        void write(JsonGenerator json) throws IOException;
    }

    /** An object, with a line end after it. */
    static String json(Fields fields) {
        StringWriter written = new StringWriter();
        try (JsonGenerator json = JsonTree.JSON.createGenerator(written)) {
            json.setHighestNonEscapedChar(HIGHEST_PRINTABLE_ASCII);
            json.setPrettyPrinter(new DefaultPrettyPrinter(SEPARATORS)
                    .withObjectIndenter(INDENT)
                    .withArrayIndenter(INDENT));
            json.writeStartObject();
            fields.write(json);
            json.writeEndObject();
        } catch (IOException impossible) {
            throw new UncheckedIOException("a string writer does not fail", impossible);
        }
        return written.append('\n').toString();
    }

    /** A number with one decimal; null where there is none. */
    static void level(JsonGenerator json, String name, OptionalDouble level) throws IOException {
        json.writeFieldName(name);
        if (level.isPresent()) {
            json.writeNumber(rounded(level.getAsDouble(), 1));
        } else {
            json.writeNull();
        }
    }

    /** A number with some decimals. */
    static BigDecimal rounded(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    }

    /** A text, or null where there is none. */
    static void textOrNull(JsonGenerator json, String name, Optional<String> text) throws IOException {
        json.writeFieldName(name);
        if (text.isPresent()) {
            json.writeString(text.get());
        } else {
            json.writeNull();
        }
    }
}
