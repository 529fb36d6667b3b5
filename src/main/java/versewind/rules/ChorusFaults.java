package versewind.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import versewind.organ.IndexSet;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.Verse;
import versewind.sound.KeyRouting;

/**
 * What is wrong with how the stops of a registration are put together, on one instrument. Looks at what is drawn and at
 * which keyboards are played, never at levels, so that a search can ask it for every candidate.
 *
 * <p>Belongs to one thread, as it remembers where the couplers lead.
 *
 * <p>Each hand is judged by what sounds from its keyboard, couplers and all; a manual that nobody plays has no faults.
 *
 * <p>Source: common practice, no source.
 *
 * <p>Checked against: {@code RuleBookTest}, for every rule a case that breaks it and a near miss.
 */
public final class ChorusFaults {

    private static final ChorusRule[] RULES = ChorusRule.values();

    private final OrganFacts organ;
    private final KeyRouting routing;

    private ChorusFaults(OrganFacts organ) {
        this.organ = organ;
        routing = new KeyRouting(organ.organ());
    }

    /** Opens an instrument; what does not depend on what is drawn is worked out once. */
    public static ChorusFaults on(OrganFacts organ) {
        return new ChorusFaults(organ);
    }

    /** The instrument. */
    public OrganFacts organ() {
        return organ;
    }

    /** What is wrong in a verse; empty where all is well. */
    public List<ChorusFault> in(Verse verse) {
        return in(played(verse));
    }

    /**
     * What is wrong with a registration.
     *
     * @param drawn what is drawn, on this instrument
     * @param hands how it is played
     * @param company for whom
     */
    public List<ChorusFault> in(Registration drawn, HandsAndFeet hands, Company company) {
        return in(played(drawn, hands, company));
    }

    /** What is wrong with a registration as it is played. */
    public List<ChorusFault> in(PlayedRegistration played) {
        List<ChorusFault> faults = new ArrayList<>();
        for (Chorus chorus : played.choruses()) {
            for (ChorusRule rule : RULES) {
                Optional<IndexSet> offenders = rule.offenders(chorus);
                if (offenders.isPresent() && !isSaid(faults, rule, offenders.get())) {
                    faults.add(new ChorusFault(this, rule, chorus, offenders.get()));
                }
            }
        }
        return faults;
    }

    /** True for what has been said of the other hand, to which a coupler brings the same stops. */
    private static boolean isSaid(List<ChorusFault> faults, ChorusRule rule, IndexSet offenders) {
        for (ChorusFault fault : faults) {
            if (fault.rule() == rule && fault.hasOffenders(offenders)) {
                return true;
            }
        }
        return false;
    }

    /** What sounds in a verse. */
    public PlayedRegistration played(Verse verse) {
        return played(verse.registration(), verse.hands(), Company.of(verse));
    }

    /** What sounds from a registration as it is played. */
    public PlayedRegistration played(Registration drawn, HandsAndFeet hands, Company company) {
        return new PlayedRegistration(organ, routing, drawn, hands, company);
    }
}
