package versewind.screen.toolkit;

/** The sets of marks: one for UTF-8, one for terminals that know ASCII only, and words for who hears the screen. */
public enum Marks {
    UNICODE(" ▏▎▍▌▋▊▉█"),
    ASCII(" #"),
    WORDS("  ");

    private final String bar;

    Marks(String bar) {
        this.bar = bar;
    }

    /** What stands between two things that are said beside each other. */
    public String between() {
        return this == WORDS ? "; " : " " + Mark.WALL.in(this) + " ";
    }

    /** A cell of a bar filled to a share of 0 to 1. */
    public String bar(double share) {
        int steps = bar.length() - 1;
        int step = (int) Math.round(Math.max(0, Math.min(1, share)) * steps);
        return bar.substring(step, step + 1);
    }
}
