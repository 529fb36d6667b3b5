package versewind.sound;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.Mode;
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
    private static final double MS_PER_MINUTE = 60_000;

    private final Instrument organ;
    private final OrganPower power;
    private final RoomSound room;
    private final Hearing hearing = new Hearing();
    private final Map<Integer, Filled> rooms = new HashMap<>();
    private final double[][] voices = new double[Singing.values().length][];
    private final double[][] soloists = new double[Singing.values().length][];
    private final double[] softest;
    private final double[] full;

    private final double[] inNave = new double[ThirdOctaves.COUNT];
    private final double[] amongSingers = new double[ThirdOctaves.COUNT];
    private final double[] singing = new double[ThirdOctaves.COUNT];
    private final double[] melodyInNave = new double[ThirdOctaves.COUNT];
    private final double[] aside = new double[ThirdOctaves.COUNT];

    /** The room with a number of people in it, and how loud the softest and the fullest of the organ is there. */
    private record Filled(Seats seats, double softestSone, double fullSone) {
        Dynamic dynamic(double sone) {
            return Dynamic.of(sone, softestSone, fullSone);
        }
    }

    private OrganSound(Instrument organ) {
        this.organ = organ;
        power = new OrganPower(organ);
        room = new RoomSound(organ.room());
        for (Singing strength : Singing.values()) {
            voices[strength.ordinal()] = Singers.voice(strength);
            soloists[strength.ordinal()] = Singers.soloist(strength);
        }
        softest = softest();
        full = full();
    }

    /**
     * Opens an instrument.
     *
     * @throws IllegalArgumentException with a sentence, if its room names a material that the table of absorption does
     *     not have
     */
    public static OrganSound open(Instrument organ) {
        return new OrganSound(organ);
    }

    /** The instrument. */
    public Instrument organ() {
        return organ;
    }

    /** Sound power of the softest stop of the manuals, all four parts, box closed. */
    private double[] softest() {
        Seats seats = room.seats(0);
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
        Assembly people = Assembly.of(verse, servicePeople);
        Filled filled = filled(people.present());
        Seats seats = filled.seats();
        power.compute(verse.registration(), verse.hands());
        seats.organInNave(power.all(), inNave);
        seats.organAmong(people.place(), power.all(), amongSingers);
        seats.singing(people, voice(verse), singing);
        Margin margin = margin(verse, people, seats);

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
                BandLevels.of(inNave));
    }

    private Margin margin(Verse verse, Assembly people, Seats seats) {
        if (verse.mode() == Mode.MELODY_SOLOED) {
            return soloLine(seats);
        }
        if (!verse.isSung()) {
            return Margin.NONE;
        }
        return switch (people.place()) {
            case IN_THE_NAVE -> lead(verse);
            case AT_THE_CHOIR ->
                power.isSilent() ? Margin.of(Verdict.CLEAR) : Margin.of(verse.mode(), hearing.wordsDb(singing, inNave));
        };
    }

    private Margin lead(Verse verse) {
        if (power.isSilent()) {
            return Margin.of(Verdict.LOST);
        }
        if (power.isMelodySilent()) {
            return Margin.of(Verdict.NO_TUNE);
        }
        return Margin.of(verse.mode(), hearing.musicDb(amongSingers, singing));
    }

    private Margin soloLine(Seats seats) {
        if (power.isMelodySilent()) {
            return Margin.of(Verdict.BURIED);
        }
        seats.organInNave(power.melody(), melodyInNave);
        seats.organInNave(power.rest(), aside);
        return Margin.of(Mode.MELODY_SOLOED, hearing.musicDb(melodyInNave, aside));
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
        Seats seats = room.seats(people);
        return new Filled(seats, soneInNave(seats, softest), soneInNave(seats, full));
    }

    private double soneInNave(Seats seats, double[] soundPower) {
        seats.organInNave(soundPower, aside);
        hearing.listen(aside);
        return hearing.sone();
    }

    private static OptionalDouble dbA(double[] heard) {
        double weighted = ThirdOctaves.aWeightedPower(heard);
        return weighted > 0 ? OptionalDouble.of(ThirdOctaves.levelDb(weighted)) : OptionalDouble.empty();
    }
}
