package versewind.rules;

import java.util.Optional;
import versewind.organ.IndexSet;
import versewind.organ.Registration;

/** A bass wants 8 ft, of its own or coupled down, to be followed. Common practice, no source. */
final class PedalWithoutEightFoot implements ChorusRule {

    @Override
    public Rule rule() {
        return Rule.PEDAL_WITHOUT_EIGHT;
    }

    @Override
    public Optional<ChorusFault> judge(Chorus chorus) {
        return isUnclear(chorus) && PedalCouplers.drawn(chorus).isEmpty()
                ? Optional.of(new ChorusFault(this, Severity.REMARK, chorus, IndexSet.EMPTY))
                : Optional.empty();
    }

    /** Whether the feet sound 16 ft or lower and no 8 ft. */
    static boolean isUnclear(Chorus chorus) {
        return chorus.hand() == Hand.FEET
                && (chorus.has(Pitch.FEET_16) || chorus.has(Pitch.FEET_32))
                && !chorus.has(Pitch.FEET_8);
    }

    @Override
    public String sentence(ChorusFault fault) {
        return "The pedal has no 8 ft: its line is felt more than followed.";
    }

    @Override
    public Optional<Registration> mended(ChorusFault fault) {
        return fault.chorus().withOne(Pitch.FEET_8);
    }
}
