package versewind.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import versewind.organ.Nearest;
import versewind.organ.Quoted;

/**
 * A value where it was found.
 *
 * @param file the file
 * @param place the field, "divisions[0].stops[3]"
 * @param node the value
 */
record LocatedValue(Path file, JsonPath place, Node node) {

    private static final int LARGEST_WHOLE = 1_000_000_000;

    /** That this value is wrong. */
    BadFile bad(String problem, String remedy) {
        return BadFile.at(file, node.line(), place.toString(), problem, remedy);
    }

    private BadFile wants(String kind, String remedy) {
        return bad("this has to be " + kind + ", but it is " + node.what(), remedy);
    }

    /** The fields of an object, none but these. */
    Fields fields(String... known) throws BadFile {
        List<String> names = Arrays.asList(known);
        Map<String, LocatedValue> entries = entries();
        for (Map.Entry<String, LocatedValue> entry : entries.entrySet()) {
            if (!names.contains(entry.getKey())) {
                throw entry.getValue()
                        .bad(
                                "there is no field " + Quoted.text(entry.getKey()) + " here",
                                Nearest.sentence(entry.getKey(), names, "The fields here are"));
            }
        }
        return new Fields(this, entries);
    }

    /** The values of an object by their names, whatever these are. */
    Map<String, LocatedValue> entries() throws BadFile {
        if (!(node instanceof Node.Fields fields)) {
            throw wants("an object", "Write it in braces { }.");
        }
        Map<String, LocatedValue> entries = new LinkedHashMap<>();
        for (Map.Entry<String, Node> field : fields.byName().entrySet()) {
            entries.put(field.getKey(), new LocatedValue(file, place.field(field.getKey()), field.getValue()));
        }
        return entries;
    }

    /** The items of a list. */
    List<LocatedValue> items() throws BadFile {
        if (!(node instanceof Node.Items items)) {
            throw wants("a list", "Write it in brackets [ ].");
        }
        List<LocatedValue> found = new ArrayList<>();
        for (Node item : items.list()) {
            found.add(new LocatedValue(file, place.item(found.size()), item));
        }
        return found;
    }

    /** A text. */
    String text() throws BadFile {
        if (!(node instanceof Node.Text text)) {
            throw wants("a text", "Write it in quotation marks.");
        }
        return text.value();
    }

    /** A number. */
    double number() throws BadFile {
        if (!(node instanceof Node.Numeral number)) {
            throw wants("a number", "Write it as a number, without quotation marks.");
        }
        return number.value() == 0 ? 0 : number.value();
    }

    /** A number between two others, these included. */
    double number(double least, double most) throws BadFile {
        double number = number();
        if (!(number >= least && number <= most)) {
            throw bad(
                    "this number is out of range",
                    "It lies between " + Written.number(least) + " and " + Written.number(most) + ".");
        }
        return number;
    }

    /** A whole number. */
    int whole() throws BadFile {
        double number = number();
        if (number != Math.rint(number)) {
            throw bad("this has to be a whole number", "Write it without a fraction.");
        }
        if (Math.abs(number) > LARGEST_WHOLE) {
            throw bad("this number is far too large", "Write a number that can be.");
        }
        return (int) number;
    }

    /** True or false. */
    boolean truth() throws BadFile {
        if (!(node instanceof Node.Truth truth)) {
            throw wants("true or false", "Write it without quotation marks.");
        }
        return truth.value();
    }

    /** The value that a word stands for, of those there are. */
    <T> T choice(List<T> values, Function<T, String> wordOf) throws BadFile {
        String word = text();
        for (T value : values) {
            if (wordOf.apply(value).equals(word)) {
                return value;
            }
        }
        throw bad(
                "there is no such word as " + Quoted.text(word) + " here",
                Nearest.sentence(word, values.stream().map(wordOf).toList(), "The words here are"));
    }

    /** A value of the core made from what was found here; its objection gets this place. */
    <T> T make(Supplier<T> maker) throws BadFile {
        try {
            return maker.get();
        } catch (IllegalArgumentException objection) {
            throw bad(Quoted.plain(objection.getMessage()), "Correct it here.");
        }
    }
}
