package versewind.schema;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;

/**
 * Writes the JSON Schema of a table. What a table cannot say, such as which fields exclude each other, stands in
 * {@code schema_conditions.json} by the path of the field, "[]" for the items of a list.
 */
final class SchemaWriter {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final JsonNode CONDITIONS = conditions();

    private SchemaWriter() {}

    private static JsonNode conditions() {
        try (InputStream in = SchemaWriter.class.getResourceAsStream("/versewind/schema/schema_conditions.json")) {
            return JSON.readTree(in);
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    /** The schema of the files of a table, indented. */
    static String schema(String name, Table<?> table) {
        ObjectNode schema = JSON.createObjectNode();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("$id", "urn:versewind:" + name + ":" + FileFormat.NUMBER);
        schema.setAll(object(table, name));
        return schema.toPrettyString() + "\n";
    }

    private static ObjectNode object(Table<?> table, String path) {
        ObjectNode schema = JSON.createObjectNode();
        schema.put("description", table.about());
        schema.put("type", "object");
        schema.put("additionalProperties", false);
        ArrayNode needed = schema.putArray("required");
        ObjectNode properties = schema.putObject("properties");
        for (Field<?, ?> field : table.fields()) {
            if (field.isNeeded()) {
                needed.add(field.name());
            }
            properties.set(field.name(), property(field, path + "/" + field.name()));
        }
        return with(schema, path);
    }

    private static ObjectNode with(ObjectNode schema, String path) {
        if (CONDITIONS.get("paths").has(path)) {
            schema.setAll((ObjectNode) CONDITIONS.get("paths").get(path));
        }
        return schema;
    }

    private static ObjectNode property(Field<?, ?> field, String path) {
        ObjectNode schema = value(field.kind(), path);
        schema.put("description", description(field));
        return schema;
    }

    private static String description(Field<?, ?> field) {
        String about = field.about().substring(0, 1).toUpperCase(Locale.ROOT)
                + field.about().substring(1) + ".";
        String usual = field.isNeeded() ? "" : field.usual();
        return usual.isEmpty() ? about : about + " " + usual + " where left out.";
    }

    private static ObjectNode value(Kind<?> kind, String path) {
        if (kind instanceof Kinds.IfAny<?> ifAny) {
            return value(ifAny.kind, path);
        }
        if (kind instanceof Kinds.Nested<?> nested) {
            return object(nested.table(), path);
        }
        String name = kind.getClass().getName().replace("versewind.schema.", "").replace('$', '.');
        ObjectNode schema = JSON.createObjectNode();
        if (CONDITIONS.get("kinds").has(name)) {
            schema.setAll((ObjectNode) CONDITIONS.get("kinds").get(name).deepCopy());
        } else if (kind instanceof Kinds.Items<?> items) {
            schema.put("type", "array").set("items", value(items.kind, path + "[]"));
        } else if (kind instanceof Kinds.Whole whole) {
            schema.put("type", "integer").put("minimum", whole.least).put("maximum", whole.most);
        } else if (kind instanceof Kinds.Decimals number) {
            schema.put("type", "number").put("minimum", number.least).put("maximum", number.most);
        } else if (kind instanceof ChoiceKind<?>) {
            schema.set("enum", words(kind.words()));
        } else {
            schema.put("type", "string");
        }
        if (kind instanceof Kinds.Text && !kind.takesBlank()) {
            schema.put("pattern", "\\S");
        }
        for (String words : List.of("additionalProperties", "propertyNames")) {
            if (schema.path(words).has("enum")) {
                ((ObjectNode) schema.get(words)).set("enum", words(kind.words()));
            }
        }
        return with(schema, path);
    }

    private static ArrayNode words(List<String> words) {
        ArrayNode list = JSON.createArrayNode();
        words.forEach(list::add);
        return list;
    }
}
