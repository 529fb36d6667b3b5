package versewind.rules;

import java.util.Optional;
import versewind.organ.Family;
import versewind.organ.Registration;

/**
 * Chorus reeds come last, over a flue chorus: under singing the hands want 8 and 4 ft flues and no fewer flues than
 * reeds, the feet one flue at least. A fanfare or a solo is free. Common practice, no source.
 */
final class ReedOverLittleFlue implements ChorusRule {

    @Override
    public Rule rule() {
        return Rule.REED_OVER_LITTLE;
    }

    @Override
    public Optional<ChorusFault> judge(Chorus chorus) {
        boolean isBuilt =
                chorus.isSoloLine() || !chorus.company().isSung() || chorus.chorusReeds() == 0 || isCarried(chorus);
        return isBuilt
                ? Optional.empty()
                : Optional.of(new ChorusFault(this, Severity.CAUTION, chorus, chorus.sounding(Family.CHORUS_REED)));
    }

    private static boolean isCarried(Chorus chorus) {
        return chorus.hand() == Hand.FEET
                ? chorus.flues() > 0
                : chorus.hasFlue(Pitch.FEET_8)
                        && chorus.hasFlue(Pitch.FEET_4)
                        && chorus.flues() >= chorus.chorusReeds();
    }

    @Override
    public String sentence(ChorusFault fault) {
        return fault.chorus().say(fault.stops(), "stands", "stand") + " over too little flue in "
                + fault.hand().word() + ".";
    }

    @Override
    public Optional<Registration> mended(ChorusFault fault) {
        Chorus chorus = fault.chorus();
        if (chorus.hand() != Hand.FEET && chorus.hasFlue(Pitch.FEET_8) && !chorus.hasFlue(Pitch.FEET_4)) {
            return chorus.withOne(Pitch.FEET_4);
        }
        return Optional.of(chorus.without(fault.stops()));
    }
}
