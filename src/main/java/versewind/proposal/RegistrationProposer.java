package versewind.proposal;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.IndexSet;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.Plan;
import versewind.plan.VersePlace;
import versewind.rules.BuildingStep;
import versewind.rules.ChorusFaults;
import versewind.rules.OrganFacts;
import versewind.sound.Balance;
import versewind.sound.OrganSound;

/**
 * Proposes what to draw on an instrument: the order of building up makes the drafts, and the rule book judges them.
 * Belongs to one thread, as its {@link OrganSound} does. The same plan has always the same proposals.
 */
public final class RegistrationProposer {

    private final OrganFacts organ;
    private final ChorusFaults faults;
    private final Requirements requirements;

    private RegistrationProposer(OrganSound sound, UsualShare usual, IndexSet usualStops) {
        organ = OrganFacts.of(sound);
        faults = ChorusFaults.on(organ);
        requirements = new Requirements(sound, organ, usual, usualStops);
    }

    /** Proposals for an instrument. */
    public static RegistrationProposer of(OrganSound sound) {
        return of(sound, UsualShare.NONE, IndexSet.EMPTY);
    }

    /**
     * Proposals for an instrument on which something is usual.
     *
     * @param usual what a plain verse is to be as strong as
     * @param stops that are usually drawn, and come before others of their kind
     */
    public static RegistrationProposer of(OrganSound sound, UsualShare usual, IndexSet stops) {
        return new RegistrationProposer(sound, usual, stops);
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
        if (!plan.verse(place).isPlayed()) {
            return new OfVerse(place, List.of());
        }
        VerseSearch search = search(plan, place);
        Step step = new Step(
                requirements.succession(plan, place),
                Requirements.before(plan, place).map(draft -> neighbour(plan, place, draft)),
                organ.organ().pistons().any());
        Asked asked = new Asked(plan, place, search.scoring(), step);
        List<Candidate> ranked = search.ranked(VerseSearch.WITHIN, goOn).stream()
                .map(each -> each.with(each.points() + step.points(each)))
                .sorted(VerseSearch.BEST_FIRST)
                .toList();
        List<Candidate> chosen = VerseSearch.unlike(ranked);
        return new OfVerse(
                place,
                chosen.stream()
                        .map(each -> proposal(
                                asked,
                                each,
                                step.before()
                                        .map(before -> Settling.boxed(
                                                each,
                                                search.scoring().requirement(),
                                                before.draft().registration()))
                                        .orElse(each.draft().registration()),
                                Optional.of(chosen.get(0)).filter(best -> !best.equals(each))))
                        .toList());
    }

    /** The draft of the verse before, as that verse judges it. */
    private Candidate neighbour(Plan plan, VersePlace place, Draft draft) {
        VersePlace before = new VersePlace(place.hymn(), place.verse() - 1);
        Sound sound = new Sound(draft.hands().right(), BuildingStep.FLUTE_8, "", Voice.NONE, "", "", 0);
        return scoring(plan, before).candidate(new Sketch(draft, sound));
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
     * A proposal.
     *
     * @param asked the verse
     * @param candidate what is proposed
     * @param drawn it with what nobody hears
     * @param best the best proposal for the verse, where it is another
     */
    Proposal proposal(Asked asked, Candidate candidate, Registration drawn, Optional<Candidate> best) {
        Rows.Told rows = new Rows.Told();
        asked.scoring().add(candidate, rows);
        asked.step().add(candidate, rows);
        HandsAndFeet hands = candidate.draft().hands();
        Balance promised = requirements.promised(asked.plan(), asked.place(), drawn, hands);
        Explanation words = new Explanation(organ, asked.scoring().requirement());
        return new Proposal(
                drawn,
                hands,
                promised,
                rows.score(),
                words.sound(candidate.sketch()),
                words.why(candidate, promised, rows.score()),
                best.map(other -> words.unlike(other, candidate)).orElse(""));
    }

    /** Verse after verse what is drawn, heard or not. */
    List<Registration> settled(List<Settling.Chosen> verses) {
        return new Settling(verses, faults).registrations();
    }

    /**
     * What is proposed for a verse.
     *
     * @param place of the verse
     * @param proposals the best first; none where the locks leave nothing that could be drawn
     */
    public record OfVerse(VersePlace place, List<Proposal> proposals) {

        /** What is usual is not much stronger than the best up to three steps of the order. An estimate. */
        private static final double A_LEAP = 3 * Target.A_STEP;

        public OfVerse {
            proposals = List.copyOf(proposals);
        }

        /**
         * The same with what is usual, where that is not among them: before the others, or after them if it is much
         * stronger than the best.
         */
        public OfVerse after(Optional<Proposal> usual) {
            boolean isNew = usual.isPresent()
                    && proposals.stream().noneMatch(other -> other.registration()
                            .equals(usual.get().registration()));
            if (!isNew) {
                return this;
            }
            double beyond = proposals.isEmpty() ? 0 : usual.get().beyond(proposals.get(0));
            Proposal last = usual.get().unlike("stronger than this verse wants");
            return new OfVerse(
                    place,
                    beyond <= A_LEAP
                            ? Stream.concat(usual.stream(), proposals.stream()).toList()
                            : Stream.concat(proposals.stream(), Stream.of(last)).toList());
        }

        /** Why there is none in a plan, in one sentence; empty where there is one. */
        public Optional<String> none(Plan plan) {
            String why = plan.verse(place).isPlayed()
                    ? "Nothing can be drawn: the locks leave no stop that could sound."
                    : "Nobody plays in this verse.";
            return proposals.isEmpty() ? Optional.of(why) : Optional.empty();
        }
    }

    OrganFacts organ() {
        return organ;
    }

    Requirements requirements() {
        return requirements;
    }

    VerseSearch search(Plan plan, VersePlace place) {
        return new VerseSearch(organ, scoring(plan, place));
    }

    private ScoreFunction scoring(Plan plan, VersePlace place) {
        Requirement requirement = requirements.requirement(plan, place);
        return new ScoreFunction(requirement, faults, requirements.balance(plan, place, requirement));
    }
}
