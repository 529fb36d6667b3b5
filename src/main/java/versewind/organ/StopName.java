package versewind.organ;

import java.util.Comparator;

/**
 * A stop as plans name it: its division and the label on its knob, "Great", "Open Diapason 8".
 *
 * @param division name of the division
 * @param label name and pitch of the stop, {@link Stop#label()}
 */
public record StopName(String division, String label) implements Comparable<StopName> {

    @Override
    public int compareTo(StopName other) {
        return Comparator.comparing(StopName::division)
                .thenComparing(StopName::label)
                .compare(this, other);
    }

    /** Written out, like {@link #equals}: a record's own cost milliseconds at the start of the program. */
    @Override
    public int hashCode() {
        return 31 * division.hashCode() + label.hashCode();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof StopName name && division.equals(name.division) && label.equals(name.label);
    }

    @Override
    public String toString() {
        return division + ": " + label;
    }
}
