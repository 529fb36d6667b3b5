package versewind.sound;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Verse;

/**
 * Which reading of an organ to take next, so that the verdicts of a plan, or levels at large, become surer: the one that
 * leaves the least variance in all margins of the plan together (in its levels where there is no margin).
 *
 * <p>A reading with gradient h and noise R takes (g' C h)^2 / (h' C h + R) off the variance of a margin with gradient g.
 * The sum of that over all that is wanted is climbed: from the best of the plan's own registrations, full organ and each
 * division's foundations, by putting one stop, coupler or box the other way as long as that helps, readings of the organ
 * alone in the empty church.
 *
 * <p>Range: the best of what one change reaches; a level below 50 dB(A) is left out, for a quiet church has 30 to 40 of
 * its own (an estimate).
 *
 * <p>Source: sequential optimal design for linear models, the criterion of least mean variance (I- or V-optimality);
 * formula from memory.
 *
 * <p>Checked against: {@code CalibrationTest}, side by side with readings chosen blindly.
 */
public final class ReadingDesign {

    private static final double LEAST_DBA = 50;
    private static final int MOST_CHANGES = 60;

    /** By how much a change must help to be made: a reading that is simple to set is taken right. */
    private static final double WORTH_A_CHANGE = 1.01;

    private static final int WIDE_CHOICE = 200;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final OrganSound sound;
    private final Instrument organ;
    private final List<double[]> wanted;
    private final double[] gradient;
    private Covariance known;

    private ReadingDesign(OrganSound sound) {
        this.sound = sound;
        organ = sound.organ();
        known = sound.known();
        gradient = new double[sound.unknowns().count()];
        wanted = new ArrayList<>();
    }

    /**
     * A reading to be taken.
     *
     * @param reading how to take it; its level is what is expected
     * @param beforeDb how far what is wanted may be off now: the root of its mean variance, in dB
     * @param afterDb the same once the reading is taken
     */
    public record Proposed(MeterReading reading, double beforeDb, double afterDb) {}

    /**
     * The readings to take next for a plan, in order: they make its verdicts surer.
     *
     * @param sound the organ, as it is known so far
     * @param plan a plan for it
     * @param number how many
     * @return fewer where no more can be read; none for a plan without verses
     */
    public static List<Proposed> of(OrganSound sound, Plan plan, int number) {
        ReadingDesign next = new ReadingDesign(sound);
        Set<MeterReading> starts = new LinkedHashSet<>();
        for (Hymn hymn : plan.hymns()) {
            for (Verse verse : hymn.verses()) {
                double[] ofVerse = new double[next.gradient.length];
                sound.ofVerdict(verse, plan.heading().people(), ofVerse);
                next.wanted.add(ofVerse);
                starts.add(reading(verse.registration(), verse.hands()));
            }
        }
        starts.addAll(next.usual());
        return next.best(starts, number);
    }

    /**
     * The readings to take next whatever will be played, in order: they make the levels of a wide choice of registrations
     * surer.
     *
     * @param sound the organ, as it is known so far
     * @param number how many
     * @return fewer where no more can be read
     */
    public static List<Proposed> allRound(OrganSound sound, int number) {
        ReadingDesign next = new ReadingDesign(sound);
        for (int i = 1; i <= WIDE_CHOICE; i++) {
            double[] ofLevel = new double[next.gradient.length];
            sound.expectedDba(next.spread(i), ofLevel);
            next.wanted.add(ofLevel);
        }
        return next.best(next.usual(), number);
    }

    /**
     * One of a wide choice of registrations: every stop, coupler and box stands by the place of i a among the whole
     * numbers, with an irrational a for each (a Kronecker sequence), so that every half of them are drawn together alike
     * often.
     */
    private MeterReading spread(int i) {
        int knob = 1;
        IndexSet stops = IndexSet.EMPTY;
        for (int stop = 0; stop < organ.stops().size(); stop++) {
            stops = kronecker(i, knob++) < 0.5 ? stops.with(stop) : stops;
        }
        IndexSet couplers = IndexSet.EMPTY;
        for (int coupler = 0; coupler < organ.couplers().size(); coupler++) {
            couplers = kronecker(i, knob++) < 0.5 ? couplers.with(coupler) : couplers;
        }
        Registration registration = Registration.silent(organ).withStops(stops).withCouplers(couplers);
        for (int division = 0; division < organ.divisions().size(); division++) {
            if (organ.divisions().get(division).isEnclosed()) {
                int position = (int) (kronecker(i, knob++) * BoxPosition.values().length);
                registration = registration.withBox(division, BoxPosition.values()[position]);
            }
        }
        List<Integer> manuals = organ.manualDivisions();
        int manual = manuals.get((int) (kronecker(i, knob++) * manuals.size()));
        HandsAndFeet.Layout layout =
                kronecker(i, knob) < 0.5 ? HandsAndFeet.Layout.FOUR_PARTS : HandsAndFeet.Layout.MANUALS_ONLY;
        return reading(registration, HandsAndFeet.on(layout, manual));
    }

    /** The fractional part of i (k + 0.5)^0.5 golden, from 0 to below 1. */
    private static double kronecker(int i, int k) {
        double irrational = Math.sqrt(k + 0.5) * GOLDEN;
        return i * irrational - Math.floor(i * irrational);
    }

    private List<Proposed> best(Collection<MeterReading> starts, int number) {
        List<Proposed> proposed = new ArrayList<>();
        while (proposed.size() < number) {
            Optional<Proposed> best = best(starts);
            if (best.isEmpty()) {
                break;
            }
            proposed.add(best.get());
        }
        return proposed;
    }

    /** Full organ, and the flues of every manual at 8 and 4 ft. */
    private List<MeterReading> usual() {
        List<MeterReading> usual = new ArrayList<>();
        usual.add(reading(
                Registration.full(organ), HandsAndFeet.on(HandsAndFeet.Layout.FOUR_PARTS, organ.mainDivision())));
        Registration silent = Registration.silent(organ);
        for (int division : organ.manualDivisions()) {
            IndexSet foundations = IndexSet.of(IntStream.range(0, organ.stops().size())
                    .filter(stop -> organ.stops().get(stop).division() == division)
                    .filter(stop -> isFoundation(organ.stops().get(stop))));
            usual.add(reading(
                    silent.withStops(foundations), HandsAndFeet.on(HandsAndFeet.Layout.MANUALS_ONLY, division)));
        }
        return usual;
    }

    private static boolean isFoundation(Instrument.Knob knob) {
        return switch (knob.stop().family()) {
            case PRINCIPAL, FLUTE, STRING -> true;
            case CELESTE, MUTATION, MIXTURE, CORNET, CHORUS_REED, SOLO_REED -> false;
        };
    }

    private static MeterReading reading(Registration registration, HandsAndFeet hands) {
        return new MeterReading("", registration, hands, Seat.NAVE, 0, Optional.empty(), LEAST_DBA);
    }

    private Optional<Proposed> best(Collection<MeterReading> starts) {
        MeterReading best = null;
        double most = 0;
        for (MeterReading start : starts) {
            double worth = worth(start);
            if (worth > most) {
                best = start;
                most = worth;
            }
        }
        if (best == null) {
            return Optional.empty();
        }
        best = climb(best);
        double beforeDb = meanDb();
        OptionalDouble expected = sound.expectedDba(best, gradient);
        known = known.after(gradient, MeterReading.NOISE_SD_DB);
        double level = Math.max(MeterReading.LOWEST_DBA, Math.min(MeterReading.HIGHEST_DBA, expected.orElseThrow()));
        MeterReading told =
                new MeterReading("", best.registration(), best.hands(), Seat.NAVE, 0, Optional.empty(), level);
        return Optional.of(new Proposed(told, beforeDb, meanDb()));
    }

    /** The change that helps most, again and again. */
    private MeterReading climb(MeterReading start) {
        MeterReading best = start;
        double most = worth(start);
        for (int change = 0; change < MOST_CHANGES; change++) {
            MeterReading from = best;
            most *= WORTH_A_CHANGE;
            for (Registration other : changes(from.registration())) {
                MeterReading changed = reading(other, from.hands());
                double worth = worth(changed);
                if (worth > most) {
                    best = changed;
                    most = worth;
                }
            }
            if (best.equals(from)) {
                return best;
            }
        }
        return best;
    }

    private List<Registration> changes(Registration from) {
        List<Registration> changes = new ArrayList<>();
        for (int stop = 0; stop < organ.stops().size(); stop++) {
            changes.add(from.toggleStop(stop));
        }
        for (int coupler = 0; coupler < organ.couplers().size(); coupler++) {
            changes.add(from.toggleCoupler(coupler));
        }
        for (int division = 0; division < organ.divisions().size(); division++) {
            if (organ.divisions().get(division).isEnclosed()) {
                // half open is hard to set twice alike
                changes.add(from.withBox(division, BoxPosition.CLOSED));
                changes.add(from.withBox(division, BoxPosition.OPEN));
            }
        }
        return changes;
    }

    /** By how much a reading lessens the variances of all that is wanted, in dB2; 0 for one that cannot be read. */
    private double worth(MeterReading reading) {
        OptionalDouble expected = sound.expectedDba(reading, gradient);
        if (expected.isEmpty() || expected.getAsDouble() < LEAST_DBA) {
            return 0;
        }
        double[] moved = known.times(gradient);
        double variance = Covariance.inner(gradient, moved) + MeterReading.NOISE_SD_DB * MeterReading.NOISE_SD_DB;
        double sum = 0;
        for (double[] each : wanted) {
            double together = Covariance.inner(each, moved);
            sum += together * together;
        }
        return sum / variance;
    }

    private double meanDb() {
        double sum = 0;
        for (double[] each : wanted) {
            sum += known.variance(each);
        }
        return Math.sqrt(sum / Math.max(1, wanted.size()));
    }
}
