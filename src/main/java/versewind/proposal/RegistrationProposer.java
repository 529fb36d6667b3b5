package versewind.proposal;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import versewind.organ.BoxPosition;
import versewind.organ.Registration;
import versewind.plan.Plan;
import versewind.plan.VersePlace;
import versewind.rules.ChorusFaults;
import versewind.rules.OrganFacts;
import versewind.sound.OrganSound;

/**
 * Somebody who knows an instrument and proposes what to draw. Belongs to one thread, as its {@link OrganSound} does.
 * The same plan has always the same proposals.
 */
public final class RegistrationProposer {

    private final OrganSound sound;
    private final OrganFacts organ;
    private final ChorusFaults faults;
    private final Requirements requirements;

    private RegistrationProposer(OrganSound sound) {
        this.sound = sound;
        organ = OrganFacts.of(sound);
        faults = ChorusFaults.on(organ);
        requirements = new Requirements(sound, organ);
    }

    /** Somebody who knows an instrument. */
    public static RegistrationProposer of(OrganSound sound) {
        return new RegistrationProposer(sound);
    }

    /**
     * Up to five registrations for a verse, the best first.
     *
     * @param plan a plan that can be played on the instrument
     * @param place of a verse of it
     */
    public OfVerse forVerse(Plan plan, VersePlace place) {
        return forVerse(plan, place, () -> true);
    }

    /** The same, as long as it may go on; then with the best that was found. */
    public OfVerse forVerse(Plan plan, VersePlace place, BooleanSupplier goOn) {
        Requirement requirement = requirements.requirement(plan, place).with(requirements.neighbours(plan, place));
        VerseSearch search = search(plan, place, requirement);
        Explanation why = new Explanation(organ, requirement);
        List<Proposal> proposals = search.best(goOn).stream()
                .filter(draft -> !draft.stops().isEmpty())
                .map(draft -> proposal(draft, search.scoring(), why, settled(draft, Requirements.before(plan, place))))
                .toList();
        return new OfVerse(place, proposals);
    }

    /**
     * One registration for every verse of a hymn, chosen together. Pistons that other hymns have set are left alone.
     *
     * @param plan a plan that can be played on the instrument
     * @param hymn index of the hymn
     * @param watcher who waits
     */
    public ServiceProposal forHymn(Plan plan, int hymn, SearchProgress watcher) {
        return new ServiceSearch(this, plan, List.of(hymn), watcher).proposal();
    }

    /**
     * One registration for every verse of a service, chosen together, with the general pistons there are.
     *
     * @param plan a plan that can be played on the instrument
     * @param watcher who waits
     */
    public ServiceProposal forService(Plan plan, SearchProgress watcher) {
        List<Integer> all = IntStream.range(0, plan.hymns().size()).boxed().toList();
        return new ServiceSearch(this, plan, all, watcher).proposal();
    }

    /**
     * A proposal in a chain.
     *
     * @param draft what is chosen
     * @param before what is drawn in the verse before, where the breath between them counts
     * @param piston that sets it, blank for none
     * @param likeness whether sameness counts
     */
    Proposal proposal(
            Plan plan,
            VersePlace place,
            Draft draft,
            Optional<Draft> before,
            String piston,
            VerseCandidates.Likeness likeness) {
        ChangeTime breath = requirements
                .breath(plan, plan.hymns().get(place.hymn()))
                .with(piston.isBlank() ? ChangeTime.Piston.NONE : ChangeTime.Piston.SET);
        Requirement requirement = requirements
                .requirement(plan, place)
                .with(new Requirement.Neighbours(
                        before,
                        likeness == VerseCandidates.Likeness.COUNTS
                                ? before.stream().toList()
                                : List.of(),
                        breath,
                        likeness == VerseCandidates.Likeness.COUNTS
                                ? requirements.rise(plan, place, before)
                                : Optional.empty()));
        return proposal(
                draft,
                search(plan, place, requirement).scoring(),
                new Explanation(organ, requirement),
                settled(draft, before));
    }

    /**
     * What is proposed for a verse.
     *
     * @param place of the verse
     * @param proposals the best first; none where the locks leave nothing that could be drawn
     */
    public record OfVerse(VersePlace place, List<Proposal> proposals) {

        public OfVerse {
            proposals = List.copyOf(proposals);
        }

        /** Why there is none, in one sentence; empty where there is one. */
        public Optional<String> none() {
            return proposals.isEmpty()
                    ? Optional.of("Nothing can be drawn: the locks leave no stop that could sound.")
                    : Optional.empty();
        }
    }

    OrganFacts organ() {
        return organ;
    }

    Requirements requirements() {
        return requirements;
    }

    VerseSearch search(Plan plan, VersePlace place, Requirement requirement) {
        ScoreFunction scoring = new ScoreFunction(
                organ,
                requirement,
                faults,
                sound.marginEvaluator(
                        requirements.weighed(plan, place), plan.heading().people()));
        return new VerseSearch(organ, scoring);
    }

    private Proposal proposal(Draft draft, ScoreFunction scoring, Explanation why, Registration settled) {
        Score score = scoring.score(draft);
        return new Proposal(settled, draft.hands(), score, why.of(draft, score, scoring.marginDb(draft)));
    }

    /** Boxes that nobody hears stay where they were. */
    private Registration settled(Draft draft, Optional<Draft> before) {
        if (before.isEmpty()) {
            return draft.registration();
        }
        DraftAnalysis sounding = new DraftAnalysis(organ);
        sounding.look(draft);
        Registration settled = draft.registration();
        for (int division = 0; division < settled.boxes().size(); division++) {
            if (!sounding.isHeard(division)) {
                BoxPosition kept = before.get().registration().boxes().get(division);
                settled = settled.withBox(division, kept);
            }
        }
        return settled;
    }
}
