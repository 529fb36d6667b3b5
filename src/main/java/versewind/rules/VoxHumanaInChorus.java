package versewind.rules;

import java.util.Optional;
import versewind.organ.Family;
import versewind.organ.IndexSet;
import versewind.organ.Registration;

/** A vox humana sings by itself: it has no place in a chorus or under a congregation. Common practice, no source. */
final class VoxHumanaInChorus implements ChorusRule {

    @Override
    public Rule rule() {
        return Rule.VOX_HUMANA;
    }

    @Override
    public Optional<ChorusFault> judge(Chorus chorus) {
        if (!chorus.has(Family.SOLO_REED) || !chorus.isNoPlaceForColour()) {
            return Optional.empty();
        }
        IndexSet voices = chorus.sounding(stop -> chorus.specification().isVoxHumana(stop));
        return voices.isEmpty()
                ? Optional.empty()
                : Optional.of(new ChorusFault(this, Severity.CAUTION, chorus, voices));
    }

    @Override
    public String sentence(ChorusFault fault) {
        Chorus chorus = fault.chorus();
        return chorus.say(fault.stops(), "has", "have") + " no place " + chorus.place() + ".";
    }

    @Override
    public Optional<Registration> mended(ChorusFault fault) {
        return Optional.of(fault.chorus().without(fault.stops()));
    }
}
