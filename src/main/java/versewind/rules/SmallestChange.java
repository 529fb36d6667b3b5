package versewind.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import versewind.organ.BoxPosition;
import versewind.organ.Coupler;
import versewind.organ.Family;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.Stop;
import versewind.plan.Mood;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.sound.Estimate;
import versewind.sound.Verdict;

/**
 * The single movement that brings a verse to the balance it wants: a box, else a stop, else a coupler; of these the one
 * that changes the loudness least. It breaks no rule of choruses that was kept, draws nothing before what it stands on,
 * and neither mixtures nor reeds in a gentle verse.
 */
final class SmallestChange {

    private final InHymn hymn;
    private final Verse verse;
    private final Estimate before;
    private final double weightBefore;
    private final boolean hasPrincipals;
    private final BuildingOrder order;

    private SmallestChange(InHymn hymn, int index) {
        this.hymn = hymn;
        verse = hymn.verse(index);
        before = hymn.estimate(index);
        hasPrincipals =
                hymn.faults().played(verse).choruses().stream().anyMatch(chorus -> chorus.has(Family.PRINCIPAL));
        weightBefore = weight(verse);
        order = new BuildingOrder(hymn.organ());
    }

    /** The change that makes the verdict good, or at least no longer wanting attention. */
    static Optional<Mend> to(InHymn hymn, int index, Verdict.Way way) {
        SmallestChange search = new SmallestChange(hymn, index);
        List<List<Registration>> kinds = List.of(search.boxes(way), search.stops(way), search.couplers(way));
        return search.first(kinds, verdict -> verdict.way() == Verdict.Way.NONE)
                .or(() -> search.first(kinds, SmallestChange::isBetter))
                .map(after -> hymn.drawing(index, after));
    }

    private static boolean isBetter(Verdict verdict) {
        return !verdict.wantsAttention();
    }

    @FunctionalInterface
    private interface Wanted {
        boolean is(Verdict verdict);
    }

    private Optional<Registration> first(List<List<Registration>> kinds, Wanted wanted) {
        if (wanted.is(before.margin().verdict())) {
            return Optional.empty();
        }
        for (List<Registration> kind : kinds) {
            Optional<Registration> best = gentlest(kind, wanted);
            if (best.isPresent()) {
                return best;
            }
        }
        return Optional.empty();
    }

    private Optional<Registration> gentlest(List<Registration> candidates, Wanted wanted) {
        Optional<Registration> best = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        for (Registration candidate : candidates) {
            Verse changed = verse.withRegistration(candidate);
            Estimate after = hymn.estimate(changed);
            double change = Math.abs(after.sone() - before.sone());
            if (change < least && wanted.is(after.margin().verdict()) && weight(changed) <= weightBefore) {
                best = Optional.of(candidate);
                least = change;
            }
        }
        return best;
    }

    private double weight(Verse candidate) {
        return hymn.faults().in(candidate).stream()
                .mapToDouble(ChorusFault::weight)
                .sum();
    }

    private List<Registration> boxes(Verdict.Way way) {
        List<Registration> moved = new ArrayList<>();
        Registration drawn = verse.registration();
        for (int division = 0; division < drawn.boxes().size(); division++) {
            if (!hymn.organ().divisions().get(division).isEnclosed()) {
                continue;
            }
            for (BoxPosition position : BoxPosition.values()) {
                int step = position.compareTo(drawn.boxes().get(division));
                if (step != 0 && step > 0 == (way == Verdict.Way.STRONGER)) {
                    moved.add(drawn.withBox(division, position));
                }
            }
        }
        return moved;
    }

    private List<Registration> stops(Verdict.Way way) {
        Registration drawn = verse.registration();
        IndexSet all = IndexSet.range(hymn.organ().stops().size());
        IndexSet moved = way == Verdict.Way.STRONGER ? all.minus(drawn.stops()) : drawn.stops();
        return moved.stream()
                .filter(stop -> way == Verdict.Way.SOFTER || (leads(stop) && order.mayDraw(drawn.stops(), stop)))
                .filter(stop -> !verse.locks().never().contains(stop)
                        && !verse.locks().always().contains(stop))
                .mapToObj(drawn::toggleStop)
                .toList();
    }

    /**
     * Whether a stop leads: of a manual, 8 ft or higher, and of the chorus; a flute among principals adds too little.
     */
    private boolean leads(int stop) {
        Instrument organ = hymn.organ();
        Stop voice = organ.stops().get(stop).stop();
        boolean isPedal =
                organ.divisions().get(organ.stops().get(stop).division()).isPedal();
        boolean isLow = voice.footage()
                .filter(footage -> footage.feet() > Pitch.UNISON_FEET)
                .isPresent();
        return !isPedal
                && !isLow
                && switch (voice.family()) {
                    case PRINCIPAL -> true;
                    case MIXTURE, CHORUS_REED -> verse.mood() != Mood.GENTLE && verse.singing() != Singing.GENTLE;
                    case FLUTE -> !hasPrincipals;
                    case STRING, CELESTE, MUTATION, CORNET, SOLO_REED -> false;
                };
    }

    private boolean isOfManuals(Coupler coupler) {
        Instrument organ = hymn.organ();
        return !organ.divisions()
                .get(organ.division(coupler.keyboard()).orElseThrow())
                .isPedal();
    }

    /** Of the couplers only those at unison pitch: the others change the sound more than the level. */
    private List<Registration> couplers(Verdict.Way way) {
        Registration drawn = verse.registration();
        Instrument organ = hymn.organ();
        return IntStream.range(0, organ.couplers().size())
                .filter(i -> organ.couplers().get(i).kind() == Coupler.Kind.UNISON)
                .filter(i -> way == Verdict.Way.SOFTER
                        || isOfManuals(organ.couplers().get(i)))
                .filter(i -> drawn.couplers().contains(i) == (way == Verdict.Way.SOFTER))
                .mapToObj(drawn::toggleCoupler)
                .toList();
    }
}
