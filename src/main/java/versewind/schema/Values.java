package versewind.schema;

/** The fields of an object, each read when it is asked for. */
public final class Values {
    private final Found object;
    private final OrganNames names;

    Values(Found object, OrganNames names) {
        this.object = object;
        this.names = names;
    }

    /** The value of a field. */
    public <V> V get(Field<?, V> field) throws Refused {
        return get(field, names);
    }

    /** The value of a field that names parts of another organ than the object's own. */
    public <V> V get(Field<?, V> field, OrganNames others) throws Refused {
        if (has(field)) {
            return field.kind().read(found(field), others);
        }
        if (field.blank().isPresent() && (object.isTyped() || !field.isNeeded())) {
            return field.blank().get();
        }
        throw object.missing(field);
    }

    /** True if a field is there. */
    public boolean has(Field<?, ?> field) {
        return found(field) != object;
    }

    /** Where a field was found; the whole object where it was left out. */
    public Found found(Field<?, ?> field) {
        return object.near(field.name());
    }

    /** The object. */
    public Found object() {
        return object;
    }

    /** The names of the organ's parts. */
    public OrganNames names() {
        return names;
    }
}
