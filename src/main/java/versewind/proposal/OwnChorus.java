package versewind.proposal;

import versewind.organ.IndexSet;
import versewind.plan.Mood;

/**
 * What is coupled to the hands is a chorus of its own: it stands on 8 ft, its mixture on 4 ft, its reeds on flues. Common
 * practice, no source.
 */
final class OwnChorus {

    private static final double NO_EIGHT = 0.5;
    private static final double BARE_MIXTURE = 0.8;
    private static final double BARE_REED = 0.8;
    private static final double REED_WITHOUT_EIGHT = 2;
    private static final double REED_BEFORE_FLUE = 1.3;
    private static final double NO_SECOND = 0.25;
    private static final double NO_SECOND_IN_FULL = 0.6;

    /** For every reed of a division that is meant for solos, by mood: gentle, plain, bright, festal. */
    private static final double[] SOLO_REED = {6, 5, 4, 1.2};

    private static final double SOLO_REED_BEFORE_FULL = 2;
    private static final double OPEN_REEDS_FIRST = 1.4;
    private static final double OPEN_16_FIRST = 0.6;
    private static final double REED_BEFORE_ITS_EIGHT = 0.6;
    private static final double RANK_PASSED_OVER = 0.4;
    private static final double REEDS_WITHOUT_UPPERWORK = 0.3;
    private static final double ONLY_AN_OCTAVE_OFF = 2;

    private final Disposition organ;
    private final Wish wish;
    private final boolean[] isForSolos;
    private final boolean[] hasReeds;
    private final boolean[] hasTwo;
    private final boolean[] hasMixture;
    private final boolean hasBoxed16;

    OwnChorus(Disposition organ, Wish wish) {
        this.organ = organ;
        this.wish = wish;
        isForSolos = new boolean[organ.organ().divisions().size()];
        hasReeds = new boolean[isForSolos.length];
        hasTwo = new boolean[isForSolos.length];
        hasMixture = new boolean[isForSolos.length];
        boolean boxed16 = false;
        for (int division = 0; division < isForSolos.length; division++) {
            isForSolos[division] = organ.isForSolos(division);
            for (int stop : organ.stopsOf(division)) {
                if (!wish.locks().never().contains(stop)) {
                    Layer layer = organ.layer(stop);
                    hasReeds[division] |= layer == Layer.REED_8;
                    hasTwo[division] |= layer == Layer.PRINCIPAL_2 || layer == Layer.FLUTE_2;
                    hasMixture[division] |= layer == Layer.MIXTURE;
                    boxed16 |= layer == Layer.REED_16 && organ.isEnclosed(division);
                }
            }
        }
        hasBoxed16 = boxed16;
    }

    void add(Sounding sounding, Tally tally) {
        if (sounding.isSoloed()) {
            return;
        }
        addReeds(sounding, tally);
        addOpenReeds(sounding, tally);
        addSecond(sounding, tally);
        for (int division = 0; division < organ.organ().divisions().size(); division++) {
            if (division != organ.pedal() && sounding.isHeard(division)) {
                add(division, sounding, tally);
            }
        }
    }

    /** Chorus reeds come last, after the flue chorus, and those of 8 ft first. */
    private void addReeds(Sounding sounding, Tally tally) {
        int eights = sounding.drawn().inRight(Layer.REED_8);
        int others = sounding.drawn().inRight(Layer.REED_16) + sounding.drawn().inRight(Layer.REED_4);
        if (eights + others == 0) {
            return;
        }
        if (sounding.most().inRight(Layer.REED_8) == 0) {
            tally.add(REED_WITHOUT_EIGHT, "a reed sounds before one of 8 ft");
        }
        int leading = sounding.draft().hands().right();
        Counts most = sounding.most();
        boolean isTwo = hasTwo[leading]
                ? most.underRight(Layer.PRINCIPAL_2) + most.underRight(Layer.FLUTE_2) > 0
                : most.inRight(Layer.PRINCIPAL_2) + most.inRight(Layer.FLUTE_2) > 0;
        if (!isTwo && organ.has(Layer.PRINCIPAL_2)) {
            tally.add(REED_BEFORE_FLUE, "a reed sounds before the 2 ft");
        }
        boolean isMixture = hasMixture[leading] ? most.underRight(Layer.MIXTURE) > 0 : most.inRight(Layer.MIXTURE) > 0;
        if (!isMixture && organ.has(Layer.MIXTURE)) {
            tally.add(REED_BEFORE_FLUE, "a reed sounds before the mixture");
        }
    }

    /** The reeds of a box, which can be held back, come before those that stand in the open. */
    private void addOpenReeds(Sounding sounding, Tally tally) {
        if (!wish.isPeople() || !isBoxReachable(sounding)) {
            return;
        }
        int open = 0;
        int open16 = 0;
        int inBox = 0;
        int inBox16 = 0;
        for (int division : organ.organ().manualDivisions()) {
            if (sounding.isInRight(division) && organ.isEnclosed(division)) {
                inBox += reeds(sounding.most(), division);
                inBox16 += sounding.most().in(division, Layer.REED_16);
            } else if (sounding.isInRight(division)) {
                open += reeds(sounding.drawn(), division);
                open16 += sounding.drawn().in(division, Layer.REED_16);
            }
        }
        tally.add(open > 0 && inBox == 0 ? OPEN_REEDS_FIRST : 0, "the reeds of a box would come first");
        tally.add(
                open16 > 0 && inBox16 == 0 && hasBoxed16 ? OPEN_16_FIRST : 0,
                "the 16 ft reed of a box would come first");
    }

    private boolean isBoxReachable(Sounding sounding) {
        for (int coupler = 0; coupler < organ.couplers(); coupler++) {
            int source = organ.sourceOf(coupler);
            boolean isToHand =
                    organ.keyboardOf(coupler) == sounding.draft().hands().right();
            if (isToHand && organ.isEnclosed(source) && hasReeds[source] && !isForSolos[source]) {
                return true;
            }
        }
        return false;
    }

    /** The people are led by two choruses coupled, where there are two. */
    private void addSecond(Sounding sounding, Tally tally) {
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

    private static boolean isChorus(int division, Sounding sounding) {
        return fours(sounding.most(), division) > 0;
    }

    private void add(int division, Sounding sounding, Tally tally) {
        if (!sounding.isAtPitch(division)) {
            tally.add(ONLY_AN_OCTAVE_OFF, "a division sounds only an octave off");
        }
        addRanks(division, sounding, tally);
        int reeds = reeds(sounding.drawn(), division);
        if (isForSolos[division]) {
            addSoloReeds(reeds, sounding, tally);
            if (reeds == sounding.drawn().drawnIn(division) && wish.mood() == Mood.FESTAL) {
                return;
            }
        }
        boolean isEightMissed = hasReeds[division] && sounding.most().in(division, Layer.REED_8) == 0;
        tally.add(
                reeds > 0 && isEightMissed ? REED_BEFORE_ITS_EIGHT : 0,
                "a reed stands without the 8 ft of its division");
        if (organ.isEnclosed(division) && reeds > 0 && wish.isPeople()) {
            addUpperwork(division, sounding.most(), tally);
        }
        int eights = eights(sounding.most(), division);
        int fours = fours(sounding.most(), division);
        if (eights == 0) {
            tally.add(NO_EIGHT, "a division that is coupled has no 8 ft of its own");
        }
        if (fours == 0 && sounding.drawn().in(division, Layer.MIXTURE) > 0) {
            tally.add(BARE_MIXTURE, "a mixture stands without a 4 ft of its division");
        }
        if (eights + fours < 2 && reeds > 0) {
            tally.add(BARE_REED, "reeds stand without flues of their division");
        }
    }

    /** Single high ranks are added one after another, from the lowest. */
    private void addRanks(int division, Sounding sounding, Tally tally) {
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

    /** Reeds meant for solos join the people's chorus last of all, when everything else is there. */
    private void addSoloReeds(int reeds, Sounding sounding, Tally tally) {
        if (reeds == 0 || !wish.isPeople()) {
            return;
        }
        tally.add(reeds * SOLO_REED[wish.layers().ordinal()], "reeds meant for solos join the chorus");
        boolean isFull = true;
        for (int division : organ.organ().manualDivisions()) {
            boolean isWanted = hasReeds[division] && !isForSolos[division] && sounding.isInRight(division);
            isFull &= !isWanted || reeds(sounding.most(), division) > 0;
        }
        tally.add(isFull ? 0 : SOLO_REED_BEFORE_FULL, "reeds meant for solos come before those of the chorus");
    }

    /** The reeds of a box crown its own upperwork. */
    private void addUpperwork(int division, Counts most, Tally tally) {
        boolean isTwoMissed = most.in(division, Layer.PRINCIPAL_2) + most.in(division, Layer.FLUTE_2) == 0;
        boolean isMixtureMissed = most.in(division, Layer.MIXTURE) == 0;
        tally.add(isTwoMissed && hasTwo[division] ? REEDS_WITHOUT_UPPERWORK : 0, UPPERWORK);
        tally.add(isMixtureMissed && hasMixture[division] ? REEDS_WITHOUT_UPPERWORK : 0, UPPERWORK);
    }

    private static final String UPPERWORK = "reeds in a box stand without the upperwork of their division";

    private static int eights(Counts counts, int division) {
        return counts.in(division, Layer.PRINCIPAL_8)
                + counts.in(division, Layer.FLUTE_8)
                + counts.in(division, Layer.STRING_8);
    }

    private static int fours(Counts counts, int division) {
        return counts.in(division, Layer.PRINCIPAL_4) + counts.in(division, Layer.FLUTE_4);
    }

    private static int reeds(Counts counts, int division) {
        return counts.in(division, Layer.REED_8)
                + counts.in(division, Layer.REED_16)
                + counts.in(division, Layer.REED_4);
    }
}
