package versewind.organ;

/** Position of a swell box: five positions that a foot can find again. */
public enum BoxPosition implements Worded {
    CLOSED(0),
    QUARTER(0.25),
    HALF(0.5),
    THREE_QUARTERS(0.75),
    OPEN(1);

    private final double opening;

    BoxPosition(double opening) {
        this.opening = opening;
    }

    /** In words that say what it is: "half open". */
    public String opened() {
        return switch (this) {
            case CLOSED, OPEN -> word();
            case QUARTER -> "a quarter open";
            case HALF, THREE_QUARTERS -> word() + " open";
        };
    }

    /** Share of the shutters' full turn: 0 closed, 1 open. */
    public double opening() {
        return opening;
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
