package versewind.store;

import java.util.Optional;

/** Where in a file something stands: "hymns[1].verses[2].drawn". Put into words only when it is needed. */
final class Place {

    /** The file's outermost value. */
    static final Place ROOT = new Place(Optional.empty(), "", -1);

    private final Optional<Place> above;
    private final String name;
    private final int index;

    private Place(Optional<Place> above, String name, int index) {
        this.above = above;
        this.name = name;
        this.index = index;
    }

    /** A field of the object that stands here. */
    Place field(String fieldName) {
        return new Place(Optional.of(this), fieldName, -1);
    }

    /** An item of the list that stands here, counted from 0. */
    Place item(int itemIndex) {
        return new Place(Optional.of(this), "", itemIndex);
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
