package versewind.rules;

import java.util.List;
import java.util.Optional;
import versewind.organ.IndexSet;
import versewind.organ.Registration;
import versewind.plan.Verse;

/**
 * The pedal balances the manuals: its own stops have no more than {@link Practice#PEDAL_SHARE} of the loudness. Common
 * practice, no source; the number is an estimate.
 */
final class BoomingPedal implements VerseRule {

    @Override
    public Optional<UnfixedFinding> judge(InHymn hymn, int index) {
        Optional<Chorus> pedal = hymn.pedal(index);
        if (pedal.isEmpty() || hymn.estimate(index).isSilent()) {
            return Optional.empty();
        }
        double share = share(hymn, index, pedal.get());
        return share < Practice.PEDAL_SHARE
                ? Optional.empty()
                : Optional.of(UnfixedFinding.caution(
                        hymn,
                        index,
                        Rule.PEDAL_BOOMS,
                        List.of(new Figure("pedal", share, Figure.Unit.SHARE)),
                        "The pedal booms: its stops make " + Math.round(100 * share) + " % of the loudness.",
                        () -> lighter(hymn, index, pedal.get())));
    }

    /** The share of the loudness in sone that is gone without the pedal's stops. */
    static double share(InHymn hymn, int index, Chorus pedal) {
        Verse verse = hymn.verse(index);
        double without =
                hymn.estimate(verse.withRegistration(pedal.without(own(pedal)))).sone();
        double whole = hymn.estimate(index).sone();
        return 1 - without / whole;
    }

    private static IndexSet own(Chorus pedal) {
        return pedal.sounding(stop -> pedal.specification().divisionOf(stop) == pedal.division());
    }

    /** The pedal stop to put in after which it booms no more and the bass still sounds as it should. */
    private static Optional<Mend> lighter(InHymn hymn, int index, Chorus pedal) {
        Verse verse = hymn.verse(index);
        int faults = hymn.faults().in(verse).size();
        return own(pedal).stream()
                .mapToObj(stop -> pedal.without(IndexSet.of(stop)))
                .filter(drawn -> hymn.faults().in(verse.withRegistration(drawn)).size() <= faults)
                .filter(drawn -> isBalanced(hymn, verse, drawn, pedal))
                .findFirst()
                .map(drawn -> Mend.drawing(hymn.organ(), hymn.place(index), verse, drawn));
    }

    private static boolean isBalanced(InHymn hymn, Verse verse, Registration drawn, Chorus pedal) {
        double whole = hymn.estimate(verse.withRegistration(drawn)).sone();
        double without =
                hymn.estimate(verse.withRegistration(pedal.without(own(pedal)))).sone();
        return whole > 0 && 1 - without / whole < Practice.PEDAL_SHARE;
    }
}
