package versewind.proposal;

import versewind.organ.Family;
import versewind.organ.IndexSet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mood;
import versewind.rules.OrganFacts;
import versewind.rules.StopClass;

/**
 * A pedal that suits the manuals: 16 and 8 ft, clear by a coupler, growing alongside them and not before. Common
 * practice, no source.
 */
final class PedalLine {

    private static final double LOUDNESS = 1.6;
    private static final double TOO_LOUD = 2;

    /** How far off in the order from soft to loud is as good. */
    private static final double ABOUT_AS_LOUD = 0.5;

    private static final double NEARLY_AS_LOUD = 0.3;

    /** What a chorus with a mixture or reeds wants beneath it. */
    private static final double LOUDNESS_UNDER_FULL = 0.7;

    private static final double LOUDNESS_OF_EIGHT = 0.8;
    private static final double ABOUT_AS_LOUD_OF_EIGHT = 0.65;

    private final OrganFacts organ;
    private final Requirement requirement;
    private final OpenClasses open;

    PedalLine(OrganFacts organ, Requirement requirement) {
        this.organ = organ;
        this.requirement = requirement;
        open = new OpenClasses(organ, requirement.locks().never());
    }

    void add(DraftAnalysis sounding, Tally tally) {
        if (!sounding.isPedalled()) {
            return;
        }
        IndexSet couplers = sounding.draft().couplers();
        boolean isCoupled = false;
        for (int coupler = 0; coupler < organ.couplers(); coupler++) {
            if (organ.keyboardOf(coupler) == organ.pedal() && couplers.contains(coupler)) {
                isCoupled = true;
                int source = organ.sourceOf(coupler);
                boolean isOfHands = sounding.isSoloed() ? sounding.isInLeft(source) : sounding.isInRight(source);
                if (!isOfHands) {
                    tally.add(Cost.ALIEN_COUPLER);
                }
            }
        }
        if (requirement.isPeople() && requirement.mood() != Mood.GENTLE && !isCoupled && organ.couplers() > 0) {
            tally.add(Cost.PEDAL_NOT_COUPLED);
        }
        if (sounding.draft().hands().layout() != Layout.COUPLED_DOWN) {
            addOwn(sounding, tally);
        }
    }

    private void addOwn(DraftAnalysis sounding, Tally tally) {
        if (sounding.most().inFeet(StopClass.PEDAL_16) == 0 && open.has(StopClass.PEDAL_16)) {
            tally.add(missing16(), "the pedal has no 16 ft");
        }
        if (requirement.isPeople()
                && requirement.mood() != Mood.GENTLE
                && open.has(StopClass.PEDAL_8)
                && sounding.most().inFeet(StopClass.PEDAL_8) == 0) {
            tally.add(Cost.PEDAL_WITHOUT_EIGHT, requirement.layers());
        }
        if (requirement.isPeople()
                && requirement.mood() == Mood.FESTAL
                && open.has(StopClass.PEDAL_4)
                && sounding.most().inFeet(StopClass.PEDAL_4) == 0) {
            tally.add(Cost.PEDAL_WITHOUT_FOUR);
        }
        tally.add(sounding.drawn().inFeet(StopClass.PEDAL_16) - enough(), Cost.SECOND_PEDAL_SIXTEEN);
        tally.add(sounding.drawn().inFeet(StopClass.PEDAL_8) - enough(), Cost.SECOND_PEDAL_EIGHT);
        if (!requirement.isPeople() || isGentle()) {
            for (int place = 0; place < sounding.count(); place++) {
                int stop = sounding.stop(place);
                if (organ.divisionOf(stop) == organ.pedal() && organ.stop(stop).family() == Family.PRINCIPAL) {
                    tally.add(Cost.PEDAL_TOO_FIRM, stop);
                }
            }
        }
        addLoudness(sounding, StopClass.PEDAL_16, LOUDNESS, isGentle() ? NEARLY_AS_LOUD : ABOUT_AS_LOUD, tally);
        addLoudness(sounding, StopClass.PEDAL_8, LOUDNESS_OF_EIGHT, ABOUT_AS_LOUD_OF_EIGHT, tally);
        if (hasPedalReeds(sounding.drawn()) && !hasReeds(sounding.most())) {
            tally.add(Cost.PEDAL_REED_ALONE);
        }
        if (hasReeds(sounding.drawn())
                && open.has(StopClass.PEDAL_REED_16)
                && !hasPedalReeds(sounding.most())
                && requirement.isPeople()) {
            tally.add(Cost.PEDAL_REED_MISSING);
        }
        if (sounding.drawn().inFeet(StopClass.PEDAL_MIXTURE) > 0
                && sounding.most().inRight(StopClass.MIXTURE) == 0) {
            tally.add(Cost.PEDAL_MIXTURE_ALONE);
        }
    }

    private boolean isGentle() {
        return requirement.mood() == Mood.GENTLE;
    }

    private static boolean hasReeds(Counts counts) {
        return counts.inRight(StopClass.REED_8) + counts.inRight(StopClass.REED_16) > 0;
    }

    private static boolean hasPedalReeds(Counts counts) {
        return counts.inFeet(StopClass.PEDAL_REED_16) + counts.inFeet(StopClass.PEDAL_REED_8) > 0;
    }

    private double missing16() {
        return switch (requirement.role()) {
            case PEOPLE -> requirement.mood() == Mood.GENTLE ? 0.8 : 2;
            case CHOIR -> 0.6;
            case SOLOIST, SOLO_LINE, UNDER_SOLO -> 0.5;
        };
    }

    /** How many stops of one pitch are enough. */
    private int enough() {
        if (!requirement.isPeople()) {
            return 1;
        }
        return switch (requirement.layers()) {
            case GENTLE, PLAIN -> 1;
            case BRIGHT -> 2;
            case FESTAL -> 3;
        };
    }

    /** The loudest of a layer should be as loud as the mood: a soft one in a gentle verse. */
    private void addLoudness(DraftAnalysis sounding, StopClass layer, double points, double enough, Tally tally) {
        int loudest = loudest(layer, sounding.draft().stops());
        boolean isDecided =
                loudest(layer, sounding.open()) == IndexSet.NONE && isFull(sounding.drawn()) == isFull(sounding.most());
        if (loudest != IndexSet.NONE && organ.hasChoice(loudest) && isDecided) {
            double off = organ.loudness(loudest) - wantedLoudness(sounding);
            tally.add(
                    points * (off > 0 ? TOO_LOUD : 1) * Math.max(0, Math.abs(off) - enough),
                    off > 0 ? "a softer stop than %s would do" : "a firmer stop than %s would carry better",
                    loudest);
        }
    }

    private int loudest(StopClass layer, IndexSet stops) {
        int loudest = IndexSet.NONE;
        for (int stop : organ.stopsOf(organ.pedal())) {
            boolean isLouder = loudest == IndexSet.NONE || organ.loudness(stop) > organ.loudness(loudest);
            loudest = organ.layer(stop) == layer && stops.contains(stop) && isLouder ? stop : loudest;
        }
        return loudest;
    }

    private static boolean isFull(Counts counts) {
        return counts.inRight(StopClass.MIXTURE) > 0 || hasReeds(counts);
    }

    private double wantedLoudness(DraftAnalysis sounding) {
        double wanted = wantedLoudness();
        return requirement.isPeople() && isFull(sounding.drawn()) ? Math.max(wanted, LOUDNESS_UNDER_FULL) : wanted;
    }

    private double wantedLoudness() {
        if (!requirement.isPeople()) {
            return 0;
        }
        return switch (requirement.layers()) {
            case GENTLE -> 0.1;
            case PLAIN -> 0.4;
            case BRIGHT -> 0.7;
            case FESTAL -> 1;
        };
    }
}
