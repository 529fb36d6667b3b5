package versewind.rules;

import static versewind.rules.Offenders.CHORUS_REEDS;
import static versewind.rules.Offenders.KEPT;
import static versewind.rules.Offenders.MIXTURE;
import static versewind.rules.Offenders.OTHER_REEDS;
import static versewind.rules.Offenders.TWOS;
import static versewind.rules.Offenders.UNISON_REEDS;
import static versewind.rules.Offenders.brokenBy;

import java.util.List;
import java.util.Optional;
import versewind.organ.BoxPosition;
import versewind.organ.Family;
import versewind.organ.IndexSet;
import versewind.organ.Pipe;
import versewind.organ.Stop;

/** Reeds that break a rule of choruses. */
final class ReedOffenders {

    private static final int PEDAL_REEDS =
            StopClass.bits(StopClass.PEDAL_REED_32, StopClass.PEDAL_REED_16, StopClass.PEDAL_REED_8);

    private ReedOffenders() {}

    /** A 16 ft reed or a Clarion, which want a reed of 8 ft; an oboe is one. */
    static Optional<IndexSet> loneReed(Chorus chorus) {
        return chorus.isHand() && chorus.hasAny(OTHER_REEDS) && !chorus.hasAny(UNISON_REEDS)
                ? brokenBy(chorus.of(OTHER_REEDS))
                : KEPT;
    }

    /** A Tuba in a gentle verse; in a chorus outside festal verses; and before the chorus reeds. */
    static Optional<IndexSet> tuba(Chorus chorus) {
        if (!chorus.isHand() || !chorus.hasAny(CHORUS_REEDS)) {
            return KEPT;
        }
        OrganFacts organ = chorus.organ();
        IndexSet big = chorus.sounding().and(organ.bigReeds());
        IndexSet others = organ.of(StopClass.REED_8).minus(organ.bigReeds());
        boolean isTooSoon = !others.isEmpty() && !chorus.sounding().meets(others);
        boolean isOutOfPlace = chorus.company().isGentle()
                || (chorus.isChords() && (!chorus.company().isFestal() || isTooSoon));
        return isOutOfPlace ? brokenBy(big) : KEPT;
    }

    /** Chorus reeds over fewer flues than reeds, or without 8 and 4 ft; a fanfare or a solo is free. */
    static Optional<IndexSet> reedOverLittle(Chorus chorus) {
        if (chorus.isSoloLine() || !chorus.company().isSung()) {
            return KEPT;
        }
        boolean isCarried = chorus.isHand()
                ? Offenders.hasEightAndFour(chorus) && chorus.flues() >= chorus.chorusReeds()
                : chorus.flues() > 0;
        return isCarried ? KEPT : brokenBy(chorus.of(CHORUS_REEDS | PEDAL_REEDS));
    }

    /** Not behind closed shutters, nor an oboe over the chorus of its box or beside a reed of its division. */
    static Optional<IndexSet> soloReed(Chorus chorus) {
        return chorus.has(StopClass.SOLO_REED) && chorus.isChords() && chorus.isPrincipalChorus()
                ? brokenBy(chorus.sounding(stop -> standsOut(chorus, stop)))
                : KEPT;
    }

    private static boolean standsOut(Chorus chorus, int index) {
        Stop stop = chorus.organ().stop(index);
        if (stop.family() != Family.SOLO_REED || StopClass.isVoxHumana(stop)) {
            return false;
        }
        int home = chorus.organ().divisionOf(index);
        boolean isBoxed = chorus.instrument().divisions().get(home).encloses(stop);
        boolean isShut = isBoxed && chorus.registration().boxes().get(home).compareTo(BoxPosition.QUARTER) <= 0;
        boolean isFullSwell = chorus.hasFrom(
                home, StopClass.REED_8.bit() | (isBoxed ? StopClass.PRINCIPAL_4.bit() | TWOS | MIXTURE : 0));
        return !isShut && !(stop.pipe() == Pipe.CONICAL_REED && isFullSwell);
    }

    /** Chorus reeds behind closed shutters, where they should lead people. */
    static Optional<IndexSet> shutReeds(Chorus chorus) {
        if (!chorus.isChords()
                || !chorus.hasAny(CHORUS_REEDS)
                || !chorus.company().isCongregation()
                || chorus.company().isGentle()) {
            return KEPT;
        }
        List<BoxPosition> boxes = chorus.registration().boxes();
        return brokenBy(chorus.sounding(stop -> chorus.organ().layer(stop).isChorusReed()
                && chorus.organ().isEnclosed(chorus.organ().divisionOf(stop))
                && boxes.get(chorus.organ().divisionOf(stop)) == BoxPosition.CLOSED));
    }

    static Optional<IndexSet> pedalReedFirst(Chorus chorus) {
        return !chorus.isHand() && chorus.hasAny(PEDAL_REEDS) && isBeforeReeds(chorus)
                ? brokenBy(chorus.of(PEDAL_REEDS))
                : KEPT;
    }

    /** True where the manuals have a chorus reed of 8 ft and neither hand sounds that nor another reed of 8 ft. */
    static boolean isBeforeReeds(Chorus feet) {
        OrganFacts organ = feet.organ();
        PlayedRegistration played = feet.played();
        return !organ.of(StopClass.REED_8).minus(organ.bigReeds()).isEmpty()
                && !played.right().hasAny(UNISON_REEDS)
                && !played.left().hasAny(UNISON_REEDS);
    }
}
