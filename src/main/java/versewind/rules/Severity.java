package versewind.rules;

import java.util.Locale;

/** How much a finding matters. */
public enum Severity {
    /** Something that will be heard as wrong, or that cannot be done in time. */
    CAUTION(1),
    /** Something that a colleague would mention, and that may be intended. */
    REMARK(0.5);

    private final double share;

    Severity(double share) {
        this.share = share;
    }

    /** Share of a rule's weight that it costs. */
    double share() {
        return share;
    }

    /** In words: "caution". */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
