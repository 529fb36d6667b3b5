package versewind.rules;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import versewind.organ.General;
import versewind.organ.Pistons;
import versewind.plan.Hymn;
import versewind.plan.Verse;

/**
 * The rules on how a verse follows the one before: its level, its piston, and the time to set it.
 *
 * <p>Source: common practice, no source; the numbers stand in {@link Practice}.
 */
public enum ChangeRule implements PlanRule {

    /** Between neighbouring verses of the same singers the organ makes no leap. */
    STEP("step", 2) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            boolean isCompared = index > 0
                    && hymn.company(index).isSung()
                    && hymn.isSungAlike(index, index - 1)
                    && !hymn.estimate(index).isSilent()
                    && !hymn.estimate(index - 1).isSilent();
            if (!isCompared) {
                return Optional.empty();
            }
            double stepDb = hymn.organDba(index) - hymn.organDba(index - 1);
            return Math.round(Math.abs(stepDb)) <= Practice.STEP_DB
                    ? Optional.empty()
                    : Optional.of(new Breach(
                            List.of(Figure.db("step", stepDb)),
                            "The organ leaps " + (stepDb > 0 ? "up" : "down") + " by " + Figure.about(stepDb) + " from "
                                    + hymn.verse(index - 1).label() + "."));
        }
    },

    /** A general piston is one that the organ has, on a memory level that it has. */
    PISTON_MISSING("no such piston", 6) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            Pistons pistons = hymn.organ().pistons();
            return General.of(hymn.verse(index).piston())
                    .filter(general -> !pistons.has(general))
                    .map(general -> new Breach(
                            List.of(), sentence(general, pistons), () -> PistonChoice.another(hymn, index).stream()));
        }

        private static String sentence(General general, Pistons pistons) {
            if (pistons.generals() == 0) {
                return "The organ has no general pistons, and so no " + general.piston() + ": all is moved by hand.";
            }
            if (general.number() < 1 || general.number() > pistons.generals()) {
                return "The organ has no piston " + general.piston() + ": its generals are G1 to G" + pistons.generals()
                        + ".";
            }
            return "The organ has no memory level " + general.level() + " for piston " + general.name() + ": it has "
                    + pistons.memoryLevels() + ".";
        }
    },

    /** A general piston holds one registration; for another its memory level has to be changed. */
    PISTON_TWICE("piston twice", 3) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            Verse verse = hymn.verse(index);
            if (!PistonChoice.isGeneral(verse.piston(), hymn.organ())) {
                return Optional.empty();
            }
            return holder(hymn, index)
                    .map(holder -> new Breach(
                            List.of(),
                            "Piston " + verse.piston() + " holds something else since " + holder
                                    + ": it would have to be on another memory level here.",
                            () -> PistonChoice.another(hymn, index).stream()));
        }

        /** The first verse of the plan that has the piston, if that is set otherwise there. */
        private static Optional<String> holder(InHymn hymn, int index) {
            Verse verse = hymn.verse(index);
            for (int i = 0; i <= hymn.index(); i++) {
                Hymn other = hymn.plan().hymns().get(i);
                for (int v = 0; v < (i < hymn.index() ? other.verses().size() : index); v++) {
                    Verse before = other.verses().get(v);
                    if (PistonChoice.isTheSame(before.piston(), verse.piston())) {
                        String where = i == hymn.index() ? "" : (other.number() + " ").stripLeading();
                        return PistonChoice.isSetTheSame(before, verse)
                                ? Optional.empty()
                                : Optional.of(where + before.label());
                    }
                }
            }
            return Optional.empty();
        }
    },

    /** One registration wants one piston. */
    PISTONS_ALIKE("two pistons alike", 2) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            Verse verse = hymn.verse(index);
            return !PistonChoice.isGeneral(verse.piston(), hymn.organ())
                    ? Optional.empty()
                    : hymn.before(index)
                            .filter(before -> PistonChoice.isGeneral(before.piston(), hymn.organ())
                                    && PistonChoice.isSetTheSame(before, verse))
                            .findFirst()
                            .filter(before -> !PistonChoice.isTheSame(before.piston(), verse.piston()))
                            .map(before -> new Breach(
                                    List.of(),
                                    "Piston " + verse.piston() + " sets the same as " + before.piston()
                                            + ": one is enough.",
                                    () -> Stream.of(hymn.onPiston(before.piston(), index, verse))));
        }
    },

    /**
     * The change from the verse before fits into the breath: each hand one change after another, the boxes by foot at
     * the same time. A piston sets everything but the boxes. Where a verse may be left out both ways are checked.
     */
    TOO_MANY_MOVES("too many movements", 7) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            return hymn.hymn().before(index).stream()
                    .filter(from -> !hymn.verse(from).registration().stops().isEmpty()
                            && !hymn.verse(index).registration().stops().isEmpty())
                    .flatMap(from -> new VerseChange(hymn, from, index).breach().stream())
                    .findFirst();
        }
    };

    @SuppressWarnings("ImmutableEnumChecker") // a value, which never changes
    private final RuleHead head;

    ChangeRule(String word, int points) {
        head = new RuleHead(word, points);
    }

    @Override
    public RuleHead head() {
        return head;
    }
}
