package versewind.store;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import versewind.organ.Quoted;

/** The fields of an object in a file, each read as what it should be. */
final class Fields {
    private final LocatedValue object;
    private final Map<String, LocatedValue> byName;

    Fields(LocatedValue object, Map<String, LocatedValue> byName) {
        this.object = object;
        this.byName = byName;
    }

    /** The object itself. */
    LocatedValue object() {
        return object;
    }

    /** A field that may be there. */
    Optional<LocatedValue> find(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    /** A field that must be there. */
    LocatedValue at(String name) throws BadFile {
        LocatedValue found = byName.get(name);
        if (found == null) {
            throw object.bad("the field " + Quoted.text(name) + " is missing", "Add it here.");
        }
        return found;
    }

    /** A field that must be there, or the object where it is missing: to say where something is wrong. */
    LocatedValue near(String name) {
        return byName.getOrDefault(name, object);
    }

    /** A text that must be there. */
    String text(String name) throws BadFile {
        return at(name).text();
    }

    /** A name that must be there, and must not be blank. */
    String name(String name) throws BadFile {
        LocatedValue found = at(name);
        if (found.text().isBlank()) {
            throw found.bad("this must not be blank", "Write a name.");
        }
        return found.text();
    }

    /** A text, "" where it is left out. */
    String textOrBlank(String name) throws BadFile {
        LocatedValue found = byName.get(name);
        return found == null ? "" : found.text();
    }

    /** The items of a list, none where it is left out. */
    List<LocatedValue> items(String name) throws BadFile {
        LocatedValue found = byName.get(name);
        return found == null ? List.of() : found.items();
    }

    /** The values of an object by their names, none where it is left out. */
    Map<String, LocatedValue> entries(String name) throws BadFile {
        LocatedValue found = byName.get(name);
        return found == null ? Map.of() : found.entries();
    }
}
