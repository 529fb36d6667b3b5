package versewind.rules;

import java.util.Optional;
import versewind.organ.Family;
import versewind.organ.Registration;

/** A mixture crowns a chorus and wants 8 and 4 ft flues at least beneath it. Common practice, no source. */
final class BareMixture implements ChorusRule {

    @Override
    public Rule rule() {
        return Rule.BARE_MIXTURE;
    }

    @Override
    public Optional<ChorusFault> judge(Chorus chorus) {
        boolean isCarried = chorus.hasFlue(Pitch.FEET_8) && chorus.hasFlue(Pitch.FEET_4);
        return !chorus.isAccompaniment() || !chorus.has(Family.MIXTURE) || isCarried
                ? Optional.empty()
                : Optional.of(new ChorusFault(this, Severity.CAUTION, chorus, chorus.sounding(Family.MIXTURE)));
    }

    @Override
    public String sentence(ChorusFault fault) {
        Chorus chorus = fault.chorus();
        String missing = chorus.hasFlue(Pitch.FEET_8) ? "4 ft" : chorus.hasFlue(Pitch.FEET_4) ? "8 ft" : "8 and 4 ft";
        return chorus.say(fault.stops(), "wants", "want") + " " + missing + " flues beneath in "
                + fault.hand().word() + ".";
    }

    @Override
    public Optional<Registration> mended(ChorusFault fault) {
        Chorus chorus = fault.chorus();
        if (!chorus.hasFlue(Pitch.FEET_8) && !chorus.hasFlue(Pitch.FEET_4)) {
            return Optional.of(chorus.without(fault.stops()));
        }
        return chorus.withOne(chorus.hasFlue(Pitch.FEET_8) ? Pitch.FEET_4 : Pitch.FEET_8)
                .or(() -> Optional.of(chorus.without(fault.stops())));
    }
}
