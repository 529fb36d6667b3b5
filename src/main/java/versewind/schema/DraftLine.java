package versewind.schema;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import versewind.organ.Family;
import versewind.organ.Stop;

/**
 * A row of a draft: what it describes, and what is typed in each of its fields, right or wrong.
 *
 * @param part what it describes
 * @param origin its index in the instrument that the draft was made of; empty for a row added since, and for what has
 *     no index
 * @param values the text of every field of the part, in their order
 */
public record DraftLine(RowKind part, OptionalInt origin, List<String> values) {

    public DraftLine {
        values = List.copyOf(values);
        if (values.size() != part.fields().size()) {
            throw new IllegalArgumentException("a row of " + part.word() + " has a text for each of its fields");
        }
    }

    /** A row that is added, with nothing in it. */
    public static DraftLine blank(RowKind part) {
        return new DraftLine(
                part,
                OptionalInt.empty(),
                part.fields().stream().map(field -> "").toList());
    }

    /** A value of which the fields of a part speak, as it is typed. */
    @SuppressWarnings("unchecked") // the fields of a row speak of one and the same thing
    static <T> DraftLine of(RowKind part, OptionalInt origin, T value) {
        return new DraftLine(
                part,
                origin,
                part.fields().stream()
                        .map(field -> ((Field<T, ?>) field).typed(value))
                        .toList());
    }

    private static int index(RowKind part, Field<?, ?> field) {
        return IntStream.range(0, part.fields().size())
                .filter(i -> part.fields().get(i).name().equals(field.name()))
                .findFirst()
                .orElse(-1);
    }

    /** Whether a field is asked in it. */
    public boolean has(Field<?, ?> field) {
        return index(part, field) >= 0;
    }

    /** What is typed in a field. */
    public String at(Field<?, ?> field) {
        return values.get(index(part, field));
    }

    /** The value of what is typed in a field that names no part of the organ; empty if it cannot be read. */
    public <V> Optional<V> read(Field<?, V> field) {
        try {
            return Optional.of(field.parse(at(field)));
        } catch (Refused wrong) {
            return Optional.empty();
        }
    }

    /** Whether a division is to be played with the feet. */
    public boolean isPedal() {
        return read(DivisionFields.KEYBOARD).filter(OptionalInt::isEmpty).isPresent();
    }

    /** With something else typed in a field. */
    public DraftLine with(Field<?, ?> field, String text) {
        List<String> others = new ArrayList<>(values);
        others.set(index(part, field), text);
        return with(others);
    }

    /** With other texts in all fields. */
    public DraftLine with(List<String> others) {
        return new DraftLine(part, origin, others);
    }

    /** The same once more, as a row added. */
    DraftLine copied() {
        return new DraftLine(part, OptionalInt.empty(), values);
    }

    /** What is typed as its name. */
    public String name() {
        return at(InstrumentFields.NAME);
    }

    /** Name and pitch of a stop as plans call it, as far as they can be read; else the name; else what it describes. */
    public String label() {
        if (!has(InstrumentFields.NAME)) {
            return part.word();
        }
        return part == RowKind.STOP ? (name() + " " + pitch()).stripTrailing() : name();
    }

    /** The pitch of a stop as it stands on the knob, as far as it can be read. */
    public String pitch() {
        boolean isCompound = read(StopFields.FAMILY).filter(Family::isCompound).isPresent();
        String feet = at(StopFields.FEET);
        if (isCompound || feet.isBlank()) {
            return numeral();
        }
        return read(StopFields.FEET)
                .flatMap(footage -> footage)
                .map(Object::toString)
                .orElse(feet);
    }

    /** The number of ranks of a stop as it stands on the knob; blank where there is none. */
    public String numeral() {
        return read(StopFields.RANKS_TYPED)
                .flatMap(ranks -> ranks)
                .map(ranks -> Stop.NUMERALS.get(ranks - 1))
                .orElse("");
    }
}
