package versewind.schema;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.organ.Division;
import versewind.organ.SwellBox;

/** The fields of a division in a form, which asks some of it otherwise than a file. */
public final class DivisionFields {

    /**
     * A division without its stops, as a form asks for it.
     *
     * @param division the division
     * @param divisionals number of its divisional pistons
     */
    record Row(Division division, int divisionals) {}

    static final Table<Row> TABLE =
            Table.block("A division without its stops.", "", DivisionFields::division, DivisionFields::of);

    static {
        TABLE.add(InstrumentFields.DIVISION_NAME.of(Row::division));
    }

    /** A manual or the pedal. */
    public static final Field<Row, OptionalInt> KEYBOARD = TABLE.add("manual", new KeyboardKind(), "its keyboard");

    static {
        TABLE.add(InstrumentFields.KEYS.of(Row::division));
    }

    public static final Field<Row, Boolean> IS_BOXED =
            TABLE.add("box", Kinds.FLAG, "whether it stands in a swell box").orElse(false);

    static {
        TABLE.add(InstrumentFields.BOX_TRIM.of(row -> row.division()
                .box()
                .orElse(new SwellBox(InstrumentFields.BOX_TRIM.blank().orElseThrow()))));
    }

    /** The divisional pistons of a division. */
    public static final Field<Row, Integer> DIVISIONAL_COUNT = TABLE.add(
                    "divisionals", Kinds.whole(0, InstrumentFields.MOST), "number of divisional pistons")
            .orElse(0)
            .label("Pistons");

    private DivisionFields() {}

    private static Object of(Row row, String field) {
        return switch (field) {
            case "manual" -> row.division().manual();
            case "box" -> row.division().isEnclosed();
            case "divisionals" -> row.divisionals();
            default -> throw Table.without(field);
        };
    }

    private static Row division(Values values) throws Refused {
        Optional<SwellBox> box = values.get(IS_BOXED)
                ? Optional.of(new SwellBox(values.get(InstrumentFields.BOX_TRIM)))
                : Optional.empty();
        return new Row(
                new Division(
                        values.get(InstrumentFields.DIVISION_NAME),
                        values.get(KEYBOARD),
                        values.get(InstrumentFields.KEYS),
                        box,
                        List.of()),
                values.get(DIVISIONAL_COUNT));
    }

    /** The number of a manual, or the word pedal. */
    private static final class KeyboardKind extends Kinds.Parsed<OptionalInt> {
        private static final String PEDAL_WORD = "pedal";

        KeyboardKind() {
            super(
                    "a keyboard",
                    "1 for the lowest manual to " + Division.MOST_MANUALS + ", or pedal",
                    KeyboardKind::parsed,
                    manual -> manual.isPresent() ? Integer.toString(manual.getAsInt()) : PEDAL_WORD);
        }

        private static Optional<OptionalInt> parsed(String text) {
            if (text.equals(PEDAL_WORD)) {
                return Optional.of(OptionalInt.empty());
            }
            boolean isManual =
                    text.length() == 1 && text.charAt(0) >= '1' && text.charAt(0) - '0' <= Division.MOST_MANUALS;
            return isManual ? Optional.of(OptionalInt.of(text.charAt(0) - '0')) : Optional.empty();
        }

        @Override
        Object shaped(String typed) {
            return ChoiceKind.of(typed, words()).orElse(typed.strip());
        }

        @Override
        public List<String> words() {
            return List.of(PEDAL_WORD);
        }
    }
}
