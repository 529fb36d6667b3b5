package versewind.rules;

import static versewind.rules.Offenders.KEPT;
import static versewind.rules.Offenders.brokenBy;
import static versewind.rules.Offenders.brokenIf;
import static versewind.rules.Pitch.FEET_16;
import static versewind.rules.Pitch.FEET_32;
import static versewind.rules.Pitch.FEET_8;

import java.util.List;
import java.util.Optional;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Registration;

/** What breaks a rule of choruses in the pedal. */
final class PedalOffenders {

    private static final int LIGHT = StopClass.bits(
            StopClass.FLUTE_8,
            StopClass.STRING_8,
            StopClass.CELESTE,
            StopClass.FLUTE_4,
            StopClass.FLUTE_2,
            StopClass.MUTATION,
            StopClass.SOLO_REED);
    private static final int DEEPEST = StopClass.bits(StopClass.PEDAL_32, StopClass.PEDAL_REED_32);
    private static final int FULL_REEDS = 2;

    private PedalOffenders() {}

    static Optional<IndexSet> silentPedal(Chorus chorus) {
        return brokenIf(!chorus.isHand() && chorus.isSilent() && chorus.isAnythingDrawn());
    }

    static Optional<IndexSet> noBass(Chorus chorus) {
        return brokenIf(!chorus.isHand()
                && !chorus.isSilent()
                && !chorus.has(FEET_8)
                && !chorus.has(FEET_16)
                && !chorus.has(FEET_32));
    }

    static Optional<IndexSet> deepUnderFew(Chorus chorus) {
        return !chorus.isHand() && chorus.company().isFew() ? brokenBy(chorus.of(DEEPEST)) : KEPT;
    }

    /** A 32 ft before the 16 ft of its kind, or under people before the reeds of the manuals. */
    static Optional<IndexSet> deepFirst(Chorus chorus) {
        if (chorus.isHand() || chorus.company().isFew()) {
            return KEPT;
        }
        boolean isBefore = chorus.company().isCongregation() && ReedOffenders.isBeforeReeds(chorus);
        IndexSet flues =
                isBefore || !chorus.has(StopClass.PEDAL_16) ? chorus.of(StopClass.PEDAL_32.bit()) : IndexSet.EMPTY;
        return brokenBy(
                chorus.has(StopClass.PEDAL_REED_16) ? flues : flues.plus(chorus.of(StopClass.PEDAL_REED_32.bit())));
    }

    /** An open 16 ft under nothing but flutes, strings and colours, on a pedal that has a lighter one. */
    static Optional<IndexSet> heavySixteen(Chorus chorus) {
        if (chorus.isHand() || !chorus.has(StopClass.PEDAL_16)) {
            return KEPT;
        }
        PlayedRegistration played = chorus.played();
        boolean isLight = !played.right().hasAny(~LIGHT) && !played.left().hasAny(~LIGHT);
        return isLight && hasSixteen(chorus, false)
                ? brokenBy(chorus.sounding(stop -> chorus.organ().isOpenSixteen(stop)))
                : KEPT;
    }

    private static boolean isWithHands(PlayedRegistration played, int home) {
        IndexSet here = played.organ().allOf(home);
        return played.right().sounding().minus(here).isEmpty()
                && played.left().sounding().minus(here).isEmpty();
    }

    private static IndexSet pedalFlues(OrganFacts organ) {
        return organ.of(StopClass.PEDAL_32)
                .plus(organ.of(StopClass.PEDAL_16))
                .plus(organ.of(StopClass.PEDAL_8))
                .plus(organ.of(StopClass.PEDAL_4));
    }

    /** True where the feet sound an open 16 ft. */
    static boolean isHeavy(Chorus feet) {
        return feet.sounding().stream().anyMatch(stop -> feet.organ().isOpenSixteen(stop));
    }

    private static boolean hasSixteen(Chorus chorus, boolean isFirm) {
        IndexSet all = chorus.organ().of(StopClass.PEDAL_16);
        for (int stop = all.next(0); stop != IndexSet.NONE; stop = all.next(stop + 1)) {
            if (chorus.organ().isOpenSixteen(stop) == isFirm) {
                return true;
            }
        }
        return false;
    }

    /** A stopped 16 ft as the only stop of a pedal that has more, under several chorus reeds. */
    static Optional<IndexSet> softBourdon(Chorus chorus) {
        if (chorus.isHand()
                || !chorus.has(StopClass.PEDAL_16)
                || chorus.played().right().chorusReeds() < FULL_REEDS) {
            return KEPT;
        }
        IndexSet own = chorus.own();
        boolean isAlone = own.size() == 1
                && chorus.organ().stopsOf(chorus.division()).size() > 1
                && chorus.organ().weight(own.next(0)) == 0;
        return isAlone ? brokenBy(own) : KEPT;
    }

    /** Feet that sound 16 ft or lower and no 8 ft, but for a soft 16 ft under one 8 ft alone. */
    static Optional<IndexSet> unclearPedal(Chorus chorus) {
        boolean isUnclear = !chorus.isHand() && (chorus.has(FEET_16) || chorus.has(FEET_32)) && !chorus.has(FEET_8);
        return brokenIf(isUnclear && chorus.played().left().sounding().size() > 1);
    }

    /** Couplers that bring the feet a manual which neither hand sounds, or the one on which a melody is soloed. */
    static Optional<IndexSet> strangeToFeet(Chorus chorus) {
        if (chorus.isHand()) {
            return KEPT;
        }
        Registration drawn = chorus.registration();
        PlayedRegistration played = chorus.played();
        boolean isSoloed = played.isSoloed() && !played.left().isSilent();
        IndexSet strange = IndexSet.EMPTY;
        for (int i = drawn.couplers().next(0);
                i != IndexSet.NONE;
                i = drawn.couplers().next(i + 1)) {
            int home = chorus.organ().sourceOf(i);
            boolean isStrange = chorus.organ().keyboardOf(i) == chorus.division()
                    && home != chorus.division()
                    && drawn.stops().meets(chorus.organ().allOf(home))
                    && (isSoloed || !played.right().sounds(home))
                    && !played.left().sounds(home);
            strange = isStrange ? strange.with(i) : strange;
        }
        return brokenBy(strange);
    }

    /**
     * Stops that speak through the closed box of another division, whose pipes they borrow; but for flues of the pedal
     * where all of the hands’ sound stands in that box too.
     */
    static Optional<IndexSet> shutIn(Chorus chorus) {
        return chorus.isFirst() ? brokenBy(shutIn(chorus.played())) : KEPT;
    }

    private static IndexSet shutIn(PlayedRegistration played) {
        OrganFacts organ = played.organ();
        List<BoxPosition> boxes = played.registration().boxes();
        IndexSet shut = IndexSet.EMPTY;
        for (int home = 0; home < boxes.size(); home++) {
            IndexSet borrowed = organ.borrowedFrom(home);
            if (organ.isEnclosed(home)
                    && boxes.get(home) == BoxPosition.CLOSED
                    && played.registration().stops().meets(borrowed)) {
                IndexSet lost = played.sounding().and(borrowed);
                shut = shut.plus(isWithHands(played, home) ? lost.minus(pedalFlues(organ)) : lost);
            }
        }
        return shut;
    }
}
