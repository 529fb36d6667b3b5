package versewind.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.IndexSet;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Singing;
import versewind.plan.SungBy;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.sound.Balance;
import versewind.sound.OrganSound;
import versewind.sound.Verdict;

/**
 * The rules on a verse as it sounds by itself, and on an introduction beside the verse that it introduces.
 *
 * <p>Source: common practice, no source; the numbers are estimates and stand in {@link Practice}.
 */
public enum VerseRule implements PlanRule {

    /**
     * An introduction is no louder than the organ in the verse it introduces; where the organ stays under a soloist or
     * a choir, they count with it.
     */
    INTRODUCTION_LOUDER("introduction louder", 3) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            return introduced(hymn, index)
                    .filter(next -> louderDb(hymn, index, next) >= Practice.INTRODUCTION_LOUDER_DB)
                    .map(next -> ofIntroduction(
                            hymn,
                            index,
                            next,
                            "The introduction is " + Figure.about(louderDb(hymn, index, next))
                                    + " louder than " + (hymn.company(next).isCongregation() ? "the organ in " : "")
                                    + hymn.verse(next).label()
                                    + ", which it introduces."));
        }
    },

    /** The loudest sound is kept for the end. */
    INTRODUCTION_LOUDEST("introduction loudest", 2) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            return introduced(hymn, index)
                    .filter(next -> louderDb(hymn, index, next) < Practice.INTRODUCTION_LOUDER_DB
                            && hymn.textVerses().size() > 1
                            && hymn.textVerses().stream()
                                    .allMatch(verse -> louderDb(hymn, index, verse) >= Practice.HEARD_DB))
                    .map(next -> ofIntroduction(
                            hymn, index, next, "The introduction is louder than the organ in any verse."));
        }
    },

    /**
     * An introduction is of the world of its verse: not so soft that the verse comes as a shock. A melody soloed out
     * may be softer than a playover, and what leads to a soloist as soft as it likes.
     */
    INTRODUCTION_ELSEWHERE("introduction in another world", 2) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            return introduced(hymn, index)
                    .filter(next -> hymn.verse(next).mode() != Mode.SOLO_VOICE)
                    .filter(next -> -louderDb(hymn, index, next) > softestDb(hymn.verse(index)))
                    .map(next -> ofIntroduction(
                            hymn,
                            index,
                            next,
                            "The introduction is " + Figure.about(louderDb(hymn, index, next)) + " softer than "
                                    + hymn.verse(next).label() + ": the verse will come as a shock."));
        }

        private static double softestDb(Verse introduction) {
            return introduction.mode() == Mode.MELODY_SOLOED
                    ? Practice.SOLOED_INTRODUCTION_SOFTER_DB
                    : Practice.INTRODUCTION_SOFTER_DB;
        }
    },

    /** Hands on two manuals, the tune on the weaker one; of a melody that stands out nothing is said. */
    HANDS_CROSSED("hands crossed", 6) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            return isCrossed(hymn, index)
                    ? Optional.of(new Breach(
                            List.of(),
                            ofCrossed(hymn.played(index)),
                            () -> Stream.of(
                                    hymn.fixed(index, exchanged(hymn.faults().organ(), hymn.verse(index))))))
                    : Optional.empty();
        }
    },

    /** Reeds in a plain verse that flues surely lead as well, or while flues of the order are left. */
    REED_NOT_NEEDED("reed in a plain verse", 2) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            Verse verse = hymn.verse(index);
            boolean isPlain = hymn.company(index).isCongregation()
                    && verse.sungBy() != SungBy.DESCANT
                    && verse.kind() != VerseKind.LAST_VERSE
                    && hymn.company(index).mood().compareTo(Mood.PLAIN) <= 0
                    && verse.singing().compareTo(Singing.ORDINARY) <= 0;
            IndexSet reeds = isPlain ? reeds(hymn, index) : IndexSet.EMPTY;
            if (reeds.isEmpty()) {
                return Optional.empty();
            }
            List<Registration> flues = flues(hymn, index, reeds);
            boolean isEnough = surelyLeads(hymn, index, flues.get(0));
            String words = isEnough ? "{stops} [is|are] not needed: flues lead here." : left(hymn, flues, reeds);
            return isEnough || flues.size() > 1
                    ? Optional.of(ofReeds(hymn, index, words, reeds, flues))
                    : Optional.empty();
        }
    },

    /**
     * The words of a descant come through: no reeds in the open that the verse before had not, where flues surely lead
     * the people under it.
     */
    DESCANT_COVERED("descant covered", 2) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            boolean isDescant = hymn.verse(index).sungBy() == SungBy.DESCANT;
            OrganFacts organ = hymn.faults().organ();
            IndexSet reeds = isDescant
                    ? IndexSet.of(reeds(hymn, index).minus(before(hymn, index)).stream()
                            .filter(stop -> !organ.isEnclosed(organ.divisionOf(stop))))
                    : IndexSet.EMPTY;
            List<Registration> flues = reeds.isEmpty() ? List.of() : flues(hymn, index, reeds);
            return !flues.isEmpty() && surelyLeads(hymn, index, flues.get(0))
                    ? Optional.of(ofReeds(
                            hymn, index, "{stops} may cover the descant: flues lead without [it|them].", reeds, flues))
                    : Optional.empty();
        }

        /** What the last verse before has drawn: a descant crowns it. */
        private static IndexSet before(InHymn hymn, int index) {
            return hymn.congregationVerses().stream()
                    .filter(verse -> verse < index)
                    .reduce((one, other) -> other)
                    .map(verse -> hymn.verse(verse).registration().stops())
                    .orElse(IndexSet.EMPTY);
        }
    },

    /**
     * A chorus that is drawn by hand is heard: in its verse, or in a later one for which it is prepared. Where it goes
     * again, or the service ends, and nobody has heard it, its coupler has been forgotten.
     */
    NOT_HEARD("drawn and not heard", 2) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            IndexSet before = hymn.verseBefore(index)
                    .map(verse -> verse.registration().stops())
                    .orElse(IndexSet.EMPTY);
            IndexSet fresh = hymn.verse(index).registration().stops().minus(before);
            return hymn.faults().organ().manuals().stream()
                    .filter(division -> !coupler(hymn, index, division).isEmpty())
                    .filter(division -> isNeverHeard(
                            hymn,
                            index,
                            division,
                            fresh.and(hymn.faults().organ().allOf(division))))
                    .findFirst()
                    .map(division -> new Breach(
                            List.of(),
                            "Nobody hears what is drawn on the "
                                    + hymn.organ().divisions().get(division).name()
                                    + ": it is neither played nor coupled.",
                            () -> Stream.of(hymn.drawing(index, coupled(hymn, index, division)))));
        }

        private static boolean isNeverHeard(InHymn hymn, int index, int division, IndexSet idle) {
            return idle.size() >= Practice.A_CHORUS
                    && hymn.verse(index).isPlayed()
                    && hymn.verse(index).piston().isBlank()
                    && Stream.concat(Stream.of(hymn.verse(index)), hymn.after(index))
                            .takeWhile(verse -> verse.registration().stops().meets(idle))
                            .noneMatch(verse -> hymn.played(verse).isHeard(division));
        }

        private static Registration coupled(InHymn hymn, int index, int division) {
            Registration drawn = hymn.verse(index).registration();
            return drawn.withCouplers(drawn.couplers().plus(coupler(hymn, index, division)));
        }

        /** What brings a division to the left hand. */
        private static IndexSet coupler(InHymn hymn, int index, int division) {
            return StopChoice.of(hymn.faults().organ())
                    .coupler(division, hymn.verse(index).hands().left());
        }
    },

    /** The pedal balances the manuals: its own stops have less than {@link Practice#PEDAL_SHARE} of the loudness. */
    PEDAL_BOOMS("pedal booms", 3) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            IndexSet own = hymn.pedal(index).map(Chorus::own).orElse(IndexSet.EMPTY);
            boolean isSaid = hymn.faults().in(hymn.played(index)).stream()
                    .anyMatch(fault -> fault.rule() == ChorusRule.HEAVY_SIXTEEN);
            if (own.isEmpty() || isSaid || hymn.estimate(index).isSilent()) {
                return Optional.empty();
            }
            double withoutSone = sone(hymn, index, own);
            double share = 1 - withoutSone / hymn.estimate(index).sone();
            return share < Practice.PEDAL_SHARE
                    ? Optional.empty()
                    : Optional.of(new Breach(
                            List.of(new Figure("pedal", share, Figure.Unit.SHARE)),
                            "The pedal booms: its stops make " + Math.round(100 * share) + "% of the loudness.",
                            () -> lighter(hymn, index, own, withoutSone)));
        }

        /** Loudness in sone without some stops. */
        private static double sone(InHymn hymn, int index, IndexSet stops) {
            return hymn.estimate(without(hymn.verse(index), stops)).sone();
        }

        private static Verse without(Verse verse, IndexSet stops) {
            return verse.withRegistration(
                    verse.registration().withStops(verse.registration().stops().minus(stops)));
        }

        /** Without the pedal stop after which it booms no more and the bass still sounds as it should. */
        private static Stream<Mend> lighter(InHymn hymn, int index, IndexSet own, double withoutSone) {
            Verse verse = hymn.verse(index);
            return own.stream()
                    .mapToObj(IndexSet::of)
                    .filter(stop -> {
                        double whole = sone(hymn, index, stop);
                        return whole > 0 && 1 - withoutSone / whole < Practice.PEDAL_SHARE;
                    })
                    .map(stop -> hymn.drawing(index, without(verse, stop).registration()));
        }
    };

    @SuppressWarnings("ImmutableEnumChecker") // a value, which never changes
    private final RuleHead head;

    VerseRule(String word, int points) {
        head = new RuleHead(word, points);
    }

    @Override
    public RuleHead head() {
        return head;
    }

    /** The chorus reeds that the hands sound. */
    private static IndexSet reeds(InHymn hymn, int index) {
        return hymn.played(index).left().of(Offenders.CHORUS_REEDS);
    }

    private static boolean surelyLeads(InHymn hymn, int index, Registration drawn) {
        Balance balance =
                hymn.estimate(hymn.verse(index).withRegistration(drawn)).balance();
        return balance.verdict() == Verdict.LEADS && balance.isSure();
    }

    private static Breach ofReeds(InHymn hymn, int index, String words, IndexSet reeds, List<Registration> flues) {
        return new Breach(List.of(), hymn.played(index).left().say(words, reeds), () -> flues.stream()
                .map(drawn -> hymn.drawing(index, drawn)));
    }

    /** "The Swell Mixture III is not drawn yet; add it before the Cornopean 8." */
    private static String left(InHymn hymn, List<Registration> flues, IndexSet reeds) {
        IndexSet drawn = flues.get(0).stops();
        return flues.stream()
                        .flatMap(each -> each.stops().minus(drawn).stream().boxed())
                        .findFirst()
                        .map(stop -> hymn.organ().stops().get(stop))
                        .map(stop -> "The " + stop.name().division() + " "
                                + stop.name().label() + " is not drawn yet; add it")
                        .orElse("A flue chorus is not coupled yet; couple it")
                + " before the "
                + reeds.stream()
                        .mapToObj(stop -> hymn.organ().stops().get(stop).name().label())
                        .collect(Collectors.joining(" and "))
                + ".";
    }

    /** What is drawn without the reeds, and with flues of the order one after another. */
    private static List<Registration> flues(InHymn hymn, int index, IndexSet reeds) {
        Verse verse = hymn.verse(index);
        Registration drawn =
                verse.registration().withStops(verse.registration().stops().minus(reeds));
        BuildingLine line = new BuildingLine(
                hymn.faults().organ(), verse.hands(), verse.locks().never().plus(reeds), drawn.stops());
        List<Registration> all = new ArrayList<>(List.of(drawn));
        for (BuildingLine.Addition each : line.additions()) {
            boolean isFlue = each.step().compareTo(BuildingStep.PRINCIPALS_8_4) >= 0
                    && each.step().compareTo(BuildingStep.ENCLOSED_REEDS) < 0;
            Registration more = isFlue ? BuildingLine.with(drawn, each) : drawn;
            if (!more.equals(drawn)) {
                all.add(more);
                drawn = more;
            }
        }
        return all;
    }

    /** Index of the verse that an introduction is compared with. */
    private static Optional<Integer> introduced(InHymn hymn, int index) {
        OptionalInt next = IntStream.range(index + 1, hymn.verses().size())
                .filter(i -> hymn.verse(i).isSung())
                .findFirst();
        boolean isCompared = hymn.verse(index).kind() == VerseKind.INTRODUCTION
                && next.isPresent()
                && !hymn.estimate(index).isSilent()
                && !hymn.estimate(next.getAsInt()).isSilent();
        return isCompared ? Optional.of(next.getAsInt()) : Optional.empty();
    }

    private static double louderDb(InHymn hymn, int index, int next) {
        boolean isOfOrgan = hymn.company(next).isCongregation();
        return hymn.organDba(index) - (isOfOrgan ? hymn.organDba(next) : hymn.soundingDba(next));
    }

    /** True for hands on two manuals of which the left, with the other parts, is the stronger. */
    static boolean isCrossed(InHymn hymn, int index) {
        return isCrossed(
                hymn.sound(),
                hymn.played(index),
                hymn.estimate(index).balance().estimated(),
                hymn.verse(index).isSung());
    }

    /**
     * The same.
     *
     * @param played what sounds
     * @param verdict on it
     * @param isSung whether anybody sings to it
     */
    public static boolean isCrossed(OrganSound sound, PlayedRegistration played, Verdict verdict, boolean isSung) {
        boolean isSolo = played.hands().layout().isSoloed() && played.right().hasAny(Offenders.SOLO_COLOURS);
        boolean isJudged = played.left() != played.right()
                && !isSolo
                && !played.left().isSilent()
                && !played.right().isSilent()
                && (verdict.kind() == Balance.Kind.SOLO_LINE ? verdict.way() != Verdict.Way.NONE : isSung);
        return isJudged && levelDb(sound, played.left()) - levelDb(sound, played.right()) >= Practice.CROSSED_DB;
    }

    private static double levelDb(OrganSound sound, Chorus chorus) {
        return sound.levelDba(chorus.registration(), HandsAndFeet.on(Layout.MANUALS_ONLY, chorus.division()));
    }

    /** Says of what sounds that {@link #isCrossed}. */
    public static String ofCrossed(PlayedRegistration played) {
        return (played.isSoloed() ? "The soloed melody" : "The tune") + " is on the weaker of the two manuals.";
    }

    /** The hands on each other’s manuals; the feet follow the left hand, which plays what they double. */
    private static Fix exchanged(OrganFacts organ, Verse verse) {
        HandsAndFeet hands = verse.hands();
        StopChoice choice = StopChoice.of(organ);
        Registration drawn = verse.registration();
        IndexSet ofLeft = choice.coupler(hands.left(), organ.pedal());
        boolean isCoupled = drawn.couplers().meets(ofLeft);
        IndexSet moved = drawn.couplers().minus(ofLeft).plus(choice.coupler(hands.right(), organ.pedal()));
        return new Fix(
                isCoupled ? drawn.withCouplers(moved) : drawn,
                new HandsAndFeet(hands.layout(), /* right= */ hands.left(), /* left= */ hands.right()));
    }

    /** An introduction that is out of proportion; it is mended by what the verse has. */
    private static Breach ofIntroduction(InHymn hymn, int index, int next, String sentence) {
        Verse verse = hymn.verse(next);
        Verse same = hymn.verse(index)
                .withSungBy(verse.sungBy())
                .withRegistration(verse.registration())
                .withHands(verse.hands())
                .withPiston(verse.piston());
        return new Breach(
                List.of(Figure.db("introduction", hymn.organDba(index)), Figure.db("verse", hymn.organDba(next))),
                sentence,
                () -> Stream.of(hymn.mend("Play it on what " + verse.label() + " has.", index, same)));
    }
}
