package versewind.sound;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import versewind.organ.BoxPosition;
import versewind.organ.Division;
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
    private final Keys keys;
    private final Pipework pipework;
    private final RoomSound room;
    private final List<Optional<Shutters>> shutters;
    private final double[][] voices = new double[Singing.values().length][];
    private final double[][] soloists = new double[Singing.values().length][];
    private final Map<Integer, Filled> rooms = new HashMap<>();
    private final double[] softest = new double[ThirdOctaves.COUNT];
    private final double[] full = new double[ThirdOctaves.COUNT];

    private final Scratch scratch;

    /** The room with a number of people in it, and how loud the softest and the fullest of the organ is there. */
    private record Filled(Seats seats, double softestPhon, double fullPhon) {
        Dynamic dynamic(double phon) {
            return Dynamic.of(phon, softestPhon, fullPhon);
        }
    }

    /** What is overwritten by every estimate. */
    private static final class Scratch {
        private final int[] received;
        private final double[][] melodyByPlace;
        private final double[][] restByPlace;
        private final double[] melody = new double[ThirdOctaves.COUNT];
        private final double[] rest = new double[ThirdOctaves.COUNT];
        private final double[] organ = new double[ThirdOctaves.COUNT];
        private final double[] nave = new double[ThirdOctaves.COUNT];
        private final double[] there = new double[ThirdOctaves.COUNT];
        private final double[] singing = new double[ThirdOctaves.COUNT];
        private final Hearing hearing = new Hearing();

        Scratch(int divisions) {
            received = new int[divisions];
            melodyByPlace = new double[1 + divisions][ThirdOctaves.COUNT];
            restByPlace = new double[1 + divisions][ThirdOctaves.COUNT];
        }
    }

    private OrganSound(Instrument organ) {
        this.organ = organ;
        int topPedalKey = organ.divisions().stream()
                .filter(Division::isPedal)
                .mapToInt(Division::topKey)
                .findFirst()
                .orElse(Integer.MAX_VALUE);
        keys = new Keys(organ);
        pipework = new Pipework(organ, Tessitura.overPedalTo(topPedalKey));
        room = new RoomSound(organ.room());
        shutters = organ.divisions().stream()
                .map(division -> division.box().map(Shutters::new))
                .toList();
        scratch = new Scratch(organ.divisions().size());
        for (Singing singing : Singing.values()) {
            voices[singing.ordinal()] = Singers.voice(singing);
            soloists[singing.ordinal()] = Singers.soloist(singing);
        }
        findExtremes();
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

    private void findExtremes() {
        Seats seats = room.seats(0);
        double softestPhon = Double.POSITIVE_INFINITY;
        for (int stop = 0; stop < organ.stops().size(); stop++) {
            int division = organ.stops().get(stop).division();
            if (organ.divisions().get(division).isPedal()) {
                continue;
            }
            Registration alone = closed(Registration.silent(organ).toggleStop(stop));
            sound(alone, HandsAndFeet.on(HandsAndFeet.Layout.MANUALS_ONLY, division));
            seats.organInNave(scratch.organ, scratch.there);
            double phon = phon(scratch.there);
            if (phon < softestPhon) {
                softestPhon = phon;
                System.arraycopy(scratch.organ, 0, softest, 0, softest.length);
            }
        }
        HandsAndFeet both = HandsAndFeet.on(HandsAndFeet.Layout.FOUR_PARTS, organ.mainDivision());
        sound(Registration.full(organ), both);
        System.arraycopy(scratch.organ, 0, full, 0, full.length);
    }

    private Registration closed(Registration registration) {
        return new Registration(
                registration.stops(),
                registration.couplers(),
                registration.tremulants(),
                organ.divisions().stream().map(division -> BoxPosition.CLOSED).toList());
    }

    /** Sets the sound power of the melody, of the rest and of the whole organ, out of the boxes, re 1 pW. */
    private void sound(Registration drawn, HandsAndFeet hands) {
        for (int place = 0; place < scratch.restByPlace.length; place++) {
            Arrays.fill(scratch.melodyByPlace[place], 0);
            Arrays.fill(scratch.restByPlace[place], 0);
        }
        keys.route(hands, drawn.couplers(), scratch.received);
        pipework.speak(drawn.stops(), scratch.received, scratch.melodyByPlace, scratch.restByPlace);
        comeOut(drawn, scratch.melodyByPlace, scratch.melody);
        comeOut(drawn, scratch.restByPlace, scratch.rest);
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            scratch.organ[band] = scratch.melody[band] + scratch.rest[band];
        }
    }

    private void comeOut(Registration drawn, double[][] byPlace, double[] sum) {
        System.arraycopy(byPlace[Pipework.OUTSIDE], 0, sum, 0, sum.length);
        for (int division = 0; division < shutters.size(); division++) {
            if (shutters.get(division).isPresent()) {
                double[] passed =
                        shutters.get(division).get().passed(drawn.boxes().get(division));
                double[] inside = byPlace[1 + division];
                for (int band = 0; band < ThirdOctaves.COUNT; band++) {
                    sum[band] += inside[band] * passed[band];
                }
            }
        }
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
        sound(verse.registration(), verse.hands());
        seats.organAmong(people.place(), scratch.organ, scratch.there);
        OptionalDouble amongDba = dbA(scratch.there);
        seats.singing(people, voice(verse), scratch.singing);
        seats.organInNave(scratch.organ, scratch.nave);
        Margin margin = margin(verse, seats, people);

        OptionalDouble organDba = dbA(scratch.nave);
        boolean silent = organDba.isEmpty();
        double phon = phon(scratch.nave);
        double lagMs = seats.lagMs(people.place());
        return new Estimate(
                organDba,
                silent ? 0 : scratch.hearing.sone(),
                silent ? OptionalDouble.empty() : OptionalDouble.of(phon),
                silent ? Optional.empty() : Optional.of(filled.dynamic(phon)),
                amongDba,
                people.singers(),
                dbA(scratch.singing),
                margin,
                lagMs,
                tempo.isPresent()
                        ? OptionalDouble.of(lagMs * tempo.getAsInt() / MS_PER_MINUTE)
                        : OptionalDouble.empty(),
                BandLevels.of(scratch.nave));
    }

    private Margin margin(Verse verse, Seats seats, Assembly people) {
        boolean silent = ThirdOctaves.aWeightedPower(scratch.organ) == 0;
        if (verse.mode() == Mode.MELODY_SOLOED) {
            return soloLine(seats);
        }
        if (people.singers() == 0) {
            return Margin.NONE;
        }
        return switch (people.place()) {
            case IN_THE_NAVE ->
                silent
                        ? Margin.of(Verdict.LOST)
                        : Margin.of(Margin.Kind.LEAD, scratch.hearing.musicDb(scratch.there, scratch.singing));
            case AT_THE_CHOIR ->
                silent
                        ? Margin.of(Verdict.CLEAR)
                        : Margin.of(Margin.Kind.VOICE, scratch.hearing.wordsDb(scratch.singing, scratch.nave));
        };
    }

    private Margin soloLine(Seats seats) {
        if (ThirdOctaves.aWeightedPower(scratch.melody) == 0) {
            return Margin.of(Verdict.BURIED);
        }
        seats.organInNave(scratch.melody, scratch.there);
        seats.organInNave(scratch.rest, scratch.singing);
        double db = scratch.hearing.musicDb(scratch.there, scratch.singing);
        Arrays.fill(scratch.singing, 0);
        return Margin.of(Margin.Kind.SOLO_LINE, db);
    }

    private double[] voice(Verse verse) {
        int singing = verse.singing().ordinal();
        return verse.mode() == Mode.SOLO_VOICE ? soloists[singing] : voices[singing];
    }

    private Filled filled(int people) {
        if (rooms.size() > MOST_ROOMS_KEPT) {
            rooms.clear();
        }
        return rooms.computeIfAbsent(people, this::fill);
    }

    private Filled fill(int people) {
        Seats seats = room.seats(people);
        seats.organInNave(softest, scratch.there);
        double softestPhon = phon(scratch.there);
        seats.organInNave(full, scratch.there);
        return new Filled(seats, softestPhon, phon(scratch.there));
    }

    private double phon(double[] power) {
        scratch.hearing.listen(power);
        return scratch.hearing.phon();
    }

    private static OptionalDouble dbA(double[] power) {
        double weighted = ThirdOctaves.aWeightedPower(power);
        return weighted > 0 ? OptionalDouble.of(ThirdOctaves.levelDb(weighted)) : OptionalDouble.empty();
    }
}
