package versewind.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Registration;

/** A plan of as little as there can be, for an organ of two manuals. */
final class SmallPlan {

    static final Registration NOTHING = new Registration(
            IndexSet.EMPTY, IndexSet.EMPTY, IndexSet.EMPTY, List.of(BoxPosition.OPEN, BoxPosition.OPEN));

    private SmallPlan() {}

    static Plan with(Hymn... hymns) {
        return new Plan(new ServiceHeading("Evensong", Optional.empty(), 40, ""), "organ", List.of(hymns));
    }

    static Hymn hymn(String title, Verse... verses) {
        return new Hymn("", title, "", "", "", OptionalInt.empty(), "", List.of(verses));
    }

    static Verse verse(String label) {
        return verse(VerseKind.VERSE, label);
    }

    static Verse verse(VerseKind kind, String label) {
        return new Verse(
                kind,
                label,
                Mode.CONGREGATION,
                Singing.ORDINARY,
                OptionalInt.empty(),
                HandsAndFeet.on(HandsAndFeet.Layout.FOUR_PARTS, 0),
                NOTHING,
                "",
                "");
    }

    /** Verses of the kinds that their labels say: "Intro V1 Refrain Last". */
    static List<Verse> verses(String labels) {
        return Stream.of(labels.split(" "))
                .map(label -> verse(kind(label), label))
                .toList();
    }

    private static VerseKind kind(String label) {
        return Stream.of(VerseKind.values())
                .filter(kind -> label.startsWith(kind.usualLabel()))
                .findFirst()
                .orElse(VerseKind.VERSE);
    }

    static String labels(List<Verse> verses) {
        return String.join(" ", verses.stream().map(Verse::label).toList());
    }
}
