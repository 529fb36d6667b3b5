package versewind.rules;

import java.util.Optional;
import versewind.organ.IndexSet;
import versewind.organ.Registration;

/** A rule broken by how the stops that a hand or the feet play are put together. What it says is made when it is asked. */
public final class ChorusFault {

    private final ChorusRule broken;
    private final Severity severity;
    private final Chorus chorus;
    private final IndexSet stops;

    ChorusFault(ChorusRule broken, Severity severity, Chorus chorus, IndexSet stops) {
        this.broken = broken;
        this.severity = severity;
        this.chorus = chorus;
        this.stops = stops;
    }

    /** Which rule is broken. */
    public Rule rule() {
        return broken.rule();
    }

    /** How much it matters. */
    public Severity severity() {
        return severity;
    }

    /** What it costs: the rule's weight, and half of it where it is only a remark. An estimate. */
    public double weight() {
        return switch (severity) {
            case CAUTION -> broken.rule().weight();
            case REMARK -> broken.rule().weight() / 2.0;
        };
    }

    /** Who plays it. */
    public Hand hand() {
        return chorus.hand();
    }

    /** Indices of the stops that break it; none where something is missing, or a tremulant is at fault. */
    public IndexSet stops() {
        return stops;
    }

    /** What is wrong, in one sentence. */
    public String sentence() {
        return broken.sentence(this);
    }

    /** What would be drawn after the smallest change that mends it, if there is one. */
    public Optional<Registration> mended() {
        return broken.mended(this);
    }

    Chorus chorus() {
        return chorus;
    }

    @Override
    public String toString() {
        return sentence();
    }
}
