package versewind.schema;

import versewind.calibration.Calibration;
import versewind.organ.FormerNames;
import versewind.organ.Instrument;

/** The fields of an instrument's file: those of the instrument, and what is known of it besides. */
public final class OrganFields {
    public static final Table<KnownOrgan> TABLE =
            Table.block("An organ in its room.", "divisions", OrganFields::organ, OrganFields::of);

    private static final Field<KnownOrgan, FormerNames> FORMERLY;
    private static final Field<KnownOrgan, Calibration> CALIBRATION;

    static {
        TABLE.add(FileFormat.field());
        TABLE.addAll(InstrumentFields.TABLE);
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
            case "formerly" -> organ.former();
            case "calibration" -> organ.calibration();
            default -> InstrumentFields.of(organ.instrument(), field);
        };
    }

    private static KnownOrgan organ(Values values) throws Refused {
        Instrument instrument = InstrumentFields.instrument(values);
        OrganNames names = OrganNames.of(instrument);
        return new KnownOrgan(instrument, values.get(CALIBRATION, names), values.get(FORMERLY, names));
    }
}
