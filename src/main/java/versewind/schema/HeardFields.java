package versewind.schema;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import versewind.calibration.HeardRegistration;
import versewind.plan.HeardAs;
import versewind.plan.Singing;
import versewind.plan.SungBy;
import versewind.schema.Field.Layout;

/** The fields of a registration that was heard: of what is usually drawn, and of feedback after a service. */
public final class HeardFields {

    private static final SungBy[] SINGERS = {
        SungBy.CONGREGATION, SungBy.SMALL_CHOIR, SungBy.SOLO_VOICE, SungBy.MELODY_SOLOED, SungBy.TREBLES
    };

    public static final HeardFields USUAL = new HeardFields(
            "What is usually drawn for so many people, and how the organ is felt to be then.",
            "what you call it, such as ordinary, gentle or full church",
            "felt",
            HeardAs::felt);

    public static final HeardFields ANSWER =
            new HeardFields("Feedback on a verse after a service.", "service, hymn and verse", "heard", HeardAs::word);

    private final Table<HeardRegistration> table;
    private final Field<HeardRegistration, String> name;
    private final Field<HeardRegistration, Integer> people;
    private final Field<HeardRegistration, SungBy> mode;
    private final Field<HeardRegistration, Optional<Integer>> voices;
    private final Field<HeardRegistration, Singing> singing;
    private final Field<HeardRegistration, HeardAs> heard;
    private final PlayedFields<HeardRegistration> played;

    private HeardFields(String about, String names, String judgement, Function<HeardAs, String> word) {
        table = Table.block(about, "name", this::made, HeardFields::of);
        name = table.add("name", Kinds.NAME, names);
        people = table.add("people", VerseFields.PEOPLE_COUNT, "people present").laid(Layout.BESIDE);
        mode = table.add("mode", Kinds.choice(SINGERS), "whom the organ accompanies")
                .orElse(SungBy.CONGREGATION)
                .laid(Layout.BESIDE);
        voices = table.ifAny("voices", VerseFields.PEOPLE_COUNT, "singers of a small choir")
                .laid(Layout.BESIDE);
        singing = table.add("singing", VerseFields.SINGING.kind(), "how strongly they sing")
                .label("Strength")
                .laid(Layout.BESIDE);
        heard = table.add(judgement, new ChoiceKind<>(List.of(HeardAs.values()), word), "how the organ is then")
                .label("Balance")
                .laid(Layout.BESIDE);
        played = new PlayedFields<>(table);
    }

    /** All fields. */
    public Table<HeardRegistration> table() {
        return table;
    }

    /** The fields that a form asks for, the name first. */
    public List<Field<HeardRegistration, ?>> asked() {
        return Stream.of(List.of(name), played.asked(), List.of(people, singing, heard))
                .<Field<HeardRegistration, ?>>flatMap(List::stream)
                .toList();
    }

    private static Object of(HeardRegistration each, String field) {
        return switch (field) {
            case "name" -> each.name();
            case "people" -> each.people();
            case "mode" -> each.by();
            case "voices" -> VerseFields.boxed(each.voices());
            case "singing" -> each.singing();
            case "felt", "heard" -> each.heard();
            default -> PlayedFields.of(each.hands(), each.registration(), field);
        };
    }

    private HeardRegistration made(Values values) throws Refused {
        return new HeardRegistration(
                values.get(name),
                values.get(mode),
                values.get(singing),
                values.get(people),
                VerseFields.unboxed(values.get(voices)),
                played.played(values),
                played.registration(values),
                values.get(heard));
    }
}
