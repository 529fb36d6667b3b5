package versewind.schema;

import java.util.List;
import versewind.calibration.Calibration;
import versewind.calibration.Experience;
import versewind.calibration.HeardRegistration;
import versewind.organ.FormerNames;
import versewind.organ.Instrument;

/** The fields of an instrument's file: those of the instrument, and what is known of it besides. */
public final class OrganFields {
    public static final Table<KnownOrgan> TABLE =
            Table.block("An organ in its room.", "divisions", OrganFields::organ, OrganFields::of);

    private static final Field<KnownOrgan, List<HeardRegistration>> USUAL;
    private static final Field<KnownOrgan, List<HeardRegistration>> ANSWERS;
    private static final Field<KnownOrgan, FormerNames> FORMERLY;
    private static final Field<KnownOrgan, Calibration> CALIBRATION;

    static {
        TABLE.add(FileFormat.field());
        TABLE.addAll(InstrumentFields.TABLE);
        USUAL = TABLE.add(
                        "usual",
                        Kinds.Items.of(HeardFields.USUAL.table()),
                        "what is usually drawn on it, by which everything else is measured; " + Experience.MOST_USUAL
                                + " at most, each with a name of its own")
                .orElse(List.of())
                .laid(Field.Layout.BLOCK);
        ANSWERS = TABLE.add(
                        "answers",
                        Kinds.Items.of(HeardFields.ANSWER.table()),
                        "feedback after services, the latest last")
                .orElse(List.of())
                .laid(Field.Layout.BLOCK);
        FORMERLY = TABLE.add(
                        "formerly", new Kinds.Nested<>(() -> FormerFields.TABLE), "what its parts were called before")
                .orElse(FormerNames.NONE);
        CALIBRATION = TABLE.add(
                        "calibration", new Kinds.Nested<>(() -> CalibrationFields.TABLE), "what its trims rest on")
                .orElse(Calibration.NONE);
    }

    private OrganFields() {}

    private static Object of(KnownOrgan organ, String field) {
        return switch (field) {
            case FileFormat.FIELD -> FileFormat.NUMBER;
            case "usual" -> organ.experience().usual();
            case "answers" -> organ.experience().answers();
            case "formerly" -> organ.former();
            case "calibration" -> organ.calibration();
            default -> InstrumentFields.of(organ.instrument(), field);
        };
    }

    private static KnownOrgan organ(Values values) throws Refused {
        Instrument instrument = InstrumentFields.instrument(values);
        OrganNames names = OrganNames.of(instrument);
        return new KnownOrgan(
                instrument, values.get(CALIBRATION, names), experience(values, names), values.get(FORMERLY, names));
    }

    private static Experience experience(Values values, OrganNames names) throws Refused {
        List<HeardRegistration> usual = values.get(USUAL, names);
        List<HeardRegistration> answers = values.get(ANSWERS, names);
        try {
            return new Experience(usual, answers);
        } catch (IllegalArgumentException objection) {
            throw values.found(USUAL).bad(objection.getMessage(), "Delete one of them, or give it another name.");
        }
    }
}
