package versewind.workshop;

import java.util.List;

/** What a line of a draft describes, in the order in which the lines stand. */
public enum Part {
    ORGAN("Organ", Slot.NAME, Slot.PLACE, Slot.ACTION, Slot.TRIM),
    DIVISION("Division", Slot.NAME, Slot.MANUAL, Slot.KEYS, Slot.BOX, Slot.BOX_TRIM, Slot.DIVISIONALS),
    STOP(
            "Stop",
            Slot.NAME,
            Slot.FEET,
            Slot.FAMILY,
            Slot.PIPE,
            Slot.RANKS,
            Slot.BREAKS,
            Slot.TRIM,
            Slot.STANDS,
            Slot.FROM),
    COUPLER("Coupler", Slot.NAME, Slot.SOUNDS, Slot.KEYBOARD, Slot.KIND),
    TREMULANT("Tremulant", Slot.NAME, Slot.DIVISION),
    PISTONS("Pistons", Slot.GENERALS, Slot.LEVELS),
    ROOM("Room", Slot.VOLUME, Slot.SEATS),
    TIMES("Reverberation", Slot.AT_125, Slot.AT_250, Slot.AT_500, Slot.AT_1000, Slot.AT_2000, Slot.AT_4000),
    DISTANCES("Distances", Slot.NAVE, Slot.FAR, Slot.CHOIR, Slot.CHOIR_TO_NAVE, Slot.CONSOLE),
    SURFACE("Surface", Slot.MATERIAL, Slot.AREA);

    private final String word;

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of, which never changes
    private final List<Slot> slots;

    Part(String word, Slot... slots) {
        this.word = word;
        this.slots = List.of(slots);
    }

    /** In words. */
    public String word() {
        return word;
    }

    /** What is said in a line of it, in this order. */
    public List<Slot> slots() {
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
