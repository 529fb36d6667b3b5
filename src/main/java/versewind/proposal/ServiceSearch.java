package versewind.proposal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import versewind.organ.Registration;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VersePlace;

/** The search over all verses of some hymns: candidates for each, and the chain that goes best together. */
final class ServiceSearch {

    private static final int OWN_CANDIDATES = 12;
    private static final int OF_OTHER_VERSES = 3;
    private static final int MOST_CANDIDATES = 22;
    private static final int NEAR_CANDIDATES = 5;

    /** How often changes that do not fit into the breath are looked at again. */
    private static final int ROUNDS = 2;

    /** Choices of pistons that are enough to see where a change does not fit. */
    private static final int FEW_BRANCHES = 40;

    private final RegistrationProposer proposer;
    private final Plan plan;
    private final List<Integer> hymns;
    private final SearchProgress watcher;
    private final Map<Conditions, List<HillClimb.Scored>> known = new HashMap<>();
    private final List<Searched> searched = new ArrayList<>();

    /** Verses of the same conditions have the same candidates. */
    private record Conditions(Requirement requirement, Singing singing, OptionalInt people) {}

    /** A verse whose candidates are known: its own, and those found near to what its neighbours draw. */
    private record Searched(
            VersePlace place,
            VerseSearch search,
            List<HillClimb.Scored> ranked,
            Set<Draft> near,
            Map<Draft, VerseCandidates.Candidate> judged) {

        /** A draft as this verse judges it; no draft is judged twice. */
        VerseCandidates.Candidate candidate(Draft draft) {
            return judged.computeIfAbsent(draft, search::candidate);
        }
    }

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
        Requirement requirement = proposer.requirements().requirement(plan, place);
        VerseSearch search = proposer.search(plan, place, requirement);
        Verse weighed = proposer.requirements().weighed(plan, place);
        Conditions conditions = new Conditions(requirement, weighed.singing(), weighed.people());
        List<HillClimb.Scored> ranked = known.computeIfAbsent(
                conditions,
                key -> VerseSearch.distinct(search.climbed(HillClimb.Effort.OF_MANY, watcher::goesOn), OWN_CANDIDATES));
        if (!ranked.isEmpty()) {
            searched.add(new Searched(place, search, ranked, new LinkedHashSet<>(), new HashMap<>()));
        }
    }

    private ServiceProposal chained(int unsearched) {
        if (searched.isEmpty()) {
            return new ServiceProposal(List.of(), 0, 0, 0, unsearched);
        }
        FreeGenerals generals = FreeGenerals.of(proposer.organ().organ(), plan, hymns);
        List<VerseCandidates> stages = stages();
        ServiceOptimizer chain = new ServiceOptimizer(
                stages, generals.free().size(), generals.owned().keySet());
        ServiceOptimizer.Best best = chain.best(watcher::goesOn, FEW_BRANCHES);
        for (int round = 0; round < ROUNDS && watcher.goesOn(); round++) {
            List<Integer> late = chain.late(best);
            if (late.isEmpty()) {
                break;
            }
            for (int index : late) {
                Draft before = draft(stages, best, index - 1);
                Draft after = draft(stages, best, index);
                searchNear(index, before);
                searchNear(index - 1, after);
            }
            stages = stages();
            chain = new ServiceOptimizer(
                    stages, generals.free().size(), generals.owned().keySet());
            best = chain.best(watcher::goesOn, FEW_BRANCHES);
        }
        best = chain.best(watcher::goesOn);
        double greedyCost = chain.greedy().cost();
        return new ServiceProposal(drawn(stages, best, generals), best.cost(), best.bound(), greedyCost, unsearched);
    }

    private List<VerseCandidates> stages() {
        List<VerseCandidates> stages = new ArrayList<>();
        for (int i = 0; i < searched.size(); i++) {
            stages.add(stage(i));
        }
        return stages;
    }

    private static Draft draft(List<VerseCandidates> stages, ServiceOptimizer.Best best, int index) {
        return stages.get(index).candidates().get(best.candidates().get(index)).draft();
    }

    /** Adds candidates for a verse that a hand can reach in the breath from what is drawn beside it. */
    private void searchNear(int index, Draft beside) {
        Searched here = searched.get(index);
        ChangeTime breath = proposer.requirements()
                .breath(plan, plan.hymns().get(here.place().hymn()));
        Requirement requirement = here.search()
                .scoring()
                .requirement()
                .with(new Requirement.Neighbours(Optional.of(beside), List.of(), breath, Optional.empty()));
        List<HillClimb.Scored> climbed =
                proposer.search(plan, here.place(), requirement).climbed(HillClimb.Effort.OF_MANY, watcher::goesOn);
        VerseSearch.distinct(climbed, NEAR_CANDIDATES)
                .forEach(each -> here.near().add(each.draft()));
    }

    private VerseCandidates stage(int index) {
        Searched here = searched.get(index);
        Hymn hymn = plan.hymns().get(here.place().hymn());
        boolean follows = index > 0
                && searched.get(index - 1).place().hymn() == here.place().hymn()
                && searched.get(index - 1).place().verse() == here.place().verse() - 1;
        boolean isText = follows
                && Requirements.isText(hymn, here.place().verse())
                && Requirements.isText(hymn, here.place().verse() - 1);
        return new VerseCandidates(
                candidates(here),
                follows ? Optional.of(proposer.requirements().breath(plan, hymn)) : Optional.empty(),
                isText ? VerseCandidates.Likeness.COUNTS : VerseCandidates.Likeness.IS_WELCOME,
                isText ? proposer.requirements().risesDb(plan, here.place()) : OptionalDouble.empty());
    }

    /**
     * Its own, and the best of the hymn's other verses, as this verse judges them; and those near to its neighbours.
     */
    private List<VerseCandidates.Candidate> candidates(Searched here) {
        Set<Draft> own = new LinkedHashSet<>();
        here.ranked().forEach(each -> own.add(each.draft()));
        for (Searched other : searched) {
            if (other.place().hymn() == here.place().hymn()) {
                other.ranked().stream()
                        .limit(OF_OTHER_VERSES)
                        .map(HillClimb.Scored::draft)
                        .filter(here.search().space()::contains)
                        .forEach(own::add);
            }
        }
        List<VerseCandidates.Candidate> candidates = new ArrayList<>(own.stream()
                .map(here::candidate)
                .sorted(Comparator.comparingDouble(VerseCandidates.Candidate::points)
                        .thenComparing(VerseCandidates.Candidate::draft, Draft.ORDER))
                .limit(MOST_CANDIDATES)
                .toList());
        here.near().stream()
                .map(here::candidate)
                .filter(near -> !candidates.contains(near))
                .forEach(candidates::add);
        return candidates;
    }

    private List<ServiceProposal.OfVerse> drawn(
            List<VerseCandidates> stages, ServiceOptimizer.Best best, FreeGenerals generals) {
        Map<GeneralSetting, String> names = generals.with(best.pistons());
        List<ServiceProposal.OfVerse> verses = new ArrayList<>();
        Optional<Draft> before = Optional.empty();
        for (int i = 0; i < stages.size(); i++) {
            Searched here = searched.get(i);
            Draft draft =
                    stages.get(i).candidates().get(best.candidates().get(i)).draft();
            if (draft.stops().isEmpty()) {
                continue;
            }
            boolean follows = stages.get(i).breath().isPresent();
            String piston = names.getOrDefault(GeneralSetting.of(draft.registration()), "");
            Proposal proposal = proposer.proposal(
                    plan,
                    here.place(),
                    draft,
                    follows ? before : Optional.empty(),
                    piston,
                    stages.get(i).likeness());
            Registration settled = proposal.registration();
            before = Optional.of(draft.with(settled));
            verses.add(new ServiceProposal.OfVerse(here.place(), proposal, piston));
        }
        return verses;
    }
}
