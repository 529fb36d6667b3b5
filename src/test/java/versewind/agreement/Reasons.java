package versewind.agreement;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import versewind.agreement.Program.Offer;
import versewind.agreement.Program.Said;
import versewind.organ.Family;
import versewind.organ.Instrument;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;

/**
 * What proposals say against themselves beside what the findings say of them, where the organist wants a stop drawn
 * that hardly fits: there every proposal breaks a rule.
 */
final class Reasons {

    private static final List<Family> HARDLY_FITTING =
            List.of(Family.CELESTE, Family.SOLO_REED, Family.MUTATION, Family.MIXTURE, Family.CHORUS_REED);

    private final Program program;
    private final CaseCounts counts;
    private final Subject subject;
    private final Situation situation;
    private final Instrument organ;

    Reasons(Program program, CaseCounts counts, Subject subject, Situation situation) {
        this.program = program;
        this.counts = counts;
        this.subject = subject;
        this.situation = situation;
        organ = subject.organ();
    }

    /** One verse, with one stop always drawn: another family in each situation. */
    void measure(Plan asked) {
        VersePlace place = new VersePlace(0, 1);
        Family family = HARDLY_FITTING.get(situation.ordinal() % HARDLY_FITTING.size());
        organ.stops().stream()
                .filter(knob -> knob.stop().family() == family
                        && !organ.divisions().get(knob.division()).isPedal())
                .findFirst()
                .ifPresent(knob -> {
                    Verse verse = Program.verse(asked, place);
                    Verse locked = verse.withLocks(
                            verse.locks().withAlways(organ.stops().indexOf(knob)));
                    Plan plan = asked.withVerse(place, locked);
                    program.five(plan, place).forEach(offer -> compare(plan, place, offer));
                });
    }

    private void compare(Plan plan, VersePlace place, Offer offer) {
        String where = Measurement.where(subject, situation, offer.verse());
        Set<String> found = new HashSet<>();
        for (Said said : program.mentions(plan.withVerse(place, offer.verse()), place)) {
            found.add(said.sentence());
            if (Program.isOfStops(said)) {
                counts.judged("findings compared with reasons", subject.size());
                if (!offer.rules().contains(said.sentence())) {
                    counts.broken(
                            Claim.REASONS,
                            "said by the findings only: " + said.rule(),
                            subject.size(),
                            where + said.sentence());
                }
            }
        }
        for (String sentence : offer.rules()) {
            counts.judged("reasons compared with findings", subject.size());
            if (!found.contains(sentence)) {
                counts.broken(Claim.REASONS, "said by the proposal only", subject.size(), where + sentence);
            }
        }
    }
}
