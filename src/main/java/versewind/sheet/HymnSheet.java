package versewind.sheet;

import java.util.ArrayList;
import java.util.List;
import versewind.plan.Hymn;

/**
 * A hymn as it stands on the sheet.
 *
 * @param hymn the hymn
 * @param verses in the order they are played
 * @param breath how long to breathe between verses; blank where there is one verse
 */
public record HymnSheet(Hymn hymn, List<VerseSheet> verses, String breath) {

    public HymnSheet {
        verses = List.copyOf(verses);
    }

    /** What it is called where there is little room: its number, or its title. */
    public String shortName() {
        return hymn.number().isBlank() ? hymn.title() : hymn.number();
    }

    /** Where a verse stands: "208 V1". */
    public String placed(VerseSheet verse) {
        return (shortName() + " " + verse.verse().label()).strip();
    }

    /** Tune, metre, key, tempo and breath, those that are known. */
    public List<String> facts() {
        List<String> facts = new ArrayList<>();
        facts.add(hymn.tune());
        facts.add(hymn.metre());
        facts.add(Wording.key(hymn.key()));
        hymn.tempo().ifPresent(tempo -> facts.add("crotchet = " + tempo));
        facts.add(breath);
        facts.removeIf(String::isBlank);
        return List.copyOf(facts);
    }
}
