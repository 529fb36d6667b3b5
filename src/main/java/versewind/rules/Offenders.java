package versewind.rules;

import static versewind.rules.Pitch.FEET_1;
import static versewind.rules.Pitch.FEET_2;
import static versewind.rules.Pitch.FEET_4;
import static versewind.rules.Pitch.FEET_8;

import java.util.Optional;
import versewind.organ.IndexSet;
import versewind.organ.Tremulant;

/**
 * Who breaks a rule of choruses: the stops, or the couplers, that do; none where something is missing; empty where the
 * rule is kept. What concerns the whole registration is asked of the first chorus only, which is the right hand’s.
 * Here the rules on flues and colours of the hands.
 */
final class Offenders {

    static final int EIGHTS = StopClass.bits(StopClass.PRINCIPAL_8, StopClass.FLUTE_8, StopClass.STRING_8);
    static final int TWOS = StopClass.bits(StopClass.PRINCIPAL_2, StopClass.FLUTE_2);
    static final int MIXTURE = StopClass.MIXTURE.bit();
    static final int OTHER_REEDS = StopClass.bits(StopClass.REED_16, StopClass.REED_4);
    static final int CHORUS_REEDS = OTHER_REEDS | StopClass.REED_8.bit();
    static final int UNISON_REEDS = StopClass.bits(StopClass.REED_8, StopClass.SOLO_REED);
    private static final int COLOURS = StopClass.bits(StopClass.MUTATION, StopClass.CORNET);
    static final int SOLO_COLOURS = UNISON_REEDS | COLOURS;

    static final Optional<IndexSet> KEPT = Optional.empty();
    private static final Optional<IndexSet> BROKEN = Optional.of(IndexSet.EMPTY);

    private Offenders() {}

    static Optional<IndexSet> brokenIf(boolean isBroken) {
        return isBroken ? BROKEN : KEPT;
    }

    static Optional<IndexSet> brokenBy(IndexSet offenders) {
        return offenders.isEmpty() ? KEPT : Optional.of(offenders);
    }

    static Optional<IndexSet> emptyHand(Chorus chorus) {
        return brokenIf(chorus.isHand() && chorus.isSilent() && chorus.isAnythingDrawn());
    }

    static Optional<IndexSet> noEight(Chorus chorus) {
        return brokenIf(chorus.isHand() && !chorus.isSilent() && !chorus.has(FEET_8));
    }

    static Optional<IndexSet> gap(Chorus chorus) {
        return brokenIf(chorus.isChords() && missing(chorus).isPresent());
    }

    /** The lowest pitch above 8 ft that is missing below one that sounds. */
    static Optional<Pitch> missing(Chorus chorus) {
        if (!chorus.has(FEET_8)) {
            return Optional.empty();
        }
        if (!chorus.has(FEET_4)) {
            return chorus.has(FEET_2) || chorus.has(FEET_1) ? Optional.of(FEET_4) : Optional.empty();
        }
        return chorus.has(FEET_1) && !chorus.has(FEET_2) ? Optional.of(FEET_2) : Optional.empty();
    }

    static Optional<IndexSet> bareMixture(Chorus chorus) {
        return chorus.isHand() && chorus.has(StopClass.MIXTURE) && !hasEightAndFour(chorus)
                ? brokenBy(chorus.of(MIXTURE))
                : KEPT;
    }

    static boolean hasEightAndFour(Chorus chorus) {
        return chorus.hasFlue(FEET_8) && chorus.hasFlue(FEET_4);
    }

    static Optional<IndexSet> bareTwelfth(Chorus chorus) {
        return chorus.isChords() && chorus.has(StopClass.TWELFTH) && !(chorus.has(FEET_4) && chorus.has(FEET_2))
                ? brokenBy(chorus.of(StopClass.TWELFTH.bit()))
                : KEPT;
    }

    static Optional<IndexSet> bareMutation(Chorus chorus) {
        return chorus.isHand() && chorus.hasAny(COLOURS) && !chorus.hasFlue(FEET_8)
                ? brokenBy(chorus.of(COLOURS))
                : KEPT;
    }

    static Optional<IndexSet> bareDouble(Chorus chorus) {
        return chorus.isChords() && chorus.has(StopClass.DOUBLE) && !(chorus.has(FEET_8) && chorus.has(FEET_4))
                ? brokenBy(chorus.of(StopClass.DOUBLE.bit()))
                : KEPT;
    }

    static Optional<IndexSet> thickDouble(Chorus chorus) {
        return chorus.isChords()
                        && chorus.company().isSung()
                        && chorus.has(StopClass.DOUBLE)
                        && chorus.has(FEET_4)
                        && !chorus.hasUpperwork()
                ? brokenBy(chorus.of(StopClass.DOUBLE.bit()))
                : KEPT;
    }

    static Optional<IndexSet> celeste(Chorus chorus) {
        return chorus.has(StopClass.CELESTE) && chorus.isNoPlaceForColour()
                ? brokenBy(chorus.of(StopClass.CELESTE.bit()))
                : KEPT;
    }

    /** A celeste of one rank without an 8 ft of its division, with which it beats. */
    static Optional<IndexSet> loneCeleste(Chorus chorus) {
        return !chorus.has(StopClass.CELESTE)
                ? KEPT
                : brokenBy(chorus.sounding(stop -> chorus.organ().layer(stop) == StopClass.CELESTE
                        && chorus.organ().stop(stop).ranks() == 1
                        && !chorus.hasFrom(chorus.organ().divisionOf(stop), EIGHTS)));
    }

    /** Tremulants in a chorus or under a congregation, and those that shake mixtures or reeds. */
    static Optional<IndexSet> tremulant(Chorus chorus) {
        IndexSet drawn = chorus.registration().tremulants();
        IndexSet shaking = IndexSet.EMPTY;
        for (int i = drawn.next(0); i != IndexSet.NONE && chorus.isHand(); i = drawn.next(i + 1)) {
            Tremulant tremulant = chorus.instrument().tremulants().get(i);
            int home = chorus.instrument().division(tremulant.division()).orElseThrow();
            boolean isFirm = chorus.isNoPlaceForColour() || chorus.hasFrom(home, MIXTURE | CHORUS_REEDS);
            shaking = isFirm && chorus.hasFrom(home, ~0) ? shaking.with(i) : shaking;
        }
        return brokenBy(shaking);
    }

    static Optional<IndexSet> voxHumana(Chorus chorus) {
        return chorus.has(StopClass.SOLO_REED) && chorus.isNoPlaceForColour()
                ? brokenBy(chorus.sounding(
                        stop -> StopClass.isVoxHumana(chorus.organ().stop(stop))))
                : KEPT;
    }

    static Optional<IndexSet> melodySoloed(Chorus chorus) {
        return brokenIf(chorus.isFirst()
                && chorus.played().isSoloed()
                && chorus.company().isCongregation());
    }

    /** Ranks over one that is left out: a mixture without the 2 ft of its division, a ripieno out of order. */
    static Optional<IndexSet> passedOver(Chorus chorus) {
        return chorus.isChords() && chorus.has(StopClass.MIXTURE)
                ? brokenBy(chorus.sounding(stop ->
                        !missingBelow(chorus, stop).isEmpty() && chorus.organ().layer(stop) == StopClass.MIXTURE))
                : KEPT;
    }

    /** What is left out beneath mixtures, or ranks of a ripieno, of their divisions. */
    static IndexSet missingBelow(Chorus chorus, IndexSet mixtures) {
        IndexSet missing = IndexSet.EMPTY;
        for (int mixture : mixtures.stream().toArray()) {
            missing = missing.plus(missingBelow(chorus, mixture));
        }
        return missing;
    }

    private static IndexSet missingBelow(Chorus chorus, int mixture) {
        OrganFacts organ = chorus.organ();
        int home = organ.divisionOf(mixture);
        IndexSet missing = IndexSet.EMPTY;
        if (!chorus.hasAny(TWOS)) {
            missing = organ.of(StopClass.PRINCIPAL_2).and(organ.allOf(home));
            missing = missing.isEmpty() ? organ.of(StopClass.FLUTE_2).and(organ.allOf(home)) : missing;
        }
        for (int rank : organ.ripienoOf(home)) {
            if (rank == mixture) {
                return missing;
            }
            missing = chorus.sounding().contains(rank) ? missing : missing.with(rank);
        }
        return organ.ripienoOf(home).isEmpty() ? missing : IndexSet.EMPTY;
    }

    /** Principals of one pitch drawn together before the 2 ft of their division, but for French fonds. */
    static Optional<IndexSet> doubling(Chorus chorus) {
        if (!chorus.isChords() || !chorus.company().isCongregation() || chorus.hasAny(TWOS)) {
            return KEPT;
        }
        if (chorus.count(StopClass.PRINCIPAL_8) < 2 && chorus.count(StopClass.PRINCIPAL_4) < 2) {
            return KEPT;
        }
        int home = chorus.division();
        OrganFacts organ = chorus.organ();
        boolean isJudged = organ.has(home, StopClass.PRINCIPAL_2) && !organ.isFonds(home);
        IndexSet eights = chorus.of(StopClass.PRINCIPAL_8.bit()).and(organ.allOf(home));
        IndexSet fours = chorus.of(StopClass.PRINCIPAL_4.bit()).and(organ.allOf(home));
        IndexSet doubled =
                (eights.size() > 1 ? eights : IndexSet.EMPTY).plus(fours.size() > 1 ? fours : IndexSet.EMPTY);
        return isJudged ? brokenBy(doubled) : KEPT;
    }

    /** The other 8 ft flues of a French division whose Montre carries 4 ft and nothing above. */
    static Optional<IndexSet> fonds(Chorus chorus) {
        boolean isJudged = chorus.isChords()
                && chorus.company().isCongregation()
                && chorus.organ().isFonds(chorus.division())
                && chorus.hasFrom(chorus.division(), StopClass.PRINCIPAL_8.bit())
                && chorus.hasFrom(chorus.division(), StopClass.PRINCIPAL_4.bit())
                && !chorus.hasUpperwork();
        return isJudged
                ? brokenBy(StopChoice.of(chorus.organ())
                        .allEights(chorus.division())
                        .minus(chorus.sounding()))
                : KEPT;
    }
}
