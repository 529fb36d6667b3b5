package versewind.schema;

import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * One field of an instrument or a plan: a row of a {@link Table}. Its settings are made where it is declared and stay.
 *
 * @param <T> what it is a field of
 * @param <V> its value
 */
public final class Field<T, V> {

    /** How a field stands in a file. */
    public enum Layout {
        /** On a line of its own. */
        LINE,
        /** On the line of the field before it. */
        BESIDE,
        /** On one line if that is short enough; else each part on its own. */
        FIT,
        /** Each part on a line of its own. */
        BLOCK
    }

    private final String name;
    private final Kind<V> kind;
    private final BiFunction<T, String, Object> parts;
    private final String about;
    private String asked;
    private String label;
    private String column;
    private Layout layout = Layout.LINE;
    private boolean needed = true;
    private Optional<V> blank = Optional.empty();

    /**
     * A field that must be there.
     *
     * @param name its name in files
     * @param kind what it holds
     * @param about what it is, without a capital and a full stop
     * @param parts the values of all fields of an owner, by their names
     */
    Field(String name, Kind<V> kind, String about, BiFunction<T, String, Object> parts) {
        this.name = name;
        this.kind = kind;
        this.parts = parts;
        this.about = about;
        this.asked = about;
        this.label = name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
        this.column = name;
    }

    /** The same field of something that has a {@code T} in it. */
    <S> Field<S, V> of(Function<S, T> outer) {
        return from((owner, field) -> parts.apply(outer.apply(owner), field));
    }

    /** The same field of something that has the fields of a {@code T}. */
    <S> Field<S, V> from(BiFunction<S, String, Object> otherParts) {
        Field<S, V> field = new Field<>(name, kind, about, otherParts);
        field.asked = asked;
        field.label = label;
        field.column = column;
        field.layout = layout;
        field.needed = needed;
        field.blank = blank;
        return field;
    }

    /** Left out of files where it is this value. */
    Field<T, V> orElse(V value) {
        needed = false;
        return blank(value);
    }

    /** Always in files; typed as a blank where it is this value. */
    Field<T, V> blank(V value) {
        blank = Optional.of(value);
        return this;
    }

    /** Asked for in other words in forms. */
    Field<T, V> asked(String other) {
        asked = other;
        return this;
    }

    /** Called otherwise in forms. */
    Field<T, V> label(String other) {
        label = other;
        return this;
    }

    /** Called otherwise in spreadsheets. */
    Field<T, V> column(String other) {
        column = other;
        return this;
    }

    /** Laid out otherwise in files. */
    Field<T, V> laid(Layout other) {
        layout = other;
        return this;
    }

    /** Its name in files. */
    public String name() {
        return name;
    }

    /** Its name in forms. */
    public String label() {
        return label;
    }

    /** Its name in spreadsheets. */
    public String column() {
        return column;
    }

    /** The kind of its values. */
    public Kind<V> kind() {
        return kind;
    }

    /** A description without a capital and a full stop. */
    public String about() {
        return about;
    }

    /** A line for whoever fills it in: what it is, its limits, and what a blank means. */
    public String hint() {
        String hint = asked + kind.hint();
        if (blank.isEmpty()) {
            return hint + "; needed";
        }
        String usual = blank.get() instanceof Boolean ? kind.typed(blank.get(), OrganNames.NONE) : usual();
        return hint + (usual.isEmpty() ? "; may be blank" : "; blank for " + usual);
    }

    /** The meaning of a blank, in a word; "" where it has none. */
    String usual() {
        if (blank.isEmpty() || blank.get() instanceof Boolean) {
            return "";
        }
        Object usual = kind.plain(blank.get(), OrganNames.NONE);
        return usual instanceof String || usual instanceof Number ? kind.typed(blank.get(), OrganNames.NONE) : "";
    }

    /** How it stands in a file. */
    public Layout layout() {
        return layout;
    }

    /** True if a file must have it. */
    public boolean isNeeded() {
        return needed;
    }

    /** True if a spreadsheet must have it, since a blank has no meaning. */
    public boolean isNeededTyped() {
        return blank.isEmpty();
    }

    /** The value of a blank, and of a file without it. */
    public Optional<V> blank() {
        return blank;
    }

    /** Its value. */
    @SuppressWarnings(
            "unchecked") // a table gives each field the value of its kind; every one is written and read in tests
    public V of(T owner) {
        return (V) parts.apply(owner, name);
    }

    /** Its value in a file: text, number, true or false, lists, maps and rows of these; empty where it is left out. */
    public Optional<Object> written(T owner, OrganNames names) {
        V value = of(owner);
        if (!needed && blank.get().equals(value)) {
            return Optional.empty();
        }
        Object plain = kind.plain(value, names);
        boolean isNothing = (plain instanceof Collection<?> list && list.isEmpty())
                || (plain instanceof Map<?, ?> map && map.isEmpty());
        return isNothing && !needed ? Optional.empty() : Optional.of(plain);
    }

    /** Its value as it is typed; blank where a blank means it. */
    public String typed(T owner, OrganNames names) {
        V value = of(owner);
        return blank.filter(value::equals).isPresent() ? "" : kind.typed(value, names);
    }

    /** As {@link #typed(Object, OrganNames)}, for a field that names no part of an organ. */
    public String typed(T owner) {
        return typed(owner, OrganNames.NONE);
    }

    /**
     * The value of a typed text.
     *
     * @param names the names of the organ's parts
     * @throws Refused with a sentence, if it is none
     */
    public V parse(String typed, OrganNames names) throws Refused {
        Optional<Object> plain = shaped(typed);
        if (plain.isPresent()) {
            return kind.read(Found.typed(label, plain.get()), names);
        }
        return blank.orElseThrow(() -> new Refused(0, label, "this must not be blank", kind.remedy()));
    }

    /** As {@link #parse(String, OrganNames)}, for a field that names no part of an organ. */
    public V parse(String typed) throws Refused {
        return parse(typed, OrganNames.NONE);
    }

    /** Typed text without blanks around it, the beginning of a word made whole where there is only one such word. */
    public String completed(String typed, OrganNames names) {
        String plain = typed.strip();
        return ChoiceKind.of(plain, kind.words(names)).orElse(plain);
    }

    /** Typed text as its kind needs it; empty where it is blank and means no value. */
    Optional<Object> shaped(String typed) {
        return typed.isBlank() && !kind.takesBlank() ? Optional.empty() : Optional.of(kind.shaped(typed));
    }
}
