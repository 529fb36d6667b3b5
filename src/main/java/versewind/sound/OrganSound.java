package versewind.sound;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import versewind.acoustics.BandLevels;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.Trims;
import versewind.plan.HandsAndFeet;
import versewind.plan.HeardAs;
import versewind.plan.Mode;
import versewind.plan.Singing;
import versewind.plan.SungBy;
import versewind.plan.Verse;

/**
 * An instrument prepared for estimates: everything that does not depend on the registration is computed when it opens,
 * so that a verse takes microseconds.
 *
 * <p>How certain an estimate is follows from the {@link Covariance} of the {@link Parameters}; where that comes from is
 * none of its business.
 *
 * <p>Not thread-safe: estimates share buffers. They do not depend on the estimates before.
 *
 * <p>Checked against: {@code OrganSoundTest}, {@code TrialTableTest}, {@code KnownSituationsTest}.
 */
public final class OrganSound {

    /** Numbers of people whose room is kept. */
    static final int MAX_ROOMS = 100;

    private static final int BAND_500_HZ = 13;
    private static final int BAND_1_KHZ = 16;
    private static final double MS_PER_MINUTE = 60_000;

    private final Instrument organ;
    private final OrganPower power;
    private final Offsets offsets;
    private final Parameters parameters;
    private final Covariance covariance;
    private final FeltVerses felt;
    private final LevelSensitivity sensitivity;
    private final Singers singers;
    private final RoomSound room;
    private final Map<Integer, Seats> seats = new HashMap<>();
    private final Map<FeltVerses.Singers, HeardShares> heard = new HashMap<>();
    private final Hearing hearing = new Hearing();
    private final PrincipalsLoudness principals;
    private final ClearShare share;
    private final EstimatesMade<Estimate> estimates = new EstimatesMade<>();
    private final EstimatesMade<Optional<ClearShare.RightBand>> bands = new EstimatesMade<>();
    private final Map<Class<?>, Object> derived = new HashMap<>();
    private final double[] inNave = new double[ThirdOctaves.COUNT];
    private final double[] amongSingers = new double[ThirdOctaves.COUNT];
    private final double[] singing = new double[ThirdOctaves.COUNT];
    private final double[] ofOrgan;
    private final double[] ofOrganAmong;
    private final double[] ofSinging;
    private final double[] ofBalance;

    private OrganSound(
            Instrument organ, OrganPower power, Offsets offsets, Optional<Covariance> known, FeltVerses felt) {
        this(organ, power, new Singers(offsets.singersDb()), offsets, known, felt);
    }

    OrganSound(
            Instrument organ,
            OrganPower power,
            Singers singers,
            Offsets offsets,
            Optional<Covariance> known,
            FeltVerses felt) {
        this.organ = organ;
        this.power = power;
        this.singers = singers;
        this.offsets = offsets;
        parameters = new Parameters(organ);
        covariance = known.orElseGet(() -> Covariance.prior(parameters));
        this.felt = felt;
        sensitivity = new LevelSensitivity(parameters, power);
        room = new RoomSound(organ.room(), offsets.roomDb());
        principals = new PrincipalsLoudness(organ, power, hearing);
        share = new ClearShare(power, hearing, parameters.count(), ClearShare.AsHeard.NEVER, HeardShares.NONE);
        ofOrgan = new double[parameters.count()];
        ofOrganAmong = new double[parameters.count()];
        ofSinging = new double[parameters.count()];
        ofBalance = new double[parameters.count()];
    }

    /**
     * Opens an instrument as estimated.
     *
     * @throws IllegalArgumentException with a sentence, if its room names a material missing from the absorption table
     */
    public static OrganSound open(Instrument organ) {
        return open(organ, Offsets.NONE);
    }

    /** Opens an instrument with corrections to singers and room; see {@link #open(Instrument)}. */
    public static OrganSound open(Instrument organ, Offsets offsets) {
        return new OrganSound(organ, new OrganPower(organ), offsets, Optional.empty(), FeltVerses.NONE);
    }

    /** A copy with these trims and offsets, the prior covariance, and nothing heard. */
    public OrganSound with(Trims trims, Offsets others) {
        Instrument trimmed = trims.on(organ);
        return new OrganSound(trimmed, power.trimmed(trimmed), others, Optional.empty(), FeltVerses.NONE);
    }

    /** A copy with this covariance. */
    public OrganSound with(Covariance other) {
        return with(other, felt);
    }

    /** A copy with this covariance, on which these verses were heard. */
    public OrganSound with(Covariance other, FeltVerses heard) {
        return new OrganSound(organ, power.trimmed(organ), offsets, Optional.of(other), heard);
    }

    /** The instrument. */
    public Instrument organ() {
        return organ;
    }

    /** Corrections to singers and room. */
    public Offsets offsets() {
        return offsets;
    }

    /**
     * What others work out from this sound and nothing else: made when it is first asked for, then kept beside it.
     *
     * @param kind what it is; one of each kind is kept
     * @param make makes it
     */
    public <T> T derived(Class<T> kind, Function<OrganSound, T> make) {
        Object known = derived.get(kind);
        if (known == null) {
            // not computeIfAbsent: making one may ask for another
            known = make.apply(this);
            derived.put(kind, known);
        }
        return kind.cast(known);
    }

    /** The parameters of the instrument. */
    public Parameters parameters() {
        return parameters;
    }

    /** Covariance of the parameters. */
    public Covariance covariance() {
        return covariance;
    }

    /**
     * Reverberation time in s with people in the room, mean of 500 Hz and 1 kHz: 0.1611 V/A.
     *
     * @param people how many, 0 or more
     */
    public double reverberationS(int people) {
        return (room.reverberationS(BAND_500_HZ, people) + room.reverberationS(BAND_1_KHZ, people)) / 2;
    }

    /**
     * Estimates a verse.
     *
     * @param verse a verse that can be played on this instrument
     * @param servicePeople number of people at the service, for a verse without a number of its own; 1 or more
     * @param tempo beats a minute, if known
     */
    public Estimate estimate(Verse verse, int servicePeople, OptionalInt tempo) {
        return estimates.get(verse, servicePeople, tempo, () -> compute(verse, servicePeople, tempo));
    }

    /** Makes an estimate; afterwards the buffers hold its derivatives. */
    Estimate compute(Verse verse, int servicePeople, OptionalInt tempo) {
        PeoplePresent people = PeoplePresent.of(verse, servicePeople);
        Seats here = seats(people.present());
        PrincipalsLoudness.Scale scale = principals.scale(here);
        HeardShares heardBeside = heard(verse, people);
        power.compute(sounding(verse), verse.hands());
        here.organInNave().carry(power.all(), inNave);
        here.organAmong(people.place()).carry(power.all(), amongSingers);
        here.singing(people, voice(verse), singing);
        sensitivity.ofOrgan(here.organInNave(), inNave, ofOrgan);
        sensitivity.ofOrgan(here.organAmong(people.place()), amongSingers, ofOrganAmong);
        sensitivity.ofSinging(here, people, voice(verse), singing, ofSinging);
        Balance balance = balance(verse, people, here, heardBeside);

        boolean silent = power.isSilent();
        double sone = silent ? 0 : hearing.sone(inNave);
        double lagMs = here.lagMs(people.place());
        return new Estimate(
                ThirdOctaves.levelDba(inNave),
                sone,
                silent ? Optional.empty() : Optional.of(scale.dynamic(sone)),
                ThirdOctaves.levelDba(amongSingers),
                people.singers(),
                ThirdOctaves.levelDba(singing),
                balance,
                lagMs,
                tempo.isPresent()
                        ? OptionalDouble.of(lagMs * tempo.getAsInt() / MS_PER_MINUTE)
                        : OptionalDouble.empty(),
                BandLevels.of(inNave),
                new Estimate.StdDevs(
                        covariance.sdDb(ofOrgan), covariance.sdDb(ofOrganAmong), covariance.sdDb(ofSinging)));
    }

    /** What was heard of verses that are sung as one is, or by more or fewer. */
    private HeardShares heard(Verse verse, PeoplePresent people) {
        if (felt.isEmpty() || people.singers() == 0) {
            return HeardShares.NONE;
        }
        return heard.computeIfAbsent(
                FeltVerses.Singers.of(verse, people),
                singers -> HeardShares.of(
                        felt, singers, share.prepare(verse.mode(), people, seats(people.present()), voice(verse))));
    }

    private Balance balance(Verse verse, PeoplePresent people, Seats here, HeardShares heardBeside) {
        if (!verse.isPlayed()) {
            return Balance.certain(OptionalDouble.empty(), Verdict.UNACCOMPANIED);
        }
        if (verse.mode() != Mode.MELODY_SOLOED && !verse.isSung()) {
            return Balance.NONE;
        }
        ClearShare shares = share.prepare(verse.mode(), people, here, voice(verse));
        Balance balance = shares.balance(sensitivity, ofSinging, covariance, ofBalance);
        if (felt.isEmpty() || balance.odds().isEmpty()) {
            return balance;
        }
        double estimated = balance.share().orElseThrow();
        List<HeardAs> own = felt.sungAs(verse, people).playedAs(heard(verse).registration(), verse.hands());
        List<HeardAs> said = own.isEmpty() ? heardBeside.answers(estimated) : own;
        FeltLevel level = new FeltLevel(share.right(), covariance.sdDb(ofBalance), said);
        return said.isEmpty() ? balance : share.balance(estimated, level);
    }

    /**
     * The derivative of what decides the verdict on a verse: the level of the organ over the singing, or of the melody
     * over its accompaniment; where one of them is silent, the level of the organ in the nave.
     *
     * @param verse a verse that can be played on this instrument
     * @param servicePeople number of people at the service
     * @param gradient receives the derivative by the parameters
     */
    public void gradient(Verse verse, int servicePeople, double[] gradient) {
        Balance balance = compute(verse, servicePeople, OptionalInt.empty()).balance();
        System.arraycopy(balance.odds().isEmpty() ? ofOrgan : ofBalance, 0, gradient, 0, gradient.length);
    }

    /**
     * The shares of many registrations for one verse; the verse's own registration does not matter.
     *
     * @param verse a verse that is sung, or whose melody is soloed
     * @param servicePeople number of people at the service
     */
    public ClearShare clearShare(Verse verse, int servicePeople) {
        PeoplePresent people = PeoplePresent.of(verse, servicePeople);
        FeltVerses sungSo = felt.sungAs(verse, people);
        ClearShare.AsHeard asHeard = (drawn, hands) ->
                sungSo.playedAs(power.heard(organ, drawn, hands), hands).isEmpty()
                        ? OptionalDouble.empty()
                        : estimate(verse.withRegistration(drawn).withHands(hands), servicePeople, OptionalInt.empty())
                                .balance()
                                .share();
        return new ClearShare(power, hearing, parameters.count(), asHeard, heard(verse, people))
                .prepare(verse.mode(), people, seats(people.present()), voice(verse));
    }

    /**
     * Between which levels a verse would be right, in dB above what is drawn; empty where the organ plays alone, or
     * nothing leads.
     *
     * @param verse a verse that can be played on this instrument
     * @param servicePeople number of people at the service
     */
    public Optional<ClearShare.RightBand> rightBand(Verse verse, int servicePeople) {
        return verse.isPlayed() && (verse.mode() == Mode.MELODY_SOLOED || verse.isSung())
                ? bands.get(verse, servicePeople, OptionalInt.empty(), () -> clearShare(verse, servicePeople)
                        .rightBand(verse.registration(), verse.hands()))
                : Optional.empty();
    }

    /**
     * Level of the organ in the empty nave in dB(A); {@link Double#NEGATIVE_INFINITY} if it is silent.
     *
     * @param drawn the registration
     * @param hands how it is played
     */
    public double levelDba(Registration drawn, HandsAndFeet hands) {
        power.compute(drawn, hands);
        seats(0).organInNave().carry(power.all(), inNave);
        return ThirdOctaves.dbA(inNave);
    }

    /** A verse with what is heard of what it draws, without its answer: verses that sound the same draw the same. */
    public Verse heard(Verse verse) {
        Registration heard = power.heard(organ, verse.registration(), verse.hands());
        return verse.withAnswer(Optional.empty()).withRegistration(heard);
    }

    /** Indices of the stops that are drawn and sound; the others wait on a keyboard that nobody plays or couples. */
    public IndexSet sounding(Registration drawn, HandsAndFeet hands) {
        return power.sounding(organ, drawn, hands);
    }

    /**
     * Level of the organ in dB(A) at a seat, with its derivative by the parameters.
     *
     * @param seat where it is heard
     * @param present number of people in the room, 0 or more
     * @param drawn the registration
     * @param hands how it is played
     * @param gradient receives the derivative; zeros if the organ is silent
     * @return empty if the organ is silent
     */
    public OptionalDouble organDba(Seat seat, int present, Registration drawn, HandsAndFeet hands, double[] gradient) {
        Path path = seats(present).organAt(seat);
        power.compute(drawn, hands);
        path.carry(power.all(), inNave);
        sensitivity.ofOrgan(path, inNave, gradient);
        return ThirdOctaves.levelDba(inNave);
    }

    /**
     * Level of a singing congregation in dB(A) at a seat among it, with its derivative by the parameters.
     *
     * @param present number of people in the room
     * @param singing how many of them sing, all of them heard
     * @param strength how strongly
     * @param gradient receives the derivative
     */
    public OptionalDouble singingDba(int present, int singing, Singing strength, double[] gradient) {
        // a seat among singers leaves out the listener's own voice: one singer more is heard by a meter as all of them
        PeoplePresent people = new PeoplePresent(present, singing + 1, PeoplePresent.Place.IN_THE_NAVE);
        double[] voice = singers.voice(SungBy.CONGREGATION, strength);
        seats(present).singing(people, voice, this.singing);
        sensitivity.ofSinging(seats(present), people, voice, this.singing, gradient);
        return ThirdOctaves.levelDba(this.singing);
    }

    /**
     * A difference of levels in the nave.
     *
     * @param db level of the second verse minus that of the first, in dB
     * @param plusMinusDb its standard deviation in dB, far less than that of either level, since most errors are common
     */
    public record LevelStep(double db, double plusMinusDb) {}

    /**
     * The step in level from one verse to another.
     *
     * @param from a verse that can be played on this instrument
     * @param to another
     * @param servicePeople number of people at the service
     * @return empty if one of them is silent
     */
    public Optional<LevelStep> step(Verse from, Verse to, int servicePeople) {
        OptionalDouble before = naveDba(from, servicePeople, ofOrganAmong);
        OptionalDouble after = naveDba(to, servicePeople, ofOrgan);
        if (before.isEmpty() || after.isEmpty()) {
            return Optional.empty();
        }
        Covariance.addScaled(ofOrgan, ofOrganAmong, -1);
        return Optional.of(new LevelStep(after.getAsDouble() - before.getAsDouble(), covariance.sdDb(ofOrgan)));
    }

    private OptionalDouble naveDba(Verse verse, int servicePeople, double[] gradient) {
        int present = PeoplePresent.of(verse, servicePeople).present();
        return organDba(Seat.NAVE, present, sounding(verse), verse.hands(), gradient);
    }

    /** What sounds of what is drawn: nothing where nobody plays. */
    private Registration sounding(Verse verse) {
        return verse.isPlayed() ? verse.registration() : Registration.silent(organ());
    }

    /** Sound power of one of those who sing a verse, re 1 pW, by band. */
    double[] voice(Verse verse) {
        return singers.voice(verse.sungBy(), verse.singing());
    }

    /** The seats with a number of people in the room. */
    Seats seats(int people) {
        if (seats.size() > MAX_ROOMS) {
            seats.clear();
        }
        return seats.computeIfAbsent(people, room::seats);
    }
}
