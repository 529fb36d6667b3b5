package versewind.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Two versions of a plan made from a common base, merged verse by verse.
 *
 * @param plan the result; where both versions changed the same thing differently, it has mine
 * @param conflicts what both changed differently, in playing order
 */
public record PlanMerge(Plan plan, List<Conflict> conflicts) {

    public PlanMerge {
        conflicts = List.copyOf(conflicts);
    }

    /**
     * Something that both versions have changed differently.
     *
     * @param hymn index of the hymn in the result; empty for the details of the service
     * @param verse index of the verse; empty for the details of the hymn
     * @param base a plan in which it is as it was
     * @param mine a plan in which it is as in mine
     * @param theirs a plan in which it is as in theirs, at the same place
     */
    public record Conflict(Optional<Integer> hymn, Optional<Integer> verse, Plan base, Plan mine, Plan theirs) {

        /** A plan in which this is as in theirs. */
        public Plan taken(Plan plan) {
            if (hymn.isEmpty()) {
                return plan.withHeading(theirs.heading());
            }
            Hymn other = theirs.hymns().get(hymn.get());
            if (verse.isEmpty()) {
                return plan.withHymn(
                        hymn.get(),
                        other.withVerses(plan.hymns().get(hymn.get()).verses()));
            }
            return plan.withVerse(
                    new VersePlace(hymn.get(), verse.get()), other.verses().get(verse.get()));
        }
    }

    /** A conflict found while the plan that it is in is not yet made. */
    private record Found(Optional<Integer> hymn, Optional<Integer> verse, Object base, Object theirs) {}

    /** Merges two versions. */
    public static PlanMerge of(Plan base, Plan mine, Plan theirs) {
        List<Found> found = new ArrayList<>();
        ServiceHeading heading = one(base.heading(), mine.heading(), theirs.heading())
                .orElseGet(() -> noted(
                        found,
                        new Found(Optional.empty(), Optional.empty(), base.heading(), theirs.heading()),
                        mine.heading()));
        List<Hymn> hymns = new ThreeWay<>(base.hymns(), mine.hymns(), theirs.hymns(), PlanMerge::alike)
                .merged((index, was, my, their) -> merged(index, was, my, their, found));
        Plan plan = new Plan(heading, mine.instrument(), hymns);
        return new PlanMerge(
                plan, found.stream().map(each -> conflict(each, plan)).toList());
    }

    private static Conflict conflict(Found found, Plan mine) {
        return new Conflict(
                found.hymn(), found.verse(), with(mine, found, found.base()), mine, with(mine, found, found.theirs()));
    }

    private static Plan with(Plan plan, Found found, Object other) {
        if (found.hymn().isEmpty()) {
            return plan.withHeading((ServiceHeading) other);
        }
        int hymn = found.hymn().get();
        return other instanceof Verse verse
                ? plan.withVerse(new VersePlace(hymn, found.verse().orElseThrow()), verse)
                : plan.withHymn(
                        hymn, ((Hymn) other).withVerses(plan.hymns().get(hymn).verses()));
    }

    private static boolean alike(Hymn one, Hymn other) {
        return one.number().equals(other.number()) && one.title().equals(other.title());
    }

    private static Hymn merged(int index, Hymn base, Hymn mine, Hymn theirs, List<Found> found) {
        List<Verse> none = List.of();
        Hymn details = one(base.withVerses(none), mine.withVerses(none), theirs.withVerses(none))
                .orElseGet(() -> noted(found, new Found(Optional.of(index), Optional.empty(), base, theirs), mine));
        List<Verse> verses = new ThreeWay<>(base.verses(), mine.verses(), theirs.verses(), (one, other) -> one.label()
                        .equals(other.label()))
                .merged((verse, was, my, their) -> one(was, my, their)
                        .orElseGet(
                                () -> noted(found, new Found(Optional.of(index), Optional.of(verse), was, their), my)));
        return details.withVerses(verses);
    }

    /** The one value that two versions lead to; empty if both changed it differently. */
    private static <T> Optional<T> one(T base, T mine, T theirs) {
        if (mine.equals(theirs) || theirs.equals(base)) {
            return Optional.of(mine);
        }
        return mine.equals(base) ? Optional.of(theirs) : Optional.empty();
    }

    private static <T> T noted(List<Found> found, Found conflict, T kept) {
        found.add(conflict);
        return kept;
    }
}
