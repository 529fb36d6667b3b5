package versewind.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.Verse;
import versewind.sound.KeyRouting;
import versewind.sound.VoicePart;

/**
 * What is wrong with how the stops of a registration are put together, on one instrument. Looks at what is drawn and at
 * which keyboards are played, never at levels, so that a search can ask it for every candidate.
 *
 * <p>Belongs to one thread, as it remembers where the couplers lead.
 *
 * <p>Each hand is judged by what sounds from its keyboard, couplers and all; a manual that nobody plays has no faults.
 * Both hands on one keyboard are one.
 *
 * <p>Source: common practice, no source.
 *
 * <p>Checked against: {@code RuleBookTest}, for every rule a case that breaks it and a near miss.
 */
public final class ChorusFaults {

    private static final ChorusRule[] RULES = ChorusRule.values();

    private final StopFacts specification;
    private final KeyRouting routing;

    private ChorusFaults(Instrument organ) {
        specification = new StopFacts(organ);
        routing = new KeyRouting(organ);
    }

    /** Opens an instrument; what does not depend on what is drawn is worked out once. */
    public static ChorusFaults on(Instrument organ) {
        return new ChorusFaults(organ);
    }

    /** What is wrong in a verse; empty where all is well. */
    public List<ChorusFault> in(Verse verse) {
        return in(verse.registration(), verse.hands(), Company.of(verse));
    }

    /**
     * What is wrong with a registration.
     *
     * @param drawn what is drawn, on this instrument
     * @param hands how it is played
     * @param company for whom
     */
    public List<ChorusFault> in(Registration drawn, HandsAndFeet hands, Company company) {
        List<ChorusFault> faults = new ArrayList<>();
        for (Chorus chorus : choruses(drawn, hands, company)) {
            for (ChorusRule rule : RULES) {
                Optional<IndexSet> offenders = rule.offenders(chorus);
                if (offenders.isPresent()) {
                    faults.add(new ChorusFault(rule, chorus, offenders.get()));
                }
            }
        }
        return faults;
    }

    /** What every hand, and the feet, play. */
    List<Chorus> choruses(Verse verse) {
        return choruses(verse.registration(), verse.hands(), Company.of(verse));
    }

    private List<Chorus> choruses(Registration drawn, HandsAndFeet hands, Company company) {
        int[] received = routing.received(hands, drawn.couplers());
        PlayedRegistration all = new PlayedRegistration(specification, drawn, hands, company);
        List<Chorus> choruses = new ArrayList<>();
        if (specification.isOneKeyboard(hands.right(), hands.left())) {
            choruses.add(new Chorus(all, Hand.BOTH_HANDS, VoicePart.SOPRANO, hands.right(), received));
        } else {
            choruses.add(new Chorus(all, Hand.RIGHT_HAND, VoicePart.SOPRANO, hands.right(), received));
            choruses.add(new Chorus(all, Hand.LEFT_HAND, VoicePart.TENOR, hands.left(), received));
        }
        OptionalInt pedal = specification.organ().pedalDivision();
        if (pedal.isPresent() && hands.layout().usesPedal()) {
            choruses.add(new Chorus(all, Hand.FEET, VoicePart.BASS_ON_PEDAL, pedal.getAsInt(), received));
        }
        return choruses;
    }
}
