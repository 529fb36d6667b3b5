package versewind.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
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

    /** The verses, those that have no label under their usual one. */
    public static List<Verse> allLabelled(List<Verse> verses) {
        return IntStream.range(0, verses.size())
                .mapToObj(i -> verses.get(i).label().isBlank()
                        ? verses.get(i).withLabel(usualLabel(verses, i))
                        : verses.get(i))
                .toList();
    }

    /** The verses with a verse put in under its usual label; the other usual labels count on. */
    public static List<Verse> inserted(List<Verse> verses, int index, Verse verse) {
        List<Labelled> more = labelled(verses);
        more.add(index, new Labelled(verse, true));
        return counted(more);
    }

    /** The verses with one of them once more after itself; a label of its own is the copy's too. */
    public static List<Verse> duplicated(List<Verse> verses, int index) {
        List<Labelled> more = labelled(verses);
        Labelled once = more.get(index);
        more.add(index + 1, new Labelled(once.verse().withAnswer(Optional.empty()), once.isUsual()));
        return counted(more);
    }

    /** The verses without one of them. The others keep their labels: a verse left out is one that is not sung. */
    public static List<Verse> removed(List<Verse> verses, int index) {
        List<Verse> fewer = new ArrayList<>(verses);
        fewer.remove(index);
        return fewer;
    }

    /** The verses with two neighbours changed; usual labels count on, others move with their verses. */
    public static List<Verse> swapped(List<Verse> verses, int index) {
        List<Labelled> swapped = labelled(verses);
        Collections.swap(swapped, index, index + 1);
        return counted(swapped);
    }

    /** The verses with one of another kind, under its usual label if it had that before. */
    public static List<Verse> withKind(List<Verse> verses, int index, VerseKind kind) {
        List<Labelled> others = labelled(verses);
        Labelled verse = others.get(index);
        others.set(index, new Labelled(verse.verse().withKind(kind), verse.isUsual()));
        return counted(others);
    }

    /** A verse, and whether it has the label that a verse in its place usually has. */
    private record Labelled(Verse verse, boolean isUsual) {}

    private static List<Labelled> labelled(List<Verse> verses) {
        List<Labelled> labelled = new ArrayList<>();
        for (int i = 0; i < verses.size(); i++) {
            Verse verse = verses.get(i);
            labelled.add(new Labelled(verse, verse.label().equals(usualLabel(verses, i))));
        }
        return labelled;
    }

    /** In their new order, the verses with usual labels have those of their new places. */
    private static List<Verse> counted(List<Labelled> labelled) {
        List<Verse> verses = labelled.stream().map(Labelled::verse).toList();
        return IntStream.range(0, verses.size())
                .mapToObj(
                        i -> labelled.get(i).isUsual() ? verses.get(i).withLabel(usualLabel(verses, i)) : verses.get(i))
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
