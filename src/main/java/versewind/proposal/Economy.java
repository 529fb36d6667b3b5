package versewind.proposal;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import versewind.organ.Coupler;
import versewind.organ.IndexSet;
import versewind.plan.Mood;

/** Few stops, and none that only doubles what sounds already. Common practice, no source. */
final class Economy {

    private static final double A_STOP = 0.1;
    private static final double A_COUPLER = 0.08;

    /** By mood: gentle, plain, bright, festal. */
    private static final double[] OCTAVE = {4, 2.5, 1.6, 1};

    private static final double[] SUB_OCTAVE = {5, 4, 3, 2.5};
    private static final double UNISON_OFF = 5;
    private static final double ROUNDABOUT = 0.6;
    private static final double IDLE = 4;
    private static final double EMPTY_COUPLER = 3;
    private static final double TRANSMISSION = 1;
    private static final double DOUBLED = 0.8;
    private static final double DOUBLED_IN_BIG_CHORUS = 0.35;
    private static final double FLUTES_TOGETHER = 0.6;
    private static final double EIGHTS_TOGETHER = 0.5;
    private static final int FLUTES = 2;
    private static final int EIGHTS = 3;
    private static final int EIGHTS_OF_BIG_CHORUS = 5;

    private static final String EACH_COSTS = "each stop and coupler costs a little";

    private final OrganFacts organ;
    private final Requirement wish;
    private final double[] byKind;

    Economy(OrganFacts organ, Requirement wish) {
        this.organ = organ;
        this.wish = wish;
        byKind = Arrays.stream(Coupler.Kind.values())
                .mapToDouble(kind -> ofKind(kind, wish))
                .toArray();
    }

    /** What a coupler costs: those that bring a chorus an octave off are for big sounds. */
    double ofACoupler(int coupler) {
        return byKind[organ.organ().couplers().get(coupler).kind().ordinal()];
    }

    private static double ofKind(Coupler.Kind kind, Requirement wish) {
        return switch (kind) {
            case UNISON -> A_COUPLER;
            case OCTAVE -> wish.isPeople() ? OCTAVE[wish.mood().ordinal()] : OCTAVE[0];
            case SUB_OCTAVE -> wish.isPeople() ? SUB_OCTAVE[wish.mood().ordinal()] : SUB_OCTAVE[0];
            case UNISON_OFF -> UNISON_OFF;
        };
    }

    private boolean isBigChorus() {
        return wish.isPeople() && wish.mood().compareTo(Mood.BRIGHT) >= 0;
    }

    void add(DraftAnalysis sounding, Tally tally) {
        Draft draft = sounding.draft();
        tally.add(A_STOP * draft.stops().size(), EACH_COSTS);
        IndexSet idle = sounding.idle().minus(wish.locks().always());
        for (int stop = idle.next(0); stop != IndexSet.NONE; stop = idle.next(stop + 1)) {
            tally.add(IDLE, "drawn without sounding: %s", stop);
        }
        IndexSet couplers = draft.couplers();
        for (int each = couplers.next(0); each != IndexSet.NONE; each = couplers.next(each + 1)) {
            tally.add(ofACoupler(each), EACH_COSTS);
            if (!sounding.isUnderHandOrFoot(organ.keyboardOf(each))) {
                tally.add(ROUNDABOUT, "a coupler is reached only through another");
            }
            if (sounding.most().drawnIn(organ.sourceOf(each)) == 0) {
                tally.add(EMPTY_COUPLER, "a coupler brings nothing");
            }
        }
        addDoubled(sounding, tally);
        addTogether(sounding, tally);
        addTransmissions(sounding, tally);
    }

    private void addDoubled(DraftAnalysis sounding, Tally tally) {
        double points = isBigChorus() ? DOUBLED_IN_BIG_CHORUS : DOUBLED;
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
            tally.add(points * doubled, "stops of one colour and pitch double each other");
        }
    }

    private static final StopClass[] MANUAL_LAYERS = Arrays.copyOf(StopClass.values(), StopClass.PEDAL_32.ordinal());

    private void addTogether(DraftAnalysis sounding, Tally tally) {
        int flutes =
                sounding.drawn().inRight(StopClass.FLUTE_8) + sounding.drawn().inRight(StopClass.STRING_8);
        tally.add(FLUTES_TOGETHER * (flutes - FLUTES), "too many soft 8 ft stops together");
        int eights = flutes + sounding.drawn().inRight(StopClass.PRINCIPAL_8);
        int enough = isBigChorus() ? EIGHTS_OF_BIG_CHORUS : EIGHTS;
        tally.add(EIGHTS_TOGETHER * (eights - enough), "too many 8 ft flues together");
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
                tally.add(TRANSMISSION, "the same pipes at the same pitch as another stop: %s", stop);
            }
        }
    }
}
