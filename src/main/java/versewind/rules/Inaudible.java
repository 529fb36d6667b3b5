package versewind.rules;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import versewind.organ.Division;
import versewind.organ.Family;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.Verse;
import versewind.sound.Estimate;

/**
 * The softest stops add nothing audible to a big chorus: all that can be put in together without a difference of {@link
 * Practice#INAUDIBLE_DB} and {@link Practice#INAUDIBLE_SONE}. Only flutes, strings and solo reeds of the manuals are
 * looked at, and only where the hymn first has them: that is said once, a pedal 16 ft is felt, and what makes up a
 * chorus has its colour. Common practice, no source; the numbers are estimates.
 */
final class Inaudible implements VerseRule {

    @Override
    public Optional<UnfixedFinding> judge(InHymn hymn, int index) {
        Verse verse = hymn.verse(index);
        IndexSet lost = lost(hymn, index);
        if (lost.isEmpty()) {
            return Optional.empty();
        }
        String names = lost.stream()
                .mapToObj(stop -> hymn.organ().stops().get(stop).name().toString())
                .collect(Collectors.joining(", "));
        Registration without =
                verse.registration().withStops(verse.registration().stops().minus(lost));
        return Optional.of(UnfixedFinding.remark(
                hymn,
                index,
                Rule.INAUDIBLE,
                List.of(FindingNumbers.count("stops", lost.size())),
                "Nobody hears whether " + names + (lost.size() == 1 ? " is" : " are") + " drawn.",
                () -> Optional.of(Mend.drawing(hymn.organ(), hymn.place(index), verse, without))));
    }

    private static IndexSet lost(InHymn hymn, int index) {
        Verse verse = hymn.verse(index);
        Estimate whole = hymn.estimate(index);
        IndexSet lost = IndexSet.EMPTY;
        for (int stop : comingIn(hymn, index).stream().toArray()) {
            IndexSet more = lost.with(stop);
            Verse without = verse.withRegistration(
                    verse.registration().withStops(verse.registration().stops().minus(more)));
            if (isTheSame(whole, hymn.estimate(without))
                    && hymn.faults().in(without).size()
                            <= hymn.faults().in(verse).size()) {
                lost = more;
            }
        }
        return lost;
    }

    /** The soft stops that sound here and were drawn in no verse before. */
    private static IndexSet comingIn(InHymn hymn, int index) {
        IndexSet sounding = IndexSet.EMPTY;
        for (Chorus chorus : hymn.faults().choruses(hymn.verse(index))) {
            sounding = sounding.plus(
                    chorus.sounding(stop -> isSoft(hymn.organ(), stop) && !isFoundation(hymn, index, stop)));
        }
        for (Verse earlier : hymn.verses().subList(0, index)) {
            sounding = sounding.minus(earlier.registration().stops());
        }
        return sounding;
    }

    /** Whether a stop is the only 8 ft that is drawn of its division, and others stand on it. */
    private static boolean isFoundation(InHymn hymn, int index, int stop) {
        Instrument organ = hymn.organ();
        int home = organ.stops().get(stop).division();
        List<Integer> others = hymn.verse(index).registration().stops().stream()
                .filter(other -> other != stop && organ.stops().get(other).division() == home)
                .boxed()
                .toList();
        return isUnison(organ, stop) && !others.isEmpty() && others.stream().noneMatch(other -> isUnison(organ, other));
    }

    private static boolean isUnison(Instrument organ, int stop) {
        return organ.stops()
                .get(stop)
                .stop()
                .footage()
                .filter(footage -> footage.feet() == Pitch.UNISON_FEET)
                .isPresent();
    }

    private static boolean isSoft(Instrument organ, int stop) {
        Division home = organ.divisions().get(organ.stops().get(stop).division());
        Family family = organ.stops().get(stop).stop().family();
        return !home.isPedal()
                && switch (family) {
                    case FLUTE, STRING, CELESTE, SOLO_REED -> true;
                    case PRINCIPAL, MUTATION, MIXTURE, CORNET, CHORUS_REED -> false;
                };
    }

    private static boolean isTheSame(Estimate whole, Estimate without) {
        return !without.isSilent()
                && whole.organDba().orElse(0) - without.organDba().orElse(0) < Practice.INAUDIBLE_DB
                && whole.sone() - without.sone() < Practice.INAUDIBLE_SONE;
    }
}
