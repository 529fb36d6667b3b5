package versewind.organ;

import java.util.Locale;
import java.util.Optional;

/** Position of a swell box: five positions that a foot can find again. */
public enum BoxPosition {
    CLOSED(0),
    QUARTER(0.25),
    HALF(0.5),
    THREE_QUARTERS(0.75),
    OPEN(1);

    private final double opening;

    BoxPosition(double opening) {
        this.opening = opening;
    }

    /** Share of the shutters' full turn: 0 closed, 1 open. */
    public double opening() {
        return opening;
    }

    /** In words: "three quarters". */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The position with this word, if there is one. */
    public static Optional<BoxPosition> ofWord(String word) {
        for (BoxPosition position : values()) {
            if (position.word().equalsIgnoreCase(word)) {
                return Optional.of(position);
            }
        }
        return Optional.empty();
    }

    /** One step further open, if it is not open yet. */
    public BoxPosition wider() {
        return values()[Math.min(ordinal() + 1, values().length - 1)];
    }

    /** One step further closed, if it is not closed yet. */
    public BoxPosition narrower() {
        return values()[Math.max(ordinal() - 1, 0)];
    }
}
