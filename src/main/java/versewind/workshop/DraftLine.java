package versewind.workshop;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import versewind.organ.Family;

/**
 * A line of a draft: what it describes, and what is written in each of its slots, right or wrong.
 *
 * @param part what it describes
 * @param origin the index that it had in the instrument that the draft was made of; empty for a line put in since, and for
 *     what has no index
 * @param values the text of every slot of the part, in their order
 */
public record DraftLine(RowKind part, OptionalInt origin, List<String> values) {

    /** What stands in {@link DraftField#MANUAL} for the pedal. */
    static final String PEDAL = "pedal";

    static final String YES = "yes";

    /** What may stand in a slot that asks whether. */
    static final List<String> YES_NO = List.of(YES, "no");

    public DraftLine {
        values = List.copyOf(values);
        if (values.size() != part.slots().size()) {
            throw new IllegalArgumentException("a line of " + part.word() + " has a text for each of its slots");
        }
    }

    /** A line that is put in, with nothing in it. */
    public static DraftLine blank(RowKind part) {
        return new DraftLine(
                part, OptionalInt.empty(), part.slots().stream().map(slot -> "").toList());
    }

    /** What is written in a slot. */
    public String at(DraftField slot) {
        return values.get(part.slots().indexOf(slot));
    }

    /** Whether a division is written to be played with the feet. */
    boolean isPedal() {
        return at(DraftField.MANUAL).strip().equalsIgnoreCase(PEDAL);
    }

    /** With something else written in a slot. */
    public DraftLine with(DraftField slot, String text) {
        List<String> others = new ArrayList<>(values);
        others.set(part.slots().indexOf(slot), text);
        return new DraftLine(part, origin, others);
    }

    /** With other texts in all slots. */
    public DraftLine with(List<String> others) {
        return new DraftLine(part, origin, others);
    }

    /** The same once more, as a line put in. */
    DraftLine copied() {
        return new DraftLine(part, OptionalInt.empty(), values);
    }

    /** Name and pitch of a stop as plans call it, as far as they are written; else the name. */
    public String label() {
        if (part != RowKind.STOP) {
            return at(DraftField.NAME);
        }
        boolean compound = Choice.of(at(DraftField.FAMILY), List.of(Family.values()), Family::word)
                .filter(Family::isCompound)
                .isPresent();
        String pitch = compound || at(DraftField.FEET).isBlank()
                ? TypedNumbers.numeral(at(DraftField.RANKS))
                : TypedNumbers.feet(at(DraftField.FEET)).map(Object::toString).orElse(at(DraftField.FEET));
        return (at(DraftField.NAME) + " " + pitch).stripTrailing();
    }
}
