package versewind.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class SchemaWriterTest {
    private static final Path FOLDER = Path.of("src", "main", "resources", "versewind", "schema");

    private static void check(String name, Table<?> table) throws IOException {
        Path file = FOLDER.resolve(name + ".schema.json");
        String schema = SchemaWriter.schema(name, table);
        if (Boolean.getBoolean("golden.update")) {
            Files.writeString(file, schema);
        }
        assertThat(file).as("write it anew with -Dgolden.update=true").hasContent(schema);
    }

    @Test
    void the_schema_of_plans_is_that_of_their_fields() throws IOException {
        check("plan", ServiceFields.TABLE);
    }

    @Test
    void the_schema_of_instruments_is_that_of_their_fields() throws IOException {
        check("instrument", OrganFields.TABLE);
    }
}
