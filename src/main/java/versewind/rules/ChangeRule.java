package versewind.rules;

import java.util.List;
import java.util.Optional;
import versewind.organ.NotationException;
import versewind.organ.Piston;
import versewind.organ.Pressed;
import versewind.plan.Verse;
import versewind.plan.VerseKind;

/**
 * The rules on how a verse follows the one before: its level, its piston, and the time to set it.
 *
 * <p>Source: common practice, no source; the numbers stand in {@link Practice}.
 */
public enum ChangeRule implements PlanRule {

    /** Between neighbouring verses of the same singers the organ makes no leap; an Amen has a rule of its own. */
    STEP("step", 2) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            boolean isCompared = index > 0
                    && hymn.verse(index).kind() != VerseKind.AMEN
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

    /** A piston is one that the organ has, on a memory level that it has. */
    PISTON_MISSING("no such piston", 6) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            try {
                Pressed.read(hymn.organ(), hymn.verse(index).piston());
                return Optional.empty();
            } catch (NotationException unknown) {
                return Optional.of(
                        new Breach(List.of(), unknown.getMessage(), () -> PistonChoice.another(hymn, index).stream()));
            }
        }
    },

    /** A piston holds one setting; for another its memory level has to be changed. */
    PISTON_TWICE("piston twice", 3) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            return PistonChoice.heldElsewhere(hymn.pistons(), hymn.place(index))
                    .map(held -> new Breach(
                            List.of(),
                            held.words() + ": it would have to be on another memory level here.",
                            () -> PistonChoice.another(hymn, index).stream()));
        }
    },

    /** One setting wants one piston. */
    PISTONS_ALIKE("two pistons alike", 2) {
        @Override
        public Optional<Breach> breach(InHymn hymn, int index) {
            return hymn.pressed(hymn.verse(index)).pistons().stream()
                    .flatMap(piston -> alike(hymn, index, piston).stream())
                    .findFirst();
        }

        private static Optional<Breach> alike(InHymn hymn, int index, Piston piston) {
            Verse verse = hymn.verse(index);
            return hymn.pistons()
                    .alike(piston, hymn.place(index), verse)
                    .filter(other -> !other.equals(piston))
                    .map(other -> new Breach(
                            List.of(),
                            "Piston " + piston.name(hymn.organ()) + " sets the same as " + other.name(hymn.organ())
                                    + ": one is enough.",
                            () -> with(hymn, index, piston, other).stream()));
        }

        private static Optional<Mend> with(InHymn hymn, int index, Piston piston, Piston other) {
            Verse verse = hymn.verse(index);
            List<Piston> pistons = hymn.pressed(verse).pistons().stream()
                    .map(each -> each.equals(piston) ? other : each)
                    .toList();
            boolean isOnOneLevel =
                    pistons.stream().map(Piston::level).distinct().count() == 1;
            return isOnOneLevel
                    ? Optional.of(hymn.onPiston(new Pressed(pistons).name(hymn.organ()), index, verse))
                    : Optional.empty();
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
                    .filter(from -> hymn.verse(from).isPlayed())
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
