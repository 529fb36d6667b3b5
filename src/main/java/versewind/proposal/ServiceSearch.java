package versewind.proposal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
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
    private final Map<List<VersePlace>, Succession> successions = new HashMap<>();

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

    /**
     * The chain of the verses played in any case, and into it those that may be left out: so it holds with them
     * and without.
     */
    private ServiceProposal chained(int unsearched) {
        List<Searched> always = searched.stream()
                .filter(each -> !plan.verse(each.place()).isOptional())
                .toList();
        List<Searched> chain = always.isEmpty() ? searched : always;
        if (chain.isEmpty()) {
            return new ServiceProposal(List.of(), 0, 0, 0, unsearched);
        }
        FreePistons pistons = FreePistons.of(proposer.organ().organ(), plan, hymns);
        List<VerseCandidates> stages = IntStream.range(0, chain.size())
                .mapToObj(i -> new VerseCandidates(
                        candidates(chain.get(i)),
                        i == 0 ? Succession.NONE : succession(chain.get(i - 1), chain.get(i))))
                .toList();
        ServiceOptimizer optimizer = new ServiceOptimizer(stages, pistons.free(), pistons.owned());
        ServiceOptimizer.Best best = optimizer.best(watcher::goesOn);
        Set<Knobs> set = new HashSet<>(pistons.owned());
        set.addAll(best.pistons());
        Map<VersePlace, Candidate> chosen = new HashMap<>();
        for (int i = 0; i < stages.size(); i++) {
            chosen.put(
                    chain.get(i).place(),
                    stages.get(i).candidates().get(best.candidates().get(i)));
        }
        int most = pistons.owned().size() + pistons.free();
        Predicate<Candidate> mayBeSet = candidate -> set.contains(candidate.setting()) || set.size() < most;
        for (int i = 0; i < searched.size(); i++) {
            if (!chosen.containsKey(searched.get(i).place())) {
                chosen.put(searched.get(i).place(), between(i, chosen, mayBeSet));
            }
        }
        for (int i = 1; i < searched.size() && set.size() < most; i++) {
            if (isLate(i, chosen)) {
                set.add(chosen.get(searched.get(i).place()).setting());
            }
        }
        double greedyCost = optimizer.greedy().cost();
        return new ServiceProposal(drawn(chosen, set, pistons), best.cost(), best.bound(), greedyCost, unsearched);
    }

    /** How a verse follows another that was searched; not at all where a silence or another hymn lies between. */
    private Succession succession(Searched from, Searched to) {
        boolean follows = from.place().hymn() == to.place().hymn()
                && plan.hymns()
                        .get(to.place().hymn())
                        .before(to.place().verse())
                        .contains(from.place().verse());
        return follows
                ? successions.computeIfAbsent(List.of(from.place(), to.place()), pair -> proposer.requirements()
                        .succession(plan, from.place(), to.place()))
                : Succession.NONE;
    }

    private Succession succession(int index) {
        return index == 0 ? Succession.NONE : succession(searched.get(index - 1), searched.get(index));
    }

    /** What goes best between the verse before and the next one that is chosen. */
    private Candidate between(int index, Map<VersePlace, Candidate> chosen, Predicate<Candidate> mayBeSet) {
        Searched here = searched.get(index);
        Optional<Searched> before = searched.subList(0, index).stream().reduce((one, other) -> other);
        Optional<Searched> next = searched.subList(index + 1, searched.size()).stream()
                .filter(each -> chosen.containsKey(each.place()))
                .findFirst();
        ToDoubleFunction<Candidate> cost = each -> each.points()
                + before.map(from -> cost(succession(from, here), chosen.get(from.place()), each, mayBeSet))
                        .orElse(0.0)
                + next.map(to -> cost(succession(here, to), each, chosen.get(to.place()), mayBeSet))
                        .orElse(0.0);
        return candidates(here).stream().min(Comparator.comparingDouble(cost)).orElseThrow();
    }

    private static double cost(Succession succession, Candidate from, Candidate to, Predicate<Candidate> mayBeSet) {
        Succession.Cost cost = succession.cost(from, to);
        return cost.standing() + (mayBeSet.test(to) ? cost.byPiston() : cost.byHand());
    }

    /** Whether the change from the verse before is too much for the hands. */
    private boolean isLate(int index, Map<VersePlace, Candidate> chosen) {
        Succession.Cost cost = succession(index)
                .cost(
                        chosen.get(searched.get(index - 1).place()),
                        chosen.get(searched.get(index).place()));
        return cost.byHand() >= ChangeTime.TOO_LATE;
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

    private List<ServiceProposal.OfVerse> drawn(
            Map<VersePlace, Candidate> candidates, Set<Knobs> set, FreePistons pistons) {
        List<Settling.Chosen> chosen = new ArrayList<>();
        for (int i = 0; i < searched.size(); i++) {
            Candidate candidate = candidates.get(searched.get(i).place());
            chosen.add(new Settling.Chosen(
                    candidate,
                    searched.get(i).scoring().requirement(),
                    succession(i).breath().isPresent(),
                    !pistons.setEverything() || !set.contains(candidate.setting())));
        }
        List<Registration> settled = proposer.settled(chosen);
        Map<Integer, String> pressed = pressed(chosen, settled, set, pistons);
        List<ServiceProposal.OfVerse> verses = new ArrayList<>();
        for (int i = 0; i < searched.size(); i++) {
            Candidate candidate = chosen.get(i).candidate();
            boolean hasPiston = set.contains(candidate.setting());
            Optional<Candidate> before =
                    chosen.get(i).follows() ? Optional.of(chosen.get(i - 1).candidate()) : Optional.empty();
            Step step = new Step(succession(i), before, hasPiston);
            Asked asked =
                    new Asked(plan, searched.get(i).place(), searched.get(i).scoring(), step);
            Proposal proposal = proposer.proposal(asked, candidate, settled.get(i), Optional.empty());
            verses.add(new ServiceProposal.OfVerse(searched.get(i).place(), proposal, pressed.getOrDefault(i, "")));
        }
        return verses;
    }

    /** The pistons of the verses that have one: as is usual, the higher its number the louder. */
    private static Map<Integer, String> pressed(
            List<Settling.Chosen> chosen, List<Registration> settled, Set<Knobs> set, FreePistons pistons) {
        Map<Integer, String> pressed = new HashMap<>();
        IntStream.range(0, chosen.size())
                .filter(i -> set.contains(chosen.get(i).candidate().setting()))
                .boxed()
                .sorted(Comparator.comparingDouble(
                        i -> chosen.get(i).candidate().levelDba()))
                .forEach(i -> {
                    Optional<Registration> was =
                            chosen.get(i).follows() ? Optional.of(settled.get(i - 1)) : Optional.empty();
                    pressed.put(i, pistons.press(settled.get(i), was));
                });
        return pressed;
    }
}
