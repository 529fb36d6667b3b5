package versewind.calibration;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.RegistrationText;
import versewind.plan.HandsAndFeet;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.sound.Balance;
import versewind.sound.Covariance;
import versewind.sound.Odds;
import versewind.sound.OrganSound;
import versewind.sound.Seat;

/**
 * The choice of the next reading: the one that leaves the least variance in all wanted quantities together, which are
 * the levels that decide the verdicts of a plan (organ over singing, melody over accompaniment) or the levels of many
 * registrations.
 *
 * <p>A reading with gradient h and noise variance R removes (g' C h)^2 / (h' C h + R) from the variance of a quantity
 * with gradient g. The sum over all wanted quantities is maximised by hill climbing over readings of the organ alone in
 * the empty church: from the best of the plan's own registrations, full organ and the foundations of each manual, by
 * changing one stop, coupler or box at a time; beside these the singing alone, of an unaccompanied verse, is tried. It
 * ends where a reading would gain less than a tenth.
 *
 * <p>Range: a local optimum. Registrations expected below 50 dB(A) are left out, since a quiet church has a background
 * of 30 to 40 dB(A) (an estimate).
 *
 * <p>Source: sequential optimal design for linear models, the criterion of least mean variance (I- or V-optimality), as
 * in the manual of the R package OptimalDesign after Atkinson et al., 10.6.
 *
 * <p>Checked against: {@code CalibrationTest}, beside as many readings of random registrations.
 */
public final class ReadingDesign {

    /** Said where no reading is proposed. */
    public static final String NONE_IS_WORTH_IT = "Another reading would gain less than a tenth.";

    private static final double LEAST_DBA = 50;
    private static final int MAX_CHANGES = 60;

    /** Least gain of a change, as a factor: a simpler registration is more likely to be set right. */
    private static final double LEAST_GAIN = 1.01;

    /** A reading that narrows the mean uncertainty by less than this part of it is not worth the time. An estimate. */
    private static final double LEAST_WORTH = 0.1;

    private static final int SAMPLES = 200;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final OrganSound sound;
    private final Instrument organ;
    private final List<double[]> wanted = new ArrayList<>();
    private final List<Function<OrganSound, Balance>> judged = new ArrayList<>();
    private final double[] gradient;
    private final double leastWorth;
    private Covariance covariance;

    private ReadingDesign(OrganSound sound, double leastWorth) {
        this.sound = sound;
        this.leastWorth = leastWorth;
        organ = sound.organ();
        covariance = sound.covariance();
        gradient = new double[sound.parameters().count()];
    }

    /**
     * A reading to be taken.
     *
     * @param reading how to take it; its level is the expected one
     * @param beforeDb root mean variance of the wanted quantities now, in dB
     * @param afterDb the same after the reading
     * @param beforeOdds mean odds of the verdicts of a plan now, 0 to 1; empty without a plan
     * @param afterOdds the same after the reading, if it gives the expected level
     */
    public record Proposed(
            MeterReading reading,
            double beforeDb,
            double afterDb,
            OptionalDouble beforeOdds,
            OptionalDouble afterOdds) {

        /** How it is taken: "Great: Principal 4; four parts on Great". */
        public String words(Instrument organ) {
            return reading.sung()
                    .map(sung -> "the singing alone, in an unaccompanied verse: " + reading.present()
                            + " people, singing " + sung.strength().word())
                    .orElseGet(() -> new RegistrationText(organ).format(reading.registration()) + "; "
                            + reading.hands().layout().word() + " on "
                            + organ.divisions().get(reading.hands().right()).name());
        }

        /** What it is good for, a sentence. */
        public String gain() {
            long from = Math.round(beforeDb);
            long to = Math.round(afterDb);
            String less = "It would narrow the uncertainty "
                    + (from == to
                            ? "by " + Math.round(100 * (1 - afterDb / beforeDb)) + "%"
                            : "from " + from + " to " + to + " dB");
            if (beforeOdds.isEmpty() || afterOdds.isEmpty()) {
                return less + ".";
            }
            String before = Odds.words(beforeOdds.getAsDouble());
            String after = Odds.words(afterOdds.getAsDouble());
            return less
                    + (before.equals(after)
                            ? ", and would hardly change the verdicts."
                            : ", and take the verdicts from " + before + " to " + after + " on average.");
        }
    }

    /**
     * The readings to take next for the verdicts of a plan, in order.
     *
     * @param sound the organ as known so far
     * @param plan a plan for it
     * @param number how many
     * @return fewer if no more are worth it; none for a plan without verses
     */
    public static List<Proposed> of(OrganSound sound, Plan plan, int number) {
        return of(sound, plan, number, LEAST_WORTH);
    }

    /** The same, as long as a reading takes away this part of the mean uncertainty. */
    static List<Proposed> of(OrganSound sound, Plan plan, int number, double leastWorth) {
        ReadingDesign design = new ReadingDesign(sound, leastWorth);
        Set<MeterReading> starts = new LinkedHashSet<>();
        int people = plan.heading().people();
        for (Hymn hymn : plan.hymns()) {
            for (Verse verse : hymn.verses()) {
                double[] ofVerse = new double[design.gradient.length];
                sound.gradient(verse, people, ofVerse);
                design.wanted.add(ofVerse);
                design.judged.add(listening ->
                        listening.estimate(verse, people, OptionalInt.empty()).balance());
                starts.add(reading(verse.registration(), verse.hands()));
                design.unaccompanied(verse, people).ifPresent(starts::add);
            }
        }
        starts.addAll(design.usual());
        return design.best(starts, number);
    }

    /**
     * The readings to take next without a plan, in order: for the levels of 200 varied registrations.
     *
     * @param sound the organ as known so far
     * @param number how many
     * @return fewer if no more are worth it
     */
    public static List<Proposed> allRound(OrganSound sound, int number) {
        return allRound(sound, number, LEAST_WORTH);
    }

    /** The same, as long as a reading takes away this part of the mean uncertainty. */
    static List<Proposed> allRound(OrganSound sound, int number, double leastWorth) {
        ReadingDesign design = new ReadingDesign(sound, leastWorth);
        for (int i = 1; i <= SAMPLES; i++) {
            double[] ofLevel = new double[design.gradient.length];
            design.sample(i).expectedDba(sound, ofLevel);
            design.wanted.add(ofLevel);
        }
        return design.best(design.usual(), number);
    }

    /**
     * The singing of a verse alone, as the meter would read it of an unaccompanied verse; only it narrows the singers.
     */
    private Optional<MeterReading> unaccompanied(Verse verse, int people) {
        int singers = sound.estimate(verse, people, OptionalInt.empty()).singers();
        if (verse.mode() != Mode.CONGREGATION || singers < 2) {
            return Optional.empty();
        }
        return Optional.of(new MeterReading(
                "",
                Registration.silent(organ),
                HandsAndFeet.on(HandsAndFeet.Layout.FOUR_PARTS, organ.mainDivision()),
                Seat.NAVE,
                verse.people().orElse(people),
                Optional.of(new MeterReading.Sung(singers, verse.singing())),
                LEAST_DBA));
    }

    /** Mean odds of the verdicts that are in doubt. */
    private OptionalDouble meanOdds() {
        OrganSound listening = sound.with(covariance);
        return judged.stream()
                .map(each -> each.apply(listening))
                .filter(balance -> !balance.odds().isEmpty())
                .mapToDouble(balance -> balance.odds().of(balance.verdict()))
                .average();
    }

    /**
     * One of many varied registrations, without randomness: each stop, coupler and box has its own irrational number a
     * and is set by the fractional part of i a (a Kronecker sequence), so that any two are drawn together about equally
     * often.
     */
    private MeterReading sample(int i) {
        int dimension = 1;
        IndexSet stops = IndexSet.EMPTY;
        for (int stop = 0; stop < organ.stops().size(); stop++) {
            stops = kronecker(i, dimension++) < 0.5 ? stops.with(stop) : stops;
        }
        IndexSet couplers = IndexSet.EMPTY;
        for (int coupler = 0; coupler < organ.couplers().size(); coupler++) {
            couplers = kronecker(i, dimension++) < 0.5 ? couplers.with(coupler) : couplers;
        }
        Registration registration = Registration.silent(organ).withStops(stops).withCouplers(couplers);
        for (int division = 0; division < organ.divisions().size(); division++) {
            if (organ.divisions().get(division).isEnclosed()) {
                int position = (int) (kronecker(i, dimension++) * BoxPosition.values().length);
                registration = registration.withBox(division, BoxPosition.values()[position]);
            }
        }
        List<Integer> manuals = organ.manualDivisions();
        int manual = manuals.get((int) (kronecker(i, dimension++) * manuals.size()));
        HandsAndFeet.Layout layout =
                kronecker(i, dimension) < 0.5 ? HandsAndFeet.Layout.FOUR_PARTS : HandsAndFeet.Layout.MANUALS_ONLY;
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

    /** Full organ, and the principals, flutes and strings of every manual. */
    private List<MeterReading> usual() {
        List<MeterReading> usual = new ArrayList<>();
        usual.add(reading(
                Registration.full(organ), HandsAndFeet.on(HandsAndFeet.Layout.FOUR_PARTS, organ.mainDivision())));
        for (int division : organ.manualDivisions()) {
            IndexSet foundations = IndexSet.of(IntStream.range(0, organ.stops().size())
                    .filter(stop -> organ.stops().get(stop).division() == division)
                    .filter(stop -> isFoundation(organ.stops().get(stop))));
            usual.add(reading(
                    Registration.silent(organ).withStops(foundations),
                    HandsAndFeet.on(HandsAndFeet.Layout.MANUALS_ONLY, division)));
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
        return MeterReading.ofOrganAlone(registration, hands, LEAST_DBA);
    }

    private Optional<Proposed> best(Collection<MeterReading> starts) {
        MeterReading start = null;
        double most = 0;
        for (MeterReading each : starts) {
            double worth = worth(each);
            if (worth > most) {
                start = each;
                most = worth;
            }
        }
        if (start == null) {
            return Optional.empty();
        }
        MeterReading best = start.sung().isPresent() ? start : climb(start, most);
        double beforeDb = meanDb();
        OptionalDouble beforeOdds = meanOdds();
        double expectedDba = best.shownDba(sound, gradient).orElseThrow();
        covariance = covariance.after(gradient, MeterReading.NOISE_SD_DB);
        double afterDb = meanDb();
        return afterDb > beforeDb * (1 - leastWorth)
                ? Optional.empty()
                : Optional.of(new Proposed(best.reading(expectedDba), beforeDb, afterDb, beforeOdds, meanOdds()));
    }

    /** Steepest ascent: the most useful single change, until none gains enough. */
    private MeterReading climb(MeterReading start, double worthOfStart) {
        MeterReading best = start;
        double most = worthOfStart;
        for (int change = 0; change < MAX_CHANGES; change++) {
            MeterReading from = best;
            most *= LEAST_GAIN;
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
                // half open cannot be set twice the same
                changes.add(from.withBox(division, BoxPosition.CLOSED));
                changes.add(from.withBox(division, BoxPosition.OPEN));
            }
        }
        return changes;
    }

    /** Variance in dB2 that a reading removes from all wanted quantities; 0 for one that cannot be read. */
    private double worth(MeterReading reading) {
        OptionalDouble expected = reading.shownDba(sound, gradient);
        if (expected.isEmpty() || expected.getAsDouble() < LEAST_DBA) {
            return 0;
        }
        double[] gain = covariance.times(gradient);
        double sum = 0;
        for (double[] each : wanted) {
            double together = Covariance.inner(each, gain);
            sum += together * together;
        }
        return sum / (Covariance.inner(gradient, gain) + MeterReading.NOISE_VARIANCE);
    }

    private double meanDb() {
        double sum = wanted.stream().mapToDouble(covariance::variance).sum();
        return Math.sqrt(sum / Math.max(1, wanted.size()));
    }
}
