package versewind.rules;

import java.util.Optional;
import versewind.organ.IndexSet;
import versewind.organ.Registration;

/**
 * Manual 16 ft under singing thickens unless 4 ft and upperwork stand above it. What the organ plays alone may want the
 * gravity. Common practice, no source.
 */
final class BareDouble implements ChorusRule {

    @Override
    public Rule rule() {
        return Rule.BARE_DOUBLE;
    }

    @Override
    public Optional<ChorusFault> judge(Chorus chorus) {
        boolean isThick = chorus.isAccompaniment()
                && chorus.company().isSung()
                && chorus.has(Pitch.FEET_16)
                && chorus.has(Pitch.FEET_8)
                && !(chorus.has(Pitch.FEET_4) && chorus.hasUpperwork());
        return isThick
                ? Optional.of(new ChorusFault(this, Severity.CAUTION, chorus, doubles(chorus)))
                : Optional.empty();
    }

    /** The stops of 16 ft; none where a sub-octave coupler makes the 16 ft. */
    private static IndexSet doubles(Chorus chorus) {
        return chorus.sounding(stop -> Pitch.bitOf(chorus.specification().semitones(stop)) == Pitch.FEET_16.bit());
    }

    @Override
    public String sentence(ChorusFault fault) {
        Chorus chorus = fault.chorus();
        String missing = chorus.has(Pitch.FEET_4) ? "2 ft or a mixture" : "4 and 2 ft";
        String thickens = fault.stops().isEmpty()
                ? "16 ft by a coupler only thickens "
                : chorus.say(fault.stops(), "only thickens ", "only thicken ");
        return thickens + fault.hand().word() + " without " + missing + " above.";
    }

    @Override
    public Optional<Registration> mended(ChorusFault fault) {
        return fault.stops().isEmpty()
                ? Optional.empty()
                : Optional.of(fault.chorus().without(fault.stops()));
    }
}
