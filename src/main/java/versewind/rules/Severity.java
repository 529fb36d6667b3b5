package versewind.rules;

import java.util.Locale;

/** How much a finding matters. */
public enum Severity {
    /** Something that will be heard as wrong, or will not be brought off. */
    CAUTION,
    /** Something that a colleague would mention, and that may well be meant. */
    REMARK;

    /** In words: "caution". */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
