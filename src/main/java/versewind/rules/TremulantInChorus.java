package versewind.rules;

import java.util.Optional;
import java.util.OptionalInt;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;

/** A tremulant shakes what should be firm: not in a chorus, not under a congregation. Common practice, no source. */
final class TremulantInChorus implements ChorusRule {

    @Override
    public Rule rule() {
        return Rule.TREMULANT;
    }

    @Override
    public Optional<ChorusFault> judge(Chorus chorus) {
        return chorus.isNoPlaceForColour() && shaking(chorus).isPresent()
                ? Optional.of(new ChorusFault(this, Severity.CAUTION, chorus, IndexSet.EMPTY))
                : Optional.empty();
    }

    /** The first tremulant drawn that shakes a stop of the chorus. */
    private static OptionalInt shaking(Chorus chorus) {
        Instrument organ = chorus.organ();
        return chorus.registration().tremulants().stream()
                .filter(tremulant -> {
                    String home = organ.tremulants().get(tremulant).division();
                    return chorus.sounding().stream()
                            .anyMatch(stop ->
                                    organ.stops().get(stop).name().division().equals(home));
                })
                .findFirst();
    }

    @Override
    public String sentence(ChorusFault fault) {
        Chorus chorus = fault.chorus();
        String home =
                chorus.organ().tremulants().get(shaking(chorus).orElseThrow()).division();
        return "The tremulant shakes the " + home + " " + chorus.place() + ".";
    }

    @Override
    public Optional<Registration> mended(ChorusFault fault) {
        Chorus chorus = fault.chorus();
        return Optional.of(chorus.registration().toggleTremulant(shaking(chorus).orElseThrow()));
    }
}
