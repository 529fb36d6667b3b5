package versewind.rules;

import java.util.Optional;
import versewind.organ.Family;
import versewind.organ.IndexSet;
import versewind.organ.Registration;

/** A celeste wavers: it has no place in a chorus or under a congregation. Common practice, no source. */
final class CelesteInChorus implements ChorusRule {

    @Override
    public Rule rule() {
        return Rule.CELESTE;
    }

    @Override
    public Optional<ChorusFault> judge(Chorus chorus) {
        IndexSet celestes = chorus.sounding(Family.CELESTE);
        return chorus.isNoPlaceForColour() && !celestes.isEmpty()
                ? Optional.of(new ChorusFault(this, Severity.CAUTION, chorus, celestes))
                : Optional.empty();
    }

    @Override
    public String sentence(ChorusFault fault) {
        Chorus chorus = fault.chorus();
        return chorus.say(fault.stops(), "wavers ", "waver ") + chorus.place() + ".";
    }

    @Override
    public Optional<Registration> mended(ChorusFault fault) {
        return Optional.of(fault.chorus().without(fault.stops()));
    }
}
