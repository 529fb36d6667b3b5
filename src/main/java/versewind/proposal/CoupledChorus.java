package versewind.proposal;

import versewind.organ.IndexSet;
import versewind.plan.Mood;
import versewind.rules.OrganFacts;
import versewind.rules.StopClass;

/**
 * What is coupled to the hands is a chorus of its own: it stands on 8 ft, its mixture on 4 ft, its reeds on flues.
 * Common practice, no source.
 */
final class CoupledChorus {

    private final OrganFacts organ;
    private final Requirement requirement;
    private final OpenClasses open;
    private final Reeds reeds;

    CoupledChorus(OrganFacts organ, Requirement requirement) {
        this.organ = organ;
        this.requirement = requirement;
        reeds = new Reeds(organ, requirement);
        open = new OpenClasses(organ, requirement.locks().never());
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
        if (!requirement.isPeople() || requirement.mood() == Mood.GENTLE) {
            return;
        }
        IndexSet couplers = sounding.draft().couplers();
        boolean isPossible = false;
        for (int coupler = 0; coupler < organ.couplers(); coupler++) {
            boolean isToHand =
                    organ.keyboardOf(coupler) == sounding.draft().hands().right()
                            && organ.sourceOf(coupler) != organ.keyboardOf(coupler)
                            && !organ.isForSolos(organ.sourceOf(coupler));
            isPossible |= isToHand;
            if (isToHand && couplers.contains(coupler) && isChorus(organ.sourceOf(coupler), sounding)) {
                return;
            }
        }
        if (isPossible) {
            tally.add(Cost.NO_SECOND_CHORUS, requirement.mood());
        }
    }

    private static boolean isChorus(int division, DraftAnalysis sounding) {
        return fours(sounding.most(), division) > 0;
    }

    private void add(int division, DraftAnalysis sounding, Tally tally) {
        if (!sounding.isAtPitch(division)) {
            tally.add(Cost.OCTAVE_OFF);
        }
        addRanks(division, sounding, tally);
        reeds.add(division, sounding, tally);
        int drawnReeds = Reeds.in(division, sounding.drawn());
        boolean isReedAlone = drawnReeds == sounding.drawn().drawnIn(division);
        if (organ.isForSolos(division) && isReedAlone && requirement.mood() == Mood.FESTAL) {
            return;
        }
        int eights = eights(sounding.most(), division);
        int fours = fours(sounding.most(), division);
        if (eights == 0) {
            tally.add(Cost.COUPLED_WITHOUT_EIGHT);
        }
        if (fours == 0 && sounding.drawn().in(division, StopClass.MIXTURE) > 0) {
            tally.add(Cost.MIXTURE_WITHOUT_FOUR);
        }
        boolean isTwoMissed = open.hasTwo(division)
                && sounding.most().in(division, StopClass.PRINCIPAL_2)
                                + sounding.most().in(division, StopClass.FLUTE_2)
                        == 0;
        if (isTwoMissed && sounding.drawn().in(division, StopClass.MIXTURE) > 0) {
            tally.add(Cost.MIXTURE_BEFORE_TWO);
        }
        if (eights + fours < 2 && drawnReeds > 0) {
            tally.add(Cost.REEDS_WITHOUT_FLUES);
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
        tally.add(passedOver, Cost.RANK_PASSED_OVER);
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
