package versewind.schema;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.acoustics.AbsorptionTable;
import versewind.organ.Action;
import versewind.organ.BoxPosition;
import versewind.organ.Coupler;
import versewind.organ.Division;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.KeyName;
import versewind.organ.MixtureBreak;
import versewind.organ.Pipe;
import versewind.organ.Pistons;
import versewind.organ.Registration;
import versewind.organ.Room;
import versewind.organ.Stop;
import versewind.organ.StopName;
import versewind.organ.SwellBox;
import versewind.organ.Tremulant;
import versewind.plan.Feedback;
import versewind.plan.HandsAndFeet;
import versewind.plan.HeardAs;
import versewind.plan.Hymn;
import versewind.plan.Locks;
import versewind.plan.Mood;
import versewind.plan.Occasion;
import versewind.plan.Plan;
import versewind.plan.Played;
import versewind.plan.Player;
import versewind.plan.ServiceHeading;
import versewind.plan.Share;
import versewind.plan.Silenced;
import versewind.plan.Singing;
import versewind.plan.Sung;
import versewind.plan.SungBy;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.rules.Rule;

/** Instruments and plans drawn by lot from a seed, with everything the formats can hold. */
public final class RandomWorks {
    private static final List<String> MATERIALS = AbsorptionTable.load().surfaces();
    private static final List<String> FEET = List.of(
            "64", "32", "16", "10 2/3", "8", "5 1/3", "4", "3 1/5", "2 2/3", "2", "1 3/5", "1 1/3", "1 1/7", "1", "2/3",
            "1/2", "1/8");
    private static final List<String> PIECES = List.of(
            "Diapason",
            "Flöte",
            "Récit",
            "\"",
            "\\",
            "/",
            "\n",
            "\t",
            "\r",
            "\u0001",
            "\u001b",
            "\u007f",
            "\u2028",
            "{",
            "}",
            "[",
            ",",
            ":",
            "ſ",
            "管",
            "\ud83c\udfb9",
            " ",
            "é",
            "e\u0301",
            "'",
            "null",
            "8");

    private final Random random;

    public RandomWorks(long seed) {
        this.random = new Random(seed);
    }

    private int below(int bound) {
        return random.nextInt(bound);
    }

    private <T> T oneOf(List<T> list) {
        return list.get(below(list.size()));
    }

    private boolean chance(int percent) {
        return below(100) < percent;
    }

    private double tenths(double least, double most) {
        return Math.round((least + random.nextDouble() * (most - least)) * 10) / 10.0;
    }

    private double trimDb() {
        return chance(70) ? 0 : tenths(-20, 20) + 0.0;
    }

    private String text() {
        StringBuilder text = new StringBuilder();
        for (int i = below(6); i > 0; i--) {
            text.append(oneOf(PIECES));
        }
        return text.toString();
    }

    private String name(Set<String> taken) {
        String name = ("N" + text()).replace(": ", "");
        while (!taken.add(name)) {
            name = name + below(10);
        }
        return name;
    }

    public Instrument instrument() {
        List<Division> divisions = divisions();
        List<String> names = divisions.stream().map(Division::name).toList();
        Set<String> couplerNames = new HashSet<>();
        List<Coupler> couplers = IntStream.range(0, below(8))
                .mapToObj(i -> coupler(name(couplerNames), names))
                .toList();
        Set<String> tremulantNames = new HashSet<>();
        List<Tremulant> tremulants = IntStream.range(0, below(3))
                .mapToObj(i -> new Tremulant(name(tremulantNames), oneOf(names)))
                .toList();
        return new Instrument(
                "O" + text(),
                text(),
                oneOf(List.of(Action.values())),
                trimDb(),
                divisions,
                couplers,
                tremulants,
                pistons(names),
                room());
    }

    private List<Division> divisions() {
        int count = 1 + below(5);
        int pedal = count > 1 && chance(80) ? below(count) : -1;
        Set<String> names = new HashSet<>();
        List<StopName> lenders = new ArrayList<>();
        List<Division> divisions = new ArrayList<>();
        for (int d = 0; d < count; d++) {
            boolean feet = d == pedal;
            String name = name(names);
            divisions.add(new Division(
                    name,
                    feet ? OptionalInt.empty() : OptionalInt.of(1 + below(7)),
                    feet ? 12 + below(26) : 24 + below(50),
                    chance(40) ? Optional.of(new SwellBox(trimDb())) : Optional.empty(),
                    stops(name, lenders)));
        }
        return divisions;
    }

    private List<Stop> stops(String division, List<StopName> lenders) {
        List<Stop> stops = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (int i = below(12); i > 0; i--) {
            Stop stop = stop(name(names), lenders);
            stops.add(stop);
            if (stop.ranks() == 1) {
                lenders.add(new StopName(division, stop.label()));
            }
        }
        return stops;
    }

    private Stop stop(String name, List<StopName> lenders) {
        Family family = oneOf(List.of(Family.values()));
        List<Pipe> pipes = List.of(Pipe.values()).stream()
                .filter(pipe -> pipe.isReed() == family.isReed())
                .toList();
        boolean several = family.isCompound() || family == Family.CELESTE;
        int ranks = several ? 1 + below(12) : 1;
        boolean borrows = ranks == 1 && !lenders.isEmpty() && chance(15);
        return new Stop(
                name,
                family.isCompound() && chance(50) ? Optional.empty() : Footage.parse(oneOf(FEET)),
                family,
                chance(70) ? family.usualPipe() : oneOf(pipes),
                ranks,
                family.isCompound() && chance(70) ? composition(ranks) : List.of(),
                borrows ? 0 : trimDb(),
                oneOf(List.of(Stop.Enclosure.values())),
                borrows ? Optional.of(oneOf(lenders)) : Optional.empty(),
                chance(80) ? "" : text());
    }

    private List<MixtureBreak> composition(int ranks) {
        return IntStream.rangeClosed(Division.BOTTOM_KEY, KeyName.HIGHEST)
                .filter(key -> chance(5))
                .mapToObj(key -> new MixtureBreak(
                        key,
                        IntStream.range(0, ranks)
                                .mapToObj(i -> Footage.parse(oneOf(FEET)).orElseThrow())
                                .toList()))
                .toList();
    }

    private Coupler coupler(String name, List<String> divisions) {
        String source = oneOf(divisions);
        String keyboard = oneOf(divisions);
        return source.equals(keyboard)
                ? new Coupler(
                        name,
                        source,
                        keyboard,
                        oneOf(List.of(Coupler.Kind.OCTAVE, Coupler.Kind.SUB_OCTAVE, Coupler.Kind.UNISON_OFF)))
                : new Coupler(
                        name,
                        source,
                        keyboard,
                        oneOf(List.of(Coupler.Kind.OCTAVE, Coupler.Kind.SUB_OCTAVE, Coupler.Kind.UNISON)));
    }

    private Pistons pistons(List<String> divisions) {
        Map<String, Integer> divisionals = new LinkedHashMap<>();
        divisions.stream().filter(d -> chance(30)).forEach(d -> divisionals.put(d, 1 + below(10)));
        int generals = below(12);
        return generals == 0 && divisionals.isEmpty()
                ? Pistons.NONE
                : new Pistons(generals, divisionals, 1 + below(1000));
    }

    private Room room() {
        Room.Surfaces surfaces = new Room.Surfaces(IntStream.rangeClosed(0, below(5))
                .mapToObj(i -> new Room.Surface(oneOf(MATERIALS), 100_000 + random.nextDouble() * 899_999))
                .toList());
        SortedMap<Integer, Double> times = new TreeMap<>();
        Room.OCTAVES_HZ.stream().filter(octave -> chance(60)).forEach(octave -> times.put(octave, tenths(1, 20)));
        Room.Reverberation reverberation = times.isEmpty()
                ? surfaces
                : new Room.MeasuredTimes(times, chance(50) ? Optional.of(surfaces) : Optional.empty());
        return new Room(
                50 + random.nextDouble() * 499_950,
                below(50_001),
                reverberation,
                new Room.Distances(
                        tenths(0.5, 300), tenths(0.5, 300), tenths(0.5, 300), tenths(0.5, 300), tenths(0.5, 300)));
    }

    public Plan plan(Instrument instrument) {
        ServiceHeading heading = new ServiceHeading(
                text(),
                chance(70) ? Optional.of(LocalDate.of(below(10_000), 1 + below(12), 1 + below(28))) : Optional.empty(),
                chance(30) ? Optional.of(oneOf(List.of(Occasion.values()))) : Optional.empty(),
                1 + below(50_000),
                1 + below(10),
                text(),
                chance(50) ? ServiceHeading.USUAL_MOVE_S : tenths(0.1, 5),
                oneOf(List.of(Player.values())));
        return new Plan(
                heading,
                "organ-" + below(100),
                IntStream.range(0, below(5)).mapToObj(i -> hymn(instrument)).toList());
    }

    private Hymn hymn(Instrument instrument) {
        return new Hymn(
                text(),
                text(),
                text(),
                text(),
                text(),
                chance(50) ? OptionalInt.of(20 + below(281)) : OptionalInt.empty(),
                text(),
                IntStream.range(0, below(6)).mapToObj(i -> verse(instrument)).toList());
    }

    private Verse verse(Instrument instrument) {
        return new Verse(
                oneOf(List.of(VerseKind.values())),
                text(),
                chance(20),
                new Sung(
                        oneOf(List.of(SungBy.values())),
                        oneOf(List.of(Singing.values())),
                        chance(30) ? OptionalInt.of(1 + below(50_000)) : OptionalInt.empty(),
                        new Share(chance(30) ? OptionalInt.of(1 + below(10)) : OptionalInt.empty(), 8)),
                new Played(
                        new HandsAndFeet(
                                oneOf(List.of(HandsAndFeet.Layout.values())),
                                oneOf(instrument.manualDivisions()),
                                oneOf(instrument.manualDivisions())),
                        registration(instrument)),
                text(),
                text(),
                oneOf(List.of(Mood.values())),
                locks(instrument.stops().size()),
                Stream.of(Rule.values())
                        .filter(rule -> chance(10))
                        .map(rule -> new Silenced(rule.word(), text()))
                        .toList(),
                chance(30)
                        ? Optional.of(new Feedback(
                                oneOf(List.of(HeardAs.values())),
                                1 + below(50_000),
                                chance(50) ? Optional.empty() : Optional.of(registration(instrument))))
                        : Optional.empty());
    }

    private Locks locks(int stops) {
        IndexSet always = chance(30) ? some(stops) : IndexSet.EMPTY;
        return new Locks(
                always, chance(30) ? some(stops).minus(always) : IndexSet.EMPTY, oneOf(List.of(Locks.Kept.values())));
    }

    private Registration registration(Instrument instrument) {
        List<BoxPosition> boxes = instrument.divisions().stream()
                .map(division -> division.isEnclosed() ? oneOf(List.of(BoxPosition.values())) : BoxPosition.OPEN)
                .toList();
        return new Registration(
                some(instrument.stops().size()),
                some(instrument.couplers().size()),
                some(instrument.tremulants().size()),
                boxes);
    }

    private IndexSet some(int size) {
        return IndexSet.of(IntStream.range(0, size).filter(i -> chance(40)));
    }
}
