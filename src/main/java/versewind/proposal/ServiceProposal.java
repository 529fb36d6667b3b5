package versewind.proposal;

import java.util.ArrayList;
import java.util.List;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;

/**
 * One registration for every verse of a hymn or a service, chosen together.
 *
 * @param verses what is proposed, in the order of the plan; verses for which nothing can be proposed, or that were not
 *     reached before the search was stopped, are left out
 * @param cost of all together: their scores, and what has to be moved from verse to verse
 * @param bound the least that the same candidates can cost; the cost itself where the search was exact
 * @param greedyCost what the same candidates cost when each verse is chosen by itself after the one before
 * @param unsearched number of verses that were not reached
 */
public record ServiceProposal(List<OfVerse> verses, double cost, double bound, double greedyCost, int unsearched) {

    /** Nothing was searched. */
    public static final ServiceProposal NOTHING = new ServiceProposal(List.of(), 0, 0, 0, 0);

    public ServiceProposal {
        verses = List.copyOf(verses);
    }

    /**
     * What is proposed for a verse.
     *
     * @param place of the verse
     * @param proposal what to draw
     * @param piston the general that sets it, "G3"; blank for none
     */
    public record OfVerse(VersePlace place, Proposal proposal, String piston) {}

    /** Number of pistons that are set. */
    public int pistons() {
        return (int) verses.stream()
                .map(OfVerse::piston)
                .filter(piston -> !piston.isBlank())
                .distinct()
                .count();
    }

    /** The plan with all of it drawn. */
    public Plan on(Plan plan) {
        Plan drawn = plan;
        for (OfVerse each : verses) {
            Hymn hymn = drawn.hymns().get(each.place().hymn());
            List<Verse> others = new ArrayList<>(hymn.verses());
            Verse verse = others.get(each.place().verse());
            others.set(each.place().verse(), each.proposal().on(verse).withPiston(each.piston()));
            drawn = drawn.withHymn(each.place().hymn(), hymn.withVerses(others));
        }
        return drawn;
    }
}
