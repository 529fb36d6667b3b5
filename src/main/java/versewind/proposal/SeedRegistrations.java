package versewind.proposal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import versewind.organ.Coupler;
import versewind.organ.IndexSet;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.rules.OrganFacts;
import versewind.rules.StopClass;

/**
 * Registrations from which a search starts: the steps in which the trade builds up, on every manual, alone and with
 * others coupled to it; for a soloed melody every voice over soft stops of another manual. Common practice, no source.
 */
final class SeedRegistrations {

    private static final List<List<StopClass>> STEPS = List.of(
            List.of(StopClass.FLUTE_8),
            List.of(StopClass.FLUTE_8, StopClass.FLUTE_4),
            List.of(StopClass.PRINCIPAL_8, StopClass.FLUTE_4),
            List.of(StopClass.PRINCIPAL_8, StopClass.PRINCIPAL_4),
            List.of(StopClass.PRINCIPAL_8, StopClass.PRINCIPAL_4, StopClass.PRINCIPAL_2),
            List.of(StopClass.PRINCIPAL_8, StopClass.PRINCIPAL_4, StopClass.PRINCIPAL_2, StopClass.MIXTURE),
            List.of(
                    StopClass.PRINCIPAL_8,
                    StopClass.PRINCIPAL_4,
                    StopClass.PRINCIPAL_2,
                    StopClass.MIXTURE,
                    StopClass.REED_8),
            List.of(
                    StopClass.DOUBLE,
                    StopClass.PRINCIPAL_8,
                    StopClass.PRINCIPAL_4,
                    StopClass.TWELFTH,
                    StopClass.PRINCIPAL_2,
                    StopClass.MIXTURE,
                    StopClass.REED_16,
                    StopClass.REED_8,
                    StopClass.REED_4));

    private static final List<List<StopClass>> PEDAL_STEPS = List.of(
            List.of(StopClass.PEDAL_16),
            List.of(StopClass.PEDAL_16),
            List.of(StopClass.PEDAL_16),
            List.of(StopClass.PEDAL_16, StopClass.PEDAL_8),
            List.of(StopClass.PEDAL_16, StopClass.PEDAL_8),
            List.of(StopClass.PEDAL_16, StopClass.PEDAL_8, StopClass.PEDAL_4),
            List.of(
                    StopClass.PEDAL_16,
                    StopClass.PEDAL_8,
                    StopClass.PEDAL_4,
                    StopClass.PEDAL_MIXTURE,
                    StopClass.PEDAL_REED_16),
            List.of(
                    StopClass.PEDAL_32,
                    StopClass.PEDAL_16,
                    StopClass.PEDAL_8,
                    StopClass.PEDAL_4,
                    StopClass.PEDAL_MIXTURE,
                    StopClass.PEDAL_REED_16,
                    StopClass.PEDAL_REED_8));

    private static final List<StopClass> VOICES = List.of(
            StopClass.SOLO_REED,
            StopClass.CORNET,
            StopClass.REED_8,
            StopClass.PRINCIPAL_8,
            StopClass.FLUTE_8,
            StopClass.STRING_8);

    private static final List<List<StopClass>> BENEATH = List.of(
            List.of(StopClass.FLUTE_8), List.of(StopClass.STRING_8), List.of(StopClass.FLUTE_8, StopClass.FLUTE_4));

    private final OrganFacts organ;
    private final SearchSpace space;

    /** For every division and layer, the first of its stops that may be drawn. */
    private final int[][] first;

    SeedRegistrations(OrganFacts organ, SearchSpace space) {
        this.organ = organ;
        this.space = space;
        first = new int[organ.organ().divisions().size()][StopClass.COUNT];
        for (int[] each : first) {
            Arrays.fill(each, IndexSet.NONE);
        }
        for (int stop = organ.stops() - 1; stop >= 0; stop--) {
            if (!space.locks().never().contains(stop)) {
                first[organ.divisionOf(stop)][organ.layer(stop).ordinal()] = stop;
            }
        }
    }

    /** Number of steps of a manual. */
    static int steps() {
        return STEPS.size();
    }

    /** The stops of a division that a step draws, the first of each layer; a layer that it has not is left out. */
    IndexSet step(int division, int step) {
        return first(division, STEPS.get(step));
    }

    private IndexSet first(int division, List<StopClass> layers) {
        IndexSet found = IndexSet.EMPTY;
        for (StopClass layer : layers) {
            int stop = first[division][layer.ordinal()];
            found = stop != IndexSet.NONE ? found.with(stop) : found;
        }
        return found;
    }

    private List<Integer> stops(int division, StopClass layer) {
        List<Integer> found = new ArrayList<>();
        for (int stop : organ.stopsOf(division)) {
            if (organ.layer(stop) == layer && !space.locks().never().contains(stop)) {
                found.add(stop);
            }
        }
        return found;
    }

    /** All of them. */
    List<Draft> all() {
        List<Draft> drafts = new ArrayList<>();
        for (HandsAndFeet hands : space.firstHands()) {
            if (hands.layout().isSoloed()) {
                addSoloed(hands, drafts);
            } else {
                addChoruses(hands, drafts);
            }
        }
        return drafts;
    }

    private void addChoruses(HandsAndFeet hands, List<Draft> drafts) {
        List<IndexSet> coupled = couplings(hands);
        for (int step = 0; step < STEPS.size(); step++) {
            for (IndexSet couplers : coupled) {
                Draft draft = space.least(hands);
                draft = draft.withStops(draft.stops().plus(step(hands.right(), step)));
                for (int coupler : couplers.stream().toArray()) {
                    draft = draft.toggleCoupler(coupler);
                    int source = organ.sourceOf(coupler);
                    draft = draft.withStops(draft.stops().plus(step(source, step)));
                }
                drafts.add(withFeet(draft, hands.right(), step));
            }
        }
    }

    /** No coupler, each by itself, and all together, of those that bring another manual. */
    private List<IndexSet> couplings(HandsAndFeet hands) {
        List<IndexSet> couplings = new ArrayList<>(List.of(IndexSet.EMPTY));
        IndexSet all = IndexSet.EMPTY;
        for (int coupler : space.couplers(hands)) {
            if (organ.keyboardOf(coupler) != organ.pedal() && isUnison(coupler)) {
                couplings.add(IndexSet.of(coupler));
                all = all.with(coupler);
            }
        }
        if (all.size() > 1) {
            couplings.add(all);
        }
        return couplings;
    }

    private boolean isUnison(int coupler) {
        return organ.organ().couplers().get(coupler).kind() == Coupler.Kind.UNISON;
    }

    private Draft withFeet(Draft draft, int left, int step) {
        Draft more = draft;
        if (organ.pedal() != OrganFacts.NO_PEDAL && draft.hands().layout().usesPedal()) {
            for (int coupler : space.couplers(draft.hands())) {
                if (organ.keyboardOf(coupler) == organ.pedal()
                        && organ.sourceOf(coupler) == left
                        && isUnison(coupler)) {
                    more = more.toggleCoupler(coupler);
                }
            }
            if (draft.hands().layout() != Layout.COUPLED_DOWN) {
                more = more.withStops(more.stops().plus(first(organ.pedal(), PEDAL_STEPS.get(step))));
            }
        }
        return more;
    }

    private void addSoloed(HandsAndFeet hands, List<Draft> drafts) {
        for (IndexSet voice : voices(hands.right())) {
            for (List<StopClass> layers : BENEATH) {
                IndexSet beneath = first(hands.left(), layers);
                if (!beneath.isEmpty()) {
                    Draft draft = space.least(hands);
                    draft = draft.withStops(draft.stops().plus(voice).plus(beneath));
                    drafts.add(withFeet(draft, hands.left(), 0));
                }
            }
        }
    }

    private List<IndexSet> voices(int division) {
        List<IndexSet> voices = new ArrayList<>();
        for (StopClass layer : VOICES) {
            stops(division, layer).forEach(stop -> voices.add(IndexSet.of(stop)));
        }
        for (int mutation : stops(division, StopClass.MUTATION)) {
            stops(division, StopClass.FLUTE_8).forEach(flute -> voices.add(IndexSet.of(flute, mutation)));
        }
        return voices;
    }
}
