package versewind.rules;

import java.util.Optional;
import versewind.organ.Family;
import versewind.organ.IndexSet;
import versewind.organ.Registration;

/** A mutation, or a compound stop of mutations, colours an 8 ft flue and wants one beneath it. Common practice, no source. */
final class BareMutation implements ChorusRule {

    @Override
    public Rule rule() {
        return Rule.BARE_MUTATION;
    }

    @Override
    public Optional<ChorusFault> judge(Chorus chorus) {
        if (chorus.hand() == Hand.FEET || chorus.hasFlue(Pitch.FEET_8)) {
            return Optional.empty();
        }
        IndexSet bare = chorus.sounding(Family.MUTATION).plus(chorus.sounding(Family.CORNET));
        return bare.isEmpty() ? Optional.empty() : Optional.of(new ChorusFault(this, Severity.CAUTION, chorus, bare));
    }

    @Override
    public String sentence(ChorusFault fault) {
        return fault.chorus().say(fault.stops(), "wants", "want") + " an 8 ft flue beneath in "
                + fault.hand().word() + ".";
    }

    @Override
    public Optional<Registration> mended(ChorusFault fault) {
        return fault.chorus().withOne(Pitch.FEET_8);
    }
}
