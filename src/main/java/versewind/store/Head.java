package versewind.store;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The texts at the beginning of a file, before its first list or object. */
final class Head {
    private Head() {}

    /** A text of a head, or another where there is none or a blank one. */
    static String titled(Map<String, String> head, String field, String otherwise) {
        String title = head.getOrDefault(field, otherwise);
        return title.isBlank() ? otherwise : title;
    }

    /** All texts of a file; of one that is broken, those before the break. */
    static List<String> texts(Path file) {
        List<String> texts = new ArrayList<>();
        try (InputStream in = Files.newInputStream(file);
                JsonParser parser = JsonTree.JSON.createParser(in)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if (token == JsonToken.VALUE_STRING) {
                    texts.add(parser.getText());
                }
            }
        } catch (IOException broken) {
            return texts;
        }
        return texts;
    }

    /**
     * Reads the head of a file; of one that is broken, what stands before the break.
     *
     * @return the texts by the names of their fields
     */
    static Map<String, String> of(Path file) {
        Map<String, String> texts = new HashMap<>();
        if (!Files.isRegularFile(file)) {
            return texts;
        }
        try (InputStream in = Files.newInputStream(file);
                JsonParser parser = JsonTree.JSON.createParser(in)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                return texts;
            }
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                String name = parser.currentName();
                JsonToken value = parser.nextToken();
                if (value == null || value.isStructStart()) {
                    return texts;
                }
                if (value == JsonToken.VALUE_STRING) {
                    texts.put(name, parser.getText());
                }
            }
        } catch (IOException broken) {
            // A list of files names the broken ones too; opening one tells what is wrong with it.
            return texts;
        }
        return texts;
    }
}
