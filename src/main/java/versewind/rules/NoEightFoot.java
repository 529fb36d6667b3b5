package versewind.rules;

import java.util.Optional;
import versewind.organ.IndexSet;
import versewind.organ.Registration;

/** Hands that play chords want 8 ft: everything is built on it. Common practice, no source. */
final class NoEightFoot implements ChorusRule {

    @Override
    public Rule rule() {
        return Rule.NO_EIGHT_FOOT;
    }

    @Override
    public Optional<ChorusFault> judge(Chorus chorus) {
        if (!chorus.isAccompaniment() || chorus.isSilent() || chorus.has(Pitch.FEET_8)) {
            return Optional.empty();
        }
        Severity severity = chorus.company().isSung() ? Severity.CAUTION : Severity.REMARK;
        return Optional.of(new ChorusFault(this, severity, chorus, IndexSet.EMPTY));
    }

    @Override
    public String sentence(ChorusFault fault) {
        return fault.hand().has() + " no 8 ft.";
    }

    @Override
    public Optional<Registration> mended(ChorusFault fault) {
        return fault.chorus().withOne(Pitch.FEET_8);
    }
}
