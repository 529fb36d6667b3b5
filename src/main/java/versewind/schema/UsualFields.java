package versewind.schema;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import versewind.calibration.HeardRegistration;
import versewind.plan.HeardAs;
import versewind.plan.Mode;
import versewind.plan.Singing;
import versewind.schema.Field.Layout;

/** The fields of a registration that is usually drawn. */
public final class UsualFields {
    public static final Table<HeardRegistration> TABLE = Table.block(
            "What is usually drawn for so many people, and how the organ is felt to be then.",
            "name",
            UsualFields::usual,
            UsualFields::of);

    private static final Field<HeardRegistration, String> NAME =
            TABLE.add("name", Kinds.NAME, "what you call it, as ordinary, gentle or full church");

    private static final Field<HeardRegistration, Integer> PEOPLE =
            TABLE.add("people", VerseFields.PEOPLE_COUNT, "people present").laid(Layout.BESIDE);

    private static final Field<HeardRegistration, Mode> MODE = TABLE.add(
                    "mode", VerseFields.MODE.kind(), "whom the organ accompanies")
            .orElse(Mode.CONGREGATION)
            .laid(Layout.BESIDE);

    private static final Field<HeardRegistration, Optional<Integer>> VOICES = TABLE.ifAny(
                    "voices", VerseFields.PEOPLE_COUNT, "singers of a small choir")
            .laid(Layout.BESIDE);

    private static final Field<HeardRegistration, Singing> SINGING = TABLE.add(
                    "singing", VerseFields.SINGING.kind(), "how strongly they sing")
            .laid(Layout.BESIDE);

    private static final Field<HeardRegistration, HeardAs> FELT = TABLE.add(
                    "felt", Kinds.choice(HeardAs.values(), HeardAs::felt), "how the organ is felt to be then")
            .laid(Layout.BESIDE);

    private static final PlayedFields<HeardRegistration> PLAYED = new PlayedFields<>(TABLE);

    /** The fields that a form asks for, the name first. */
    public static final List<Field<HeardRegistration, ?>> ASKED = Stream.of(
                    List.of(NAME), PLAYED.asked(), List.of(PEOPLE, SINGING, FELT))
            .<Field<HeardRegistration, ?>>flatMap(List::stream)
            .toList();

    private UsualFields() {}

    private static Object of(HeardRegistration usual, String field) {
        return switch (field) {
            case "name" -> usual.name();
            case "people" -> usual.people();
            case "mode" -> usual.mode();
            case "voices" -> VerseFields.boxed(usual.voices());
            case "singing" -> usual.singing();
            case "felt" -> usual.heard();
            default -> PlayedFields.of(usual.hands(), usual.registration(), field);
        };
    }

    private static HeardRegistration usual(Values values) throws Refused {
        return new HeardRegistration(
                values.get(NAME),
                values.get(MODE),
                values.get(SINGING),
                values.get(PEOPLE),
                VerseFields.unboxed(values.get(VOICES)),
                PLAYED.played(values),
                PLAYED.registration(values),
                values.get(FELT));
    }
}
