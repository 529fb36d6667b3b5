package versewind.schema;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import versewind.organ.Nearest;
import versewind.organ.Quoted;

/**
 * The fields of one thing, in the order in which they are written, and how it is made of them.
 *
 * @param <T> the thing
 */
public final class Table<T> {

    /** Makes a value of its fields. */
    @FunctionalInterface
    public interface Maker<T> {
        /**
         * The value.
         *
         * @throws Refused at the place that is wrong
         * @throws IllegalArgumentException if the values do not fit together
         */
        T make(Values values) throws Refused;
    }

    /**
     * A value and its table.
     *
     * @param table the fields
     * @param value the value
     */
    public record Row<T>(Table<T> table, T value) {}

    private final String about;
    private final boolean line;
    private final String blamed;
    private final Maker<T> maker;
    private final BiFunction<T, String, Object> parts;
    private final List<Field<T, ?>> fields = new ArrayList<>();

    private Table(String about, boolean line, String blamed, Maker<T> maker, BiFunction<T, String, Object> parts) {
        this.about = about;
        this.line = line;
        this.blamed = blamed;
        this.maker = maker;
        this.parts = parts;
    }

    /**
     * A table without fields yet, which are to stand on lines of their own.
     *
     * @param about what it is, a sentence
     * @param blamed the field at which it is said that values do not fit together; "" for the whole
     * @param maker makes it of its fields
     * @param parts the value of a field by its name
     */
    static <T> Table<T> block(String about, String blamed, Maker<T> maker, BiFunction<T, String, Object> parts) {
        return new Table<>(about, false, blamed, maker, parts);
    }

    /** A table without fields yet, which are to stand on one line. */
    static <T> Table<T> line(String about, Maker<T> maker, BiFunction<T, String, Object> parts) {
        return new Table<>(about, true, "", maker, parts);
    }

    /** Adds a field, which must be there. */
    <V> Field<T, V> add(String name, Kind<V> kind, String fieldAbout) {
        return add(new Field<>(name, kind, fieldAbout, parts));
    }

    /** Adds a value that may be left out. */
    <V> Field<T, Optional<V>> ifAny(String name, Kind<V> kind, String fieldAbout) {
        return add(name, new Kinds.IfAny<>(kind), fieldAbout).orElse(Optional.empty());
    }

    /** Adds a text that may be left out. */
    Field<T, String> text(String name, String fieldAbout) {
        return add(name, Kinds.TEXT, fieldAbout).orElse("");
    }

    /** Adds a field. */
    <V> Field<T, V> add(Field<T, V> field) {
        fields.add(field);
        return field;
    }

    /** Adds all fields of something that a {@code T} has in it. */
    void addAll(Table<?> other) {
        for (Field<?, ?> field : other.fields) {
            fields.add(field.from(parts));
        }
    }

    /** For a name that is no field's. */
    static IllegalArgumentException without(String field) {
        return new IllegalArgumentException("there is no field " + field);
    }

    /** A description, a sentence. */
    public String about() {
        return about;
    }

    /** The fields, in their order. */
    public List<Field<T, ?>> fields() {
        return Collections.unmodifiableList(fields);
    }

    /** True if its fields stand on one line. */
    public boolean isLine() {
        return line;
    }

    /** The value of an object. */
    public T read(Found object, OrganNames names) throws Refused {
        Values values = values(object, names);
        try {
            return maker.make(values);
        } catch (IllegalArgumentException objection) {
            throw object.near(blamed).bad(Quoted.plain(objection.getMessage()), "Correct it here.");
        }
    }

    /** The fields of an object, none but those of this table. */
    public Values values(Found object, OrganNames names) throws Refused {
        for (Map.Entry<String, Found> entry : object.entries("").entrySet()) {
            if (!has(entry.getKey())) {
                List<String> known = fields.stream().map(Field::name).toList();
                throw entry.getValue()
                        .bad(
                                "there is no field " + Quoted.text(entry.getKey()) + " here",
                                Nearest.sentence(entry.getKey(), known, "The fields here are"));
            }
        }
        return new Values(object, names);
    }

    /** The value of what was read. */
    T make(Values values) throws Refused {
        return maker.make(values);
    }

    private boolean has(String name) {
        for (Field<T, ?> field : fields) {
            if (field.name().equals(name)) {
                return true;
            }
        }
        return false;
    }

    /**
     * The value of a row of cells.
     *
     * @param names names of the organ's parts; without an organ only the cells are tried that name none of them
     * @param wrong is given what is wrong with each cell
     * @return empty where a cell is wrong or was not tried
     */
    public Optional<T> read(Function<Field<T, ?>, String> cells, OrganNames names, Consumer<Refused> wrong) {
        Found row = Found.root(0, Map.of());
        for (Field<T, ?> field : fields) {
            field.shaped(cells.apply(field)).ifPresent(plain -> row.addTyped(field.name(), field.column(), plain));
        }
        Values values = new Values(row, names);
        boolean isWhole = true;
        for (Field<T, ?> field : fields) {
            try {
                if (names.hasOrgan() || !field.kind().isOfOrgan()) {
                    values.get(field);
                } else {
                    isWhole = false;
                }
            } catch (Refused refusal) {
                wrong.accept(refusal);
                isWhole = false;
            }
        }
        try {
            return isWhole ? Optional.of(read(row, names)) : Optional.empty();
        } catch (Refused refusal) {
            wrong.accept(refusal);
            return Optional.empty();
        }
    }

    /**
     * A value after an organ has changed.
     *
     * @param before the names in which the value is now
     * @param after the names after the change
     * @return empty where something that it names is gone
     */
    public Optional<T> moved(T value, OrganNames before, OrganNames after) {
        Found row = Found.root(1, Map.of());
        for (Field<T, ?> field : fields) {
            field.written(value, before).ifPresent(plain -> row.addWritten(field.name(), plain));
        }
        try {
            T moved = read(row, after);
            return after.takeGone().isEmpty() ? Optional.of(moved) : Optional.empty();
        } catch (Refused impossible) {
            return Optional.empty();
        }
    }
}
