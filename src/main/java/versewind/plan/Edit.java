package versewind.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A change of a plan as a value; its inverse restores the plan exactly.
 */
public sealed interface Edit {

    /** The plan after the change. */
    Plan apply(Plan plan);

    /**
     * The change that takes this one back.
     *
     * @param before the plan to which this change is applied
     */
    Edit inverse(Plan before);

    /** The verse at which the change is shown. */
    VersePlace place();

    /** Other title, date, people or notes of the service. */
    record SetHeading(ServiceHeading heading) implements Edit {
        @Override
        public Plan apply(Plan plan) {
            return plan.withHeading(heading);
        }

        @Override
        public Edit inverse(Plan before) {
            return new SetHeading(before.heading());
        }

        @Override
        public VersePlace place() {
            return VersePlace.START;
        }
    }

    /** Another hymn in the place of one. */
    record SetHymn(int hymn, Hymn value) implements Edit {
        @Override
        public Plan apply(Plan plan) {
            return plan.withHymn(hymn, value);
        }

        @Override
        public Edit inverse(Plan before) {
            return new SetHymn(hymn, before.hymns().get(hymn));
        }

        @Override
        public VersePlace place() {
            return new VersePlace(hymn, 0);
        }
    }

    /**
     * Other hymns in the place of all.
     *
     * @param hymns all hymns after the change
     * @param place where the change can be seen
     */
    record SetHymns(List<Hymn> hymns, VersePlace place) implements Edit {

        public SetHymns {
            hymns = List.copyOf(hymns);
        }

        @Override
        public Plan apply(Plan plan) {
            return plan.withHymns(hymns);
        }

        @Override
        public Edit inverse(Plan before) {
            return new SetHymns(before.hymns(), place);
        }
    }

    /** A hymn put in before the one at an index, or at the end. */
    record InsertHymn(int hymn, Hymn value) implements Edit {
        @Override
        public Plan apply(Plan plan) {
            return plan.withHymns(inserted(plan.hymns(), hymn, value));
        }

        @Override
        public Edit inverse(Plan before) {
            return new RemoveHymn(hymn);
        }

        @Override
        public VersePlace place() {
            return new VersePlace(hymn, 0);
        }
    }

    /** A hymn taken out. */
    record RemoveHymn(int hymn) implements Edit {
        @Override
        public Plan apply(Plan plan) {
            return plan.withHymns(removed(plan.hymns(), hymn));
        }

        @Override
        public Edit inverse(Plan before) {
            return new InsertHymn(hymn, before.hymns().get(hymn));
        }

        @Override
        public VersePlace place() {
            return new VersePlace(hymn, 0);
        }
    }

    /** Two neighbouring hymns change places: the one at the index and the one after it. */
    record SwapHymns(int hymn) implements Edit {
        @Override
        public Plan apply(Plan plan) {
            return plan.withHymns(swapped(plan.hymns(), hymn));
        }

        @Override
        public Edit inverse(Plan before) {
            return this;
        }

        @Override
        public VersePlace place() {
            return new VersePlace(hymn, 0);
        }
    }

    /** Another verse in the place of one. */
    record SetVerse(int hymn, int verse, Verse value) implements Edit {
        @Override
        public Plan apply(Plan plan) {
            List<Verse> verses = new ArrayList<>(plan.hymns().get(hymn).verses());
            verses.set(verse, value);
            return withVerses(plan, hymn, verses);
        }

        @Override
        public Edit inverse(Plan before) {
            return new SetVerse(hymn, verse, before.hymns().get(hymn).verses().get(verse));
        }

        @Override
        public VersePlace place() {
            return new VersePlace(hymn, verse);
        }
    }

    /**
     * Other verses of a hymn: some put in, taken out, moved or changed together.
     *
     * @param hymn index of the hymn
     * @param seenAt index of the verse where the change can be seen
     * @param verses all verses of the hymn after the change
     */
    record SetVerses(int hymn, int seenAt, List<Verse> verses) implements Edit {

        public SetVerses {
            verses = List.copyOf(verses);
        }

        @Override
        public Plan apply(Plan plan) {
            return withVerses(plan, hymn, verses);
        }

        @Override
        public Edit inverse(Plan before) {
            return new SetVerses(hymn, seenAt, before.hymns().get(hymn).verses());
        }

        @Override
        public VersePlace place() {
            return new VersePlace(hymn, seenAt);
        }
    }

    private static Plan withVerses(Plan plan, int hymn, List<Verse> verses) {
        return plan.withHymn(hymn, plan.hymns().get(hymn).withVerses(verses));
    }

    private static <T> List<T> inserted(List<T> list, int index, T value) {
        List<T> longer = new ArrayList<>(list);
        longer.add(index, value);
        return longer;
    }

    private static <T> List<T> removed(List<T> list, int index) {
        List<T> shorter = new ArrayList<>(list);
        shorter.remove(index);
        return shorter;
    }

    private static <T> List<T> swapped(List<T> list, int index) {
        List<T> swapped = new ArrayList<>(list);
        Collections.swap(swapped, index, index + 1);
        return swapped;
    }
}
