package versewind.proposal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import versewind.organ.Knobs;
import versewind.organ.Registration;
import versewind.plan.Plan;
import versewind.plan.Sung;
import versewind.plan.Verse;
import versewind.plan.VersePlace;

/** The search over all verses of some hymns: candidates for each, and the chain that goes best together. */
final class ServiceSearch {

    /** Candidates that a verse takes over from each of the others. */
    private static final int OF_OTHER_VERSES = 4;

    private final RegistrationProposer proposer;
    private final Plan plan;
    private final List<Integer> hymns;
    private final SearchProgress watcher;
    private final Map<Conditions, List<Candidate>> known = new HashMap<>();
    private final List<Searched> searched = new ArrayList<>();

    /** Verses of the same conditions have the same candidates. */
    private record Conditions(Requirement requirement, Sung sung) {}

    /** A verse and its own candidates, the best first. */
    private record Searched(VersePlace place, ScoreFunction scoring, List<Candidate> own) {}

    ServiceSearch(RegistrationProposer proposer, Plan plan, List<Integer> hymns, SearchProgress watcher) {
        this.proposer = proposer;
        this.plan = plan;
        this.hymns = hymns;
        this.watcher = watcher;
    }

    ServiceProposal proposal() {
        List<VersePlace> places = hymns.stream()
                .flatMap(hymn -> IntStream.range(
                                0, plan.hymns().get(hymn).verses().size())
                        .mapToObj(verse -> new VersePlace(hymn, verse)))
                .filter(place -> plan.verse(place).isPlayed())
                .toList();
        int reached = 0;
        watcher.searched(0, places.size());
        while (reached < places.size() && watcher.goesOn()) {
            search(places.get(reached));
            reached++;
            watcher.searched(reached, places.size());
        }
        return chained(places.size() - reached);
    }

    private void search(VersePlace place) {
        VerseSearch search = proposer.search(plan, place);
        Verse weighed = proposer.requirements().weighed(plan, place);
        Conditions conditions = new Conditions(search.scoring().requirement(), weighed.sung());
        List<Candidate> own = known.computeIfAbsent(
                conditions, key -> VerseSearch.varied(search.ranked(VerseSearch.WITHIN_IN_CHAIN, watcher::goesOn)));
        if (!own.isEmpty()) {
            searched.add(new Searched(place, search.scoring(), own));
        }
    }

    private ServiceProposal chained(int unsearched) {
        if (searched.isEmpty()) {
            return new ServiceProposal(List.of(), 0, 0, 0, unsearched);
        }
        FreePistons pistons = FreePistons.of(proposer.organ().organ(), plan, hymns);
        List<VerseCandidates> stages =
                IntStream.range(0, searched.size()).mapToObj(this::stage).toList();
        ServiceOptimizer chain = new ServiceOptimizer(stages, pistons.free(), pistons.owned());
        ServiceOptimizer.Best best = chain.best(watcher::goesOn);
        double greedyCost = chain.greedy().cost();
        return new ServiceProposal(drawn(stages, best, pistons), best.cost(), best.bound(), greedyCost, unsearched);
    }

    private VerseCandidates stage(int index) {
        Searched here = searched.get(index);
        boolean follows = index > 0
                && searched.get(index - 1).place().hymn() == here.place().hymn()
                && searched.get(index - 1).place().verse() == here.place().verse() - 1;
        return new VerseCandidates(
                candidates(here), follows ? proposer.requirements().succession(plan, here.place()) : Succession.NONE);
    }

    /** Its own, and the best of the hymn's other verses, as this verse judges them. */
    private List<Candidate> candidates(Searched here) {
        Map<Draft, Candidate> all = new LinkedHashMap<>();
        here.own().forEach(each -> all.put(each.draft(), each));
        Requirement requirement = here.scoring().requirement();
        for (Searched other : searched) {
            if (other.place().hymn() == here.place().hymn() && !other.place().equals(here.place())) {
                other.own().stream()
                        .limit(OF_OTHER_VERSES)
                        .filter(each -> requirement.allows(each.draft()))
                        .forEach(each -> all.computeIfAbsent(
                                each.draft(), draft -> here.scoring().candidate(each.sketch())));
            }
        }
        return List.copyOf(all.values());
    }

    private static Candidate candidate(List<VerseCandidates> stages, ServiceOptimizer.Best best, int index) {
        return stages.get(index).candidates().get(best.candidates().get(index));
    }

    /** Whether the verse before may be left out, and the change from the one before that is too much for the hands. */
    private boolean isLateWithoutTheVerseBefore(List<VerseCandidates> stages, ServiceOptimizer.Best best, int index) {
        Optional<ChangeTime> breath = stages.get(index).succession().breath();
        boolean isReached = breath.isPresent()
                && stages.get(index - 1).succession().breath().isPresent()
                && plan.verse(searched.get(index - 1).place()).isOptional();
        return isReached
                && breath.get()
                                .byHand(breath.get()
                                        .moves(candidate(stages, best, index - 2), candidate(stages, best, index)))
                        >= ChangeTime.TOO_LATE;
    }

    private List<ServiceProposal.OfVerse> drawn(
            List<VerseCandidates> stages, ServiceOptimizer.Best best, FreePistons pistons) {
        Set<Knobs> set = new HashSet<>(pistons.owned());
        set.addAll(best.pistons());
        for (int i = 2; i < stages.size() && set.size() < pistons.owned().size() + pistons.free(); i++) {
            if (isLateWithoutTheVerseBefore(stages, best, i)) {
                set.add(candidate(stages, best, i).setting());
            }
        }
        List<Settling.Chosen> chosen = new ArrayList<>();
        for (int i = 0; i < stages.size(); i++) {
            Candidate candidate = candidate(stages, best, i);
            chosen.add(new Settling.Chosen(
                    candidate,
                    searched.get(i).scoring().requirement(),
                    stages.get(i).succession().breath().isPresent(),
                    !pistons.setEverything() || !set.contains(candidate.setting())));
        }
        List<Registration> settled = proposer.settled(chosen);
        List<ServiceProposal.OfVerse> verses = new ArrayList<>();
        for (int i = 0; i < stages.size(); i++) {
            Candidate candidate = chosen.get(i).candidate();
            boolean hasPiston = set.contains(candidate.setting());
            Optional<Candidate> before =
                    chosen.get(i).follows() ? Optional.of(chosen.get(i - 1).candidate()) : Optional.empty();
            Step step = new Step(stages.get(i).succession(), before, hasPiston);
            Asked asked =
                    new Asked(plan, searched.get(i).place(), searched.get(i).scoring(), step);
            Proposal proposal = proposer.proposal(asked, candidate, settled.get(i), Optional.empty());
            Optional<Registration> was = chosen.get(i).follows() ? Optional.of(settled.get(i - 1)) : Optional.empty();
            String piston = hasPiston ? pistons.press(settled.get(i), was) : "";
            verses.add(new ServiceProposal.OfVerse(searched.get(i).place(), proposal, piston));
        }
        return verses;
    }
}
