package versewind.screen;

import java.util.List;
import java.util.OptionalInt;
import versewind.plan.Verse;
import versewind.plan.Verses;

/** The form of a verse: what it asks, and the verse that the answers make. */
final class VerseForm {

    static final int LABEL = 0;
    static final int PEOPLE = 1;
    private static final int PISTON = 2;
    private static final int NOTE = 3;

    private VerseForm() {}

    static Panel.Form of(PlanEdit work, Verse verse, int at) {
        String people =
                verse.people().isPresent() ? Integer.toString(verse.people().getAsInt()) : "";
        return new Panel.Form(
                "Verse",
                List.of(
                        Panel.Field.of(
                                "Label",
                                verse.label(),
                                "what stands before the verse on the desk, as V2; if blank, as usual"),
                        Panel.Field.of(
                                "People",
                                people,
                                "present in this verse, or voices of a small choir; if blank, the service's "
                                        + work.plan().heading().people()),
                        Panel.Field.of(
                                "Piston", verse.piston(), "the piston that sets it, as G3; on memory level 2, 2/G3"),
                        Panel.Field.of("Note", verse.note(), "what you want to read on the desk")),
                at,
                new FormAction.VerseTexts(),
                "");
    }

    /** A verse whose label is left blank gets the one that it usually has. */
    static Verse verse(FilledForm filled, PlanEdit work) {
        int at = work.place().verse();
        String label = filled.isBlank(LABEL) ? Verses.usualLabel(work.verses(), at) : filled.text(LABEL);
        OptionalInt people = filled.numberIfAny(PEOPLE, 1, Verse.MOST_PEOPLE);
        return work.verses()
                .get(at)
                .withLabel(label)
                .withPeople(people)
                .withPiston(filled.text(PISTON))
                .withNote(filled.text(NOTE));
    }
}
