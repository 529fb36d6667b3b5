package versewind.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.Action;
import versewind.organ.BoxPosition;
import versewind.organ.Coupler;
import versewind.organ.Division;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Pipe;
import versewind.organ.Pistons;
import versewind.organ.Registration;
import versewind.organ.Room;
import versewind.organ.Stop;
import versewind.organ.StopName;
import versewind.organ.SwellBox;
import versewind.plan.HandsAndFeet;
import versewind.plan.Mode;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;

/** An organ of 26 stops in a church of 6000 m3 with 3 s of reverberation, and verses on it. */
public final class TrialOrgan {

    public static final int GREAT = 0;
    public static final int SWELL = 1;
    public static final int PEDAL = 2;

    public static final Room ROOM = room(3.0, 20);

    private TrialOrgan() {}

    public static Room room(double timeS, double naveM) {
        return new Room(
                6000,
                500,
                new Room.MeasuredTimes(List.of(timeS, timeS, timeS, timeS, timeS, timeS)),
                new Room.Distances(naveM, 35, 12, 12, 3));
    }

    public static Instrument instrument(Action action) {
        return instrument(action, divisions(), ROOM);
    }

    public static Instrument instrument(Action action, List<Division> divisions, Room room) {
        return new Instrument(
                "Trial organ", "St Alban, Overwater", action, 0, divisions, couplers(), List.of(), Pistons.NONE, room);
    }

    public static List<Division> divisions() {
        return List.of(
                new Division("Great", OptionalInt.of(1), 61, Optional.empty(), great()),
                new Division("Swell", OptionalInt.of(2), 61, Optional.of(new SwellBox(0)), swell()),
                new Division("Pedal", OptionalInt.empty(), 32, Optional.empty(), pedal()));
    }

    private static List<Stop> great() {
        return List.of(
                Stop.of("Bourdon", "16", Family.FLUTE, Pipe.STOPPED),
                Stop.of("Open Diapason", "8", Family.PRINCIPAL, Pipe.OPEN),
                Stop.of("Stopped Diapason", "8", Family.FLUTE, Pipe.STOPPED),
                Stop.of("Principal", "4", Family.PRINCIPAL, Pipe.OPEN),
                Stop.of("Flute", "4", Family.FLUTE, Pipe.OPEN),
                Stop.of("Twelfth", "2 2/3", Family.MUTATION, Pipe.OPEN),
                Stop.of("Fifteenth", "2", Family.PRINCIPAL, Pipe.OPEN),
                mixture(),
                Stop.of("Trumpet", "8", Family.CHORUS_REED, Pipe.CONICAL_REED));
    }

    private static List<Stop> swell() {
        return List.of(
                Stop.of("Open Diapason", "8", Family.PRINCIPAL, Pipe.OPEN),
                Stop.of("Lieblich Gedackt", "8", Family.FLUTE, Pipe.STOPPED),
                Stop.of("Viola", "8", Family.STRING, Pipe.OPEN),
                Stop.of("Voix Celeste", "8", Family.CELESTE, Pipe.OPEN),
                Stop.of("Principal", "4", Family.PRINCIPAL, Pipe.OPEN),
                Stop.of("Flute", "4", Family.FLUTE, Pipe.OPEN),
                Stop.of("Fifteenth", "2", Family.PRINCIPAL, Pipe.OPEN),
                mixture(),
                Stop.of("Contra Fagotto", "16", Family.CHORUS_REED, Pipe.CONICAL_REED),
                Stop.of("Cornopean", "8", Family.CHORUS_REED, Pipe.CONICAL_REED),
                Stop.of("Oboe", "8", Family.SOLO_REED, Pipe.CONICAL_REED));
    }

    private static List<Stop> pedal() {
        return List.of(
                Stop.of("Open Wood", "16", Family.FLUTE, Pipe.OPEN),
                Stop.of("Bourdon", "16", Family.FLUTE, Pipe.STOPPED),
                Stop.of("Principal", "8", Family.PRINCIPAL, Pipe.OPEN),
                Stop.of("Bass Flute", "8", Family.FLUTE, Pipe.OPEN),
                Stop.of("Choral Bass", "4", Family.PRINCIPAL, Pipe.OPEN),
                Stop.of("Trombone", "16", Family.CHORUS_REED, Pipe.CONICAL_REED));
    }

    public static Stop mixture() {
        return compound("Mixture", Family.MIXTURE, 3, Optional.empty());
    }

    public static Stop compound(String name, Family family, int ranks, Optional<Footage> footage) {
        return new Stop(
                name,
                footage,
                family,
                family.usualPipe(),
                ranks,
                List.of(),
                0,
                Stop.Enclosure.AS_ITS_DIVISION,
                Optional.empty(),
                "");
    }

    private static List<Coupler> couplers() {
        return List.of(
                new Coupler("Swell to Great", "Swell", "Great", Coupler.Kind.UNISON),
                new Coupler("Swell to Pedal", "Swell", "Pedal", Coupler.Kind.UNISON),
                new Coupler("Great to Pedal", "Great", "Pedal", Coupler.Kind.UNISON),
                new Coupler("Swell Octave", "Swell", "Swell", Coupler.Kind.OCTAVE),
                new Coupler("Swell Sub-octave", "Swell", "Swell", Coupler.Kind.SUB_OCTAVE));
    }

    /** Draws stops written "Great: Open Diapason 8" and couplers by their names; a box as "Swell closed". */
    public static Registration draw(Instrument organ, String... knobs) {
        List<Integer> stops = new ArrayList<>();
        List<Integer> couplers = new ArrayList<>();
        Registration boxes = Registration.silent(organ);
        for (String knob : knobs) {
            int colon = knob.indexOf(':');
            if (colon >= 0) {
                StopName name = new StopName(
                        knob.substring(0, colon), knob.substring(colon + 1).strip());
                stops.add(organ.stop(name).orElseThrow());
            } else if (organ.coupler(knob).isPresent()) {
                couplers.add(organ.coupler(knob).getAsInt());
            } else {
                int space = knob.indexOf(' ');
                boxes = boxes.withBox(
                        organ.division(knob.substring(0, space)).orElseThrow(),
                        BoxPosition.valueOf(knob.substring(space + 1).toUpperCase(Locale.ROOT)));
            }
        }
        return boxes.withStops(indices(stops)).withCouplers(indices(couplers));
    }

    private static IndexSet indices(List<Integer> list) {
        return IndexSet.of(
                IntStream.of(list.stream().mapToInt(Integer::intValue).toArray()));
    }

    public static String[] and(String[] some, String... more) {
        return Stream.concat(Stream.of(some), Stream.of(more)).toArray(String[]::new);
    }

    public static Verse verse(Mode mode, Singing singing, HandsAndFeet hands, Registration registration) {
        return new Verse(VerseKind.VERSE, "V1", mode, singing, OptionalInt.empty(), hands, registration, "", "");
    }
}
