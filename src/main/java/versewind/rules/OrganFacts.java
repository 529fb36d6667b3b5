package versewind.rules;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.IntStream;
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

/** The facts of an instrument that a search asks for again and again, worked out once. */
public final class OrganFacts {

    /** Harmonic of the 2 ft; what stands above it is higher. */
    private static final int TWO_FEET = 4;

    /** Harmonics of thirds are multiples of this. */
    private static final int THIRDS = 5;

    /** Stands for an organ without a pedal. */
    public static final int NO_PEDAL = -1;

    private final Instrument organ;
    private final StopFacts facts;
    private final StopClass[] layer;
    private final int[] rank;
    private final Map<Integer, List<Integer>> ripieno = new HashMap<>();
    private final boolean[] shared;
    private final boolean hasShared;
    private final double[] levelDb;
    private final double[] loudness;
    private final int[] peers = new int[StopClass.COUNT];
    private final List<List<Integer>> stopsOf;
    private final List<IndexSet> allOf;
    private final boolean[] forSolos;
    private final int[] source;
    private final int[] keyboard;
    private final int pedal;
    private final List<Integer> keyboards;
    private final List<Integer> manuals;

    /** The facts of an instrument, with how loud each stop is by itself in its room. */
    public static OrganFacts of(OrganSound sound) {
        Instrument organ = sound.organ();
        double[] levelsDb = IntStream.range(0, organ.stops().size())
                .mapToDouble(stop -> levelDb(sound, stop))
                .toArray();
        return new OrganFacts(organ, levelsDb);
    }

    private static double levelDb(OrganSound sound, int stop) {
        Instrument organ = sound.organ();
        int home = organ.stops().get(stop).division();
        HandsAndFeet hands = organ.divisions().get(home).isPedal()
                ? HandsAndFeet.on(HandsAndFeet.Layout.FOUR_PARTS, organ.mainDivision())
                : HandsAndFeet.on(HandsAndFeet.Layout.MANUALS_ONLY, home);
        return sound.levelDba(Registration.silent(organ).withStops(IndexSet.of(stop)), hands);
    }

    /**
     * Reads an instrument.
     *
     * @param organ the instrument
     * @param levelDb how loud each stop is by itself, in dB(A); only the order matters
     */
    public OrganFacts(Instrument organ, double[] levelDb) {
        this.organ = organ;
        facts = new StopFacts(organ);
        int stops = organ.stops().size();
        layer = new StopClass[stops];
        rank = new int[stops];
        for (int i = 0; i < stops; i++) {
            layer[i] = organ.divisions().get(divisionOf(i)).isPedal()
                    ? StopClass.onPedal(stop(i))
                    : StopClass.onManual(stop(i));
            rank[i] = organ.rankOf(i);
        }
        shared = new boolean[stops];
        for (int i = 0; i < stops; i++) {
            int pipes = rank[i];
            shared[i] = Arrays.stream(rank).filter(other -> other == pipes).count() > 1;
        }
        hasShared = Arrays.stream(rank).distinct().count() < stops;
        readRipieno();
        for (StopClass each : layer) {
            peers[each.ordinal()]++;
        }
        stopsOf = IntStream.range(0, organ.divisions().size())
                .mapToObj(home -> IntStream.range(0, stops)
                        .filter(stop -> divisionOf(stop) == home)
                        .boxed()
                        .toList())
                .toList();
        this.levelDb = levelDb.clone();
        allOf = stopsOf.stream()
                .map(here -> IndexSet.of(here.stream().mapToInt(stop -> stop)))
                .toList();
        loudness = among(levelDb);
        forSolos = new boolean[stopsOf.size()];
        for (int home = 0; home < forSolos.length; home++) {
            forSolos[home] =
                    manualCount(organ) > 2 && stopsOf.get(home).stream().noneMatch(this::isOfChorus);
        }
        source = organ.couplers().stream()
                .mapToInt(coupler -> organ.division(coupler.source()).orElseThrow())
                .toArray();
        keyboard = organ.couplers().stream()
                .mapToInt(coupler -> organ.division(coupler.keyboard()).orElseThrow())
                .toArray();
        OptionalInt feet = organ.pedalDivision();
        pedal = feet.isPresent() ? feet.getAsInt() : NO_PEDAL;
        manuals = List.copyOf(organ.manualDivisions());
        keyboards = onePerManual();
    }

    /**
     * Where a manual has no mixture its single high ranks of octaves and fifths, as of an Italian ripieno, do for one.
     * Common practice, no source.
     */
    private void readRipieno() {
        for (int manual : organ.manualDivisions()) {
            List<Integer> here = IntStream.range(0, stops())
                    .filter(stop -> divisionOf(stop) == manual)
                    .boxed()
                    .toList();
            if (here.stream().noneMatch(stop -> layer[stop] == StopClass.MIXTURE)) {
                List<Integer> ranks = here.stream()
                        .filter(this::isHighRank)
                        .sorted(Comparator.comparing(
                                stop -> stop(stop).footage().orElseThrow().harmonic()))
                        .toList();
                ranks.forEach(stop -> layer[stop] = StopClass.MIXTURE);
                ripieno.put(manual, ranks);
            }
        }
    }

    private boolean isHighRank(int stop) {
        boolean isOfChorus =
                stop(stop).family() == Family.PRINCIPAL || stop(stop).family() == Family.MUTATION;
        long harmonic = Math.round(stop(stop).footage().map(Footage::harmonic).orElse(1.0));
        return isOfChorus && harmonic > TWO_FEET && harmonic % THIRDS != 0;
    }

    /** From 0 for the softest to 1 for the loudest of a layer. */
    private double[] among(double[] levelDb) {
        double[] among = new double[levelDb.length];
        for (StopClass each : StopClass.values()) {
            List<Integer> peers = IntStream.range(0, layer.length)
                    .filter(stop -> layer[stop] == each)
                    .boxed()
                    .sorted(Comparator.comparingDouble(stop -> levelDb[stop]))
                    .toList();
            for (int place = 1; place < peers.size(); place++) {
                among[peers.get(place)] = (double) place / (peers.size() - 1);
            }
        }
        return among;
    }

    /** One division for every manual, the one on which hymns are led first. */
    private List<Integer> onePerManual() {
        List<Integer> found = new ArrayList<>(List.of(organ.mainDivision()));
        for (int manual : organ.manualDivisions()) {
            if (found.stream().noneMatch(other -> facts.isOneKeyboard(other, manual))) {
                found.add(manual);
            }
        }
        return List.copyOf(found);
    }

    public Instrument organ() {
        return organ;
    }

    public int stops() {
        return layer.length;
    }

    public Stop stop(int stop) {
        return facts.stop(stop);
    }

    public int divisionOf(int stop) {
        return facts.divisionOf(stop);
    }

    public StopClass layer(int stop) {
        return layer[stop];
    }

    /** Whether a stop shares its pipes with another. */
    public boolean isShared(int stop) {
        return shared[stop];
    }

    /** Whether any stops share their pipes. */
    public boolean hasShared() {
        return hasShared;
    }

    /** A number that two stops have in common where they play the same pipes at the same pitch. */
    public long sound(int stop) {
        return 1000L * rank[stop]
                + Math.round(stop(stop).footage().map(Footage::feet).orElse(0.0) * 12);
    }

    /** The single high ranks of a manual that do for a mixture, the lowest first; none where it has one. */
    public List<Integer> ripienoOf(int home) {
        return ripieno.getOrDefault(home, List.of());
    }

    /** How loud a stop is by itself, in dB(A). */
    public double levelDb(int stop) {
        return levelDb[stop];
    }

    /** Where a stop stands among those of its layer, from 0 for the softest to 1 for the loudest. */
    public double loudness(int stop) {
        return loudness[stop];
    }

    /** Whether its layer has other stops. */
    public boolean hasChoice(int stop) {
        return peers[layer[stop].ordinal()] > 1;
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

    private boolean isSameKeys(int one, int other) {
        return one == other || (one != pedal && other != pedal && isOneKeyboard(one, other));
    }

    /** True for a division with a Montre: in the French manner all its 8 ft flues are drawn together. */
    public boolean isFonds(int division) {
        return stopsOf(division).stream()
                .anyMatch(stop -> layer[stop] == StopClass.PRINCIPAL_8
                        && stop(stop).name().toLowerCase(Locale.ROOT).startsWith("montre"));
    }

    /** The solo reed of conical pipes that joins the reeds of its division, unless it is never to be drawn. */
    public IndexSet oboe(int division, IndexSet never) {
        return IndexSet.of(stopsOf(division).stream()
                .filter(stop -> layer[stop] == StopClass.SOLO_REED
                        && stop(stop).pipe() == Pipe.CONICAL_REED
                        && !facts.isVoxHumana(stop)
                        && !never.contains(stop))
                .limit(1)
                .mapToInt(stop -> stop));
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
        return facts.isOneKeyboard(one, other);
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

    private static int manualCount(Instrument organ) {
        return (int) organ.manualDivisions().stream()
                .map(division -> organ.divisions().get(division).manual())
                .distinct()
                .count();
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

    /** Whether the organ has a stop of a layer. */
    public boolean has(StopClass wanted) {
        return peers[wanted.ordinal()] > 0;
    }
}
