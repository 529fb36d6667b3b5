package versewind.rules;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import versewind.organ.IndexSet;
import versewind.plan.Mood;
import versewind.plan.Occasion;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.sound.Verdict;

/**
 * The rules on a hymn as a whole; a breach is told at the verse where it can be changed.
 *
 * <p>Source: common practice, no source; the numbers stand in {@link Practice}.
 */
public enum HymnRule implements PlanRule {

    /**
     * The same sound for more than two verses tires everyone, where there is a choice; refrains may come back as they
     * were.
     */
    SAME_SOUND("same sound", 2) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            List<Integer> verses = hymn.textVerses();
            int same = 1;
            for (int i = verses.indexOf(index); i > 0 && isTheSame(hymn, verses.get(i - 1), verses.get(i)); i--) {
                same++;
            }
            return same == Practice.SAME_SOUND_VERSES + 1
                    ? Optional.of(new Breach(
                            List.of(Figure.count("verses", same)), "This is the third verse with the same sound."))
                    : Optional.empty();
        }

        private static boolean isTheSame(InHymn hymn, int one, int other) {
            return !hymn.played(one).sounding().isEmpty()
                    && hymn.played(one).soundsLike(hymn.played(other))
                    && hymn.isSungAlike(one, other)
                    && (mayBeStronger(hymn, other) || mayBeSofter(hymn, other));
        }
    },

    /** A heavy 16 ft pedal in every verse of a long hymn tires everyone, where one leads without it too. */
    SIXTEEN_ALWAYS("16 ft in every verse", 2) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            List<Integer> verses = hymn.textVerses();
            boolean isAlways = verses.size() >= Practice.LONG_HYMN_VERSES
                    && verses.stream().allMatch(verse -> hymn.pedal(verse)
                            .filter(PedalOffenders::isHeavy)
                            .isPresent());
            boolean isLightest = isAlways
                    && verses.subList(1, verses.size() - 1).stream()
                            .filter(verse -> relieved(hymn, verse)
                                    .filter(relieved -> leads(hymn, relieved))
                                    .isPresent())
                            .min(Comparator.comparingDouble(hymn::organDba))
                            .equals(Optional.of(index));
            return isLightest
                    ? Optional.of(new Breach(
                            List.of(Figure.count("verses", verses.size())),
                            "All " + verses.size()
                                    + " verses have a heavy 16 ft in the pedal; this one could do without.",
                            () -> relieved(hymn, index).stream().map(relieved -> hymn.mended(index, relieved))))
                    : Optional.empty();
        }

        /** With a light 16 ft in the place of the heavy ones, or, where there is none, with the hands only. */
        private static Optional<Verse> relieved(InHymn hymn, int index) {
            Verse verse = hymn.verse(index);
            OrganFacts organ = hymn.faults().organ();
            IndexSet heavy = IndexSet.of(verse.registration().stops().stream().filter(organ::isOpenSixteen));
            IndexSet light = StopChoice.of(organ).soft16();
            if (light.stream().noneMatch(organ::isOpenSixteen)) {
                IndexSet stops = verse.registration().stops().minus(heavy).plus(light);
                return Optional.of(verse.withRegistration(verse.registration().withStops(stops)))
                        .filter(any -> !heavy.meets(verse.locks().always())
                                && !light.meets(verse.locks().never()));
            }
            return Optional.of(verse.withHands(
                            verse.hands().withLayout(verse.hands().layout().withoutPedal())))
                    .filter(any -> !verse.locks().keepsHands());
        }

        /** A verse that leads no more without it cannot do without. */
        private static boolean leads(InHymn hymn, Verse relieved) {
            return hymn.estimate(relieved).balance().estimated().way() == Verdict.Way.NONE;
        }
    },

    /**
     * A hymn that is sung strongly, or on a festal day, grows to its end as far as the organ has it. Hymns that end
     * gently are meant to.
     */
    NO_GROWTH("no growth", 3) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            return isEndOfGrowth(hymn, index) && declineDb(hymn, index) < Practice.HEARD_DB
                    ? softest(hymn, index)
                            .filter(softest -> hymn.organDba(index) - hymn.organDba(softest) < Practice.HEARD_DB)
                            .filter(softest -> mayBeStronger(hymn, index) || mayBeSofter(hymn, softest))
                            .map(softest -> new Breach(
                                    List.of(
                                            Figure.db("softest", hymn.organDba(softest)),
                                            Figure.db("last", hymn.organDba(index))),
                                    reason(hymn)
                                            + ", and does not grow: its last verse is about as loud as its softest."))
                    : Optional.empty();
        }

        private static Optional<Integer> softest(InHymn hymn, int last) {
            return before(hymn, last).stream().min(Comparator.comparingDouble(hymn::organDba));
        }
    },
    /** The last verse falls back behind no other of the same singers, but where it is held back by intention. */
    BIGGEST_NOT_LAST("biggest verse not last", 3) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            return bigger(hymn, index)
                    .map(bigger -> new Breach(
                            List.of(
                                    Figure.db("biggest", hymn.organDba(bigger)),
                                    Figure.db("last", hymn.organDba(index))),
                            hymn.verse(bigger).label() + " is bigger than this last verse by "
                                    + Figure.about(hymn.organDba(bigger) - hymn.organDba(index)) + "."));
        }

        /** The biggest of the verses, in a hymn that does not grow only the one before, if it is bigger. */
        private static Optional<Integer> bigger(InHymn hymn, int last) {
            List<Integer> verses = hymn.congregationVerses();
            int place = verses.indexOf(last);
            if (place < 1 || place < verses.size() - 1) {
                return Optional.empty();
            }
            int compared = isEndOfGrowth(hymn, last) ? biggest(hymn, last) : verses.get(place - 1);
            boolean isMeant = hymn.company(last)
                                    .mood()
                                    .compareTo(hymn.company(compared).mood())
                            < 0
                    || hymn.verse(last).singing().compareTo(hymn.verse(compared).singing()) < 0;
            boolean isSmaller = hymn.organDba(compared) - hymn.organDba(last) >= Practice.HEARD_DB;
            return isSmaller && !isMeant && hymn.isSungAlike(last, compared) ? Optional.of(compared) : Optional.empty();
        }
    },

    /** An Amen lies near the verse before it. */
    AMEN_FAR("Amen far from the last verse", 2) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            boolean isCompared = index > 0
                    && hymn.verse(index).kind() == VerseKind.AMEN
                    && hymn.isSungAlike(index, index - 1)
                    && !hymn.estimate(index).isSilent()
                    && !hymn.estimate(index - 1).isSilent();
            double louderDb = hymn.organDba(index) - hymn.organDba(Math.max(0, index - 1));
            return isCompared && Math.abs(louderDb) >= Practice.AMEN_DB
                    ? Optional.of(new Breach(
                            List.of(Figure.db("step", louderDb)),
                            "The Amen is " + Figure.about(louderDb) + (louderDb > 0 ? " louder" : " softer") + " than "
                                    + hymn.verse(index - 1).label() + "."))
                    : Optional.empty();
        }
    };

    @SuppressWarnings("ImmutableEnumChecker") // a value, which never changes
    private final RuleHead head;

    HymnRule(String word, int points) {
        head = new RuleHead(word, points);
    }

    @Override
    public RuleHead head() {
        return head;
    }

    /** Whether a step of the order is left that is not too strong. */
    private static boolean mayBeStronger(InHymn hymn, int verse) {
        return step(hymn, verse, Verdict.Way.STRONGER)
                .filter(balance -> !balance.wantsAttention() || balance.way() == Verdict.Way.STRONGER)
                .isPresent();
    }

    /** Whether a step softer is still in balance. */
    private static boolean mayBeSofter(InHymn hymn, int verse) {
        return step(hymn, verse, Verdict.Way.SOFTER)
                .filter(balance -> balance.way() == Verdict.Way.NONE)
                .isPresent();
    }

    private static Optional<Verdict> step(InHymn hymn, int verse, Verdict.Way way) {
        return DynamicSteps.steps(
                        hymn.sound(),
                        hymn.verse(verse),
                        hymn.plan().heading().people(),
                        hymn.hymn().tempo(),
                        way,
                        1)
                .stream()
                .map(step -> step.estimate().balance().estimated())
                .findFirst();
    }

    /** True for the last of three or more verses of the people in a hymn that should grow, by its words or its day. */
    private static boolean isEndOfGrowth(InHymn hymn, int index) {
        List<Integer> verses = hymn.congregationVerses();
        return verses.size() > 2
                && verses.get(verses.size() - 1) == index
                && (isStrong(hymn) || isFestalDay(hymn) || rises(hymn, verses))
                && hymn.verse(index).singing() != Singing.GENTLE;
    }

    private static String reason(InHymn hymn) {
        if (isStrong(hymn)) {
            return "The hymn is sung strongly";
        }
        return isFestalDay(hymn) ? "The hymn is of a festal day" : "The words rise to the end";
    }

    private static boolean isStrong(InHymn hymn) {
        return hymn.congregationVerses().stream()
                .anyMatch(verse -> hymn.verse(verse).singing().compareTo(Singing.STRONG) >= 0);
    }

    private static boolean isFestalDay(InHymn hymn) {
        return hymn.plan().heading().occasion() == Occasion.FESTAL;
    }

    private static boolean rises(InHymn hymn, List<Integer> verses) {
        Mood last = hymn.company(verses.get(verses.size() - 1)).mood();
        return last.compareTo(hymn.company(verses.get(0)).mood()) > 0;
    }

    /** The verses before that the same people sing. */
    private static List<Integer> before(InHymn hymn, int last) {
        return hymn.congregationVerses().stream()
                .filter(verse -> verse < last && hymn.isSungAlike(verse, last))
                .toList();
    }

    private static int biggest(InHymn hymn, int last) {
        return before(hymn, last).stream()
                .max(Comparator.comparingDouble(hymn::organDba))
                .orElse(last);
    }

    /** How far the last verse lies below the biggest one before it, in dB. */
    private static double declineDb(InHymn hymn, int last) {
        return hymn.organDba(biggest(hymn, last)) - hymn.organDba(last);
    }
}
