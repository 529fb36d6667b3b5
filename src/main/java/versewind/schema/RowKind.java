package versewind.schema;

import java.util.List;

/** The kinds of rows of a draft, in the order in which they stand, each with the fields that are asked in it. */
public enum RowKind {
    ORGAN("Organ", InstrumentFields.NAME, InstrumentFields.PLACE, InstrumentFields.ACTION, InstrumentFields.TRIM),
    DIVISION("Division", DivisionFields.TABLE),
    STOP(
            "Stop",
            StopFields.NAME,
            StopFields.FEET,
            StopFields.FAMILY,
            StopFields.PIPE,
            StopFields.RANKS_TYPED,
            StopFields.COMPOSITION,
            StopFields.TRIM,
            StopFields.OUTSIDE,
            StopFields.FROM,
            StopFields.NOTE),
    COUPLER("Coupler", InstrumentFields.COUPLER),
    TREMULANT("Tremulant", InstrumentFields.TREMULANT),
    PISTONS("Pistons", InstrumentFields.GENERALS, InstrumentFields.MEMORY_LEVELS, InstrumentFields.SETS_COUPLERS),
    ROOM("Room", RoomFields.VOLUME, RoomFields.SEATS),
    TIMES("Reverberation", RoomFields.TIMES),
    DISTANCES("Distances", RoomFields.DISTANCE),
    SURFACE("Surface", RoomFields.SURFACE);

    private final String word;

    @SuppressWarnings("ImmutableEnumChecker") // made by List.copyOf, which never changes
    private final List<Field<?, ?>> fields;

    RowKind(String word, Field<?, ?>... fields) {
        this.word = word;
        this.fields = List.of(fields);
    }

    RowKind(String word, Table<?> table) {
        this.word = word;
        this.fields = List.copyOf(table.fields());
    }

    /** In words. */
    public String word() {
        return word;
    }

    /** What is asked in a row, in this order. */
    public List<Field<?, ?>> fields() {
        return fields;
    }

    /** Whether there may be any number of such rows, so that one can be added or deleted. */
    public boolean isRepeated() {
        return switch (this) {
            case DIVISION, STOP, COUPLER, TREMULANT, SURFACE -> true;
            case ORGAN, PISTONS, ROOM, TIMES, DISTANCES -> false;
        };
    }

    /** Whether such a row has a name of its own, by which others refer to it. */
    public boolean isNamed() {
        return switch (this) {
            case DIVISION, STOP, COUPLER, TREMULANT -> true;
            case ORGAN, PISTONS, ROOM, TIMES, DISTANCES, SURFACE -> false;
        };
    }
}
