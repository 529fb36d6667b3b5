package versewind.proposal;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import versewind.organ.IndexSet;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Occasion;
import versewind.plan.Plan;
import versewind.plan.Singing;
import versewind.plan.SungBy;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;
import versewind.rules.BetweenVerses;
import versewind.rules.BuildingLine;
import versewind.rules.Company;
import versewind.rules.OrganFacts;
import versewind.sound.Balance;
import versewind.sound.OrganSound;
import versewind.sound.Verdict;

/** The requirements of the verses of plans on one instrument. Belongs to one thread, as its sound does. */
final class Requirements {

    /** Odds of the lead from which flues may do. */
    private static final double LIKELY = 0.6;

    private final OrganSound sound;
    private final OrganFacts organ;
    private final UsualShare usual;
    private final IndexSet usualStops;

    Requirements(OrganSound sound, OrganFacts organ, UsualShare usual, IndexSet usualStops) {
        this.usualStops = usualStops;
        this.sound = sound;
        this.organ = organ;
        this.usual = usual;
    }

    /** The requirement of a verse, whatever stands beside it. */
    Requirement requirement(Plan plan, VersePlace place) {
        Requirement alone = alone(plan, place);
        if (!alone.isPeople()) {
            return alone;
        }
        HandsAndFeet hands = alone.hands().get(0);
        List<BuildingLine.Rung> rungs =
                new BuildingLine(organ, hands, alone.locks().never(), usualStops).rungs();
        if (rungs.isEmpty()) {
            return alone;
        }
        Optional<BuildingLine.Rung> flues = rungs.stream()
                .takeWhile(rung -> !rung.stops().meets(organ.chorusReeds()))
                .reduce((before, after) -> after)
                .filter(rung -> isLikelyToLead(plan, place, alone, rung));
        VerseBalance balance = balance(plan, place, alone);
        ToDoubleFunction<BuildingLine.Rung> share =
                rung -> balance.of(new Draft(drawn(rung, alone), alone.hands().get(0)));
        double full = share.applyAsDouble(rungs.get(rungs.size() - 1));
        double beyond = isCrowned(plan, place) ? Target.A_STEP / 2 : 0;
        double most = flues.filter(rung -> isOrdinary(plan, place))
                .filter(rung -> usualShare(plan, place).isEmpty() || isSureToLead(plan, place, alone, rung))
                .map(rung -> Math.min(full, share.applyAsDouble(rung) + beyond))
                .orElse(full);
        boolean wantsReeds = verse(plan, place).isSung() && flues.isEmpty();
        Requirement requirement = alone.with(withinReach(plan, place, alone, most), wantsReeds, full);
        boolean isUnderDescant =
                verse(plan, place).sungBy() == SungBy.DESCANT && alone.least().compareTo(Fullness.PLAIN) <= 0;
        return isUnderDescant ? requirement.withoutReeds() : requirement;
    }

    /** The share that is usual for those who sing, or will sing, in a verse. */
    private OptionalDouble usualShare(Plan plan, VersePlace place) {
        return usual.of(weighed(plan, place), plan.heading().people());
    }

    /** A last verse that is not held back by its own words or singers. */
    private static boolean isCrowned(Plan plan, VersePlace place) {
        return verse(plan, place).kind() == VerseKind.LAST_VERSE && Shape.isLifted(plan, place);
    }

    private boolean isLikelyToLead(Plan plan, VersePlace place, Requirement alone, BuildingLine.Rung rung) {
        Balance balance = estimated(plan, place, alone, rung);
        return balance.verdict() == Verdict.LEADS && balance.odds().of(Verdict.LEADS) >= LIKELY;
    }

    private boolean isSureToLead(Plan plan, VersePlace place, Requirement alone, BuildingLine.Rung rung) {
        Balance balance = estimated(plan, place, alone, rung);
        return balance.verdict() == Verdict.LEADS && balance.isSure();
    }

    private Balance estimated(Plan plan, VersePlace place, Requirement alone, BuildingLine.Rung rung) {
        return sound.estimate(
                        weighed(plan, place).withHands(alone.hands().get(0)).withRegistration(drawn(rung, alone)),
                        plan.heading().people(),
                        plan.hymns().get(place.hymn()).tempo())
                .balance();
    }

    /** A verse for which flues may do, if they lead: neither strongly sung, nor bright, nor the last of a feast. */
    private boolean isOrdinary(Plan plan, VersePlace place) {
        Verse weighed = weighed(plan, place);
        boolean isLastOfFeast =
                weighed.kind() == VerseKind.LAST_VERSE && weighed.sungBy() != SungBy.DESCANT && Shape.isFestal(plan);
        return weighed.singing().compareTo(Singing.ORDINARY) <= 0
                && mood(plan, place).compareTo(Mood.PLAIN) <= 0
                && !isLastOfFeast;
    }

    private Requirement alone(Plan plan, VersePlace place) {
        Verse verse = verse(plan, place);
        Mode mode = weighed(plan, place).mode();
        Mood mood = mood(plan, place);
        Fullness least = isFestalEnd(plan, place)
                ? end(plan, place)
                : isHeldBack(plan, place, mood) ? Fullness.HELD_BACK : least(verse, mood);
        Fullness most = mode == Mode.CONGREGATION ? most(plan, place, mood) : least;
        return new Requirement(
                mode,
                Company.of(plan, place),
                mood,
                least,
                Collections.max(List.of(least, most)),
                verse.locks(),
                usualStops,
                WaysToPlay.of(organ, plan.heading().player(), verse, Shape.opens(plan, place), mode, mood),
                verse.locks().keepsBoxes() ? verse.registration().boxes() : List.of(),
                aim(plan, place),
                false,
                1);
    }

    /** The balance of a verse, draft after draft. */
    VerseBalance balance(Plan plan, VersePlace place, Requirement requirement) {
        return new VerseBalance(
                sound, requirement, weighed(plan, place), plan.heading().people());
    }

    /** How a verse would stand to its singers with something else drawn, as an assessment has it. */
    Balance promised(Plan plan, VersePlace place, Registration drawn, HandsAndFeet hands) {
        return sound.estimate(
                        verse(plan, place).withHands(hands).withRegistration(drawn),
                        plan.heading().people(),
                        plan.hymns().get(place.hymn()).tempo())
                .balance();
    }

    private static Verse verse(Plan plan, VersePlace place) {
        return plan.hymns().get(place.hymn()).verses().get(place.verse());
    }

    /** The verse as it is weighed: what the organ plays alone as if those sang to it whom it introduces. */
    Verse weighed(Plan plan, VersePlace place) {
        Verse verse = verse(plan, place);
        boolean isSoloed =
                verse.mode() == Mode.MELODY_SOLOED && organ.keyboards().size() > 1;
        if (verse.isSung() || isSoloed) {
            return verse;
        }
        Verse next = introduced(plan, place).map(index -> verse(plan, index)).orElse(verse);
        return verse.withKind(VerseKind.VERSE)
                .withSungBy(next.sungBy() == SungBy.MELODY_SOLOED ? SungBy.CONGREGATION : next.sungBy())
                .withSinging(next.singing())
                .withPeople(next.people())
                .withShare(next.sung().share().ofVerse());
    }

    /** The next verse that is sung. */
    private static Optional<VersePlace> introduced(Plan plan, VersePlace place) {
        List<Verse> verses = plan.hymns().get(place.hymn()).verses();
        return IntStream.range(place.verse() + 1, verses.size())
                .filter(index -> verses.get(index).isSung())
                .mapToObj(index -> new VersePlace(place.hymn(), index))
                .findFirst();
    }

    /**
     * The mood of the words. What introduces a verse has the mood of that, where the plan does not say more; a tune
     * that is soloed is the brighter for the singing that it introduces.
     */
    private Mood mood(Plan plan, VersePlace place) {
        Mood own = Shape.mood(plan, place);
        Verse verse = verse(plan, place);
        Optional<VersePlace> next = verse.isSung() ? Optional.empty() : introduced(plan, place);
        if (own != Mood.PLAIN || next.isEmpty()) {
            return own;
        }
        Mood introduced = Shape.mood(plan, next.get());
        boolean isStrong = verse(plan, next.get()).singing().compareTo(Singing.STRONG) >= 0
                && verse(plan, next.get()).mode() == Mode.CONGREGATION;
        if (verse.mode() != Mode.MELODY_SOLOED || introduced == Mood.GENTLE || !isStrong) {
            return introduced;
        }
        return Collections.max(List.of(introduced, Shape.isFestal(plan) ? Mood.FESTAL : Mood.BRIGHT));
    }

    /** The last verse of a hymn on a feast, sung strongly; what crowns full organ would cover a descant. */
    private static boolean isFestalEnd(Plan plan, VersePlace place) {
        Verse verse = verse(plan, place);
        boolean isFestal = verse.mood() == Mood.FESTAL
                || Shape.isFestal(plan)
                || (verse.singing() == Singing.FULL_VOICE && bearsFullOrgan(plan, place));
        return isFestal
                && Shape.mood(plan, place) != Mood.GENTLE
                && verse.kind() == VerseKind.LAST_VERSE
                && verse.mode() == Mode.CONGREGATION
                && verse.sungBy() != SungBy.DESCANT
                && verse.singing().compareTo(verse.mood() == Mood.FESTAL ? Singing.ORDINARY : Singing.STRONG) >= 0;
    }

    /** A verse that is gentle because the day is, not its words or its singers. */
    private static boolean isHeldBack(Plan plan, VersePlace place, Mood mood) {
        Verse verse = verse(plan, place);
        return mood == Mood.GENTLE
                && verse.mode() == Mode.CONGREGATION
                && verse.mood() == Mood.PLAIN
                && verse.singing() != Singing.GENTLE
                && plan.heading().occasion().isHeldBack();
    }

    /** What crowns full organ is kept for the last hymn, where the plan does not ask for it. */
    private static Fullness end(Plan plan, VersePlace place) {
        return isClosing(plan, place) || verse(plan, place).mood() == Mood.FESTAL ? Fullness.CROWN : Fullness.END;
    }

    /** On an ordinary day full organ is kept for the last hymn. */
    private static boolean bearsFullOrgan(Plan plan, VersePlace place) {
        return isClosing(plan, place) || plan.heading().occasion() != Occasion.ORDINARY;
    }

    private static boolean isClosing(Plan plan, VersePlace place) {
        return place.hymn() == plan.hymns().size() - 1;
    }

    /** A playover keeps the fullest sound for the singing. */
    private static Fullness least(Verse verse, Mood mood) {
        Fullness own = Fullness.of(mood);
        boolean isPlayover = !verse.isSung() && verse.mode() != Mode.MELODY_SOLOED;
        return isPlayover && own == Fullness.FESTAL ? Fullness.BRIGHT : own;
    }

    /**
     * The fullest sound that is borne as well: people who sing strongly bear more, in a gentle verse no more than a
     * plain one has, and on a day that is held back those who sing as usual too; a last verse that is not gentle may
     * be bright, and what crowns a feast would cover a descant. A playover bears what its verse does.
     */
    private static Fullness most(Plan plan, VersePlace place, Mood mood) {
        Verse verse = verse(plan, place);
        Optional<VersePlace> next = verse.isSung() ? Optional.empty() : introduced(plan, place);
        if (next.isPresent()) {
            return Collections.min(List.of(most(plan, next.get(), mood), Fullness.BRIGHT));
        }
        if (mood == Mood.GENTLE) {
            Singing from = verse.mood() == Mood.GENTLE ? Singing.STRONG : Singing.ORDINARY;
            return verse.singing().compareTo(from) >= 0 ? Fullness.HELD_BACK : Fullness.GENTLE;
        }
        boolean isCrowned = verse.kind() == VerseKind.LAST_VERSE
                && !Shape.isGentle(plan.hymns().get(place.hymn()));
        Fullness ofKind = isCrowned ? Fullness.BRIGHT : Fullness.PLAIN;
        Fullness ofSinging =
                switch (verse.singing()) {
                    case GENTLE, ORDINARY -> Fullness.PLAIN;
                    case STRONG -> Fullness.BRIGHT;
                    case FULL_VOICE -> bearsFullOrgan(plan, place) ? Fullness.FESTAL : Fullness.BRIGHT;
                };
        Fullness fullest = Collections.max(List.of(Fullness.of(mood), ofKind, ofSinging));
        return verse.sungBy() == SungBy.DESCANT ? Collections.min(List.of(fullest, Fullness.BRIGHT)) : fullest;
    }

    /** Where the balance should lie, on an organ that has all it could need. */
    private Target aim(Plan plan, VersePlace place) {
        Mode mode = weighed(plan, place).mode();
        Target own = Target.of(mode, mood(plan, place));
        if (mode != Mode.CONGREGATION) {
            return own;
        }
        OptionalDouble known = usualShare(plan, place);
        if (known.isPresent()) {
            own = own.asUsual(known.getAsDouble());
        }
        Optional<VersePlace> next = verse(plan, place).isSung() ? Optional.empty() : introduced(plan, place);
        return own.lifted(
                next.isPresent() ? Shape.lift(plan, next.get()) + Shape.INTRODUCTION : Shape.lift(plan, place));
    }

    /**
     * The aim as far as the organ has it: where the strongest verse of the hymn would want more than there is, the
     * others keep their distance from it, as long as they lead at all; and the last verse is no weaker than any.
     *
     * @param most the share of the most that is drawn: of flues, where they may do; a last verse may go beyond
     */
    private Target withinReach(Plan plan, VersePlace place, Requirement requirement, double most) {
        Target own = requirement.target();
        double strongest = own.centre();
        for (int index = 0; index < plan.hymns().get(place.hymn()).verses().size(); index++) {
            VersePlace other = new VersePlace(place.hymn(), index);
            if (isAlike(plan, place, other)) {
                strongest = Math.max(strongest, aim(plan, other).centre());
            }
        }
        if (isCrowned(plan, place)) {
            own = own.lifted(strongest - own.centre());
        }
        double reach = Math.min(most, Target.nearlyTooStrong());
        double beyond = Math.max(0, strongest - reach);
        return verse(plan, place).isSung()
                ? own.within(beyond, reach)
                : own.lowered(beyond).below(reach);
    }

    private boolean isAlike(Plan plan, VersePlace one, VersePlace other) {
        Verse its = weighed(plan, other);
        return its.isSung()
                && its.sung().ofTune().equals(weighed(plan, one).sung().ofTune());
    }

    private Registration drawn(BuildingLine.Rung rung, Requirement requirement) {
        Registration silent = Registration.silent(organ.organ());
        return (requirement.boxes().isEmpty() ? silent : silent.withBoxes(requirement.boxes()))
                .withStops(rung.stops())
                .withCouplers(rung.couplers());
    }

    /** How a verse follows the one before it in its hymn. */
    Succession succession(Plan plan, VersePlace place) {
        VersePlace before = new VersePlace(place.hymn(), place.verse() - 1);
        return place.verse() == 0 || !verse(plan, before).isPlayed()
                ? Succession.NONE
                : succession(plan, before, place);
    }

    /** How a verse follows another one of its hymn, which is played. */
    Succession succession(Plan plan, VersePlace before, VersePlace place) {
        Succession.Kind kind = kind(plan, before, place);
        Succession.Growth growth =
                kind == Succession.Kind.VERSES ? growth(plan, before, place) : Succession.Growth.FREE;
        return new Succession(
                kind, growth, Optional.of(breath(plan, plan.hymns().get(place.hymn()))));
    }

    private static Succession.Kind kind(Plan plan, VersePlace before, VersePlace place) {
        Verse one = verse(plan, before);
        Verse other = verse(plan, place);
        if (!one.isSung() && other.isSung()) {
            return Succession.Kind.INTRODUCED;
        }
        if (!one.isSung() || !other.isSung() || one.mode() != other.mode()) {
            return Succession.Kind.APART;
        }
        if (other.kind() == VerseKind.AMEN) {
            return Succession.Kind.AMEN;
        }
        return isText(one) && isText(other) ? Succession.Kind.VERSES : Succession.Kind.APART;
    }

    private Succession.Growth growth(Plan plan, VersePlace before, VersePlace place) {
        if (!isAlike(plan, before, place) || verse(plan, place).mode() != Mode.CONGREGATION) {
            return Succession.Growth.FREE;
        }
        Target one = requirement(plan, before).target();
        Target other = requirement(plan, place).target();
        if (one.isHigherThan(other)) {
            return Succession.Growth.SINKS;
        }
        boolean rises = isCrowned(plan, place) || (other.isHigherThan(one) && Shape.isLifted(plan, place));
        return rises ? Succession.Growth.RISES : Succession.Growth.STAYS;
    }

    private static boolean isText(Verse verse) {
        return verse.kind() == VerseKind.VERSE || verse.kind() == VerseKind.LAST_VERSE;
    }

    private ChangeTime breath(Plan plan, Hymn hymn) {
        double seconds = BetweenVerses.breathS(hymn, plan.heading().people(), sound);
        return new ChangeTime(seconds, plan.heading().moveS(), FreePistons.reaches(organ.organ()));
    }

    /** The draft of the verse before, if anything is drawn there. */
    static Optional<Draft> before(Plan plan, VersePlace place) {
        if (place.verse() == 0) {
            return Optional.empty();
        }
        Verse verse = plan.hymns().get(place.hymn()).verses().get(place.verse() - 1);
        return verse.registration().stops().isEmpty() || !verse.isPlayed()
                ? Optional.empty()
                : Optional.of(new Draft(verse.registration(), verse.hands()));
    }
}
