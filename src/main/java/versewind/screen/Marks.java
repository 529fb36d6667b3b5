package versewind.screen;

/** The marks that the screen is drawn with: one set for UTF-8, one for terminals that know ASCII only. */
public enum Marks {
    UNICODE(
            "●",
            "·",
            "▸",
            "…",
            "─",
            "│",
            "▼",
            "▽",
            "△",
            "=",
            "▲",
            "▪",
            "◂",
            "▸",
            "♩",
            "+",
            "−",
            "±",
            "┃",
            "!",
            "×",
            " ▏▎▍▌▋▊▉█"),
    ASCII(
            "#", ".", ">", "~", "-", "|", "V", "v", "^", "=", "A", "*", "<", ">", "beat ", "+", "-", "+-", "!", "!",
            "x", " #");

    private final String drawn;
    private final String in;
    private final String here;
    private final String cut;
    private final String rule;
    private final String wall;
    private final String weak;
    private final String nearlyWeak;
    private final String nearlyStrong;
    private final String right;
    private final String strong;
    private final String unsaved;
    private final String moreLeft;
    private final String moreRight;
    private final String beat;
    private final String plus;
    private final String minus;
    private final String plusMinus;
    private final String singers;
    private final String always;
    private final String never;
    private final String bar;

    Marks(
            String drawn,
            String in,
            String here,
            String cut,
            String rule,
            String wall,
            String weak,
            String nearlyWeak,
            String nearlyStrong,
            String right,
            String strong,
            String unsaved,
            String moreLeft,
            String moreRight,
            String beat,
            String plus,
            String minus,
            String plusMinus,
            String singers,
            String always,
            String never,
            String bar) {
        this.drawn = drawn;
        this.in = in;
        this.here = here;
        this.cut = cut;
        this.rule = rule;
        this.wall = wall;
        this.weak = weak;
        this.nearlyWeak = nearlyWeak;
        this.nearlyStrong = nearlyStrong;
        this.right = right;
        this.strong = strong;
        this.unsaved = unsaved;
        this.moreLeft = moreLeft;
        this.moreRight = moreRight;
        this.beat = beat;
        this.plus = plus;
        this.minus = minus;
        this.plusMinus = plusMinus;
        this.singers = singers;
        this.always = always;
        this.never = never;
        this.bar = bar;
    }

    /** Before a stop that is drawn. */
    String drawn() {
        return drawn;
    }

    /** Before a stop that is in. */
    String in() {
        return in;
    }

    /** Before the verse or row where we are. */
    String here() {
        return here;
    }

    /** Where text was cut. */
    String cut() {
        return cut;
    }

    /** A piece of a rule across. */
    String rule() {
        return rule;
    }

    /** A piece of a rule down. */
    String wall() {
        return wall;
    }

    /** The organ is too weak for the singers. */
    String weak() {
        return weak;
    }

    /** The organ is only just strong enough for the singers. */
    String nearlyWeak() {
        return nearlyWeak;
    }

    /** The organ is only just soft enough for the singers. */
    String nearlyStrong() {
        return nearlyStrong;
    }

    /** The organ is right for the singers. */
    String right() {
        return right;
    }

    /** The organ is too strong for the singers. */
    String strong() {
        return strong;
    }

    /** The plan is not saved. */
    String unsaved() {
        return unsaved;
    }

    /** There is more to the left. */
    String moreLeft() {
        return moreLeft;
    }

    /** There is more to the right. */
    String moreRight() {
        return moreRight;
    }

    /** Before beats a minute. */
    String beat() {
        return beat;
    }

    /** Before what is drawn. */
    String plus() {
        return plus;
    }

    /** Before what is put in. */
    String minus() {
        return minus;
    }

    /** Between a level and what it may well be off. */
    String plusMinus() {
        return plusMinus;
    }

    /** The singers' level in a bar. */
    String singers() {
        return singers;
    }

    /** Before a stop that a proposal has to draw. */
    String always() {
        return always;
    }

    /** Before a stop that a proposal must not draw. */
    String never() {
        return never;
    }

    /** A cell that is filled. */
    String full() {
        return bar.substring(bar.length() - 1);
    }

    /** A cell of a bar filled to a share of 0 to 1. */
    String bar(double share) {
        int steps = bar.length() - 1;
        int step = (int) Math.round(Math.max(0, Math.min(1, share)) * steps);
        return bar.substring(step, step + 1);
    }
}
