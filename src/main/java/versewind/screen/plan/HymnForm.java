package versewind.screen.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import versewind.plan.Hymn;
import versewind.plan.VersePlace;
import versewind.plan.Verses;
import versewind.schema.HymnFields;
import versewind.schema.OrganNames;
import versewind.screen.state.FormBox;
import versewind.screen.state.PlanChanges;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.RowForm;

/** The forms of a hymn, the current one and a new one. */
final class HymnForm {

    private static final int TITLE = HymnFields.HEAD.fields().indexOf(HymnFields.TITLE);
    private static final int SUNG = HymnFields.HEAD.fields().size();

    private static final int USUAL_VERSES = 4;

    private HymnForm() {}

    static FormBox of(PlanEdit work, Hymn hymn) {
        RowForm<Hymn> row = row(hymn);
        return FormBox.of("Hymn", row.fields(), (form, closed) -> {
                    Hymn after = hymn(form, row).withVerses(hymn.verses());
                    return PlanChanges.edit(
                            closed, work, work.plan().withHymn(work.place().hymn(), after), work.place());
                })
                .at(TITLE);
    }

    /** A hymn that comes after the current one. */
    static FormBox ofNew(PlanEdit work) {
        RowForm<Hymn> row = row(new Hymn("", "", "", "", "", OptionalInt.empty(), "", List.of()));
        List<FormBox.Field> fields = new ArrayList<>(row.fields());
        fields.add(FormBox.Field.of(
                "Verses", Integer.toString(USUAL_VERSES), "number of verses; an introduction is added"));
        return FormBox.of("New hymn", fields, (form, closed) -> {
            int sung = form.number(SUNG, 0, Verses.MOST_NEW);
            Hymn made = hymn(form, row)
                    .withVerses(Verses.ofNewHymn(work.instrument(), sung))
                    .locking(work.plan().locks());
            int at = work.hymn().isPresent() ? work.place().hymn() + 1 : 0;
            return PlanChanges.edit(closed, work, work.plan().inserting(at, made), new VersePlace(at, 0));
        });
    }

    private static RowForm<Hymn> row(Hymn hymn) {
        return new RowForm<>(HymnFields.HEAD, HymnFields.HEAD.fields(), hymn, OrganNames.NONE);
    }

    private static Hymn hymn(FormBox form, RowForm<Hymn> row) {
        if (form.isBlank(TITLE)) {
            throw new FormBox.Wrong(TITLE, "A hymn needs a title.");
        }
        return row.typed(form);
    }
}
