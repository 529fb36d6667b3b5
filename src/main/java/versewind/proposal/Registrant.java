package versewind.proposal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import versewind.advice.BetweenVerses;
import versewind.advice.ChorusFaults;
import versewind.advice.Company;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Place;
import versewind.plan.Plan;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.sound.OrganSound;
import versewind.sound.Weighing;

/**
 * Somebody who knows an instrument and proposes what to draw. Belongs to one thread, as its {@link OrganSound} does. The
 * same plan has always the same proposals.
 */
public final class Registrant {

    private static final double USUAL_SD_DB = 6;
    private static final double LEAST_SD_DB = 1;
    private static final int SAMPLES = 40;

    private final OrganSound sound;
    private final Disposition organ;
    private final ChorusFaults faults;

    private Registrant(OrganSound sound) {
        this.sound = sound;
        organ = new Disposition(sound.organ(), levelsDb(sound));
        faults = ChorusFaults.on(sound.organ());
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
        Wish wish = wish(plan, place).with(neighbours(plan, place));
        VerseSearch search = search(plan, place, wish);
        Why why = new Why(organ, wish);
        List<Proposal> proposals = search.best(goOn).stream()
                .filter(draft -> !draft.stops().isEmpty())
                .map(draft -> proposal(draft, search.judge(), why, settled(draft, before(plan, place))))
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
        Breath breath = breath(plan, plan.hymns().get(place.hymn()))
                .with(piston.isBlank() ? Breath.Piston.NONE : Breath.Piston.SET);
        Wish wish = wish(plan, place)
                .with(new Wish.Neighbours(
                        before,
                        likeness == Stage.Likeness.COUNTS ? before.stream().toList() : List.of(),
                        breath,
                        likeness == Stage.Likeness.COUNTS ? rise(plan, place, before) : Optional.empty()));
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

    /** What a verse wants, whatever stands beside it. */
    Wish wish(Plan plan, Place place) {
        Hymn hymn = plan.hymns().get(place.hymn());
        Verse verse = hymn.verses().get(place.verse());
        Verse weighed = weighed(plan, place);
        Wish wish = new Wish(
                weighed.mode(),
                Company.of(verse),
                Shape.mood(plan, place),
                verse.locks(),
                target(plan, place),
                USUAL_SD_DB,
                Wish.Neighbours.NONE);
        return wish.with(sdDb(weighed, wish, plan.heading().people()));
    }

    VerseSearch search(Plan plan, Place place, Wish wish) {
        Judge judge = new Judge(
                organ,
                wish,
                faults,
                sound.weighing(weighed(plan, place), plan.heading().people()));
        return new VerseSearch(organ, judge);
    }

    /** The verse as it is weighed: what the organ plays alone as if those sang to it whom it introduces. */
    Verse weighed(Plan plan, Place place) {
        List<Verse> verses = plan.hymns().get(place.hymn()).verses();
        Verse verse = verses.get(place.verse());
        boolean isSoloed =
                verse.mode() == Mode.MELODY_SOLOED && organ.keyboards().size() > 1;
        if (verse.isSung() || isSoloed) {
            return sungGently(verse);
        }
        Verse next = verses.subList(place.verse(), verses.size()).stream()
                .filter(Verse::isSung)
                .findFirst()
                .orElse(verse);
        return verse.withKind(VerseKind.VERSE)
                .withMode(next.mode() == Mode.MELODY_SOLOED ? Mode.CONGREGATION : next.mode())
                .withSinging(next.singing())
                .withPeople(next.people());
    }

    /** Where the plan wants a verse gentle, people sing it gently, if nothing else is said of their singing. */
    private static Verse sungGently(Verse verse) {
        boolean isGentle =
                verse.mood() == Mood.GENTLE && verse.mode() == Mode.CONGREGATION && verse.singing() == Singing.ORDINARY;
        return isGentle ? verse.withSinging(Singing.GENTLE) : verse;
    }

    /** How far the margin may be off where it lies nearest to the target, of the registrations with which a search starts. */
    private double sdDb(Verse weighed, Wish wish, int people) {
        Weighing weighing = sound.weighing(weighed, people);
        Optional<Draft> nearest = new Ladders(organ, new Space(organ, wish))
                .all().stream()
                        .filter(draft -> draft.couplers().size() <= 1)
                        .limit(SAMPLES)
                        .min(Comparator.comparingDouble(
                                draft -> Math.abs(weighing.marginDb(draft.registration(), draft.hands())
                                        - wish.target().centreDb())));
        OptionalDouble plusMinusDb = nearest.isEmpty()
                ? OptionalDouble.empty()
                : sound.estimate(
                                weighed.withRegistration(nearest.get().registration())
                                        .withHands(nearest.get().hands()),
                                people,
                                OptionalInt.empty())
                        .margin()
                        .plusMinusDb();
        return Math.max(LEAST_SD_DB, plusMinusDb.orElse(USUAL_SD_DB));
    }

    private Wish.Neighbours neighbours(Plan plan, Place place) {
        Hymn hymn = plan.hymns().get(place.hymn());
        List<Draft> unlike = new ArrayList<>();
        for (int beside : new int[] {place.verse() - 1, place.verse() + 1}) {
            if (beside >= 0 && beside < hymn.verses().size() && isText(hymn, beside) && isText(hymn, place.verse())) {
                draft(hymn.verses().get(beside)).ifPresent(unlike::add);
            }
        }
        boolean hasPistons = organ.organ().pistons().generals() > 0;
        Breath breath = breath(plan, hymn).with(hasPistons ? Breath.Piston.TO_BE_HAD : Breath.Piston.NONE);
        Optional<Draft> before = before(plan, place);
        boolean isText = place.verse() > 0 && isText(hymn, place.verse()) && isText(hymn, place.verse() - 1);
        return new Wish.Neighbours(before, unlike, breath, isText ? rise(plan, place, before) : Optional.empty());
    }

    private Optional<Rise> rise(Plan plan, Place place, Optional<Draft> before) {
        OptionalDouble risesDb = risesDb(plan, place);
        if (before.isEmpty() || risesDb.isEmpty()) {
            return Optional.empty();
        }
        Weighing weighing =
                sound.weighing(weighed(plan, beforeIt(place)), plan.heading().people());
        double beforeDb =
                weighing.marginDb(before.get().registration(), before.get().hands());
        return Optional.of(new Rise(beforeDb, risesDb.getAsDouble()));
    }

    /** By how much the target of a verse lies above that of the verse before, where the people sing both. */
    OptionalDouble risesDb(Plan plan, Place place) {
        Verse verse = plan.hymns().get(place.hymn()).verses().get(place.verse());
        Verse before = plan.hymns().get(place.hymn()).verses().get(place.verse() - 1);
        boolean isOfPeople = verse.isSung()
                && before.isSung()
                && verse.mode() == Mode.CONGREGATION
                && before.mode() == Mode.CONGREGATION;
        return isOfPeople
                ? OptionalDouble.of(target(plan, place).centreDb()
                        - target(plan, beforeIt(place)).centreDb())
                : OptionalDouble.empty();
    }

    private static Place beforeIt(Place place) {
        return new Place(place.hymn(), place.verse() - 1);
    }

    private Target target(Plan plan, Place place) {
        Verse weighed = weighed(plan, place);
        boolean isSoloed = weighed.mode() == Mode.MELODY_SOLOED;
        return Target.of(weighed.mode(), Shape.mood(plan, place)).lifted(isSoloed ? 0 : Shape.liftDb(plan, place));
    }

    Breath breath(Plan plan, Hymn hymn) {
        double seconds = BetweenVerses.breathS(hymn, plan.heading().people(), sound);
        return new Breath(seconds, plan.heading().moveS(), Breath.Piston.NONE);
    }

    /** What is drawn in the verse before, if anything. */
    private static Optional<Draft> before(Plan plan, Place place) {
        return place.verse() == 0
                ? Optional.empty()
                : draft(plan.hymns().get(place.hymn()).verses().get(place.verse() - 1));
    }

    private static Optional<Draft> draft(Verse verse) {
        return verse.registration().stops().isEmpty()
                ? Optional.empty()
                : Optional.of(new Draft(verse.registration(), verse.hands()));
    }

    /** Whether it is a verse of the text. */
    static boolean isText(Hymn hymn, int verse) {
        return switch (hymn.verses().get(verse).kind()) {
            case VERSE, LAST_VERSE -> true;
            case INTRODUCTION, INTERLUDE, REFRAIN, AMEN -> false;
        };
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
