package versewind.proposal;

import versewind.organ.IndexSet;
import versewind.plan.Mood;

/**
 * What is coupled to the hands is a chorus of its own: it stands on 8 ft, its mixture on 4 ft, its reeds on flues. Common
 * practice, no source.
 */
final class CoupledChorus {

    private static final double NO_EIGHT = 0.5;
    private static final double BARE_MIXTURE = 0.8;
    private static final double MIXTURE_BEFORE_TWO = 1;
    private static final double BARE_REED = 0.8;
    private static final double NO_SECOND = 0.25;
    private static final double NO_SECOND_IN_FULL = 0.6;

    private static final double RANK_PASSED_OVER = 0.4;
    private static final double ONLY_AN_OCTAVE_OFF = 2;

    private final OrganFacts organ;
    private final Requirement wish;
    private final boolean[] isForSolos;
    private final boolean[] hasTwo;
    private final Reeds reeds;

    CoupledChorus(OrganFacts organ, Requirement wish) {
        this.organ = organ;
        this.wish = wish;
        reeds = new Reeds(organ, wish);
        isForSolos = new boolean[organ.organ().divisions().size()];
        hasTwo = new boolean[isForSolos.length];
        for (int division = 0; division < isForSolos.length; division++) {
            isForSolos[division] = organ.isForSolos(division);
            hasTwo[division] = organ.stopsOf(division).stream()
                    .filter(stop -> !wish.locks().never().contains(stop))
                    .anyMatch(stop ->
                            organ.layer(stop) == StopClass.PRINCIPAL_2 || organ.layer(stop) == StopClass.FLUTE_2);
        }
    }

    void add(DraftAnalysis sounding, Tally tally) {
        if (sounding.isSoloed()) {
            return;
        }
        reeds.add(sounding, tally);
        addSecond(sounding, tally);
        for (int division = 0; division < organ.organ().divisions().size(); division++) {
            if (division != organ.pedal() && sounding.isHeard(division)) {
                add(division, sounding, tally);
            }
        }
    }

    /** The people are led by two choruses coupled, where there are two. */
    private void addSecond(DraftAnalysis sounding, Tally tally) {
        if (!wish.isPeople() || wish.mood() == Mood.GENTLE) {
            return;
        }
        IndexSet couplers = sounding.draft().couplers();
        boolean isPossible = false;
        for (int coupler = 0; coupler < organ.couplers(); coupler++) {
            boolean isToHand =
                    organ.keyboardOf(coupler) == sounding.draft().hands().right()
                            && organ.sourceOf(coupler) != organ.keyboardOf(coupler)
                            && !isForSolos[organ.sourceOf(coupler)];
            isPossible |= isToHand;
            if (isToHand && couplers.contains(coupler) && isChorus(organ.sourceOf(coupler), sounding)) {
                return;
            }
        }
        if (isPossible) {
            tally.add(wish.mood() == Mood.PLAIN ? NO_SECOND : NO_SECOND_IN_FULL, "a second chorus could be coupled");
        }
    }

    private static boolean isChorus(int division, DraftAnalysis sounding) {
        return fours(sounding.most(), division) > 0;
    }

    private void add(int division, DraftAnalysis sounding, Tally tally) {
        if (!sounding.isAtPitch(division)) {
            tally.add(ONLY_AN_OCTAVE_OFF, "a division sounds only an octave off");
        }
        addRanks(division, sounding, tally);
        reeds.add(division, sounding, tally);
        int drawnReeds = Reeds.in(division, sounding.drawn());
        boolean isReedAlone = drawnReeds == sounding.drawn().drawnIn(division);
        if (isForSolos[division] && isReedAlone && wish.mood() == Mood.FESTAL) {
            return;
        }
        int eights = eights(sounding.most(), division);
        int fours = fours(sounding.most(), division);
        if (eights == 0) {
            tally.add(NO_EIGHT, "a division that is coupled has no 8 ft of its own");
        }
        if (fours == 0 && sounding.drawn().in(division, StopClass.MIXTURE) > 0) {
            tally.add(BARE_MIXTURE, "a mixture stands without a 4 ft of its division");
        }
        boolean isTwoMissed = hasTwo[division]
                && sounding.most().in(division, StopClass.PRINCIPAL_2)
                                + sounding.most().in(division, StopClass.FLUTE_2)
                        == 0;
        if (isTwoMissed && sounding.drawn().in(division, StopClass.MIXTURE) > 0) {
            tally.add(MIXTURE_BEFORE_TWO, "a mixture sounds before the 2 ft of its division");
        }
        if (eights + fours < 2 && drawnReeds > 0) {
            tally.add(BARE_REED, "reeds stand without flues of their division");
        }
    }

    /** Single high ranks are added one after another, from the lowest. */
    private void addRanks(int division, DraftAnalysis sounding, Tally tally) {
        IndexSet drawn = sounding.draft().stops();
        int passedOver = 0;
        int pending = 0;
        for (int stop : organ.ripienoOf(division)) {
            if (drawn.contains(stop)) {
                passedOver += pending;
                pending = 0;
            } else if (!sounding.open().contains(stop)) {
                pending++;
            }
        }
        tally.add(RANK_PASSED_OVER * passedOver, "a lower rank is passed over");
    }

    private static int eights(Counts counts, int division) {
        return counts.in(division, StopClass.PRINCIPAL_8)
                + counts.in(division, StopClass.FLUTE_8)
                + counts.in(division, StopClass.STRING_8);
    }

    private static int fours(Counts counts, int division) {
        return counts.in(division, StopClass.PRINCIPAL_4) + counts.in(division, StopClass.FLUTE_4);
    }
}
