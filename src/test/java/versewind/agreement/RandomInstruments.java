package versewind.agreement;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
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
import versewind.organ.StopName;
import versewind.organ.SwellBox;
import versewind.organ.Tremulant;

/**
 * Church organs of one, two and three manuals, drawn at random, the same for the same seed: choruses with a gap now and
 * then, an enclosed Swell, borrowed stops, a pedal of 1 to 10 stops, octave couplers, generals, divisionals or none, in
 * churches of every size. What such an organ has, and how often: common practice, no source.
 */
public final class RandomInstruments {

    private static final int TWO_MANUALS = 24;
    private static final int ONE_MANUAL = 8;
    private static final int THREE_MANUALS = 8;

    private final Random random;
    private final List<Division> divisions = new ArrayList<>();
    private final List<Coupler> couplers = new ArrayList<>();
    private final List<Tremulant> tremulants = new ArrayList<>();
    private final boolean isGerman;

    private RandomInstruments(long seed) {
        random = new Random(seed);
        random.nextLong(); // the first numbers of neighbouring seeds are alike
        isGerman = chance(0.25);
    }

    /** Every organ of the measure, those of one manual first. */
    public static List<Instrument> all() {
        return Stream.of(of(1, ONE_MANUAL), of(2, TWO_MANUALS), of(3, THREE_MANUALS))
                .flatMap(List::stream)
                .toList();
    }

    private static List<Instrument> of(int manuals, int count) {
        return LongStream.rangeClosed(1, count)
                .mapToObj(seed -> ofSeed(manuals, seed))
                .toList();
    }

    /** An organ of so many manuals, 1 to 3. */
    public static Instrument ofSeed(int manuals, long seed) {
        return new RandomInstruments(1000L * manuals + seed).organ(manuals, "random-" + manuals + "-" + seed);
    }

    private Instrument organ(int manuals, String name) {
        Action action = chance(0.5) ? Action.ELECTRIC : Action.MECHANICAL;
        String great = say("Great", "Hauptwerk");
        String swell = say("Swell", "Schwellwerk");
        String choir = say("Choir", "Positiv");
        boolean isOneEnclosed = manuals == 1 && chance(0.5);
        addManual(great, manuals == 3 ? 2 : 1, isOneEnclosed, greatStops(manuals));
        if (manuals > 1) {
            addManual(swell, manuals == 3 ? 3 : 2, true, swellStops());
            addTremulant(swell);
        }
        if (manuals > 2) {
            addManual(choir, 1, chance(0.4), choirStops());
        }
        if (manuals > 1 || chance(0.8)) {
            divisions.add(new Division("Pedal", OptionalInt.empty(), 30, Optional.empty(), pedalStops(manuals)));
        }
        addCouplers(action);
        return new Instrument(
                name, "Nowhere", action, 0, divisions, couplers, tremulants, pistons(manuals, action), room());
    }

    private void addManual(String name, int manual, boolean isEnclosed, List<Stop> stops) {
        Optional<SwellBox> box = isEnclosed ? Optional.of(new SwellBox(0)) : Optional.empty();
        divisions.add(new Division(name, OptionalInt.of(manual), 58, box, stops));
    }

    private void addTremulant(String division) {
        if (chance(0.6)) {
            tremulants.add(new Tremulant(say("Tremulant", "Tremulant ") + "of the " + division, division));
        }
    }

    private List<Stop> greatStops(int manuals) {
        List<Stop> stops = new ArrayList<>();
        perhaps(manuals == 1 ? 0.05 : 0.35, stops, flute(say("Bourdon", "Bordun"), "16", Pipe.STOPPED));
        stops.add(principal(say("Open Diapason", "Prinzipal"), "8"));
        perhaps(
                manuals == 3 ? 0.5 : 0.15,
                stops,
                trimmed(principal(say("Small Diapason", "Geigenprinzipal"), "8"), -2));
        stops.add(flute(say("Stopped Diapason", "Gedackt"), "8", Pipe.STOPPED));
        perhaps(0.4, stops, trimmed(string(say("Dulciana", "Salizional"), "8"), -3));
        perhaps(manuals == 1 ? 0.85 : 0.95, stops, principal(say("Principal", "Oktave"), "4"));
        perhaps(0.6, stops, flute(say("Flute", "Rohrflöte"), "4", Pipe.OPEN));
        if (chance(manuals == 1 ? 0.6 : 0.9)) {
            perhaps(0.5, stops, mutation(say("Twelfth", "Quinte"), "2 2/3"));
            stops.add(principal(say("Fifteenth", "Superoktave"), "2"));
        }
        perhaps(manuals == 1 ? 0.3 : 0.7, stops, mixture(say("Mixture", "Mixtur"), 0));
        perhaps(manuals == 3 ? 0.4 : 0.05, stops, mixture(say("Sharp Mixture", "Zimbel"), 12));
        if (chance(manuals == 1 ? 0.1 : 0.6)) {
            perhaps(manuals == 3 ? 0.4 : 0, stops, reed(say("Double Trumpet", "Fagott"), "16"));
            stops.add(reed(say("Trumpet", "Trompete"), "8"));
            perhaps(manuals == 3 ? 0.6 : 0.1, stops, reed(say("Clarion", "Clairon"), "4"));
        }
        return stops;
    }

    private List<Stop> swellStops() {
        List<Stop> stops = new ArrayList<>();
        perhaps(0.2, stops, flute(say("Double Flute", "Bordun"), "16", Pipe.STOPPED));
        perhaps(0.5, stops, trimmed(principal(say("Violin Diapason", "Geigenprinzipal"), "8"), -1));
        stops.add(flute(say("Lieblich Gedackt", "Rohrflöte"), "8", Pipe.STOPPED));
        stops.add(trimmed(string(say("Salicional", "Gamba"), "8"), -2));
        perhaps(0.5, stops, trimmed(Stop.of(say("Voix Celeste", "Schwebung"), "8", Family.CELESTE, Pipe.OPEN), -3));
        perhaps(0.7, stops, principal(say("Gemshorn", "Oktave"), "4"));
        perhaps(0.6, stops, flute(say("Lieblich Flute", "Spitzflöte"), "4", Pipe.OPEN));
        perhaps(0.25, stops, mutation(say("Nazard", "Nasat"), "2 2/3"));
        perhaps(
                0.7,
                stops,
                chance(0.7) ? principal(say("Fifteenth", "Oktave"), "2") : flute("Piccolo", "2", Pipe.OPEN));
        perhaps(0.2, stops, mutation(say("Tierce", "Terz"), "1 3/5"));
        perhaps(0.5, stops, mixture(say("Mixture", "Scharff"), 7));
        perhaps(0.35, stops, reed(say("Contra Fagotto", "Fagott"), "16"));
        if (chance(0.6)) {
            stops.add(reed(say("Cornopean", "Trompete"), "8"));
            perhaps(0.3, stops, reed(say("Clarion", "Clairon"), "4"));
        }
        perhaps(0.6, stops, Stop.of("Oboe", "8", Family.SOLO_REED, Pipe.CONICAL_REED));
        perhaps(0.1, stops, Stop.of("Vox Humana", "8", Family.SOLO_REED, Pipe.CYLINDRICAL_REED));
        return stops;
    }

    private List<Stop> choirStops() {
        List<Stop> stops = new ArrayList<>();
        stops.add(flute(say("Claribel Flute", "Gedackt"), "8", Pipe.OPEN));
        perhaps(0.7, stops, trimmed(string(say("Dulciana", "Quintade"), "8"), -3));
        perhaps(0.4, stops, trimmed(Stop.of("Unda Maris", "8", Family.CELESTE, Pipe.OPEN), -4));
        perhaps(0.7, stops, trimmed(principal(say("Gemshorn", "Prinzipal"), "4"), -1));
        perhaps(0.7, stops, flute(say("Stopped Flute", "Blockflöte"), "4", Pipe.STOPPED));
        perhaps(0.5, stops, mutation(say("Nazard", "Nasat"), "2 2/3"));
        perhaps(0.7, stops, flute(say("Flautino", "Waldflöte"), "2", Pipe.OPEN));
        perhaps(0.4, stops, mutation(say("Larigot", "Sifflöte"), "1 1/3"));
        perhaps(0.3, stops, mixture(say("Cymbal", "Scharff"), 12));
        perhaps(0.6, stops, Stop.of(say("Clarinet", "Krummhorn"), "8", Family.SOLO_REED, Pipe.CYLINDRICAL_REED));
        perhaps(0.2, stops, trimmed(reed("Tuba", "8"), 5));
        return stops;
    }

    /** 1 to 10 stops; some of them borrowed from the pedal itself, or out of a box on the manuals. */
    private List<Stop> pedalStops(int manuals) {
        List<Stop> stops = new ArrayList<>();
        Stop bourdon = flute(say("Bourdon", "Subbass"), "16", Pipe.STOPPED);
        stops.add(bourdon);
        if (manuals == 1 && chance(0.7)) {
            return stops;
        }
        perhaps(0.3, stops, trimmed(flute(say("Open Wood", "Kontrabass"), "16", Pipe.OPEN), 2));
        perhaps(0.4, stops, principal(say("Open Metal", "Prinzipalbass"), "16"));
        borrowed(0.3, stops, say("Echo Bourdon", "Zartbass"), "16", Family.FLUTE, "8");
        perhaps(0.4, stops, principal(say("Octave", "Oktavbass"), "8"));
        if (chance(0.6)) {
            stops.add(flute(say("Bass Flute", "Gedacktbass"), "8", Pipe.STOPPED)
                    .borrowing(new StopName("Pedal", bourdon.label())));
        }
        perhaps(0.3, stops, principal(say("Fifteenth", "Choralbass"), "4"));
        perhaps(manuals == 3 ? 0.2 : 0.05, stops, flute("Double Open", "32", Pipe.OPEN));
        perhaps(0.35, stops, trimmed(reed(say("Trombone", "Posaune"), "16"), 2));
        borrowed(0.25, stops, say("Fagotto", "Fagottbass"), "16", Family.CHORUS_REED, "16");
        perhaps(0.15, stops, reed(say("Trumpet", "Trompete"), "8"));
        return stops;
    }

    /** A stop that plays the first rank of an enclosed division of a family and pitch, if there is one. */
    private void borrowed(double chance, List<Stop> stops, String name, String feet, Family family, String lenderFeet) {
        Optional<Footage> pitch = Footage.parse(lenderFeet);
        Optional<StopName> lender = divisions.stream()
                .filter(Division::isEnclosed)
                .flatMap(division -> division.stops().stream()
                        .filter(stop ->
                                stop.family() == family && stop.footage().equals(pitch))
                        .map(stop -> new StopName(division.name(), stop.label())))
                .findFirst();
        if (chance(chance) && lender.isPresent()) {
            Pipe pipe = family.isReed() ? Pipe.CONICAL_REED : Pipe.STOPPED;
            stops.add(Stop.of(name, feet, family, pipe).borrowing(lender.get()));
        }
    }

    private void addCouplers(Action action) {
        List<Division> manuals =
                divisions.stream().filter(division -> !division.isPedal()).toList();
        Optional<Division> pedal = divisions.stream().filter(Division::isPedal).findFirst();
        String great = manuals.get(0).name();
        for (Division other : manuals.subList(1, manuals.size())) {
            add(other.name(), great, Coupler.Kind.UNISON);
        }
        if (manuals.size() > 2 && chance(0.8)) {
            add(manuals.get(1).name(), manuals.get(2).name(), Coupler.Kind.UNISON);
        }
        for (Division manual : manuals) {
            if (pedal.isPresent() && (manual.name().equals(great) || chance(0.85))) {
                add(manual.name(), "Pedal", Coupler.Kind.UNISON);
            }
        }
        if (manuals.size() > 1 && chance(action == Action.ELECTRIC ? 0.6 : 0.2)) {
            String swell = manuals.get(1).name();
            add(swell, swell, Coupler.Kind.OCTAVE);
            add(swell, swell, Coupler.Kind.SUB_OCTAVE);
            if (chance(0.5)) {
                add(swell, swell, Coupler.Kind.UNISON_OFF);
            }
            if (chance(0.3)) {
                add(swell, great, Coupler.Kind.OCTAVE);
            }
        }
    }

    private void add(String source, String keyboard, Coupler.Kind kind) {
        couplers.add(new Coupler(kind.of(Coupler.joined(source, keyboard)), source, keyboard, kind));
    }

    private Pistons pistons(int manuals, Action action) {
        Map<String, Integer> divisionals = new LinkedHashMap<>();
        int kind = random.nextInt(4);
        if ((action == Action.MECHANICAL && kind != 0) || manuals == 1 || kind == 1) {
            return Pistons.NONE;
        }
        if (kind != 2) {
            divisions.forEach(division -> divisionals.put(division.name(), 3 + random.nextInt(3)));
        }
        int generals = kind == 3 ? 0 : 4 + 2 * random.nextInt(3);
        return new Pistons(generals, divisionals, 1 + random.nextInt(8));
    }

    private Room room() {
        double volumeM3 = 800 * Math.exp(2.5 * random.nextDouble());
        double timeS = 0.9 + 0.35 * Math.log(volumeM3 / 800) + 1.4 * random.nextDouble();
        double lengthM = Math.cbrt(volumeM3) * (1 + 0.4 * random.nextDouble());
        return new Room(
                volumeM3,
                (int) (80 + volumeM3 / 18),
                new Room.MeasuredTimes(IntStream.of(11, 11, 10, 10, 9, 7)
                        .mapToObj(tenths -> timeS * tenths / 10)
                        .toList()),
                new Room.Distances(
                        lengthM * (0.5 + 0.3 * random.nextDouble()),
                        lengthM * (1.0 + 0.4 * random.nextDouble()),
                        4 + random.nextInt(8),
                        4 + lengthM * 0.4 * random.nextDouble(),
                        1 + random.nextInt(4)));
    }

    private static Stop principal(String name, String feet) {
        return Stop.of(name, feet, Family.PRINCIPAL, Pipe.OPEN);
    }

    private static Stop flute(String name, String feet, Pipe pipe) {
        return Stop.of(name, feet, Family.FLUTE, pipe);
    }

    private static Stop string(String name, String feet) {
        return Stop.of(name, feet, Family.STRING, Pipe.OPEN);
    }

    private static Stop mutation(String name, String feet) {
        return Stop.of(name, feet, Family.MUTATION, Pipe.OPEN);
    }

    private static Stop reed(String name, String feet) {
        return Stop.of(name, feet, Family.CHORUS_REED, Pipe.CONICAL_REED);
    }

    private static Stop trimmed(Stop stop, double trimDb) {
        return stop.withTrimDb(trimDb);
    }

    /** Three ranks that break back at every octave; breaks as common practice has them, no source. */
    private static Stop mixture(String name, int higherSemitones) {
        List<Footage> series = List.of(
                Footage.of(4),
                new Footage(8, 3),
                Footage.of(2),
                new Footage(4, 3),
                Footage.of(1),
                new Footage(2, 3),
                new Footage(1, 2));
        int higher = higherSemitones / 6;
        List<MixtureBreak> breaks = new ArrayList<>();
        for (int octave = 0; octave < 4; octave++) {
            int from = Math.max(0, Math.min(4, 3 - octave + higher));
            breaks.add(new MixtureBreak(Division.BOTTOM_KEY + 12 * octave, series.subList(from, from + 3)));
        }
        return new Stop(
                name,
                Optional.of(breaks.get(0).pitches().get(0)),
                Family.MIXTURE,
                Pipe.OPEN,
                3,
                breaks,
                0,
                Stop.Enclosure.AS_ITS_DIVISION,
                Optional.empty(),
                "");
    }

    private String say(String english, String german) {
        return isGerman ? german : english;
    }

    private boolean chance(double chance) {
        return random.nextDouble() < chance;
    }

    private void perhaps(double chance, List<Stop> stops, Stop stop) {
        if (chance(chance)) {
            stops.add(stop);
        }
    }
}
