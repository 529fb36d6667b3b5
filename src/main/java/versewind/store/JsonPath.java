package versewind.store;

import java.util.Optional;
import versewind.organ.Quoted;

/** Where in a file something stands: "hymns[1].verses[2].drawn". Put into words only when it is needed. */
final class JsonPath {

    /** The file's outermost value. */
    static final JsonPath ROOT = new JsonPath(Optional.empty(), "", -1);

    private final Optional<JsonPath> above;
    private final String name;
    private final int index;

    private JsonPath(Optional<JsonPath> above, String name, int index) {
        this.above = above;
        this.name = name;
        this.index = index;
    }

    /** A field of the object that stands here. */
    JsonPath field(String fieldName) {
        return new JsonPath(Optional.of(this), fieldName, -1);
    }

    /** An item of the list that stands here, counted from 0. */
    JsonPath item(int itemIndex) {
        return new JsonPath(Optional.of(this), "", itemIndex);
    }

    private boolean isPlainName() {
        return !name.isEmpty() && name.chars().allMatch(c -> c < 128 && Character.isLetterOrDigit(c));
    }

    /** In words; "" for the whole file. */
    @Override
    public String toString() {
        if (above.isEmpty()) {
            return "";
        }
        String before = above.get().toString();
        if (index >= 0) {
            return before + "[" + index + "]";
        }
        if (!isPlainName()) {
            return before + "[" + Quoted.text(name) + "]";
        }
        return before.isEmpty() ? Quoted.plain(name) : before + "." + Quoted.plain(name);
    }
}
