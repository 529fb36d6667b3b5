package versewind.schema;

import java.util.List;
import versewind.organ.Decimal;

/**
 * The kind of value that a field holds: how it is read and written, and what its limits are.
 *
 * @param <V> the value
 */
public abstract class Kind<V> {
    private final String ask;
    private final String limits;

    /**
     * A kind.
     *
     * @param ask how a sentence that asks for such a value begins: "Enter a whole number from "
     * @param limits how it ends: "1 to 7"; both blank where anything goes
     */
    Kind(String ask, String limits) {
        this.ask = ask;
        this.limits = limits;
    }

    /** A kind with the limits of another. */
    Kind(Kind<?> like) {
        this(like.ask, like.limits);
    }

    /** The limits in a few words: "1 to 7"; blank where anything goes. */
    public String limits() {
        return limits;
    }

    /** A sentence that asks for such a value: "Enter a whole number from 1 to 7."; blank where anything goes. */
    public final String remedy() {
        return limits().isEmpty() ? "" : ask + limits() + ".";
    }

    /** Reads a value. */
    abstract V read(Found found, OrganNames names) throws Refused;

    /** A value as text, number, true or false, or as lists, maps and rows of these. */
    Object plain(V value, OrganNames names) {
        return value;
    }

    /** Typed text as {@link #plain} would give it, as far as it can be read. */
    Object shaped(String typed) {
        return typed.strip();
    }

    /** A value as it is typed; blank where it cannot be. */
    String typed(V value, OrganNames names) {
        Object plain = plain(value, names);
        if (plain instanceof Kinds.Measured measured) {
            return Decimal.of(measured.value());
        }
        return plain instanceof Number number
                ? Decimal.of(number.doubleValue())
                : plain instanceof String text ? text : "";
    }

    /** True if a blank text is a value of its own. */
    boolean takesBlank() {
        return false;
    }

    /** True if a value names parts of an organ. */
    boolean isOfOrgan() {
        return false;
    }

    /** The words to choose from, for kinds that have them. */
    public List<String> words() {
        return List.of();
    }

    /** The same, with the names of the organ's parts. */
    List<String> words(OrganNames names) {
        return words();
    }

    /** The limits as the end of a hint: ", 1 to 7" or ": yes or no". */
    String hint() {
        if (limits.isEmpty()) {
            return "";
        }
        return (words().isEmpty() ? ", " : ": ") + limits;
    }
}
