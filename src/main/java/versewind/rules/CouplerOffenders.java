package versewind.rules;

import static versewind.rules.Offenders.EIGHTS;
import static versewind.rules.Offenders.KEPT;
import static versewind.rules.Offenders.MIXTURE;
import static versewind.rules.Offenders.OTHER_REEDS;
import static versewind.rules.Offenders.UNISON_REEDS;
import static versewind.rules.Offenders.brokenBy;

import java.util.Optional;
import versewind.organ.Coupler;
import versewind.organ.IndexSet;

/** Couplers that break a rule of choruses. */
final class CouplerOffenders {

    private CouplerOffenders() {}

    static Optional<IndexSet> octaveCoupler(Chorus chorus) {
        return acting(chorus, Coupler.Kind.OCTAVE, home -> isTooHigh(chorus, home));
    }

    private static boolean isTooHigh(Chorus chorus, int home) {
        return chorus.hasFrom(home, MIXTURE | OTHER_REEDS) || !chorus.hasFrom(home, EIGHTS | UNISON_REEDS);
    }

    static Optional<IndexSet> subOctaveCoupler(Chorus chorus) {
        return !chorus.isChords()
                ? KEPT
                : acting(
                        chorus,
                        Coupler.Kind.SUB_OCTAVE,
                        home -> !chorus.company().isFestal() || chorus.hasFrom(home, OTHER_REEDS));
    }

    /** An octave coupler before the chorus, the mixture and the reed of the hand’s own division. */
    static Optional<IndexSet> octaveForPower(Chorus chorus) {
        boolean isLeft = chorus.isChords()
                && chorus.company().isCongregation()
                && (isLeft(chorus, StopClass.PRINCIPAL_4)
                        || isLeft(chorus, StopClass.PRINCIPAL_2)
                        || isLeft(chorus, StopClass.MIXTURE)
                        || isLeft(chorus, StopClass.REED_8));
        return isLeft ? acting(chorus, Coupler.Kind.OCTAVE, home -> !isTooHigh(chorus, home)) : KEPT;
    }

    private static boolean isLeft(Chorus chorus, StopClass wanted) {
        return chorus.organ().has(chorus.division(), wanted) && !chorus.hasFrom(chorus.division(), wanted.bit());
    }

    @FunctionalInterface
    private interface OfDivision {
        boolean is(int home);
    }

    /** Couplers of a kind that are drawn and bring an offending division to the keyboard at another octave. */
    private static Optional<IndexSet> acting(Chorus chorus, Coupler.Kind kind, OfDivision offending) {
        IndexSet drawn = chorus.registration().couplers();
        IndexSet acting = IndexSet.EMPTY;
        for (int coupler = drawn.next(0); coupler != IndexSet.NONE; coupler = drawn.next(coupler + 1)) {
            int home = chorus.organ().sourceOf(coupler);
            boolean isActing = chorus.instrument().couplers().get(coupler).kind() == kind
                    && chorus.sounds(home, kind)
                    && chorus.registration().stops().meets(chorus.organ().allOf(home));
            acting = isActing && offending.is(home) ? acting.with(coupler) : acting;
        }
        return brokenBy(acting);
    }

    /**
     * Couplers to a keyboard that is played from a manual on which nothing is drawn, and octave couplers of a division
     * that sounds only by another coupler, where they do not carry on.
     */
    static Optional<IndexSet> idleCoupler(Chorus chorus) {
        if (!chorus.isFirst()) {
            return KEPT;
        }
        IndexSet drawn = chorus.registration().couplers();
        IndexSet idle = IndexSet.EMPTY;
        for (int coupler = drawn.next(0); coupler != IndexSet.NONE; coupler = drawn.next(coupler + 1)) {
            idle = isIdle(chorus.played(), coupler) ? idle.with(coupler) : idle;
        }
        return brokenBy(idle);
    }

    private static boolean isIdle(PlayedRegistration played, int coupler) {
        OrganFacts organ = played.organ();
        int home = organ.sourceOf(coupler);
        int keyboard = organ.keyboardOf(coupler);
        Coupler.Kind kind = organ.organ().couplers().get(coupler).kind();
        if (home == keyboard) {
            return kind.semitones() != 0 && played.isHeard(home) && !isActing(played, home, kind);
        }
        return played.isUnderHandOrFoot(keyboard)
                && !played.registration().stops().meets(organ.allOf(home))
                && !carriesOn(played, home);
    }

    private static boolean isActing(PlayedRegistration played, int home, Coupler.Kind kind) {
        for (Chorus chorus : played.choruses()) {
            if (chorus.sounds(home, kind)) {
                return true;
            }
        }
        return false;
    }

    /** True where couplers are drawn that move the keys of other manuals with those of a division. */
    private static boolean carriesOn(PlayedRegistration played, int home) {
        IndexSet drawn = played.registration().couplers();
        for (int coupler = drawn.next(0); coupler != IndexSet.NONE; coupler = drawn.next(coupler + 1)) {
            if (played.organ().isOneKeyboard(played.organ().keyboardOf(coupler), home)) {
                return true;
            }
        }
        return false;
    }
}
