package versewind.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import versewind.organ.Quoted;

/** Turns the bytes of a JSON file into {@link Node}s, or says where it is broken. */
final class JsonTree {

    /** The largest file that is read, in bytes. */
    static final int LARGEST_FILE = 8 * 1024 * 1024;

    private static final int DEEPEST = 20;
    private static final int LONGEST_NUMBER = 40;
    private static final int LONGEST_NAME = 1000;
    private static final long MOST_TOKENS = 1_000_000;

    /** Bounds that keep a hostile file from costing more than a large honest one. */
    static final JsonFactory JSON = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST)
                    .maxNumberLength(LONGEST_NUMBER)
                    .maxNameLength(LONGEST_NAME)
                    .maxStringLength(LARGEST_FILE)
                    .maxTokenCount(MOST_TOKENS)
                    .maxDocumentLength(LARGEST_FILE + 1L)
                    .build())
            .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
            .build();

    private static final Pattern CHARACTER_CODE = Pattern.compile(" \\(code \\d+( / 0x[0-9a-f]+)?\\)");
    /** What some programs put before the first character of a file. */
    static final String BYTE_ORDER_MARK = "\uFEFF";

    private final Path file;
    private final JsonParser parser;

    private JsonTree(Path file, JsonParser parser) {
        this.file = file;
        this.parser = parser;
    }

    /**
     * Reads a whole file.
     *
     * @param file its name, for the sentence if it is broken
     * @param bytes what is in it
     */
    static LocatedValue read(Path file, byte[] bytes) throws BadFile {
        if (bytes.length > LARGEST_FILE) {
            throw BadFile.at(file, 1, "", "the file is larger than 8 MB", "Look whether it is the file you mean.");
        }
        String text = decode(file, bytes);
        if (text.isBlank()) {
            throw BadFile.at(file, 1, "", "the file is empty", "Restore it from a copy, or make a new one.");
        }
        try (JsonParser parser = JSON.createParser(text)) {
            JsonTree tree = new JsonTree(file, parser);
            try {
                parser.nextToken();
                Node root = tree.node(JsonPath.ROOT, tree.line());
                if (parser.nextToken() != null) {
                    throw BadFile.at(
                            file, tree.line(), "", "something follows after the end", "Take out what follows.");
                }
                return new LocatedValue(file, JsonPath.ROOT, root);
            } catch (JsonProcessingException broken) {
                throw tree.broken(broken);
            }
        } catch (IOException unexpected) {
            throw BadFile.at(file, 1, "", "it could not be read: " + unexpected.getMessage(), "Try it again.");
        }
    }

    private static String decode(Path file, byte[] bytes) throws BadFile {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        try {
            String text = StandardCharsets.UTF_8.newDecoder().decode(in).toString();
            return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
        } catch (CharacterCodingException notUtf8) {
            int line = 1;
            for (int i = 0; i < in.position(); i++) {
                line += bytes[i] == '\n' ? 1 : 0;
            }
            throw BadFile.at(
                    file, line, "", "a character here is not written in UTF-8", "Save the file in the encoding UTF-8.");
        }
    }

    private int line() {
        return parser.currentTokenLocation().getLineNr();
    }

    private Node node(JsonPath place, int line) throws IOException, BadFile {
        JsonToken token = parser.currentToken();
        return switch (token) {
            case START_OBJECT -> fields(place, line);
            case START_ARRAY -> items(place, line);
            case VALUE_STRING -> text(place, line, parser.getText());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Node.Numeral(line, Double.parseDouble(parser.getText()));
            case VALUE_TRUE -> new Node.Truth(line, true);
            case VALUE_FALSE -> new Node.Truth(line, false);
            case VALUE_NULL -> new Node.Nothing(line);
            case END_OBJECT, END_ARRAY, FIELD_NAME, VALUE_EMBEDDED_OBJECT, NOT_AVAILABLE ->
                throw new IllegalStateException("a parser of texts gives no value of " + token);
        };
    }

    private Node text(JsonPath place, int line, String value) throws BadFile {
        if (value.codePoints().anyMatch(c -> Character.getType(c) == Character.SURROGATE)) {
            throw BadFile.at(
                    file, line, place.toString(), "half of a character stands here", "Write the whole character.");
        }
        return new Node.Text(line, value);
    }

    private Node fields(JsonPath place, int line) throws IOException, BadFile {
        Map<String, Node> byName = new LinkedHashMap<>();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String name = parser.currentName();
            int nameLine = line();
            JsonPath below = place.field(name);
            parser.nextToken();
            Node earlier = byName.put(name, node(below, nameLine));
            if (earlier != null) {
                throw BadFile.at(
                        file,
                        nameLine,
                        below.toString(),
                        "this field stands here twice, first in line " + earlier.line(),
                        "Take one of the two out.");
            }
        }
        return new Node.Fields(line, byName);
    }

    private Node items(JsonPath place, int line) throws IOException, BadFile {
        List<Node> list = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            list.add(node(place.item(list.size()), line()));
        }
        return new Node.Items(line, list);
    }

    private BadFile broken(JsonProcessingException broken) {
        int line = broken.getLocation() == null
                ? parser.currentLocation().getLineNr()
                : broken.getLocation().getLineNr();
        if (broken instanceof JsonEOFException) {
            return BadFile.at(
                    file,
                    line,
                    "",
                    "the file ends too soon",
                    "It was cut off: restore it from a copy, or write what is missing.");
        }
        if (broken instanceof StreamConstraintsException) {
            return BadFile.at(
                    file,
                    line,
                    "",
                    "a number, a name or a nesting here is far too large",
                    "Take out what does not belong here.");
        }
        return BadFile.at(
                file,
                line,
                "",
                "this is not JSON: " + told(broken.getOriginalMessage()),
                "Look for a comma, a quotation mark or a bracket, here or a line above.");
    }

    /** The parser's own words, without the numbers of characters that it adds. */
    private static String told(String message) {
        String words = Quoted.plain(CHARACTER_CODE.matcher(message).replaceAll(""));
        return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }
}
