package versewind.sound;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import versewind.acoustics.BandLevels;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.Trims;
import versewind.plan.HandsAndFeet;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.Singing;
import versewind.plan.Verse;

/**
 * An instrument opened for listening: everything that does not depend on what is drawn is worked out, so that a verse is
 * estimated in microseconds.
 *
 * <p>Use it from one thread: an estimate needs scratch paper, and there is one. Estimates are the same whatever was
 * estimated before.
 */
public final class OrganSound {

    private static final int MOST_ROOMS_KEPT = 100;
    private static final int BAND_500_HZ = 13;
    private static final int BAND_1_KHZ = 16;
    private static final double MS_PER_MINUTE = 60_000;

    private final Instrument organ;
    private final OrganPower power;
    private final Offsets offsets;
    private final RoomSound room;
    private final Hearing hearing = new Hearing();
    private final Map<Integer, Seats> seats = new HashMap<>();
    private final Map<Integer, Filled> rooms = new HashMap<>();
    private final double[][] voices = new double[Singing.values().length][];
    private final double[][] soloists = new double[Singing.values().length][];
    private double[] softest = {};
    private double[] full = {};

    private final double[] inNave = new double[ThirdOctaves.COUNT];
    private final double[] amongSingers = new double[ThirdOctaves.COUNT];
    private final double[] singing = new double[ThirdOctaves.COUNT];
    private final double[] aside = new double[ThirdOctaves.COUNT];

    private final Parameters unknowns;
    private final LevelSensitivity sureness;
    private Covariance known;
    private Calibration calibration = Calibration.NONE;
    private final double[] ofOrgan;
    private final double[] ofOrganAmong;
    private final double[] ofSinging;
    private final MarginCalculator balance;
    private final MarginCalculator.Heard heard;

    /** The room with a number of people in it, and how loud the softest and the fullest of the organ is there. */
    private record Filled(Seats seats, double softestSone, double fullSone) {
        Dynamic dynamic(double sone) {
            return Dynamic.of(sone, softestSone, fullSone);
        }
    }

    private OrganSound(Instrument organ, OrganPower power, Offsets offsets) {
        this.organ = organ;
        this.power = power;
        this.offsets = offsets;
        room = new RoomSound(organ.room(), offsets.roomDb());
        for (Singing strength : Singing.values()) {
            voices[strength.ordinal()] = louder(Singers.voice(strength), offsets.singersDb());
            soloists[strength.ordinal()] = louder(Singers.soloist(strength), offsets.singersDb());
        }
        unknowns = new Parameters(organ);
        sureness = new LevelSensitivity(unknowns, power);
        known = Covariance.before(unknowns);
        ofOrgan = new double[unknowns.count()];
        ofOrganAmong = new double[unknowns.count()];
        ofSinging = new double[unknowns.count()];
        balance = new MarginCalculator(hearing, power, sureness, unknowns.count());
        heard = new MarginCalculator.Heard(inNave, amongSingers, singing, ofSinging);
    }

    private static double[] louder(double[] power, double moreDb) {
        return Arrays.stream(power)
                .map(each -> each * ThirdOctaves.dbToPower(moreDb))
                .toArray();
    }

    /**
     * Opens an instrument that was never calibrated.
     *
     * @throws IllegalArgumentException with a sentence, if its room names a material that the table of absorption does
     *     not have
     */
    public static OrganSound open(Instrument organ) {
        return open(organ, Calibration.NONE);
    }

    /**
     * Opens an instrument.
     *
     * @param organ with the trims of its calibration
     * @param calibration what they rest on: it makes levels surer
     * @throws IllegalArgumentException with a sentence, if its room names a material that the table of absorption does
     *     not have
     */
    public static OrganSound open(Instrument organ, Calibration calibration) {
        OrganSound sound = new OrganSound(organ, new OrganPower(organ), calibration.offsets());
        sound.learn(calibration.readings());
        sound.calibration = calibration;
        return sound;
    }

    /** The same organ with other trims, in another room or among other singers; nothing was read of it. */
    OrganSound trimmed(Trims trims, Offsets others) {
        Instrument trimmed = trims.on(organ);
        return new OrganSound(trimmed, power.trimmed(trimmed), others);
    }

    /**
     * The organ as it is expected to be after what was said of a plan's verses; this one where nothing was said. Its
     * calibration stays what it was.
     *
     * @param plan a plan that can be played on this organ
     */
    public OrganSound heeding(Plan plan) {
        List<Verse> answered = plan.answered();
        if (answered.isEmpty()) {
            return this;
        }
        FeedbackUpdate.Heeded heeded = FeedbackUpdate.heeded(this, answered);
        OrganSound after = trimmed(heeded.trims(), heeded.offsets());
        after.known = heeded.known();
        after.calibration = calibration;
        return after;
    }

    /** Knows besides what these readings tell; what sounds is not changed. */
    void learn(List<MeterReading> readings) {
        double[] gradient = new double[unknowns.count()];
        for (MeterReading reading : readings) {
            expectedDba(reading, gradient);
            known = known.after(gradient, MeterReading.NOISE_SD_DB);
        }
    }

    /** What the trims rest on. */
    public Calibration calibration() {
        return calibration;
    }

    /** How surely the unknowns are known. */
    Covariance known() {
        return known;
    }

    /** The unknowns. */
    Parameters unknowns() {
        return unknowns;
    }

    /** What a calibration found of singers and room. */
    Offsets offsets() {
        return offsets;
    }

    /**
     * The level in dB(A) that a meter would read, and its derivative by the unknowns.
     *
     * @param reading how it is taken; its level is not looked at
     * @param gradient where the derivative is written; zeros where nothing sounds
     * @return empty where nothing sounds
     */
    OptionalDouble expectedDba(MeterReading reading, double[] gradient) {
        Seats seats = seats(reading.present());
        double[] path = seats.organAt(reading.seat());
        power.compute(reading.registration(), reading.hands());
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            inNave[band] = power.all()[band] * path[band];
        }
        sureness.ofOrgan(path, inNave, gradient);
        if (reading.sung().isEmpty()) {
            return dbA(inNave);
        }
        MeterReading.Sung sung = reading.sung().get();
        // the meter hears all the singers, a singer hears all but himself
        PeoplePresent people =
                new PeoplePresent(reading.present(), sung.singers() + 1, PeoplePresent.Place.IN_THE_NAVE);
        double[] voice = voices[sung.strength().ordinal()];
        seats.singing(people, voice, singing);
        sureness.ofSinging(seats, people, voice, singing, ofSinging);
        double organPower = ThirdOctaves.aWeightedPower(inNave);
        double singersPower = ThirdOctaves.aWeightedPower(singing);
        double both = organPower + singersPower;
        for (int place = 0; place < gradient.length; place++) {
            gradient[place] = (gradient[place] * organPower + ofSinging[place] * singersPower) / both;
        }
        return both > 0 ? OptionalDouble.of(ThirdOctaves.powerToDb(both)) : OptionalDouble.empty();
    }

    /** The level in dB(A) that a meter would read; empty where nothing sounds. */
    public OptionalDouble expectedDba(MeterReading reading) {
        return expectedDba(reading, new double[unknowns.count()]);
    }

    /**
     * Derivative of what a verse is judged by: its margin, or its level in the nave where there is no margin.
     *
     * @param verse a verse that can be played on this instrument
     * @param servicePeople number of people at the service
     * @param gradient where it is written; zeros where nothing sounds
     * @return the margin
     */
    Margin ofVerdict(Verse verse, int servicePeople, double[] gradient) {
        Estimate estimate = estimate(verse, servicePeople, OptionalInt.empty());
        double[] judged = estimate.margin().db().isPresent() ? balance.gradient() : ofOrgan;
        System.arraycopy(judged, 0, gradient, 0, gradient.length);
        return estimate.margin();
    }

    /** The instrument. */
    public Instrument organ() {
        return organ;
    }

    /**
     * Reverberation time of the room in s with a number of people in it, the mean of those at 500 Hz and 1 kHz: 0.1611
     * V/A.
     *
     * @param people how many, 0 or more
     */
    public double reverberationS(int people) {
        return (room.reverberationS(BAND_500_HZ, people) + room.reverberationS(BAND_1_KHZ, people)) / 2;
    }

    /** Sound power of the softest stop of the manuals, all four parts, box closed. */
    private double[] softest() {
        Seats seats = seats(0);
        double[] found = new double[ThirdOctaves.COUNT];
        double foundSone = Double.POSITIVE_INFINITY;
        List<BoxPosition> closed =
                organ.divisions().stream().map(division -> BoxPosition.CLOSED).toList();
        for (int stop = 0; stop < organ.stops().size(); stop++) {
            int division = organ.stops().get(stop).division();
            if (organ.divisions().get(division).isPedal()) {
                continue;
            }
            Registration alone = new Registration(IndexSet.of(stop), IndexSet.EMPTY, IndexSet.EMPTY, closed);
            power.compute(alone, HandsAndFeet.on(HandsAndFeet.Layout.MANUALS_ONLY, division));
            double sone = soneInNave(seats, power.all());
            if (sone < foundSone) {
                foundSone = sone;
                found = power.all().clone();
            }
        }
        return found;
    }

    /** Sound power of full organ, both hands on the main division. */
    private double[] full() {
        HandsAndFeet both = HandsAndFeet.on(HandsAndFeet.Layout.FOUR_PARTS, organ.mainDivision());
        power.compute(Registration.full(organ), both);
        return power.all().clone();
    }

    /**
     * What a verse sounds like.
     *
     * @param verse a verse that can be played on this instrument
     * @param servicePeople number of people at the service, for a verse that has no number of its own; 1 or more
     * @param tempo beats a minute, if known
     */
    public Estimate estimate(Verse verse, int servicePeople, OptionalInt tempo) {
        PeoplePresent people = PeoplePresent.of(verse, servicePeople);
        Filled filled = filled(people.present());
        Seats seats = filled.seats();
        power.compute(verse.registration(), verse.hands());
        seats.organInNave(power.all(), inNave);
        seats.organAmong(people.place(), power.all(), amongSingers);
        seats.singing(people, voice(verse), singing);
        sureness.ofOrgan(seats.organInNave(), inNave, ofOrgan);
        sureness.ofOrgan(seats.organAmong(people.place()), amongSingers, ofOrganAmong);
        sureness.ofSinging(seats, people, voice(verse), singing, ofSinging);
        Margin margin = balance.margin(verse, people, seats, heard, known);

        hearing.listen(inNave);
        double phon = hearing.phon();
        boolean silent = power.isSilent();
        double lagMs = seats.lagMs(people.place());
        return new Estimate(
                dbA(inNave),
                silent ? 0 : hearing.sone(),
                silent ? OptionalDouble.empty() : OptionalDouble.of(phon),
                silent ? Optional.empty() : Optional.of(filled.dynamic(hearing.sone())),
                dbA(amongSingers),
                people.singers(),
                dbA(singing),
                margin,
                lagMs,
                tempo.isPresent()
                        ? OptionalDouble.of(lagMs * tempo.getAsInt() / MS_PER_MINUTE)
                        : OptionalDouble.empty(),
                BandLevels.of(inNave),
                new StdDevs(known.sdDb(ofOrgan), known.sdDb(ofOrganAmong), known.sdDb(ofSinging)));
    }

    /**
     * Level in dB(A) of the organ in the empty nave; {@link Double#NEGATIVE_INFINITY} where it is silent.
     *
     * @param drawn what is drawn
     * @param hands how it is played
     */
    public double levelDba(Registration drawn, HandsAndFeet hands) {
        power.compute(drawn, hands);
        seats(0).organInNave(power.all(), inNave);
        return dbA(inNave).orElse(Double.NEGATIVE_INFINITY);
    }

    /**
     * Weighs one registration after another for a verse; what the verse has drawn is not looked at.
     *
     * @param verse a verse that is sung, or whose melody is soloed
     * @param servicePeople number of people at the service
     */
    public MarginEvaluator weighing(Verse verse, int servicePeople) {
        PeoplePresent people = PeoplePresent.of(verse, servicePeople);
        return new MarginEvaluator(verse.mode(), people, seats(people.present()), voice(verse), power, hearing);
    }

    /**
     * How much louder the organ is in the nave in one verse than in another. Far surer than either level, for what is not
     * known of the organ is the same in both.
     *
     * @param from a verse that can be played on this instrument
     * @param to another
     * @param servicePeople number of people at the service
     * @return empty where one of them is silent
     */
    public Optional<LevelStep> step(Verse from, Verse to, int servicePeople) {
        OptionalDouble before = levelInNave(from, servicePeople);
        System.arraycopy(ofOrgan, 0, ofOrganAmong, 0, ofOrganAmong.length);
        OptionalDouble after = levelInNave(to, servicePeople);
        if (before.isEmpty() || after.isEmpty()) {
            return Optional.empty();
        }
        for (int place = 0; place < ofOrgan.length; place++) {
            ofOrgan[place] -= ofOrganAmong[place];
        }
        return Optional.of(new LevelStep(after.getAsDouble() - before.getAsDouble(), known.sdDb(ofOrgan)));
    }

    private OptionalDouble levelInNave(Verse verse, int servicePeople) {
        Seats seats = seats(PeoplePresent.of(verse, servicePeople).present());
        power.compute(verse.registration(), verse.hands());
        seats.organInNave(power.all(), inNave);
        sureness.ofOrgan(seats.organInNave(), inNave, ofOrgan);
        return dbA(inNave);
    }

    private double[] voice(Verse verse) {
        int strength = verse.singing().ordinal();
        return verse.mode() == Mode.SOLO_VOICE ? soloists[strength] : voices[strength];
    }

    private Filled filled(int people) {
        if (rooms.size() > MOST_ROOMS_KEPT) {
            rooms.clear();
        }
        return rooms.computeIfAbsent(people, this::fill);
    }

    private Filled fill(int people) {
        if (full.length == 0) {
            softest = softest();
            full = full();
        }
        Seats seats = seats(people);
        return new Filled(seats, soneInNave(seats, softest), soneInNave(seats, full));
    }

    private Seats seats(int people) {
        if (seats.size() > MOST_ROOMS_KEPT) {
            seats.clear();
        }
        return seats.computeIfAbsent(people, room::seats);
    }

    private double soneInNave(Seats seats, double[] soundPower) {
        seats.organInNave(soundPower, aside);
        hearing.listen(aside);
        return hearing.sone();
    }

    private static OptionalDouble dbA(double[] heard) {
        double weighted = ThirdOctaves.aWeightedPower(heard);
        return weighted > 0 ? OptionalDouble.of(ThirdOctaves.powerToDb(weighted)) : OptionalDouble.empty();
    }
}
