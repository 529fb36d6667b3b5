package versewind.store;

import java.util.ArrayList;
import java.util.List;

/** An object or a list whose parts stand on lines of their own, two columns further in than itself. */
final class Block {
    /** The columns of a line that are filled before a part that can be broken is broken. */
    static final int COLUMNS = 120;

    private static final String STEP = "  ";

    private final String margin;
    private final List<String> rows = new ArrayList<>();

    private Block(String margin) {
        this.margin = margin;
    }

    /** The outermost block of a file. */
    static Block file() {
        return new Block("");
    }

    /** A block inside this one. */
    Block inner() {
        return new Block(margin + STEP);
    }

    /** A row, as it is. */
    Block row(String written) {
        rows.add(written);
        return this;
    }

    /** A field, on a row of its own. */
    Block field(String name, String written) {
        return row(new Row().add(name, written).bare());
    }

    /** A text, on a row of its own. */
    Block text(String name, String value) {
        return field(name, Written.text(value));
    }

    /** A text, left out where it is empty. */
    Block textUnlessEmpty(String name, String value) {
        return value.isEmpty() ? this : text(name, value);
    }

    /** Whether a row of this block leaves room for itself and a comma. */
    boolean holds(String row) {
        return margin.length() + STEP.length() + row.codePointCount(0, row.length()) + 1 <= COLUMNS;
    }

    /** As an object. */
    String object() {
        return enclosed("{", "}");
    }

    /** As a list. */
    String list() {
        return enclosed("[", "]");
    }

    private String enclosed(String open, String close) {
        if (rows.isEmpty()) {
            return open + close;
        }
        String inside = "\n" + margin + STEP;
        return open + inside + String.join("," + inside, rows) + "\n" + margin + close;
    }
}
