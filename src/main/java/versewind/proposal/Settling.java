package versewind.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import versewind.organ.IndexSet;
import versewind.organ.Registration;
import versewind.rules.ChorusFaults;

/**
 * Verse after verse, what nobody hears: a manual that rests stands as it will be played next, so that going to it is
 * one movement of the hands; else as it was played last. Boxes that nobody hears stay where they were. What a piston
 * sets is exactly what is heard.
 */
final class Settling {

    private final List<Chosen> verses;
    private final ChorusFaults faults;
    private final List<Registration> settled = new ArrayList<>();

    /**
     * What is chosen for a verse.
     *
     * @param candidate what is drawn
     * @param requirement what the verse wants
     * @param follows whether it follows the verse before it without a rest
     * @param isByHand whether it is drawn by hand
     */
    record Chosen(Candidate candidate, Requirement requirement, boolean follows, boolean isByHand) {

        Registration drawn() {
            return candidate.draft().registration();
        }
    }

    Settling(List<Chosen> verses, ChorusFaults faults) {
        this.verses = verses;
        this.faults = faults;
        for (int verse = 0; verse < verses.size(); verse++) {
            settled.add(settled(verse));
        }
    }

    /** The registrations, verse after verse. */
    List<Registration> registrations() {
        return List.copyOf(settled);
    }

    private Registration settled(int verse) {
        Chosen here = verses.get(verse);
        Registration boxed = boxed(verse);
        if (!here.isByHand()) {
            return boxed;
        }
        Candidate candidate = here.candidate();
        IndexSet stops = resting(verse, Heard::stops, Registration::stops);
        IndexSet couplers = resting(verse, Heard::couplers, Registration::couplers);
        Registration full = boxed.withStops(boxed.stops()
                        .plus(stops.minus(here.requirement().locks().never())))
                .withCouplers(boxed.couplers().plus(couplers));
        Heard heard = Heard.of(faults.played(
                full, candidate.draft().hands(), here.requirement().company()));
        boolean isUnheard = heard.equals(candidate.heard());
        return isUnheard ? full : boxed;
    }

    private Registration boxed(int verse) {
        Chosen here = verses.get(verse);
        return here.follows() ? boxed(here.candidate(), here.requirement(), settled.get(verse - 1)) : here.drawn();
    }

    /** A candidate with the boxes that nobody hears as they were before, unless the plan keeps them. */
    static Registration boxed(Candidate candidate, Requirement requirement, Registration before) {
        Registration boxed = candidate.draft().registration();
        for (int division = 0;
                requirement.boxes().isEmpty() && division < boxed.boxes().size();
                division++) {
            boxed = candidate.heard().boxes().contains(division)
                    ? boxed
                    : boxed.withBox(division, before.boxes().get(division));
        }
        return boxed;
    }

    /** The knobs that are drawn though nobody hears them. */
    private IndexSet resting(int verse, Function<Heard, IndexSet> heard, Function<Registration, IndexSet> drawn) {
        IndexSet all = IndexSet.EMPTY;
        for (int other = first(verse); other <= last(verse); other++) {
            all = all.plus(drawn.apply(verses.get(other).drawn()));
        }
        IndexSet hereHeard = heard.apply(verses.get(verse).candidate().heard());
        return IndexSet.of(all.minus(hereHeard).stream().filter(knob -> isToStand(verse, knob, heard, drawn)));
    }

    private boolean isToStand(
            int verse, int knob, Function<Heard, IndexSet> heard, Function<Registration, IndexSet> drawn) {
        return IntStream.rangeClosed(verse + 1, last(verse))
                .filter(next ->
                        heard.apply(verses.get(next).candidate().heard()).contains(knob))
                .mapToObj(next -> drawn.apply(verses.get(next).drawn()).contains(knob))
                .findFirst()
                .orElseGet(() -> verses.get(verse).follows()
                        && drawn.apply(settled.get(verse - 1)).contains(knob));
    }

    /** The first verse from which hands alone lead to this one. */
    private int first(int verse) {
        int first = verse;
        while (verses.get(first).follows()) {
            first--;
        }
        return first;
    }

    /** The last verse to which hands alone lead from this one. */
    private int last(int verse) {
        int last = verse;
        while (last + 1 < verses.size()
                && verses.get(last + 1).follows()
                && verses.get(last + 1).isByHand()) {
            last++;
        }
        return last;
    }
}
