package versewind.rules;

import java.util.Optional;
import versewind.organ.BoxPosition;
import versewind.organ.Family;
import versewind.organ.IndexSet;
import versewind.organ.Pipe;
import versewind.organ.Registration;
import versewind.organ.Stop;

/**
 * Solo reeds are for solos, and stand out of a chorus. Nobody minds one behind closed shutters, nor an oboe that
 * supports a chorus reed of its own division. Common practice, no source.
 */
final class SoloReedInChorus implements ChorusRule {

    @Override
    public Rule rule() {
        return Rule.SOLO_REED;
    }

    @Override
    public Optional<ChorusFault> judge(Chorus chorus) {
        if (!chorus.has(Family.SOLO_REED) || !chorus.isAccompaniment() || !chorus.isPrincipalChorus()) {
            return Optional.empty();
        }
        IndexSet reeds = chorus.sounding(stop -> standsOut(chorus, stop));
        return reeds.isEmpty() ? Optional.empty() : Optional.of(new ChorusFault(this, Severity.REMARK, chorus, reeds));
    }

    private static boolean standsOut(Chorus chorus, int index) {
        StopFacts specification = chorus.specification();
        Stop stop = specification.stop(index);
        if (stop.family() != Family.SOLO_REED || specification.isVoxHumana(index)) {
            return false;
        }
        int home = specification.divisionOf(index);
        boolean isBehindShutters = chorus.organ().divisions().get(home).encloses(stop)
                && chorus.registration().boxes().get(home).compareTo(BoxPosition.QUARTER) <= 0;
        return !isBehindShutters && !(stop.pipe() == Pipe.CONICAL_REED && supportsReeds(chorus, home));
    }

    private static boolean supportsReeds(Chorus chorus, int division) {
        return chorus.sounding(Family.CHORUS_REED).stream()
                .anyMatch(reed -> chorus.specification().divisionOf(reed) == division);
    }

    @Override
    public String sentence(ChorusFault fault) {
        return fault.chorus().say(fault.stops(), "is for solos and stands", "are for solos and stand")
                + " out of the chorus.";
    }

    @Override
    public Optional<Registration> mended(ChorusFault fault) {
        return Optional.of(fault.chorus().without(fault.stops()));
    }
}
