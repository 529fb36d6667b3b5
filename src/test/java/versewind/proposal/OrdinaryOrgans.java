package versewind.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import versewind.organ.Action;
import versewind.organ.Coupler;
import versewind.organ.Division;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.Instrument;
import versewind.organ.MixtureBreak;
import versewind.organ.Pipe;
import versewind.organ.Pistons;
import versewind.organ.Room;
import versewind.organ.Stop;
import versewind.organ.SwellBox;

/**
 * Ordinary organs of two manuals and pedal in churches of every size, drawn at random, the same for the same seed. What
 * such an organ has and what it may have: common practice, no source.
 */
final class OrdinaryOrgans {

    static final int GREAT = 0;
    static final int SWELL = 1;
    static final int PEDAL = 2;

    /** Breaks as common practice has them, no source. */
    private static final Stop MIXTURE = new Stop(
            "Mixture",
            Optional.of(Footage.of(1)),
            Family.MIXTURE,
            Pipe.OPEN,
            3,
            List.of(
                    new MixtureBreak(36, List.of(new Footage(4, 3), Footage.of(1), new Footage(2, 3))),
                    new MixtureBreak(48, List.of(Footage.of(2), new Footage(4, 3), Footage.of(1))),
                    new MixtureBreak(60, List.of(new Footage(8, 3), Footage.of(2), new Footage(4, 3))),
                    new MixtureBreak(72, List.of(Footage.of(4), new Footage(8, 3), Footage.of(2)))),
            0,
            Stop.Enclosure.AS_ITS_DIVISION,
            Optional.empty());

    private final Random random;

    private OrdinaryOrgans(long seed) {
        random = new Random(seed);
    }

    static Instrument ofSeed(long seed) {
        return new OrdinaryOrgans(seed).organ("Organ " + seed);
    }

    private Instrument organ(String name) {
        List<Division> divisions = List.of(
                new Division("Great", OptionalInt.of(1), 58, Optional.empty(), great()),
                new Division("Swell", OptionalInt.of(2), 58, Optional.of(new SwellBox(0)), swell()),
                new Division("Pedal", OptionalInt.empty(), 30, Optional.empty(), pedal()));
        List<Coupler> couplers = List.of(
                new Coupler("Swell to Great", "Swell", "Great", Coupler.Kind.UNISON),
                new Coupler("Swell to Pedal", "Swell", "Pedal", Coupler.Kind.UNISON),
                new Coupler("Great to Pedal", "Great", "Pedal", Coupler.Kind.UNISON));
        Action action = random.nextBoolean() ? Action.ELECTRIC : Action.MECHANICAL;
        return new Instrument(name, "Nowhere", action, 0, divisions, couplers, List.of(), Pistons.NONE, room());
    }

    private Room room() {
        double volumeM3 = 1500 + 7500 * random.nextDouble();
        double time = 1.2 + 2.3 * random.nextDouble();
        return new Room(
                volumeM3,
                200 + random.nextInt(300),
                new Room.MeasuredTimes(List.of(1.1 * time, 1.1 * time, time, time, 0.9 * time, 0.7 * time)),
                new Room.Distances(
                        6 + random.nextInt(12),
                        15 + random.nextInt(15),
                        5 + random.nextInt(8),
                        5 + random.nextInt(8),
                        2 + random.nextInt(3)));
    }

    private List<Stop> great() {
        List<Stop> stops = new ArrayList<>();
        perhaps(0.3, stops, Stop.of("Bourdon", "16", Family.FLUTE, Pipe.STOPPED));
        stops.add(Stop.of("Open Diapason", "8", Family.PRINCIPAL, Pipe.OPEN));
        stops.add(Stop.of("Stopped Diapason", "8", Family.FLUTE, Pipe.STOPPED));
        perhaps(0.5, stops, Stop.of("Dulciana", "8", Family.STRING, Pipe.OPEN));
        stops.add(Stop.of("Principal", "4", Family.PRINCIPAL, Pipe.OPEN));
        perhaps(0.6, stops, Stop.of("Flute", "4", Family.FLUTE, Pipe.OPEN));
        perhaps(0.5, stops, Stop.of("Twelfth", "2 2/3", Family.MUTATION, Pipe.OPEN));
        stops.add(Stop.of("Fifteenth", "2", Family.PRINCIPAL, Pipe.OPEN));
        perhaps(0.7, stops, MIXTURE);
        perhaps(0.5, stops, Stop.of("Trumpet", "8", Family.CHORUS_REED, Pipe.CONICAL_REED));
        return stops;
    }

    private List<Stop> swell() {
        List<Stop> stops = new ArrayList<>();
        perhaps(0.4, stops, Stop.of("Violin Diapason", "8", Family.PRINCIPAL, Pipe.OPEN));
        stops.add(Stop.of("Lieblich Gedeckt", "8", Family.FLUTE, Pipe.STOPPED));
        stops.add(Stop.of("Salicional", "8", Family.STRING, Pipe.OPEN));
        perhaps(0.6, stops, Stop.of("Voix Celeste", "8", Family.CELESTE, Pipe.OPEN));
        stops.add(Stop.of("Gemshorn", "4", random.nextBoolean() ? Family.PRINCIPAL : Family.FLUTE, Pipe.OPEN));
        perhaps(0.5, stops, Stop.of("Lieblich Flute", "4", Family.FLUTE, Pipe.STOPPED));
        perhaps(0.7, stops, Stop.of("Fifteenth", "2", Family.PRINCIPAL, Pipe.OPEN));
        perhaps(0.6, stops, Stop.of("Oboe", "8", Family.SOLO_REED, Pipe.CONICAL_REED));
        perhaps(0.6, stops, Stop.of("Cornopean", "8", Family.CHORUS_REED, Pipe.CONICAL_REED));
        return stops;
    }

    private List<Stop> pedal() {
        List<Stop> stops = new ArrayList<>();
        stops.add(Stop.of("Bourdon", "16", Family.FLUTE, Pipe.STOPPED));
        perhaps(0.4, stops, Stop.of("Open Diapason", "16", Family.PRINCIPAL, Pipe.OPEN));
        perhaps(0.6, stops, Stop.of("Bass Flute", "8", Family.FLUTE, Pipe.STOPPED));
        perhaps(0.4, stops, Stop.of("Principal", "8", Family.PRINCIPAL, Pipe.OPEN));
        perhaps(0.3, stops, Stop.of("Trombone", "16", Family.CHORUS_REED, Pipe.CONICAL_REED));
        return stops;
    }

    private void perhaps(double chance, List<Stop> stops, Stop stop) {
        if (random.nextDouble() < chance) {
            stops.add(stop);
        }
    }
}
