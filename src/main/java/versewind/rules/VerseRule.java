package versewind.rules;

import static versewind.rules.Severity.CAUTION;
import static versewind.rules.Severity.REMARK;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import versewind.organ.Division;
import versewind.organ.Family;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mode;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.sound.Estimate;

/**
 * The rules on a verse as it sounds by itself, and on an introduction beside the verse that it introduces.
 *
 * <p>Source: common practice, no source; the numbers are estimates and stand in {@link Practice}.
 */
public enum VerseRule implements PlanRule {

    /** A melody soloed out is a poor support for a congregation. */
    MELODY_UNDER_CONGREGATION("melody soloed under a congregation", 4, REMARK) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            Verse verse = hymn.verse(index);
            boolean isSoloed = verse.hands().layout().isSoloed()
                    && verse.hands().right() != verse.hands().left()
                    && Company.of(verse).isCongregation();
            return isSoloed
                    ? Optional.of(new Breach(
                            List.of(),
                            "A melody soloed out gives a congregation little support.",
                            () -> Optional.of(inFourParts(hymn, index))))
                    : Optional.empty();
        }

        private static Mend inFourParts(InHymn hymn, int index) {
            int manual = hymn.organ().mainDivision();
            String name = hymn.organ().divisions().get(manual).name();
            Verse verse = hymn.verse(index);
            boolean hasFeet = verse.hands().layout().usesPedal();
            return hymn.mend(
                    (hasFeet ? "Play it in four parts on the " : "Play it with both hands on the ") + name + ".",
                    index,
                    verse.withHands(HandsAndFeet.on(hasFeet ? Layout.FOUR_PARTS : Layout.MANUALS_ONLY, manual)));
        }
    },

    /** An introduction is no louder than the verse it introduces; whoever sings the verse counts with it. */
    INTRODUCTION_LOUDER("introduction louder", 6, CAUTION) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            return introduced(hymn, index)
                    .filter(next -> louderDb(hymn, index, next) >= Practice.INTRODUCTION_LOUDER_DB)
                    .map(next -> ofIntroduction(
                            hymn,
                            index,
                            next,
                            Figure.about(louderDb(hymn, index, next)) + " louder than "
                                    + hymn.verse(next).label() + ", which it introduces."));
        }
    },

    /**
     * An introduction is of the world of its verse: not so soft that the verse comes as a shock. A melody soloed out
     * may be softer than a playover.
     */
    INTRODUCTION_ELSEWHERE("introduction in another world", 3, REMARK) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            return introduced(hymn, index)
                    .filter(next -> louderDb(hymn, index, next) < Practice.INTRODUCTION_LOUDER_DB
                            && softerDb(hymn, index, next) > softestDb(hymn.verse(index)))
                    .map(next -> ofIntroduction(
                            hymn,
                            index,
                            next,
                            Figure.about(softerDb(hymn, index, next)) + " softer than "
                                    + hymn.verse(next).label() + ": it comes from another world."));
        }

        private static double softerDb(InHymn hymn, int index, int next) {
            return hymn.organDba(next) - hymn.organDba(index);
        }

        private static double softestDb(Verse introduction) {
            return introduction.mode() == Mode.MELODY_SOLOED
                    ? Practice.SOLOED_INTRODUCTION_SOFTER_DB
                    : Practice.INTRODUCTION_SOFTER_DB;
        }
    },

    /**
     * The softest stops add nothing audible to a big chorus: all that can be pushed in together without a difference of
     * {@link Practice#INAUDIBLE_DB} and {@link Practice#INAUDIBLE_SONE}. Only flutes, strings and solo reeds of the
     * manuals are looked at, and only where the hymn first has them: that is said once, a pedal 16 ft is felt, and the
     * stops of a chorus have their colour.
     */
    INAUDIBLE("inaudible stop", 1, REMARK) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            Verse verse = hymn.verse(index);
            IndexSet lost = lost(hymn, index);
            if (lost.isEmpty()) {
                return Optional.empty();
            }
            String names = lost.stream()
                    .mapToObj(stop -> hymn.organ().stops().get(stop).name().toString())
                    .collect(Collectors.joining(", "));
            return Optional.of(new Breach(
                    List.of(Figure.count("stops", lost.size())),
                    "Nobody hears whether " + names + (lost.size() == 1 ? " is" : " are") + " drawn.",
                    () -> Optional.of(hymn.drawing(index, without(verse, lost)))));
        }

        private static Registration without(Verse verse, IndexSet stops) {
            return verse.registration().withStops(verse.registration().stops().minus(stops));
        }

        private static IndexSet lost(InHymn hymn, int index) {
            Verse verse = hymn.verse(index);
            Estimate whole = hymn.estimate(index);
            IndexSet lost = IndexSet.EMPTY;
            for (int stop : comingIn(hymn, index).stream().toArray()) {
                IndexSet more = lost.with(stop);
                Verse rest = verse.withRegistration(without(verse, more));
                if (isTheSame(whole, hymn.estimate(rest))
                        && hymn.faults().in(rest).size()
                                <= hymn.faults().in(verse).size()) {
                    lost = more;
                }
            }
            return lost;
        }

        /** The soft stops that sound here and were drawn in no verse before. */
        private static IndexSet comingIn(InHymn hymn, int index) {
            IndexSet sounding = IndexSet.of(hymn.faults().played(hymn.verse(index)).sounding().stream()
                    .filter(stop -> isSoft(hymn.organ(), stop) && !isFoundation(hymn, index, stop)));
            for (Verse earlier : hymn.verses().subList(0, index)) {
                sounding = sounding.minus(earlier.registration().stops());
            }
            return sounding;
        }

        /** True for the only 8 ft that is drawn of its division, where others stand on it. */
        private static boolean isFoundation(InHymn hymn, int index, int stop) {
            Instrument organ = hymn.organ();
            int home = organ.stops().get(stop).division();
            List<Integer> others = hymn.verse(index).registration().stops().stream()
                    .filter(other -> other != stop && organ.stops().get(other).division() == home)
                    .boxed()
                    .toList();
            return isUnison(organ, stop)
                    && !others.isEmpty()
                    && others.stream().noneMatch(other -> isUnison(organ, other));
        }

        private static boolean isUnison(Instrument organ, int stop) {
            return organ.stops()
                    .get(stop)
                    .stop()
                    .footage()
                    .filter(footage -> footage.feet() == Pitch.UNISON_FEET)
                    .isPresent();
        }

        private static boolean isSoft(Instrument organ, int stop) {
            Division home = organ.divisions().get(organ.stops().get(stop).division());
            Family family = organ.stops().get(stop).stop().family();
            return !home.isPedal()
                    && switch (family) {
                        case FLUTE, STRING, CELESTE, SOLO_REED -> true;
                        case PRINCIPAL, MUTATION, MIXTURE, CORNET, CHORUS_REED -> false;
                    };
        }

        private static boolean isTheSame(Estimate whole, Estimate without) {
            return !without.isSilent()
                    && whole.organDba().orElse(0) - without.organDba().orElse(0) < Practice.INAUDIBLE_DB
                    && whole.sone() - without.sone() < Practice.INAUDIBLE_SONE;
        }
    },

    /** The pedal balances the manuals: its own stops have less than {@link Practice#PEDAL_SHARE} of the loudness. */
    PEDAL_BOOMS("pedal booms", 5, CAUTION) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            Optional<Chorus> pedal = hymn.pedal(index);
            if (pedal.isEmpty() || hymn.estimate(index).isSilent()) {
                return Optional.empty();
            }
            double withoutSone = manualsSone(hymn, index, pedal.get());
            double share = 1 - withoutSone / hymn.estimate(index).sone();
            return share < Practice.PEDAL_SHARE
                    ? Optional.empty()
                    : Optional.of(new Breach(
                            List.of(new Figure("pedal", share, Figure.Unit.SHARE)),
                            "The pedal booms: its stops make " + Math.round(100 * share) + " % of the loudness.",
                            () -> lighter(hymn, index, pedal.get(), withoutSone)));
        }

        /** Loudness in sone without the pedal's own stops. */
        private static double manualsSone(InHymn hymn, int index, Chorus pedal) {
            Verse verse = hymn.verse(index);
            return hymn.estimate(verse.withRegistration(pedal.without(pedal.own())))
                    .sone();
        }

        /** Without the pedal stop after which it booms no more and the bass still sounds as it should. */
        private static Optional<Mend> lighter(InHymn hymn, int index, Chorus pedal, double withoutSone) {
            Verse verse = hymn.verse(index);
            int faults = hymn.faults().in(verse).size();
            return pedal.own().stream()
                    .mapToObj(stop -> pedal.without(IndexSet.of(stop)))
                    .filter(drawn ->
                            hymn.faults().in(verse.withRegistration(drawn)).size() <= faults)
                    .filter(drawn -> {
                        double whole =
                                hymn.estimate(verse.withRegistration(drawn)).sone();
                        return whole > 0 && 1 - withoutSone / whole < Practice.PEDAL_SHARE;
                    })
                    .findFirst()
                    .map(drawn -> hymn.drawing(index, drawn));
        }
    };

    @SuppressWarnings("ImmutableEnumChecker") // a value, which never changes
    private final RuleHead head;

    VerseRule(String word, int weight, Severity severity) {
        head = new RuleHead(word, weight, severity);
    }

    @Override
    public RuleHead head() {
        return head;
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
        return hymn.organDba(index) - hymn.soundingDba(next);
    }

    /** An introduction that is out of proportion; it is mended by what the verse has. */
    private static Breach ofIntroduction(InHymn hymn, int index, int next, String difference) {
        Verse verse = hymn.verse(next);
        Verse same = hymn.verse(index)
                .withMode(verse.mode())
                .withRegistration(verse.registration())
                .withHands(verse.hands())
                .withPiston(verse.piston());
        return new Breach(
                List.of(Figure.db("introduction", hymn.organDba(index)), Figure.db("verse", hymn.soundingDba(next))),
                "The introduction is " + difference,
                () -> Optional.of(hymn.mend("Play it on what " + verse.label() + " has.", index, same)));
    }
}
