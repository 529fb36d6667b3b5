package versewind.rules;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import versewind.organ.BoxPosition;
import versewind.organ.Coupler;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.Mode;
import versewind.plan.Verse;
import versewind.sound.Estimate;
import versewind.sound.OrganSound;
import versewind.sound.Verdict;

/**
 * Steps for a verse that turns out too weak or too strong: about 3 dB each, up and down from the registration, with as
 * few changes as possible, in the order in which a registration is built up.
 *
 * <p>A step is searched one change at a time: a box, a stop that leaves no gap, a coupler. Of the changes that bring
 * the organ's level in the nave to 2 to 4 dB from where the step began, the first in the order is taken; while there is
 * none, the one that comes nearest without passing 4 dB. A step may be less than 2 dB where the organ has no more to
 * give, but not less than 1 dB. Levels are estimates.
 *
 * <p>Checked against: {@code DynamicStepsTest}.
 *
 * @param stronger steps up, each from the one before; two at most
 * @param softer steps down, likewise
 */
public record DynamicSteps(List<DynamicStep> stronger, List<DynamicStep> softer) {

    /** What a step aims at, in dB. */
    public static final double STEP_DB = 3;

    private static final double NEAR_DB = 1;
    private static final double LEAST_STEP_DB = 1;
    private static final double LEAST_MOVEMENT_DB = 0.2;
    private static final int MOST_MOVEMENTS = 4;
    private static final int MOST_STEPS = 2;

    public DynamicSteps {
        stronger = List.copyOf(stronger);
        softer = List.copyOf(softer);
    }

    private enum Way {
        UP(1),
        DOWN(-1);

        private final int sign;

        Way(int sign) {
            this.sign = sign;
        }
    }

    /**
     * The steps of a verse.
     *
     * @param sound the instrument
     * @param verse a verse that can be played on it
     * @param people number of people at the service
     * @param tempo beats a minute, if known
     */
    public static DynamicSteps of(OrganSound sound, Verse verse, int people, OptionalInt tempo) {
        Climb climb = Climb.of(sound, verse, people, tempo);
        return new DynamicSteps(climb.steps(Way.UP, MOST_STEPS), climb.steps(Way.DOWN, MOST_STEPS));
    }

    /**
     * Steps one way.
     *
     * @param way which; none where it is neither stronger nor softer
     * @param most how many steps at most
     */
    static List<DynamicStep> steps(
            OrganSound sound, Verse verse, int people, OptionalInt tempo, Verdict.Way way, int most) {
        Climb climb = Climb.of(sound, verse, people, tempo);
        return switch (way) {
            case STRONGER -> climb.steps(Way.UP, most);
            case SOFTER -> climb.steps(Way.DOWN, most);
            case NONE -> List.of();
        };
    }

    /** Whether a stop may join what is drawn. */
    @FunctionalInterface
    private interface Joining {
        boolean may(IndexSet drawn, int stop);
    }

    /** A movement that is tried, and how far it leads from where the step began; positive the way that is wanted. */
    private record Trial(Registration registration, Estimate estimate, double towardDb) {}

    /** The search on one verse. */
    private record Climb(
            OrganSound sound, BuildingOrder order, List<Integer> upward, Verse verse, int people, OptionalInt tempo) {

        static Climb of(OrganSound sound, Verse verse, int people, OptionalInt tempo) {
            BuildingOrder order = new BuildingOrder(sound.organ());
            List<Integer> upward =
                    order.upward(List.of(verse.hands().right(), verse.hands().left()));
            return new Climb(sound, order, upward, verse, people, tempo);
        }

        List<DynamicStep> steps(Way way, int most) {
            List<DynamicStep> steps = new ArrayList<>();
            Registration from = verse.registration();
            Estimate before = estimate(from);
            while (steps.size() < most && !before.isSilent()) {
                Optional<Trial> found = step(from, before, way);
                if (found.isEmpty()) {
                    break;
                }
                Trial trial = found.get();
                StopChanges moves = StopChanges.between(from, trial.registration());
                steps.add(new DynamicStep(moves, trial.registration(), trial.estimate(), way.sign * trial.towardDb()));
                from = trial.registration();
                before = trial.estimate();
            }
            return steps;
        }

        /** By what builds a chorus; where that is not enough also by what only thickens it. */
        private Optional<Trial> step(Registration from, Estimate before, Way way) {
            return step(from, before, way, order::mayDraw).or(() -> step(from, before, way, order::mayThicken));
        }

        private Optional<Trial> step(Registration from, Estimate before, Way way, Joining joining) {
            Trial at = new Trial(from, before, 0);
            for (int movement = 0; movement < MOST_MOVEMENTS && at.towardDb() < STEP_DB - NEAR_DB; movement++) {
                Optional<Trial> next = next(at, before, way, joining);
                if (next.isEmpty()) {
                    break;
                }
                at = next.get();
            }
            return at.towardDb() >= LEAST_STEP_DB ? Optional.of(at) : Optional.empty();
        }

        private Trial trial(Registration tried, Estimate before, Way way) {
            Estimate estimate = estimate(tried);
            double towardDb = estimate.isSilent() ? 0 : way.sign * (levelDb(estimate) - levelDb(before));
            return new Trial(tried, estimate, towardDb);
        }

        private Optional<Trial> next(Trial at, Estimate before, Way way, Joining joining) {
            Optional<Trial> nearest = Optional.empty();
            for (Registration tried : movements(at.registration(), way, joining)) {
                Trial trial = trial(tried, before, way);
                boolean isTooFar = trial.towardDb() > STEP_DB + NEAR_DB;
                boolean isTooLittle = trial.towardDb() < at.towardDb() + LEAST_MOVEMENT_DB;
                if (trial.estimate().isSilent() || isTooFar || isTooLittle) {
                    continue;
                }
                if (trial.towardDb() >= STEP_DB - NEAR_DB) {
                    return Optional.of(trial);
                }
                if (nearest.isEmpty() || trial.towardDb() > nearest.get().towardDb()) {
                    nearest = Optional.of(trial);
                }
            }
            return nearest;
        }

        private static double levelDb(Estimate estimate) {
            return estimate.organDba().orElseThrow();
        }

        private Estimate estimate(Registration drawn) {
            return sound.estimate(verse.withRegistration(drawn), people, tempo);
        }

        /** Everything that one movement can make of a registration, in the order in which it is tried. */
        private List<Registration> movements(Registration drawn, Way way, Joining joining) {
            List<Registration> movements = new ArrayList<>(boxes(drawn, way));
            movements.addAll(stops(drawn, way, joining));
            movements.addAll(couplers(drawn, way));
            return movements;
        }

        private List<Registration> boxes(Registration drawn, Way way) {
            Instrument organ = sound.organ();
            return IntStream.range(0, organ.divisions().size())
                    .filter(division -> organ.divisions().get(division).isEnclosed())
                    .filter(division -> mayMove(division, way))
                    .mapToObj(division -> {
                        BoxPosition position = drawn.boxes().get(division);
                        return drawn.withBox(division, way == Way.UP ? position.wider() : position.narrower());
                    })
                    .filter(moved -> !moved.equals(drawn))
                    .toList();
        }

        private List<Registration> stops(Registration drawn, Way way, Joining joining) {
            List<Integer> stops = new ArrayList<>(upward);
            if (way == Way.DOWN) {
                Collections.reverse(stops);
            }
            List<Registration> movements = new ArrayList<>();
            for (int stop : stops) {
                if (isLocked(stop, way)
                        || !mayMove(sound.organ().stops().get(stop).division(), way)) {
                    continue;
                }
                boolean isOpen = way == Way.UP
                        ? joining.may(drawn.stops(), stop)
                        : drawn.stops().contains(stop) && order.mayPutIn(drawn.stops(), stop);
                if (isOpen) {
                    movements.add(drawn.toggleStop(stop));
                }
            }
            return movements;
        }

        private boolean isLocked(int stop, Way way) {
            return way == Way.UP
                    ? verse.locks().never().contains(stop)
                    : verse.locks().always().contains(stop);
        }

        /** A soloed melody is made stronger, and what lies beneath it softer. */
        private boolean mayMove(int division, Way way) {
            boolean isOfTheMelody = division == verse.hands().right();
            return verse.mode() != Mode.MELODY_SOLOED || isOfTheMelody == (way == Way.UP);
        }

        private List<Registration> couplers(Registration drawn, Way way) {
            if (verse.mode() == Mode.MELODY_SOLOED) {
                return List.of();
            }
            List<Coupler> couplers = sound.organ().couplers();
            return IntStream.range(0, couplers.size())
                    .filter(coupler -> drawn.couplers().contains(coupler) == (way == Way.DOWN))
                    .filter(coupler -> buildsUp(couplers.get(coupler)))
                    .mapToObj(drawn::toggleCoupler)
                    .toList();
        }

        /** Couplers to the pedal are left alone: they give the bass its clearness, or all that it has. */
        private boolean buildsUp(Coupler coupler) {
            Instrument organ = sound.organ();
            int keyboard = organ.division(coupler.keyboard()).orElseThrow();
            return !organ.divisions().get(keyboard).isPedal()
                    && switch (coupler.kind()) {
                        case UNISON, OCTAVE -> true;
                        case SUB_OCTAVE, UNISON_OFF -> false;
                    };
        }
    }
}
