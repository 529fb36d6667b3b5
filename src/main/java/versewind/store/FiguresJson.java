package versewind.store;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Map;

/** Numbers that were reckoned, as JSON: with six decimals; null for what has no level. */
public final class FiguresJson {

    private static final int DECIMALS = 6;

    private FiguresJson() {}

    /**
     * An object.
     *
     * @param byKey texts, numbers and arrays of numbers by their keys, in their order
     */
    public static String of(Map<String, Object> byKey) {
        return Generated.json(json -> {
            for (Map.Entry<String, Object> entry : byKey.entrySet()) {
                json.writeFieldName(entry.getKey());
                if (entry.getValue() instanceof double[] numbers) {
                    json.writeStartArray();
                    for (double number : numbers) {
                        write(json, number);
                    }
                    json.writeEndArray();
                } else if (entry.getValue() instanceof Double number) {
                    write(json, number);
                } else {
                    json.writeString(entry.getValue().toString());
                }
            }
        });
    }

    private static void write(JsonGenerator json, double number) throws IOException {
        if (Double.isInfinite(number)) {
            json.writeNull();
        } else {
            json.writeNumber(Generated.rounded(number, DECIMALS));
        }
    }
}
