package versewind.proposal;

import java.util.stream.IntStream;
import versewind.plan.Mood;
import versewind.rules.OrganFacts;
import versewind.rules.StopClass;

/**
 * In what order reeds join the people's chorus: after its flues, those of a box before those that stand in the open,
 * those of 8 ft before deeper and higher ones, and those meant for solos last of all. Common practice, no source.
 */
final class Reeds {

    private final OrganFacts organ;
    private final Requirement requirement;
    private final OpenClasses open;
    private final boolean hasBoxed16;

    Reeds(OrganFacts organ, Requirement requirement) {
        this.organ = organ;
        this.requirement = requirement;
        open = new OpenClasses(organ, requirement.locks().never());
        hasBoxed16 = IntStream.range(0, organ.organ().divisions().size())
                .anyMatch(division -> organ.isEnclosed(division) && open.has(division, StopClass.REED_16));
    }

    /** What concerns all that the right hand sounds. */
    void add(DraftAnalysis sounding, Tally tally) {
        addOrder(sounding, tally);
        addOpenReeds(sounding, tally);
    }

    /** What concerns one division that is heard. */
    void add(int division, DraftAnalysis sounding, Tally tally) {
        int drawn = in(division, sounding.drawn());
        if (organ.isForSolos(division)) {
            addSoloReeds(drawn, sounding, tally);
        }
        boolean isEightMissed =
                open.has(division, StopClass.REED_8) && sounding.most().in(division, StopClass.REED_8) == 0;
        boolean isReedAlone = drawn == sounding.drawn().drawnIn(division);
        if (organ.isForSolos(division) && isReedAlone && requirement.mood() == Mood.FESTAL) {
            return;
        }
        tally.addIf(drawn > 0 && isEightMissed, Cost.REED_WITHOUT_ITS_EIGHT);
        if (organ.isEnclosed(division) && drawn > 0 && requirement.isPeople()) {
            addUpperwork(division, sounding.most(), tally);
        }
    }

    /** How many chorus reeds of a division are drawn. */
    static int in(int division, Counts counts) {
        return counts.in(division, StopClass.REED_8)
                + counts.in(division, StopClass.REED_16)
                + counts.in(division, StopClass.REED_4);
    }

    /** Chorus reeds come last, after the flue chorus, and those of 8 ft first. */
    private void addOrder(DraftAnalysis sounding, Tally tally) {
        int eights = sounding.drawn().inRight(StopClass.REED_8);
        int others =
                sounding.drawn().inRight(StopClass.REED_16) + sounding.drawn().inRight(StopClass.REED_4);
        if (eights + others == 0) {
            return;
        }
        if (sounding.most().inRight(StopClass.REED_8) == 0) {
            tally.add(Cost.REED_BEFORE_EIGHT);
        }
        int leading = sounding.draft().hands().right();
        Counts most = sounding.most();
        boolean isTwo = open.hasTwo(leading)
                ? most.underRight(StopClass.PRINCIPAL_2) + most.underRight(StopClass.FLUTE_2) > 0
                : most.inRight(StopClass.PRINCIPAL_2) + most.inRight(StopClass.FLUTE_2) > 0;
        if (!isTwo && organ.has(StopClass.PRINCIPAL_2)) {
            tally.add(Cost.REED_BEFORE_TWO);
        }
        boolean isMixture = open.has(leading, StopClass.MIXTURE)
                ? most.underRight(StopClass.MIXTURE) > 0
                : most.inRight(StopClass.MIXTURE) > 0;
        if (!isMixture && organ.has(StopClass.MIXTURE)) {
            tally.add(Cost.REED_BEFORE_MIXTURE);
        }
    }

    /** The reeds of a box, which can be held back, come before those that stand in the open. */
    private void addOpenReeds(DraftAnalysis sounding, Tally tally) {
        if (!requirement.isPeople() || !isBoxReachable(sounding)) {
            return;
        }
        int unboxed = 0;
        int unboxed16 = 0;
        int inBox = 0;
        int inBox16 = 0;
        for (int division : organ.manuals()) {
            if (sounding.isInRight(division) && organ.isEnclosed(division)) {
                inBox += in(division, sounding.most());
                inBox16 += sounding.most().in(division, StopClass.REED_16);
            } else if (sounding.isInRight(division)) {
                unboxed += in(division, sounding.drawn());
                unboxed16 += sounding.drawn().in(division, StopClass.REED_16);
            }
        }
        tally.addIf(unboxed > 0 && inBox == 0, Cost.OPEN_REEDS_FIRST);
        tally.addIf(unboxed16 > 0 && inBox16 == 0 && hasBoxed16, Cost.OPEN_SIXTEEN_FIRST);
    }

    private boolean isBoxReachable(DraftAnalysis sounding) {
        for (int coupler = 0; coupler < organ.couplers(); coupler++) {
            int source = organ.sourceOf(coupler);
            boolean isToHand =
                    organ.keyboardOf(coupler) == sounding.draft().hands().right();
            if (isToHand
                    && organ.isEnclosed(source)
                    && open.has(source, StopClass.REED_8)
                    && !organ.isForSolos(source)) {
                return true;
            }
        }
        return false;
    }

    /** Reeds meant for solos join the people's chorus last of all, when everything else is there. */
    private void addSoloReeds(int drawn, DraftAnalysis sounding, Tally tally) {
        if (drawn == 0 || !requirement.isPeople()) {
            return;
        }
        tally.add(drawn * Cost.SOLO_REED.points(requirement.layers()), Cost.SOLO_REED.words());
        boolean isFull = true;
        for (int division : organ.manuals()) {
            boolean isWanted =
                    open.has(division, StopClass.REED_8) && !organ.isForSolos(division) && sounding.isInRight(division);
            isFull &= !isWanted || in(division, sounding.most()) > 0;
        }
        tally.addIf(!isFull, Cost.SOLO_REED_BEFORE_FULL);
    }

    /** The reeds of a box crown its own upperwork. */
    private void addUpperwork(int division, Counts most, Tally tally) {
        boolean isTwoMissed = most.in(division, StopClass.PRINCIPAL_2) + most.in(division, StopClass.FLUTE_2) == 0;
        boolean isMixtureMissed = most.in(division, StopClass.MIXTURE) == 0;
        tally.addIf(isTwoMissed && open.hasTwo(division), Cost.REEDS_WITHOUT_UPPERWORK);
        tally.addIf(isMixtureMissed && open.has(division, StopClass.MIXTURE), Cost.REEDS_WITHOUT_UPPERWORK);
    }
}
