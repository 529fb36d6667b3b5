package versewind.rules;

import java.util.List;
import java.util.stream.Stream;
import versewind.organ.IndexSet;

/**
 * A rule broken by how the stops that a hand or the feet play are put together. Its sentence and its fixes are made
 * when they are asked for.
 */
public final class ChorusFault {

    private final ChorusFaults faults;
    private final ChorusRule rule;
    private final Chorus chorus;
    private final IndexSet offenders;

    ChorusFault(ChorusFaults faults, ChorusRule rule, Chorus chorus, IndexSet offenders) {
        this.faults = faults;
        this.rule = rule;
        this.chorus = chorus;
        this.offenders = offenders;
    }

    /** The rule that is broken. */
    public ChorusRule rule() {
        return rule;
    }

    /** True where such stops or couplers break the rule, and any do. */
    boolean hasOffenders(IndexSet others) {
        return !offenders.isEmpty() && offenders.equals(others);
    }

    /** How much it matters. */
    public Severity severity() {
        return rule.head().severity();
    }

    /** Its cost. */
    public double weight() {
        return rule.points();
    }

    /** The fault in one sentence. */
    public String sentence() {
        return rule.sentence(chorus, offenders);
    }

    /** What fixes it, the likeliest first: it is gone then, and no hard rule of choruses is broken for it. */
    Stream<Fix> fixes() {
        List<ChorusFault> before = faults.in(chorus.played());
        return rule.fixes(chorus, offenders).filter(fix -> isFixed(before, fix));
    }

    private boolean isFixed(List<ChorusFault> before, Fix fix) {
        List<ChorusFault> after = faults.in(fix.registration(), fix.hands(), chorus.company());
        return count(after, rule) < count(before, rule)
                && after.stream()
                        .filter(fault -> fault.rule != rule && fault.severity() == Severity.CAUTION)
                        .allMatch(fault -> count(after, fault.rule) <= count(before, fault.rule));
    }

    private static long count(List<ChorusFault> faults, ChorusRule rule) {
        return faults.stream().filter(fault -> fault.rule == rule).count();
    }

    @Override
    public String toString() {
        return sentence();
    }
}
