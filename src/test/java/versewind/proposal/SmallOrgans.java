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
import versewind.organ.Instrument;
import versewind.organ.Pipe;
import versewind.organ.Pistons;
import versewind.organ.Room;
import versewind.organ.Stop;
import versewind.organ.SwellBox;

/** Small organs drawn at random, the same for the same seed. */
final class SmallOrgans {

    private static final List<Stop> MANUAL = List.of(
            Stop.of("Diapason", "8", Family.PRINCIPAL, Pipe.OPEN),
            Stop.of("Flute", "8", Family.FLUTE, Pipe.STOPPED),
            Stop.of("Gamba", "8", Family.STRING, Pipe.OPEN),
            Stop.of("Principal", "4", Family.PRINCIPAL, Pipe.OPEN),
            Stop.of("Open Flute", "4", Family.FLUTE, Pipe.OPEN),
            Stop.of("Twelfth", "2 2/3", Family.MUTATION, Pipe.OPEN),
            Stop.of("Fifteenth", "2", Family.PRINCIPAL, Pipe.OPEN),
            Stop.of("Bourdon", "16", Family.FLUTE, Pipe.STOPPED),
            Stop.of("Trumpet", "8", Family.CHORUS_REED, Pipe.CONICAL_REED),
            Stop.of("Oboe", "8", Family.SOLO_REED, Pipe.CONICAL_REED),
            Stop.of("Celeste", "8", Family.CELESTE, Pipe.OPEN),
            Stop.of("Tierce", "1 3/5", Family.MUTATION, Pipe.OPEN),
            Stop.of("Larigot", "1 1/3", Family.MUTATION, Pipe.OPEN));

    private static final List<Stop> PEDAL = List.of(
            Stop.of("Bourdon", "16", Family.FLUTE, Pipe.STOPPED),
            Stop.of("Principal", "8", Family.PRINCIPAL, Pipe.OPEN),
            Stop.of("Trombone", "16", Family.CHORUS_REED, Pipe.CONICAL_REED));

    private final Random random;

    SmallOrgans(long seed) {
        random = new Random(seed);
    }

    /** One manual and pedal, no box. */
    Instrument ofOneManual(int manual, int pedal) {
        List<Division> divisions = List.of(
                new Division("Manual", OptionalInt.of(1), 58, Optional.empty(), some(MANUAL, manual)),
                new Division("Pedal", OptionalInt.empty(), 30, Optional.empty(), some(PEDAL, pedal)));
        return organ(divisions, List.of(new Coupler("Manual to Pedal", "Manual", "Pedal", Coupler.Kind.UNISON)));
    }

    /** Two manuals, the second in a box, and pedal. */
    Instrument ofTwoManuals(int great, int swell, int pedal) {
        List<Division> divisions = List.of(
                new Division("Great", OptionalInt.of(1), 58, Optional.empty(), some(MANUAL, great)),
                new Division("Swell", OptionalInt.of(2), 58, Optional.of(new SwellBox(0)), some(MANUAL, swell)),
                new Division("Pedal", OptionalInt.empty(), 30, Optional.empty(), some(PEDAL, pedal)));
        return organ(
                divisions,
                List.of(
                        new Coupler("Swell to Great", "Swell", "Great", Coupler.Kind.UNISON),
                        new Coupler("Great to Pedal", "Great", "Pedal", Coupler.Kind.UNISON)));
    }

    /** Two manuals and pedal, with couplers of every kind. */
    Instrument ofManyCouplers(Action action) {
        List<Division> divisions = List.of(
                new Division("Great", OptionalInt.of(1), 58, Optional.empty(), some(MANUAL, 3)),
                new Division("Swell", OptionalInt.of(2), 58, Optional.of(new SwellBox(0)), some(MANUAL, 2)),
                new Division("Pedal", OptionalInt.empty(), 30, Optional.empty(), some(PEDAL, 1)));
        return organ(
                divisions,
                List.of(
                        new Coupler("Swell to Great", "Swell", "Great", Coupler.Kind.UNISON),
                        new Coupler("Great to Pedal", "Great", "Pedal", Coupler.Kind.UNISON),
                        new Coupler("Swell Octave to Great", "Swell", "Great", Coupler.Kind.OCTAVE),
                        new Coupler("Swell Sub Octave", "Swell", "Swell", Coupler.Kind.SUB_OCTAVE),
                        new Coupler("Great Unison Off", "Great", "Great", Coupler.Kind.UNISON_OFF)),
                action);
    }

    private List<Stop> some(List<Stop> from, int count) {
        List<Stop> left = new ArrayList<>(from);
        List<Stop> chosen = new ArrayList<>();
        while (chosen.size() < count) {
            chosen.add(left.remove(random.nextInt(left.size())));
        }
        return chosen;
    }

    private static Instrument organ(List<Division> divisions, List<Coupler> couplers) {
        return organ(divisions, couplers, Action.ELECTRIC);
    }

    private static Instrument organ(List<Division> divisions, List<Coupler> couplers, Action action) {
        Room room = new Room(
                2500,
                200,
                new Room.MeasuredTimes(List.of(2.0, 2.0, 2.0, 2.0, 2.0, 2.0)),
                new Room.Distances(12, 20, 8, 8, 3));
        return new Instrument(
                "A small organ", "Nowhere", action, 0, divisions, couplers, List.of(), Pistons.NONE, room);
    }
}
