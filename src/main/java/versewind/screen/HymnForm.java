package versewind.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import versewind.plan.Hymn;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.plan.Verses;

/** The forms of a hymn, the current one and a new one. */
final class HymnForm {

    private static final int NUMBER = 0;
    private static final int TITLE = 1;
    private static final int TUNE = 2;
    private static final int METRE = 3;
    private static final int KEY = 4;
    private static final int TEMPO = 5;
    private static final int NOTES = 6;
    private static final int SUNG = 7;

    private static final int USUAL_VERSES = 4;

    private HymnForm() {}

    static FormBox of(PlanEdit work, Hymn hymn) {
        return FormBox.of("Hymn", fields(hymn), (form, closed) -> {
                    Hymn after = hymn(form, hymn.verses());
                    return PlanChanges.edit(
                            closed, work, work.plan().withHymn(work.place().hymn(), after), work.place());
                })
                .at(TITLE);
    }

    /** A hymn that comes after the current one. */
    static FormBox ofNew(PlanEdit work) {
        Hymn blank = new Hymn("", "", "", "", "", OptionalInt.empty(), "", List.of());
        List<FormBox.Field> fields = new ArrayList<>(fields(blank));
        fields.add(FormBox.Field.of(
                "Verses", Integer.toString(USUAL_VERSES), "number of verses; an introduction is added"));
        return FormBox.of("New hymn", fields, (form, closed) -> {
            int sung = form.number(SUNG, 0, Verses.MOST_NEW);
            Hymn made = hymn(form, Verses.ofNewHymn(work.instrument(), sung))
                    .locking(work.plan().locks());
            int at = work.hymn().isPresent() ? work.place().hymn() + 1 : 0;
            return PlanChanges.edit(closed, work, work.plan().inserting(at, made), new VersePlace(at, 0));
        });
    }

    private static List<FormBox.Field> fields(Hymn hymn) {
        String tempo = hymn.tempo().isPresent() ? Integer.toString(hymn.tempo().getAsInt()) : "";
        return List.of(
                FormBox.Field.of("Number", hymn.number(), "in the book; may be blank"),
                FormBox.Field.of("Title", hymn.title(), "the title or the first line; needed"),
                FormBox.Field.of("Tune", hymn.tune(), "name of the tune"),
                FormBox.Field.of("Metre", hymn.metre(), "as 8 7 8 7 D"),
                FormBox.Field.of("Key", hymn.key(), "as G or e minor"),
                FormBox.Field.of("Tempo", tempo, "beats a minute, 20 to 300; may be blank"),
                FormBox.Field.of("Notes", hymn.notes(), "for the desk"));
    }

    private static Hymn hymn(FormBox form, List<Verse> verses) {
        if (form.isBlank(TITLE)) {
            throw new FormBox.Wrong(TITLE, "A hymn needs a title.");
        }
        return new Hymn(
                form.text(NUMBER),
                form.text(TITLE),
                form.text(TUNE),
                form.text(METRE),
                form.text(KEY),
                form.numberIfAny(TEMPO, Hymn.SLOWEST_TEMPO, Hymn.FASTEST_TEMPO),
                form.text(NOTES),
                verses);
    }
}
