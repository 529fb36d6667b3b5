package versewind.proposal;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import versewind.organ.Coupler;
import versewind.organ.IndexSet;
import versewind.plan.Mood;
import versewind.rules.OrganFacts;
import versewind.rules.StopClass;

/** Few stops, and none that only doubles what sounds already. Common practice, no source. */
final class Economy {

    private static final int FLUTES = 2;
    private static final int EIGHTS = 3;
    private static final int EIGHTS_OF_BIG_CHORUS = 5;

    private final OrganFacts organ;
    private final Requirement requirement;
    private final double[] byKind;

    Economy(OrganFacts organ, Requirement requirement) {
        this.organ = organ;
        this.requirement = requirement;
        byKind = Arrays.stream(Coupler.Kind.values())
                .mapToDouble(kind -> ofKind(kind, requirement.isPeople() ? requirement.mood() : Mood.GENTLE))
                .toArray();
    }

    /** What a coupler costs: those that bring a chorus an octave off are for big sounds. */
    double ofACoupler(int coupler) {
        return byKind[organ.organ().couplers().get(coupler).kind().ordinal()];
    }

    private static double ofKind(Coupler.Kind kind, Mood mood) {
        return switch (kind) {
            case UNISON -> Cost.UNISON.points();
            case OCTAVE -> Cost.OCTAVE.points(mood);
            case SUB_OCTAVE -> Cost.SUB_OCTAVE.points(mood);
            case UNISON_OFF -> Cost.UNISON_OFF.points();
        };
    }

    private boolean isBigChorus() {
        return requirement.isPeople() && requirement.mood().compareTo(Mood.BRIGHT) >= 0;
    }

    void add(DraftAnalysis sounding, Tally tally) {
        Draft draft = sounding.draft();
        tally.add(draft.stops().size(), Cost.STOP);
        IndexSet idle = sounding.idle().minus(requirement.locks().always());
        for (int stop = idle.next(0); stop != IndexSet.NONE; stop = idle.next(stop + 1)) {
            tally.add(Cost.IDLE_STOP, stop);
        }
        IndexSet couplers = draft.couplers();
        for (int each = couplers.next(0); each != IndexSet.NONE; each = couplers.next(each + 1)) {
            tally.add(ofACoupler(each), Cost.STOP.words());
            if (!sounding.isUnderHandOrFoot(organ.keyboardOf(each))) {
                tally.add(Cost.ROUNDABOUT_COUPLER);
            }
            if (sounding.most().drawnIn(organ.sourceOf(each)) == 0) {
                tally.add(Cost.EMPTY_COUPLER);
            }
        }
        addDoubled(sounding, tally);
        addTogether(sounding, tally);
        addTransmissions(sounding, tally);
    }

    private void addDoubled(DraftAnalysis sounding, Tally tally) {
        double points = Cost.DOUBLED.points(requirement.isPeople() ? requirement.mood() : Mood.GENTLE);
        int divisions = organ.organ().divisions().size();
        for (int division = 0; division < divisions; division++) {
            if (division == organ.pedal() || sounding.drawn().drawnIn(division) < 2) {
                continue;
            }
            int doubled = 0;
            for (StopClass layer : MANUAL_LAYERS) {
                doubled += layer == StopClass.MIXTURE
                        ? 0
                        : Math.max(0, sounding.drawn().in(division, layer) - 1);
            }
            tally.add(points * doubled, Cost.DOUBLED.words());
        }
    }

    private static final StopClass[] MANUAL_LAYERS = Arrays.copyOf(StopClass.values(), StopClass.PEDAL_32.ordinal());

    private void addTogether(DraftAnalysis sounding, Tally tally) {
        int flutes =
                sounding.drawn().inRight(StopClass.FLUTE_8) + sounding.drawn().inRight(StopClass.STRING_8);
        tally.add(flutes - FLUTES, Cost.SOFT_EIGHTS_TOGETHER);
        int eights = flutes + sounding.drawn().inRight(StopClass.PRINCIPAL_8);
        int enough = isBigChorus() ? EIGHTS_OF_BIG_CHORUS : EIGHTS;
        tally.add(eights - enough, Cost.EIGHTS_TOGETHER);
    }

    /** Two stops that play one rank at one pitch are one sound. */
    private void addTransmissions(DraftAnalysis sounding, Tally tally) {
        if (!organ.hasShared()) {
            return;
        }
        Set<Long> seen = new HashSet<>();
        for (int place = 0; place < sounding.count(); place++) {
            int stop = sounding.stop(place);
            if (organ.isShared(stop) && !seen.add(organ.sound(stop))) {
                tally.add(Cost.SAME_PIPES, stop);
            }
        }
    }
}
