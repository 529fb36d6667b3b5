package versewind.rules;

import java.util.Optional;
import versewind.organ.IndexSet;
import versewind.organ.Registration;

/** A pedal of 16 ft alone wants the coupler that makes its line clear, where there is one. Common practice, no source. */
final class PedalCouplerMissing implements ChorusRule {

    @Override
    public Rule rule() {
        return Rule.PEDAL_COUPLER;
    }

    @Override
    public Optional<ChorusFault> judge(Chorus chorus) {
        return PedalWithoutEightFoot.isUnclear(chorus)
                        && PedalCouplers.drawn(chorus).isPresent()
                ? Optional.of(new ChorusFault(this, Severity.CAUTION, chorus, IndexSet.EMPTY))
                : Optional.empty();
    }

    @Override
    public String sentence(ChorusFault fault) {
        return "The pedal has no 8 ft, and the coupler that would make its line clear is not drawn.";
    }

    @Override
    public Optional<Registration> mended(ChorusFault fault) {
        return PedalCouplers.drawn(fault.chorus());
    }
}
