package versewind.proposal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Plan;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;
import versewind.rules.BetweenVerses;
import versewind.rules.Company;
import versewind.rules.OrganFacts;
import versewind.sound.MarginEvaluator;
import versewind.sound.OrganSound;

/** What the verses of plans want of their registrations on one instrument. Belongs to one thread, as its sound does. */
final class Requirements {

    private static final double USUAL_SD_DB = 6;
    private static final double LEAST_SD_DB = 1;
    private static final int SAMPLES = 40;

    private final OrganSound sound;
    private final OrganFacts organ;

    Requirements(OrganSound sound, OrganFacts organ) {
        this.sound = sound;
        this.organ = organ;
    }

    /** What a verse wants, whatever stands beside it. */
    Requirement requirement(Plan plan, VersePlace place) {
        Hymn hymn = plan.hymns().get(place.hymn());
        Verse verse = hymn.verses().get(place.verse());
        Verse weighed = weighed(plan, place);
        Mood mood = weighed.mode() == Mode.MELODY_SOLOED ? ofMelody(plan, place) : Shape.mood(plan, place);
        Requirement requirement = new Requirement(
                weighed.mode(),
                Company.of(verse),
                mood,
                layers(verse, weighed.mode(), mood),
                verse.locks(),
                SearchSpace.hands(organ, plan.heading().player(), verse),
                target(plan, place),
                USUAL_SD_DB,
                Requirement.Neighbours.NONE);
        return requirement.with(sdDb(weighed, requirement, plan.heading().people()));
    }

    /** The verse as it is weighed: what the organ plays alone as if those sang to it whom it introduces. */
    Verse weighed(Plan plan, VersePlace place) {
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

    /**
     * The mood by which layers are too much: people who sing strongly bear more, in a gentle verse no more than a plain
     * one has, and a last verse that is not gentle may be bright.
     */
    private static Mood layers(Verse verse, Mode mode, Mood mood) {
        if (mode != Mode.CONGREGATION) {
            return mood;
        }
        if (mood == Mood.GENTLE) {
            return verse.singing().compareTo(Singing.STRONG) >= 0 ? Mood.PLAIN : mood;
        }
        Mood ofKind = verse.kind() == VerseKind.LAST_VERSE ? Mood.BRIGHT : Mood.PLAIN;
        Mood ofSinging =
                switch (verse.singing()) {
                    case GENTLE, ORDINARY -> Mood.PLAIN;
                    case STRONG -> Mood.BRIGHT;
                    case FULL_VOICE -> Mood.FESTAL;
                };
        return Collections.max(List.of(mood, ofKind, ofSinging));
    }

    /** A melody is soloed as strongly as what it introduces will be sung. */
    private static Mood ofMelody(Plan plan, VersePlace place) {
        Mood own = Shape.mood(plan, place);
        List<Verse> verses = plan.hymns().get(place.hymn()).verses();
        Optional<Verse> next = verses.subList(place.verse(), verses.size()).stream()
                .filter(Verse::isSung)
                .findFirst();
        if (own == Mood.GENTLE || next.isEmpty() || next.get().mode() != Mode.CONGREGATION) {
            return own;
        }
        Mood introduced = Shape.mood(plan, new VersePlace(place.hymn(), verses.indexOf(next.get())));
        boolean isStrong = next.get().singing().compareTo(Singing.STRONG) >= 0;
        Mood sung = isStrong ? (Shape.isFestal(plan) ? Mood.FESTAL : Mood.BRIGHT) : Mood.PLAIN;
        return Collections.max(List.of(own, introduced, sung));
    }

    /** Where the plan wants a verse gentle, people sing it gently, if nothing else is said of their singing. */
    private static Verse sungGently(Verse verse) {
        boolean isGentle =
                verse.mood() == Mood.GENTLE && verse.mode() == Mode.CONGREGATION && verse.singing() == Singing.ORDINARY;
        return isGentle ? verse.withSinging(Singing.GENTLE) : verse;
    }

    /**
     * How far the margin may be off where it lies nearest to the target, of the registrations with which a search
     * starts.
     */
    private double sdDb(Verse weighed, Requirement requirement, int people) {
        MarginEvaluator evaluator = sound.marginEvaluator(weighed, people);
        Optional<Draft> nearest = new SeedRegistrations(organ, new SearchSpace(organ, requirement))
                .all().stream()
                        .filter(draft -> draft.couplers().size() <= 1)
                        .limit(SAMPLES)
                        .min(Comparator.comparingDouble(
                                draft -> Math.abs(evaluator.marginDb(draft.registration(), draft.hands())
                                        - requirement.target().centreDb())));
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

    /** What stands beside a verse, and what it therefore wants besides. */
    Requirement.Neighbours neighbours(Plan plan, VersePlace place) {
        Hymn hymn = plan.hymns().get(place.hymn());
        List<Draft> unlike = new ArrayList<>();
        for (int beside : new int[] {place.verse() - 1, place.verse() + 1}) {
            if (beside >= 0 && beside < hymn.verses().size() && isText(hymn, beside) && isText(hymn, place.verse())) {
                draft(hymn.verses().get(beside)).ifPresent(unlike::add);
            }
        }
        boolean hasPistons = organ.organ().pistons().generals() > 0;
        ChangeTime breath = breath(plan, hymn).with(hasPistons ? ChangeTime.Piston.TO_BE_HAD : ChangeTime.Piston.NONE);
        Optional<Draft> before = before(plan, place);
        boolean isText = place.verse() > 0 && isText(hymn, place.verse()) && isText(hymn, place.verse() - 1);
        return new Requirement.Neighbours(
                before, unlike, breath, isText ? rise(plan, place, before) : Optional.empty());
    }

    /** How a verse should stand to the one before, of which something is drawn. */
    Optional<GrowthTarget> rise(Plan plan, VersePlace place, Optional<Draft> before) {
        OptionalDouble risesDb = risesDb(plan, place);
        if (before.isEmpty() || risesDb.isEmpty()) {
            return Optional.empty();
        }
        MarginEvaluator evaluator = sound.marginEvaluator(
                weighed(plan, beforeIt(place)), plan.heading().people());
        double beforeDb =
                evaluator.marginDb(before.get().registration(), before.get().hands());
        return Optional.of(new GrowthTarget(beforeDb, risesDb.getAsDouble()));
    }

    /** By how much the target of a verse lies above that of the verse before, where the people sing both. */
    OptionalDouble risesDb(Plan plan, VersePlace place) {
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

    private static VersePlace beforeIt(VersePlace place) {
        return new VersePlace(place.hymn(), place.verse() - 1);
    }

    private Target target(Plan plan, VersePlace place) {
        Verse weighed = weighed(plan, place);
        boolean isSoloed = weighed.mode() == Mode.MELODY_SOLOED;
        return Target.of(weighed.mode(), Shape.mood(plan, place)).lifted(isSoloed ? 0 : Shape.liftDb(plan, place));
    }

    /** The time before every verse of a hymn. */
    ChangeTime breath(Plan plan, Hymn hymn) {
        double seconds = BetweenVerses.breathS(hymn, plan.heading().people(), sound);
        return new ChangeTime(seconds, plan.heading().moveS(), ChangeTime.Piston.NONE);
    }

    /** What is drawn in the verse before, if anything. */
    static Optional<Draft> before(Plan plan, VersePlace place) {
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
}
