package versewind.screen;

import java.util.List;
import versewind.plan.Verse;
import versewind.plan.Verses;

/** The form of the current verse. */
final class VerseForm {

    static final int LABEL = 0;
    static final int PEOPLE = 1;
    private static final int PISTON = 2;
    private static final int NOTE = 3;

    private VerseForm() {}

    static FormBox of(PlanEdit work, Verse verse, int at) {
        String people =
                verse.people().isPresent() ? Integer.toString(verse.people().getAsInt()) : "";
        return FormBox.of(
                        "Verse",
                        List.of(
                                FormBox.Field.of("Label", verse.label(), "such as V2; blank for the usual label"),
                                FormBox.Field.of(
                                        "People",
                                        people,
                                        "present in this verse, or singers of a small choir; blank for the service's "
                                                + work.plan().heading().people()),
                                FormBox.Field.of("Piston", verse.piston(), "such as G3, or 2/G3 on memory level 2"),
                                FormBox.Field.of("Note", verse.note(), "what you want to read on the desk")),
                        (form, closed) -> PlanChanges.change(closed, work, verse(form, work, verse)))
                .at(at);
    }

    /** A verse whose label is left blank gets the one that it usually has. */
    private static Verse verse(FormBox form, PlanEdit work, Verse verse) {
        String label = form.isBlank(LABEL)
                ? Verses.usualLabel(work.verses(), work.place().verse())
                : form.text(LABEL);
        return verse.withLabel(label)
                .withPeople(form.numberIfAny(PEOPLE, 1, Verse.MOST_PEOPLE))
                .withPiston(form.text(PISTON))
                .withNote(form.text(NOTE));
    }
}
