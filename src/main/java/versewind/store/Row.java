package versewind.store;

import java.util.ArrayList;
import java.util.List;

/** Fields of an object that stand on one line. */
final class Row {
    private final List<String> fields = new ArrayList<>();

    /** A field whose value is already written. */
    Row add(String name, String written) {
        fields.add(Written.text(name) + ": " + written);
        return this;
    }

    /** A text. */
    Row text(String name, String value) {
        return add(name, Written.text(value));
    }

    /** A number. */
    Row number(String name, double value) {
        return add(name, Written.number(value));
    }

    /** A trim, left out where it is nothing. */
    Row trim(double trimDb) {
        return trimDb == 0 ? this : number("trim", trimDb);
    }

    /** Nothing but the fields, parted by commas. */
    String bare() {
        return String.join(", ", fields);
    }

    /** The whole object on its line. */
    String braced() {
        return "{" + bare() + "}";
    }

    /** A list of texts on one line. */
    static String list(List<String> texts) {
        return "[" + String.join(", ", texts.stream().map(Written::text).toList()) + "]";
    }
}
