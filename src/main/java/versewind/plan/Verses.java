package versewind.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.Count;
import versewind.organ.Instrument;
import versewind.organ.Registration;

/** Changes to the list of verses of a hymn, with the usual labels kept in step. */
public final class Verses {

    /** The most verses of a new hymn. */
    public static final int MOST_NEW = 60;

    private Verses() {}

    /** The usual label of a verse: "Intro", "V2" for the second verse sung to the tune, "Last". */
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

    /** A verse in words: "verse 2 of 4"; one that has another label by that. */
    public static String inWords(List<Verse> verses, int index) {
        Verse verse = verses.get(index);
        boolean isUsual = verse.kind() == VerseKind.VERSE && verse.label().equals(usualLabel(verses, index));
        long all = verses.stream()
                .filter(each -> each.kind() == VerseKind.VERSE || each.kind() == VerseKind.LAST_VERSE)
                .count();
        return isUsual
                ? "verse "
                        + verse.label().substring(VerseKind.VERSE.usualLabel().length()) + " of " + all
                : verse.label();
    }

    /** How many, introductions and interludes apart: "4 verses, 1 introduction and 1 interlude". */
    public static String counted(Stream<Verse> verses) {
        Map<VerseKind, Long> kinds = verses.map(Verse::kind)
                .map(kind -> kind.isOrganAlone() ? kind : VerseKind.VERSE)
                .collect(Collectors.groupingBy(kind -> kind, Collectors.counting()));
        List<String> counts = Stream.of(VerseKind.VERSE, VerseKind.INTRODUCTION, VerseKind.INTERLUDE)
                .filter(kinds::containsKey)
                .map(kind -> Count.of(kinds.get(kind), kind.word()))
                .toList();
        int last = counts.size() - 1;
        return last < 1
                ? String.join("", counts)
                : String.join(", ", counts.subList(0, last)) + " and " + counts.get(last);
    }

    /** The verses, with the usual label for those without one. */
    public static List<Verse> allLabelled(List<Verse> verses) {
        return IntStream.range(0, verses.size())
                .mapToObj(i -> verses.get(i).label().isBlank()
                        ? verses.get(i).withLabel(usualLabel(verses, i))
                        : verses.get(i))
                .toList();
    }

    /** Inserts a verse with its usual label and renumbers the other usual labels. */
    public static List<Verse> inserted(List<Verse> verses, int index, Verse verse) {
        List<Labelled> more = labelled(verses);
        more.add(index, new Labelled(verse, true));
        return counted(more);
    }

    /** Duplicates a verse; the copy keeps a label that is not the usual one. */
    public static List<Verse> duplicated(List<Verse> verses, int index) {
        List<Labelled> more = labelled(verses);
        Labelled once = more.get(index);
        more.add(index + 1, new Labelled(once.verse().withAnswer(Optional.empty()), once.isUsual()));
        return counted(more);
    }

    /** Removes a verse. The others keep their labels: the verse is still in the book, but not sung. */
    public static List<Verse> removed(List<Verse> verses, int index) {
        List<Verse> fewer = new ArrayList<>(verses);
        fewer.remove(index);
        return fewer;
    }

    /** Swaps two neighbouring verses; usual labels are renumbered, others move with their verses. */
    public static List<Verse> swapped(List<Verse> verses, int index) {
        List<Labelled> swapped = labelled(verses);
        Collections.swap(swapped, index, index + 1);
        return counted(swapped);
    }

    /** Changes the kind of a verse; a usual label becomes the usual label of the new kind. */
    public static List<Verse> withKind(List<Verse> verses, int index, VerseKind kind) {
        List<Labelled> others = labelled(verses);
        Labelled verse = others.get(index);
        others.set(index, new Labelled(verse.verse().withKind(kind), verse.isUsual()));
        return counted(others);
    }

    /** A verse, and whether its label is the usual one for its place. */
    private record Labelled(Verse verse, boolean isUsual) {}

    private static List<Labelled> labelled(List<Verse> verses) {
        List<Labelled> labelled = new ArrayList<>();
        for (int i = 0; i < verses.size(); i++) {
            Verse verse = verses.get(i);
            labelled.add(new Labelled(verse, verse.label().equals(usualLabel(verses, i))));
        }
        return labelled;
    }

    /** The verses with usual labels renumbered. */
    private static List<Verse> counted(List<Labelled> labelled) {
        List<Verse> verses = labelled.stream().map(Labelled::verse).toList();
        return IntStream.range(0, verses.size())
                .mapToObj(
                        i -> labelled.get(i).isUsual() ? verses.get(i).withLabel(usualLabel(verses, i)) : verses.get(i))
                .toList();
    }

    /** A verse for the congregation in four parts on the main manual, with nothing drawn. */
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
     * The verses of a new hymn: an introduction and the sung verses, the last one of kind "last verse".
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
