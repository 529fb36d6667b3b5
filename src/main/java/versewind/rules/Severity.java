package versewind.rules;

import versewind.organ.Worded;

/** How much a finding matters. */
public enum Severity implements Worded {
    /** Something that will be heard as wrong, or that cannot be done in time. */
    CAUTION,
    /** Something that a colleague would mention, and that may be intended. */
    REMARK;
}
