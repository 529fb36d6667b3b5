package versewind.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import versewind.organ.Instrument;
import versewind.plan.Hymn;
import versewind.plan.Locks;
import versewind.plan.Verse;
import versewind.plan.Verses;

/** The form of a hymn: what it asks, and the hymn that the answers make. */
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

    static Panel.Form of(Hymn hymn) {
        return new Panel.Form("Hymn", fields(hymn), TITLE, new FormAction.HymnTexts(), "");
    }

    static Panel.Form ofNew(int at) {
        Hymn blank = new Hymn("", "", "", "", "", OptionalInt.empty(), "", List.of());
        List<Panel.Field> fields = new ArrayList<>(fields(blank));
        fields.add(Panel.Field.of(
                "Verses", Integer.toString(USUAL_VERSES), "how many are sung; an introduction comes before them"));
        return new Panel.Form("New hymn", fields, NUMBER, new FormAction.NewHymn(at), "");
    }

    private static List<Panel.Field> fields(Hymn hymn) {
        String tempo = hymn.tempo().isPresent() ? Integer.toString(hymn.tempo().getAsInt()) : "";
        return List.of(
                Panel.Field.of("Number", hymn.number(), "in the book; may be blank"),
                Panel.Field.of("Title", hymn.title(), "the title or the first line; needed"),
                Panel.Field.of("Tune", hymn.tune(), "name of the tune"),
                Panel.Field.of("Metre", hymn.metre(), "as 8 7 8 7 D"),
                Panel.Field.of("Key", hymn.key(), "as G or e minor"),
                Panel.Field.of("Tempo", tempo, "beats a minute, 20 to 300; may be blank"),
                Panel.Field.of("Notes", hymn.notes(), "for the desk"));
    }

    /** A hymn of new verses. */
    static Hymn made(FilledForm filled, Instrument organ, Locks throughout) {
        int sung = filled.number(SUNG, 0, Verses.MOST_NEW);
        return hymn(filled, Verses.ofNewHymn(organ, sung)).locking(throughout);
    }

    static Hymn hymn(FilledForm filled, List<Verse> verses) {
        if (filled.isBlank(TITLE)) {
            throw new FilledForm.Wrong(TITLE, "A hymn needs a title.");
        }
        return new Hymn(
                filled.text(NUMBER),
                filled.text(TITLE),
                filled.text(TUNE),
                filled.text(METRE),
                filled.text(KEY),
                filled.numberIfAny(TEMPO, Hymn.SLOWEST_TEMPO, Hymn.FASTEST_TEMPO),
                filled.text(NOTES),
                verses);
    }
}
