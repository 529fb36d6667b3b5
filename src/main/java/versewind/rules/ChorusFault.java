package versewind.rules;

import java.util.Optional;
import versewind.organ.IndexSet;
import versewind.organ.Registration;

/**
 * A rule broken by how the stops that a hand or the feet play are put together. Its sentence and its mend are made when
 * they are asked for.
 */
public final class ChorusFault {

    private final ChorusRule rule;
    private final Chorus chorus;
    private final IndexSet stops;

    ChorusFault(ChorusRule rule, Chorus chorus, IndexSet stops) {
        this.rule = rule;
        this.chorus = chorus;
        this.stops = stops;
    }

    /** The rule that is broken. */
    public ChorusRule rule() {
        return rule;
    }

    /** How much it matters. */
    public Severity severity() {
        return rule.severity(chorus);
    }

    /** Its cost: the rule's weight, and half of it for a remark. */
    public double weight() {
        return rule.points(severity());
    }

    /** The fault in one sentence. */
    public String sentence() {
        return rule.sentence(chorus, stops);
    }

    /** The registration after the smallest change that mends the fault, if there is one. */
    public Optional<Registration> mended() {
        return rule.mended(chorus, stops);
    }

    @Override
    public String toString() {
        return sentence();
    }
}
