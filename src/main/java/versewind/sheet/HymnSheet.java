package versewind.sheet;

import java.util.ArrayList;
import java.util.List;
import versewind.plan.Hymn;

/**
 * A hymn as it stands on the sheet.
 *
 * @param hymn the hymn
 * @param verses in the order they are played
 */
public record HymnSheet(Hymn hymn, List<VerseSheet> verses) {

    public HymnSheet {
        verses = List.copyOf(verses);
    }

    /** Number and title, without what is missing. */
    public String name() {
        return (hymn.number() + "  " + hymn.title()).strip();
    }

    /** What it is called where there is little room: its number, or its title. */
    public String shortName() {
        return hymn.number().isBlank() ? hymn.title() : hymn.number();
    }

    /** Tune, metre, key and tempo, those that are known. */
    public List<String> facts() {
        List<String> facts = new ArrayList<>();
        facts.add(hymn.tune());
        facts.add(hymn.metre());
        facts.add(hymn.key());
        hymn.tempo().ifPresent(tempo -> facts.add(tempo + " a minute"));
        facts.removeIf(String::isBlank);
        return List.copyOf(facts);
    }
}
