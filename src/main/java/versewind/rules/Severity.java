package versewind.rules;

import java.util.Locale;

/** How much a finding matters. */
public enum Severity {
    /** Something that will be heard as wrong, or that cannot be done in time. */
    CAUTION,
    /** Something that a colleague would mention, and that may be intended. */
    REMARK;

    /** In words: "caution". */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
