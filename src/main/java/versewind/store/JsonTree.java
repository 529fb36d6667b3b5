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
import java.util.List;
import java.util.Map;
import versewind.schema.Found;
import versewind.schema.Refused;

/** Turns the bytes of a JSON file into values that know their place, or says where it is broken. */
final class JsonTree {

    /** The largest file that is read, in bytes. */
    static final int LARGEST_FILE = 8 * 1024 * 1024;

    /** The longest text in a file, in UTF-16 units. */
    static final int LONGEST_TEXT = 100_000;

    private static final int DEEPEST = 20;
    private static final int LONGEST_NUMBER = 40;
    private static final int LONGEST_NAME = 1000;
    private static final long MOST_TOKENS = 1_000_000;

    /** Bounds that keep a hostile file from costing more than a large honest one. */
    static final JsonFactory JSON = factory(LONGEST_TEXT, LARGEST_FILE + 1L);

    /** A line of a journal holds a whole file as one text. */
    private static final JsonFactory LINE = factory(3 * LARGEST_FILE, 3L * LARGEST_FILE);

    private static JsonFactory factory(int longestText, long longest) {
        return JsonFactory.builder()
                .streamReadConstraints(StreamReadConstraints.builder()
                        .maxNestingDepth(DEEPEST)
                        .maxNumberLength(LONGEST_NUMBER)
                        .maxNameLength(LONGEST_NAME)
                        .maxStringLength(longestText)
                        .maxTokenCount(MOST_TOKENS)
                        .maxDocumentLength(longest)
                        .build())
                .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
                .build();
    }

    /** A mark that some programs put before the first character of a file. */
    static final String BYTE_ORDER_MARK = "\uFEFF";

    private final JsonParser parser;

    private JsonTree(JsonParser parser) {
        this.parser = parser;
    }

    /**
     * Reads a whole file.
     *
     * @param file its name, for the sentence if it is broken
     * @param bytes what is in it
     */
    static Found read(Path file, byte[] bytes) throws BadFile {
        if (bytes.length > LARGEST_FILE) {
            throw BadFile.at(file, 1, "the file is larger than 8 MB", "Check that it is the right file.");
        }
        String text = decode(file, bytes);
        if (text.isBlank()) {
            throw BadFile.at(file, 1, "the file is empty", "Restore it from a copy, or make a new one.");
        }
        return read(file, text, JSON);
    }

    /** Reads a line of a journal. */
    static Found readLine(Path file, byte[] bytes) throws BadFile {
        return read(file, decode(file, bytes), LINE);
    }

    private static Found read(Path file, String text, JsonFactory factory) throws BadFile {
        try (JsonParser parser = factory.createParser(text)) {
            return new JsonTree(parser).root();
        } catch (Refused wrong) {
            throw BadFile.of(file, wrong);
        } catch (IOException unexpected) {
            throw BadFile.at(file, 1, "it could not be read: " + unexpected.getMessage(), "Try again.");
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
                    file, line, "a character here is not written in UTF-8", "Save the file in the encoding UTF-8.");
        }
    }

    private Found root() throws IOException, Refused {
        try {
            parser.nextToken();
            Found root = Found.root(line(), value());
            fill(root);
            if (parser.nextToken() != null) {
                throw new Refused(line(), "", "something follows after the end", "Delete what follows.");
            }
            return root;
        } catch (JsonProcessingException broken) {
            throw broken(broken);
        }
    }

    private int line() {
        return parser.currentTokenLocation().getLineNr();
    }

    /** The value at hand; of a list or an object only that it is one. */
    private Object value() throws IOException {
        JsonToken token = parser.currentToken();
        return switch (token) {
            case START_OBJECT -> Map.of();
            case START_ARRAY -> List.of();
            case VALUE_STRING -> parser.getText();
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> Double.parseDouble(parser.getText());
            case VALUE_TRUE -> true;
            case VALUE_FALSE -> false;
            case VALUE_NULL -> Found.NOTHING;
            case END_OBJECT, END_ARRAY, FIELD_NAME, VALUE_EMBEDDED_OBJECT, NOT_AVAILABLE ->
                throw new IllegalStateException("a parser of texts gives no value of " + token);
        };
    }

    /** Reads what is in the list or object at hand. */
    private void fill(Found found) throws IOException, Refused {
        JsonToken token = parser.currentToken();
        if (token == JsonToken.VALUE_STRING) {
            requireWholeCharacters(found);
        } else if (token == JsonToken.START_ARRAY) {
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                fill(found.add(line(), value()));
            }
        } else if (token == JsonToken.START_OBJECT) {
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                String name = parser.currentName();
                int line = line();
                Found earlier = found.near(name);
                parser.nextToken();
                Found field = found.add(name, line, value());
                fill(field);
                if (earlier != found) {
                    throw field.bad(
                            "this field stands here twice, first on line " + earlier.line(), "Delete one of them.");
                }
            }
        }
    }

    private void requireWholeCharacters(Found found) throws IOException, Refused {
        if (!hasSurrogate()) {
            return;
        }
        String text = parser.getText();
        for (int i = 0; i < text.length(); i++) {
            boolean isPair = i + 1 < text.length() && Character.isSurrogatePair(text.charAt(i), text.charAt(i + 1));
            if (isPair) {
                i++;
            } else if (Character.isSurrogate(text.charAt(i))) {
                throw found.bad("half of a character stands here", "Write the whole character.");
            }
        }
    }

    /** Over an array and without calls: every letter of a file passes here before the first screen. */
    private boolean hasSurrogate() throws IOException {
        char[] letters = parser.getTextCharacters();
        int end = parser.getTextOffset() + parser.getTextLength();
        for (int i = parser.getTextOffset(); i < end; i++) {
            if (letters[i] >= Character.MIN_SURROGATE && letters[i] <= Character.MAX_SURROGATE) {
                return true;
            }
        }
        return false;
    }

    private Refused broken(JsonProcessingException broken) {
        int line = broken.getLocation() == null
                ? parser.currentLocation().getLineNr()
                : broken.getLocation().getLineNr();
        if (broken instanceof JsonEOFException) {
            return new Refused(
                    line,
                    "",
                    "the file ends too soon",
                    "It was cut off: restore it from a copy, or write what is missing.");
        }
        if (broken instanceof StreamConstraintsException) {
            return new Refused(
                    line,
                    "",
                    "a text, a number, a name or a nesting here is far too large",
                    "Delete what does not belong here.");
        }
        return new Refused(
                line,
                "",
                "this is not valid JSON",
                "Look for a missing or extra comma, quotation mark or bracket on this line or the line above.");
    }
}
