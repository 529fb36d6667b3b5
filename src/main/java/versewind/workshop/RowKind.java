package versewind.workshop;

import java.util.List;

/** What a line of a draft describes, in the order in which the lines stand. */
public enum RowKind {
    ORGAN("Organ", DraftField.NAME, DraftField.PLACE, DraftField.ACTION, DraftField.TRIM),
    DIVISION(
            "Division",
            DraftField.NAME,
            DraftField.MANUAL,
            DraftField.KEYS,
            DraftField.BOX,
            DraftField.BOX_TRIM,
            DraftField.DIVISIONALS),
    STOP(
            "Stop",
            DraftField.NAME,
            DraftField.FEET,
            DraftField.FAMILY,
            DraftField.PIPE,
            DraftField.RANKS,
            DraftField.BREAKS,
            DraftField.TRIM,
            DraftField.STANDS,
            DraftField.FROM),
    COUPLER("Coupler", DraftField.NAME, DraftField.SOUNDS, DraftField.KEYBOARD, DraftField.KIND),
    TREMULANT("Tremulant", DraftField.NAME, DraftField.DIVISION),
    PISTONS("Pistons", DraftField.GENERALS, DraftField.LEVELS),
    ROOM("Room", DraftField.VOLUME, DraftField.SEATS),
    TIMES(
            "Reverberation",
            DraftField.AT_125,
            DraftField.AT_250,
            DraftField.AT_500,
            DraftField.AT_1000,
            DraftField.AT_2000,
            DraftField.AT_4000),
    DISTANCES(
            "Distances",
            DraftField.NAVE,
            DraftField.FAR,
            DraftField.CHOIR,
            DraftField.CHOIR_TO_NAVE,
            DraftField.CONSOLE),
    SURFACE("Surface", DraftField.MATERIAL, DraftField.AREA);

    private final String word;

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of, which never changes
    private final List<DraftField> slots;

    RowKind(String word, DraftField... slots) {
        this.word = word;
        this.slots = List.of(slots);
    }

    /** In words. */
    public String word() {
        return word;
    }

    /** What is said in a line of it, in this order. */
    public List<DraftField> slots() {
        return slots;
    }

    /** Whether there may be any number of such lines, so that one can be put in or taken out. */
    public boolean isRepeated() {
        return switch (this) {
            case DIVISION, STOP, COUPLER, TREMULANT, SURFACE -> true;
            case ORGAN, PISTONS, ROOM, TIMES, DISTANCES -> false;
        };
    }
}
