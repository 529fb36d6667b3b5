package versewind.screen;

import java.util.List;
import versewind.plan.Verse;
import versewind.plan.Verses;
import versewind.schema.Field;
import versewind.schema.OrganNames;
import versewind.schema.VerseFields;

/** The form of the current verse. */
final class VerseForm {

    private static final List<Field<Verse, ?>> ASKED =
            List.of(VerseFields.LABEL, VerseFields.PEOPLE, VerseFields.IN_TEN, VerseFields.PISTON, VerseFields.NOTE);

    static final int LABEL = ASKED.indexOf(VerseFields.LABEL);
    static final int PEOPLE = ASKED.indexOf(VerseFields.PEOPLE);

    private VerseForm() {}

    static FormBox of(PlanEdit work, Verse verse, int at) {
        RowForm<Verse> row = new RowForm<>(VerseFields.TABLE, ASKED, verse, OrganNames.of(work.instrument()));
        return FormBox.of(
                        "Verse",
                        row.fields(),
                        (form, closed) -> PlanChanges.change(closed, work, labelled(row.typed(form), work)))
                .at(at);
    }

    /** A verse whose label is left blank gets the one that it usually has. */
    private static Verse labelled(Verse verse, PlanEdit work) {
        return verse.label().isBlank()
                ? verse.withLabel(Verses.usualLabel(work.verses(), work.place().verse()))
                : verse;
    }
}
