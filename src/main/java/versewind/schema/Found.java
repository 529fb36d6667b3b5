package versewind.schema;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import versewind.organ.Decimal;
import versewind.organ.Quoted;

/**
 * A value with the place where it was found: in a file, or typed into a cell or a form. It is a text, a number, true or
 * false, a list, an object or nothing; each asker says which it needs.
 */
public final class Found {
    private static final double LARGEST_WHOLE = 1e9;

    /** The value null of a file. */
    public static final Object NOTHING = new Object();

    private final Found above;
    private final String name;
    private final int index;
    private final int line;
    private final Object value;

    private Found(Found above, String name, int index, int line, Object value) {
        this.above = above;
        this.name = name;
        this.index = index;
        this.line = line;
        this.value = value;
    }

    /** The outermost object, list or single value of a file, or of a row of cells where the line is 0. */
    public static Found root(int line, Object value) {
        return new Found(null, "", -1, line, container(value));
    }

    private static Object container(Object value) {
        if (value instanceof Integer whole) {
            return whole.doubleValue();
        }
        if (value instanceof Map) {
            return new LinkedHashMap<String, Found>();
        }
        return value instanceof List ? new ArrayList<Found>() : value;
    }

    /** Adds a field to this object; a list or an object is added empty. */
    public Found add(String fieldName, int fieldLine, Object fieldValue) {
        Found field = new Found(this, fieldName, -1, fieldLine, container(fieldValue));
        fields().put(fieldName, field);
        return field;
    }

    /** Adds an item to this list; a list or an object is added empty. */
    public Found add(int itemLine, Object itemValue) {
        Found item = new Found(this, "", list(value).size(), itemLine, container(itemValue));
        list(value).add(item);
        return item;
    }

    /**
     * Adds what was typed into a cell or a form.
     *
     * @param field the field it is for
     * @param column what the reader calls it
     * @param typed a text, a number, true or false, or lists and maps of these
     */
    void addTyped(String field, String column, Object typed) {
        Found cell = new Found(this, column, -1, 0, container(typed));
        fields().put(field, cell);
        cell.fill(typed);
    }

    /** Adds a field of a file that is not written yet, as {@link Field#written} gives it. */
    void addWritten(String field, Object plain) {
        Found found = new Found(this, field, -1, 1, container(plain));
        fields().put(field, found);
        found.fill(plain);
    }

    /** A typed value by itself. */
    static Found typed(String column, Object typed) {
        Found row = root(0, Map.of());
        row.addTyped(column, column, typed);
        return row.fields().get(column);
    }

    private void fill(Object typed) {
        if (typed instanceof Map<?, ?> map) {
            map.forEach((key, each) -> add((String) key, line, each).fill(each));
        } else if (typed instanceof List<?> items) {
            items.forEach(each -> add(line, each).fill(each));
        }
    }

    @SuppressWarnings("unchecked") // container() makes nothing else
    private Map<String, Found> fields() {
        return (Map<String, Found>) value;
    }

    @SuppressWarnings("unchecked") // container() makes nothing else
    private static List<Found> list(Object value) {
        return (List<Found>) value;
    }

    /** Line of the file, counted from 1; 0 for what was typed. */
    public int line() {
        return line;
    }

    boolean isTyped() {
        return line == 0;
    }

    /** Its place in a file, "hymns[1].verses[2].drawn"; of a typed value, the column. */
    public String place() {
        if (above == null) {
            return "";
        }
        String before = above.place();
        if (isTyped() && !before.isEmpty()) {
            return before;
        }
        if (index >= 0) {
            return before + "[" + index + "]";
        }
        if (!isTyped() && !isPlainName()) {
            return before + "[" + Quoted.text(name) + "]";
        }
        return before.isEmpty() ? Quoted.plain(name) : before + "." + Quoted.plain(name);
    }

    private boolean isPlainName() {
        return !name.isEmpty() && name.chars().allMatch(c -> c < 128 && Character.isLetterOrDigit(c));
    }

    /** A field of this object; the object itself where it has none of the name. */
    public Found near(String field) {
        return find(field).orElse(this);
    }

    /** A field of this object, if it is one and has it. */
    public Optional<Found> find(String field) {
        return value instanceof Map ? Optional.ofNullable(fields().get(field)) : Optional.empty();
    }

    /** The items of a field of this object, as far as it is a list. */
    public List<Found> each(String field) {
        return find(field)
                .filter(each -> each.value instanceof List)
                .map(each -> list(each.value))
                .orElse(List.of());
    }

    /** A field that this object must have. */
    public Found at(String field) throws Refused {
        return find(field).orElseThrow(() -> missing(field));
    }

    /** True if a field of this object is this text. */
    public boolean hasText(String field, String text) {
        return find(field).filter(each -> text.equals(each.value)).isPresent();
    }

    /** A refusal of an object without a field. */
    Refused missing(Field<?, ?> field) {
        return isTyped()
                ? new Refused(
                        0,
                        field.column(),
                        "this must not be blank",
                        field.kind().remedy())
                : missing(field.name());
    }

    private Refused missing(String field) {
        return bad("the field " + Quoted.text(field) + " is missing", "Add it here.");
    }

    /** A refusal of this value. */
    public Refused bad(String problem, String remedy) {
        return new Refused(line, place(), problem, remedy);
    }

    private Refused wants(String what, String remedy) {
        return isTyped() && value instanceof String text
                ? bad(Quoted.text(text) + " is not " + what, remedy)
                : bad("expected " + what + ", found " + what(), remedy);
    }

    private String what() {
        if (value instanceof Map) {
            return "an object";
        }
        if (value instanceof List) {
            return "a list";
        }
        if (value instanceof String) {
            return "a text in quotation marks";
        }
        return value == NOTHING ? "null" : value instanceof Double ? "a number" : value.toString();
    }

    /** The fields of an object by their names, in their order. */
    public Map<String, Found> entries(String remedy) throws Refused {
        if (!(value instanceof Map)) {
            throw wants(isTyped() ? "a name, a colon and what belongs to it" : "an object in braces { }", remedy);
        }
        return fields();
    }

    /** The items of a list. */
    public List<Found> items(String remedy) throws Refused {
        if (!(value instanceof List)) {
            throw wants(isTyped() ? "a list" : "a list in brackets [ ]", remedy);
        }
        return list(value);
    }

    /** A text. */
    public String text() throws Refused {
        if (!(value instanceof String text)) {
            throw wants("a text", "Write it in quotation marks.");
        }
        return text;
    }

    /** A number. */
    double number(String remedy) throws Refused {
        if (!(value instanceof Double number)) {
            throw wants("a number", remedy);
        }
        return number == 0 ? 0 : number;
    }

    /** A number from one to another, these included. */
    double number(double least, double most, String remedy) throws Refused {
        double number = number(remedy);
        if (!(number >= least && number <= most)) {
            throw bad((Math.abs(number) < LARGEST_WHOLE ? Decimal.of(number) : "this") + " is out of range", remedy);
        }
        return number;
    }

    /** A whole number from one to another, these included. */
    public int whole(int least, int most, String remedy) throws Refused {
        double number = number(remedy);
        if (number != Math.rint(number)) {
            throw bad(Decimal.of(number) + " is not a whole number", remedy);
        }
        return (int) number(least, most, remedy);
    }

    /** True or false. */
    boolean truth(String remedy) throws Refused {
        if (!(value instanceof Boolean truth)) {
            throw wants(isTyped() ? "yes or no" : "true or false", remedy);
        }
        return truth;
    }

    /** Makes a value of this one; an objection against it gets this place. */
    public <T> T make(Supplier<T> maker) throws Refused {
        try {
            return maker.get();
        } catch (IllegalArgumentException objection) {
            throw bad(Quoted.plain(objection.getMessage()), "Correct it here.");
        }
    }
}
