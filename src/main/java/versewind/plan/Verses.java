package versewind.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import versewind.organ.Instrument;
import versewind.organ.Registration;

/** The verses of a hymn in their order: the labels they usually have, and new ones. */
public final class Verses {

    /** The most verses that a new hymn is made with. */
    public static final int MOST_NEW = 60;

    private Verses() {}

    /** The label that a verse usually has: "Intro", "V2" for the second verse that is sung to the tune, "Last". */
    public static String usualLabel(List<Verse> verses, int index) {
        VerseKind kind = verses.get(index).kind();
        if (kind != VerseKind.VERSE) {
            return kind.usualLabel();
        }
        long number = verses.subList(0, index + 1).stream()
                .filter(verse -> verse.kind() == VerseKind.VERSE)
                .count();
        return kind.usualLabel() + number;
    }

    /** The verses with a verse put in and labelled; if all had their usual labels, all have them again. */
    public static List<Verse> inserted(List<Verse> verses, int index, Verse verse) {
        List<Verse> more = new ArrayList<>(verses);
        more.add(index, verse);
        more.set(index, verse.withLabel(usualLabel(more, index)));
        return relabelled(verses, more);
    }

    /** The verses with two neighbours changed; if all had their usual labels, all have them again. */
    public static List<Verse> swapped(List<Verse> verses, int index) {
        List<Verse> swapped = new ArrayList<>(verses);
        swapped.set(index, verses.get(index + 1));
        swapped.set(index + 1, verses.get(index));
        return relabelled(verses, swapped);
    }

    /** The verses with one of another kind, under its usual label if it had that before. */
    public static List<Verse> withKind(List<Verse> verses, int index, VerseKind kind) {
        List<Verse> others = new ArrayList<>(verses);
        others.set(index, verses.get(index).withKind(kind));
        if (verses.get(index).label().equals(usualLabel(verses, index))) {
            others.set(index, others.get(index).withLabel(usualLabel(others, index)));
        }
        return relabelled(verses, others);
    }

    private static List<Verse> relabelled(List<Verse> before, List<Verse> after) {
        boolean usual = IntStream.range(0, before.size())
                .allMatch(i -> before.get(i).label().equals(usualLabel(before, i)));
        if (!usual) {
            return after;
        }
        return IntStream.range(0, after.size())
                .mapToObj(i -> after.get(i).withLabel(usualLabel(after, i)))
                .toList();
    }

    /** A verse with nothing drawn, sung by the congregation in four parts on the main manual. */
    public static Verse blank(Instrument instrument, VerseKind kind) {
        return new Verse(
                kind,
                kind.usualLabel(),
                Mode.CONGREGATION,
                Singing.ORDINARY,
                OptionalInt.empty(),
                HandsAndFeet.on(HandsAndFeet.Layout.FOUR_PARTS, instrument.mainDivision()),
                Registration.silent(instrument),
                "",
                "");
    }

    /**
     * The verses of a new hymn: an introduction, so many verses, the last of them marked as such.
     *
     * @param sung number of verses that are sung, 0 to {@link #MOST_NEW}
     */
    public static List<Verse> ofNewHymn(Instrument instrument, int sung) {
        List<Verse> verses = new ArrayList<>();
        verses.add(blank(instrument, VerseKind.INTRODUCTION));
        for (int verse = 1; verse <= sung; verse++) {
            boolean last = verse == sung && sung > 1;
            verses.add(blank(instrument, last ? VerseKind.LAST_VERSE : VerseKind.VERSE));
        }
        return IntStream.range(0, verses.size())
                .mapToObj(i -> verses.get(i).withLabel(usualLabel(verses, i)))
                .toList();
    }
}
