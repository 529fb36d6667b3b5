package versewind.proposal;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import versewind.advice.ChorusFaults;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.Place;
import versewind.plan.Plan;
import versewind.sound.OrganSound;

/**
 * Somebody who knows an instrument and proposes what to draw. Belongs to one thread, as its {@link OrganSound} does. The
 * same plan has always the same proposals.
 */
public final class Registrant {

    private final OrganSound sound;
    private final Disposition organ;
    private final ChorusFaults faults;
    private final Wishes wishes;

    private Registrant(OrganSound sound) {
        this.sound = sound;
        organ = new Disposition(sound.organ(), levelsDb(sound));
        faults = ChorusFaults.on(sound.organ());
        wishes = new Wishes(sound, organ);
    }

    /** Somebody who knows an instrument. */
    public static Registrant of(OrganSound sound) {
        return new Registrant(sound);
    }

    /** How loud every stop is by itself. */
    private static double[] levelsDb(OrganSound sound) {
        Instrument instrument = sound.organ();
        double[] levels = new double[instrument.stops().size()];
        for (int stop = 0; stop < levels.length; stop++) {
            int home = instrument.stops().get(stop).division();
            boolean isPedal = instrument.divisions().get(home).isPedal();
            HandsAndFeet hands = isPedal
                    ? HandsAndFeet.on(HandsAndFeet.Layout.FOUR_PARTS, instrument.mainDivision())
                    : HandsAndFeet.on(HandsAndFeet.Layout.MANUALS_ONLY, home);
            Registration alone = Registration.silent(instrument).withStops(IndexSet.of(stop));
            levels[stop] = sound.levelDba(alone, hands);
        }
        return levels;
    }

    /**
     * Up to five registrations for a verse, the best first.
     *
     * @param plan a plan that can be played on the instrument
     * @param place of a verse of it
     */
    public OfVerse forVerse(Plan plan, Place place) {
        return forVerse(plan, place, () -> true);
    }

    /** The same, as long as it may go on; then with the best that was found. */
    public OfVerse forVerse(Plan plan, Place place, BooleanSupplier goOn) {
        Wish wish = wishes.wish(plan, place).with(wishes.neighbours(plan, place));
        VerseSearch search = search(plan, place, wish);
        Why why = new Why(organ, wish);
        List<Proposal> proposals = search.best(goOn).stream()
                .filter(draft -> !draft.stops().isEmpty())
                .map(draft -> proposal(draft, search.judge(), why, settled(draft, Wishes.before(plan, place))))
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
    public ServiceProposal forHymn(Plan plan, int hymn, Watcher watcher) {
        return new ServiceSearch(this, plan, List.of(hymn), watcher).proposal();
    }

    /**
     * One registration for every verse of a service, chosen together, with the general pistons there are.
     *
     * @param plan a plan that can be played on the instrument
     * @param watcher who waits
     */
    public ServiceProposal forService(Plan plan, Watcher watcher) {
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
            Plan plan, Place place, Draft draft, Optional<Draft> before, String piston, Stage.Likeness likeness) {
        Breath breath = wishes.breath(plan, plan.hymns().get(place.hymn()))
                .with(piston.isBlank() ? Breath.Piston.NONE : Breath.Piston.SET);
        Wish wish = wishes.wish(plan, place)
                .with(new Wish.Neighbours(
                        before,
                        likeness == Stage.Likeness.COUNTS ? before.stream().toList() : List.of(),
                        breath,
                        likeness == Stage.Likeness.COUNTS ? wishes.rise(plan, place, before) : Optional.empty()));
        return proposal(draft, search(plan, place, wish).judge(), new Why(organ, wish), settled(draft, before));
    }

    /**
     * What is proposed for a verse.
     *
     * @param place of the verse
     * @param proposals the best first; none where the locks leave nothing that could be drawn
     */
    public record OfVerse(Place place, List<Proposal> proposals) {

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

    Disposition organ() {
        return organ;
    }

    Wishes wishes() {
        return wishes;
    }

    VerseSearch search(Plan plan, Place place, Wish wish) {
        Judge judge = new Judge(
                organ,
                wish,
                faults,
                sound.weighing(wishes.weighed(plan, place), plan.heading().people()));
        return new VerseSearch(organ, judge);
    }

    private Proposal proposal(Draft draft, Judge judge, Why why, Registration settled) {
        Score score = judge.score(draft);
        return new Proposal(settled, draft.hands(), score, why.of(draft, score, judge.marginDb(draft)));
    }

    /** Boxes that nobody hears stay where they were. */
    private Registration settled(Draft draft, Optional<Draft> before) {
        if (before.isEmpty()) {
            return draft.registration();
        }
        Sounding sounding = new Sounding(organ);
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
