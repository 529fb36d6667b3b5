package versewind.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.Coupler;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Pipe;
import versewind.organ.Registration;
import versewind.organ.Stop;
import versewind.plan.HandsAndFeet;
import versewind.sound.OrganSound;

/** The facts of an instrument that the rules and a search ask for again and again, worked out once. */
public final class OrganFacts {

    /** Orders of building up that are kept. */
    private static final int MOST_LINES = 256;

    /** Stands for an organ without a pedal. */
    public static final int NO_PEDAL = -1;

    private static final int OPEN_WEIGHT = 2;

    /** Stands for a stop without a pitch of its own. */
    static final int NO_PITCH = Integer.MIN_VALUE;

    /** Harmonic of the 2 ft; what stands above it is higher. */
    private static final int TWO_FEET = 4;

    /** Harmonics of thirds are multiples of this. */
    private static final int THIRDS = 5;

    private final Instrument organ;
    private final StopClass[] layer;
    private final int[] home;
    private final int[] rank;
    private final int[] semitones;
    private final Map<Integer, List<Integer>> ripieno = new HashMap<>();
    private final List<List<Integer>> stopsOf;
    private final List<IndexSet> allOf;
    private final List<IndexSet> borrowedFrom;
    private final List<IndexSet> ofClass;
    private final IndexSet bigReeds;
    private final boolean[] forSolos;
    private final boolean[] fonds;
    private final int[] manual;
    private final int[] source;
    private final int[] keyboard;
    private final int pedal;
    private final List<Integer> keyboards;
    private final List<Integer> manuals;
    private final IntToDoubleFunction levelOfStop;
    private volatile double[] levelsDb = {};
    private final Map<List<Object>, List<BuildingLine.Addition>> lines = new HashMap<>();

    /** The facts of an instrument, with how loud each stop is by itself in its room. */
    public static OrganFacts of(OrganSound sound) {
        return sound.derived(OrganFacts.class, known -> new OrganFacts(known.organ(), stop -> levelDb(known, stop)));
    }

    private static double levelDb(OrganSound sound, int stop) {
        Instrument organ = sound.organ();
        int division = organ.stops().get(stop).division();
        HandsAndFeet hands = organ.divisions().get(division).isPedal()
                ? HandsAndFeet.on(HandsAndFeet.Layout.FOUR_PARTS, organ.mainDivision())
                : HandsAndFeet.on(HandsAndFeet.Layout.MANUALS_ONLY, division);
        return sound.levelDba(Registration.silent(organ).withStops(IndexSet.of(stop)), hands);
    }

    /**
     * Reads an instrument.
     *
     * @param organ the instrument
     * @param levelOfStop how loud each stop is by itself, in dB(A); only the order matters. Asked when it is needed
     */
    private OrganFacts(Instrument organ, IntToDoubleFunction levelOfStop) {
        this.organ = organ;
        this.levelOfStop = levelOfStop;
        int stops = organ.stops().size();
        manual = organ.divisions().stream()
                .mapToInt(division -> division.manual().orElse(NO_PEDAL))
                .toArray();
        home = organ.stops().stream().mapToInt(Instrument.Knob::division).toArray();
        layer = new StopClass[stops];
        rank = new int[stops];
        semitones = new int[stops];
        for (int i = 0; i < stops; i++) {
            layer[i] = manual[home[i]] == NO_PEDAL ? StopClass.onPedal(stop(i)) : StopClass.onManual(stop(i));
            rank[i] = organ.rankOf(i);
            semitones[i] = semitones(stop(i));
        }
        manuals = List.copyOf(organ.manualDivisions());
        readRipieno();
        stopsOf = IntStream.range(0, manual.length)
                .mapToObj(division ->
                        where(stop -> home[stop] == division).stream().boxed().toList())
                .toList();
        allOf = IntStream.range(0, manual.length)
                .mapToObj(division -> where(stop -> home[stop] == division))
                .toList();
        borrowedFrom = IntStream.range(0, manual.length)
                .mapToObj(division -> where(stop -> homeOfPipes(stop) == division && home[stop] != division))
                .toList();
        forSolos = new boolean[manual.length];
        for (int division = 0; division < forSolos.length; division++) {
            forSolos[division] =
                    manualCount() > 2 && stopsOf.get(division).stream().noneMatch(this::isOfChorus);
        }
        ofClass = Stream.of(StopClass.values())
                .map(each -> where(stop -> layer[stop] == each))
                .toList();
        bigReeds = where(stop -> layer[stop].isChorusReed() && (forSolos[home[stop]] || StopClass.isTuba(stop(stop))));
        fonds = new boolean[manual.length];
        of(StopClass.PRINCIPAL_8)
                .forEach(stop -> fonds[home[stop]] |=
                        stop(stop).name().toLowerCase(Locale.ROOT).startsWith("montre"));
        source = organ.couplers().stream()
                .mapToInt(coupler -> organ.division(coupler.source()).orElseThrow())
                .toArray();
        keyboard = organ.couplers().stream()
                .mapToInt(coupler -> organ.division(coupler.keyboard()).orElseThrow())
                .toArray();
        pedal = organ.pedalDivision().orElse(NO_PEDAL);
        keyboards = onePerManual();
    }

    private IndexSet where(IntPredicate such) {
        return IndexSet.of(IntStream.range(0, layer.length).filter(such));
    }

    /**
     * A cornet that begins with 8 ft has the pitch of that; other compound stops stand on what is drawn beneath them.
     */
    private static int semitones(Stop stop) {
        if (stop.family() == Family.CORNET) {
            boolean hasUnison = !stop.composition().isEmpty()
                    && stop.composition().stream()
                            .allMatch(from -> from.pitches().contains(Footage.of(8)));
            return hasUnison ? 0 : NO_PITCH;
        }
        return stop.family() == Family.MIXTURE || stop.footage().isEmpty()
                ? NO_PITCH
                : (int) Math.rint(stop.footage().get().semitones());
    }

    /**
     * Where a manual has no mixture its single high ranks of octaves and fifths, as of an Italian ripieno, do for one.
     * Common practice, no source.
     */
    private void readRipieno() {
        for (int division : manuals) {
            List<Integer> here =
                    where(stop -> home[stop] == division).stream().boxed().toList();
            if (here.stream().noneMatch(stop -> layer[stop] == StopClass.MIXTURE)) {
                List<Integer> ranks = here.stream()
                        .filter(this::isHighRank)
                        .sorted(Comparator.comparing(
                                stop -> stop(stop).footage().orElseThrow().harmonic()))
                        .toList();
                ranks.forEach(stop -> layer[stop] = StopClass.MIXTURE);
                ripieno.put(division, ranks);
            }
        }
    }

    private boolean isHighRank(int stop) {
        boolean isOfChorus =
                stop(stop).family() == Family.PRINCIPAL || stop(stop).family() == Family.MUTATION;
        long harmonic = Math.round(stop(stop).footage().map(Footage::harmonic).orElse(1.0));
        return isOfChorus && harmonic > TWO_FEET && harmonic % THIRDS != 0;
    }

    /** One division for every manual, the one on which hymns are led first. */
    private List<Integer> onePerManual() {
        List<Integer> found = new ArrayList<>(List.of(organ.mainDivision()));
        for (int division : manuals) {
            if (found.stream().noneMatch(other -> isOneKeyboard(other, division))) {
                found.add(division);
            }
        }
        return List.copyOf(found);
    }

    public Instrument organ() {
        return organ;
    }

    public Stop stop(int stop) {
        return organ.stops().get(stop).stop();
    }

    public int divisionOf(int stop) {
        return home[stop];
    }

    public StopClass layer(int stop) {
        return layer[stop];
    }

    /** The single high ranks of a manual that do for a mixture, the lowest first; none where it has one. */
    public List<Integer> ripienoOf(int home) {
        return ripieno.getOrDefault(home, List.of());
    }

    /** How loud a stop is by itself, in dB(A). */
    public double levelDb(int stop) {
        if (levelsDb.length < layer.length) {
            levelsDb = IntStream.range(0, layer.length).mapToDouble(levelOfStop).toArray();
        }
        return levelsDb[stop];
    }

    /** The order in which a keyboard is built up, as {@link BuildingOrder} makes it; asked for in every frame. */
    List<BuildingLine.Addition> additions(HandsAndFeet hands, IndexSet never, IndexSet drawn) {
        if (lines.size() > MOST_LINES) {
            lines.clear();
        }
        return lines.computeIfAbsent(
                List.of(hands, never, drawn), asked -> new BuildingOrder(this, hands, never, drawn).additions());
    }

    /** Pitch above 8 ft in whole semitones, or {@link #NO_PITCH}. */
    int semitones(int stop) {
        return semitones[stop];
    }

    /** The division whose stops a coupler sounds. */
    public int sourceOf(int coupler) {
        return source[coupler];
    }

    /** The division from whose keys a coupler is played. */
    public int keyboardOf(int coupler) {
        return keyboard[coupler];
    }

    public int couplers() {
        return source.length;
    }

    /** The coupler of a kind that brings a division to the keyboard of another, or that acts within it. */
    public OptionalInt coupler(Coupler.Kind kind, int from, int to) {
        return IntStream.range(0, source.length)
                .filter(coupler -> organ.couplers().get(coupler).kind() == kind && source[coupler] == from)
                .filter(coupler ->
                        isSameKeys(keyboard[coupler], to) || (kind != Coupler.Kind.UNISON && keyboard[coupler] == from))
                .findFirst();
    }

    /** How heavy a flue of the pedal is: stopped pipes, strings, principals, open wood. Common practice, no source. */
    public int weight(int stop) {
        return switch (stop(stop).family()) {
            case FLUTE -> stop(stop).pipe() == Pipe.STOPPED ? 0 : 3;
            case STRING, CELESTE -> 1;
            case PRINCIPAL, MUTATION, MIXTURE, CORNET, CHORUS_REED, SOLO_REED -> 2;
        };
    }

    /** True for a 16 ft flue of the pedal that is too heavy for light sounds: open, and no string. */
    boolean isOpenSixteen(int stop) {
        return layer[stop] == StopClass.PEDAL_16 && weight(stop) >= OPEN_WEIGHT;
    }

    private boolean isSameKeys(int one, int other) {
        return one == other || (one != pedal && other != pedal && isOneKeyboard(one, other));
    }

    /** True for a division with a Montre: in the French manner all its 8 ft flues are drawn together. */
    public boolean isFonds(int division) {
        return fonds[division];
    }

    /** All stops of a class. */
    IndexSet of(StopClass wanted) {
        return ofClass.get(wanted.ordinal());
    }

    /** True for a division that has a stop of a class. */
    boolean has(int division, StopClass wanted) {
        return allOf.get(division).meets(of(wanted));
    }

    /** The chorus reeds of the manuals. */
    public IndexSet chorusReeds() {
        return of(StopClass.REED_16).plus(of(StopClass.REED_8)).plus(of(StopClass.REED_4));
    }

    /** Tubas and the like: chorus reeds of a division for solos, and those that are called so. */
    public IndexSet bigReeds() {
        return bigReeds;
    }

    /** Index of the pedal division, or {@link #NO_PEDAL}. */
    public int pedal() {
        return pedal;
    }

    /** A division for every manual, the main division first. */
    public List<Integer> keyboards() {
        return keyboards;
    }

    /** Indices of all divisions of the manuals. */
    public List<Integer> manuals() {
        return manuals;
    }

    /** Whether two divisions are played from one keyboard. */
    public boolean isOneKeyboard(int one, int other) {
        return manual[one] == manual[other];
    }

    public boolean isEnclosed(int division) {
        return organ.divisions().get(division).isEnclosed();
    }

    /** Whether any manual stands in a box. */
    public boolean hasEnclosedManual() {
        return keyboards.stream().anyMatch(this::isEnclosed);
    }

    /** Indices of the stops of a division. */
    public List<Integer> stopsOf(int home) {
        return stopsOf.get(home);
    }

    /** All stops of a division. */
    public IndexSet allOf(int home) {
        return allOf.get(home);
    }

    /**
     * True for a manual division with neither principals nor a mixture, on an organ that has two manuals besides: its
     * reeds are meant for solos.
     */
    public boolean isForSolos(int home) {
        return forSolos[home];
    }

    private long manualCount() {
        return manuals.stream().map(division -> manual[division]).distinct().count();
    }

    /** True for a stop that plays pipes of another division. */
    public boolean isBorrowedFromManual(int stop) {
        return homeOfPipes(stop) != divisionOf(stop);
    }

    /** Index of the division where the pipes of a stop stand. */
    public int homeOfPipes(int stop) {
        return organ.stops().get(rank[stop]).division();
    }

    private boolean isOfChorus(int stop) {
        return layer[stop] == StopClass.PRINCIPAL_8
                || layer[stop] == StopClass.PRINCIPAL_4
                || layer[stop] == StopClass.MIXTURE;
    }

    /** Stops of other divisions that play pipes of this one. */
    IndexSet borrowedFrom(int division) {
        return borrowedFrom.get(division);
    }

    /** Whether the organ has a stop of a layer. */
    public boolean has(StopClass wanted) {
        return !of(wanted).isEmpty();
    }
}
