package versewind.rules;

import java.util.Optional;
import java.util.stream.IntStream;
import versewind.organ.IndexSet;
import versewind.organ.Registration;

/** Feet that play should be heard: a stop, or a manual coupled down. Common practice, no source. */
final class PedalSilent implements ChorusRule {

    @Override
    public Rule rule() {
        return Rule.PEDAL_SILENT;
    }

    @Override
    public Optional<ChorusFault> judge(Chorus chorus) {
        boolean isMissing = chorus.hand() == Hand.FEET
                && chorus.isSilent()
                && !chorus.registration().stops().isEmpty();
        return isMissing
                ? Optional.of(new ChorusFault(this, Severity.CAUTION, chorus, IndexSet.EMPTY))
                : Optional.empty();
    }

    @Override
    public String sentence(ChorusFault fault) {
        return "The feet play, but nothing sounds on the pedal: the bass is missing.";
    }

    /** The coupler from the hand's manual; else the first stop of 16 ft, or of any pitch. */
    @Override
    public Optional<Registration> mended(ChorusFault fault) {
        Chorus chorus = fault.chorus();
        return PedalCouplers.drawn(chorus)
                .or(() -> chorus.withOne(Pitch.FEET_16))
                .or(() -> IntStream.range(0, chorus.specification().stops())
                        .filter(stop -> chorus.specification().divisionOf(stop) == chorus.division())
                        .mapToObj(stop -> chorus.registration().toggleStop(stop))
                        .findFirst());
    }
}
