package versewind.screen.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import versewind.organ.Instrument;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.rules.StopChanges;
import versewind.rules.StopChangesByDivision;

/**
 * One plan compared with another of the same organ.
 *
 * @param place the first verse in which they differ, in the second; empty where only the service's details do
 * @param words what was changed: "V2, draw Great Mixture III", "deleted hymn \"Loaf and cup\""
 */
record PlanDifference(Optional<VersePlace> place, String words) {

    /** How a plan was changed into another. */
    static PlanDifference between(Plan before, Plan after, Instrument organ) {
        List<Hymn> was = before.hymns();
        List<Hymn> is = after.hymns();
        if (was.equals(is) || !before.heading().equals(after.heading())) {
            return new PlanDifference(Optional.empty(), "the details of the service");
        }
        int first = firstDifference(was, is);
        VersePlace place = new VersePlace(first, 0);
        if (was.size() != is.size()) {
            return new PlanDifference(
                    Optional.of(place),
                    is.size() > was.size() ? "added " + named(is.get(first)) : "deleted " + named(was.get(first)));
        }
        if (new HashSet<>(was).equals(new HashSet<>(is))) {
            return new PlanDifference(Optional.of(place), "moved " + named(was.get(first)));
        }
        List<Integer> changed = IntStream.range(0, was.size())
                .filter(hymn -> !was.get(hymn).equals(is.get(hymn)))
                .boxed()
                .toList();
        if (changed.size() > 1) {
            int verses = changed.stream()
                    .mapToInt(hymn -> changedVerses(was.get(hymn), is.get(hymn)))
                    .sum();
            return new PlanDifference(Optional.of(place), verses + " verses in " + changed.size() + " hymns");
        }
        return ofHymn(first, was.get(first), is.get(first), organ);
    }

    private static PlanDifference ofHymn(int hymn, Hymn before, Hymn after, Instrument organ) {
        List<Verse> was = before.verses();
        List<Verse> is = after.verses();
        if (was.equals(is)) {
            return new PlanDifference(Optional.of(new VersePlace(hymn, 0)), "the details of " + named(before));
        }
        int first = firstDifference(was, is);
        Optional<VersePlace> place = Optional.of(new VersePlace(hymn, Math.min(first, Math.max(0, is.size() - 1))));
        if (was.size() != is.size()) {
            return new PlanDifference(
                    place,
                    is.size() > was.size()
                            ? "added " + is.get(first).label()
                            : "deleted " + was.get(first).label());
        }
        int changed = changedVerses(before, after);
        return new PlanDifference(
                place,
                changed == 1
                        ? was.get(first).label() + ", " + ofVerse(was.get(first), is.get(first), organ)
                        : changed + " verses of " + named(after));
    }

    private static int changedVerses(Hymn before, Hymn after) {
        int both = Math.min(before.verses().size(), after.verses().size());
        return (int) IntStream.range(0, both)
                .filter(verse ->
                        !before.verses().get(verse).equals(after.verses().get(verse)))
                .count();
    }

    private static String ofVerse(Verse before, Verse after, Instrument organ) {
        List<String> words = new ArrayList<>();
        words.addAll(
                StopChangesByDivision.words(organ, StopChanges.between(before.registration(), after.registration())));
        add(words, before.sungBy(), after.sungBy(), "who sings");
        add(words, before.singing(), after.singing(), "how strongly they sing");
        add(words, before.people(), after.people(), "how many sing");
        add(words, before.sung().share(), after.sung().share(), "how many sing");
        add(words, before.isOptional(), after.isOptional(), "whether it may be left out");
        add(words, before.hands(), after.hands(), "hands and feet");
        add(words, before.piston(), after.piston(), "the piston");
        add(words, before.kind(), after.kind(), "the kind of verse");
        add(words, before.label(), after.label(), "the label");
        add(words, before.note(), after.note(), "the note");
        add(words, before.mood(), after.mood(), "how it is to sound");
        add(words, before.locks(), after.locks(), "what proposals keep");
        add(words, before.answer(), after.answer(), "the feedback");
        add(words, before.silenced(), after.silenced(), "an ignored finding");
        return words.stream().distinct().collect(Collectors.joining("; "));
    }

    private static void add(List<String> words, Object before, Object after, String what) {
        if (!before.equals(after)) {
            words.add(what);
        }
    }

    private static String named(Hymn hymn) {
        return "hymn \"" + hymn.title() + "\"";
    }

    private static <T> int firstDifference(List<T> one, List<T> other) {
        int both = Math.min(one.size(), other.size());
        return IntStream.range(0, both)
                .filter(index -> !one.get(index).equals(other.get(index)))
                .findFirst()
                .orElse(both);
    }
}
