package versewind.rules;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.acoustics.NoiseDose.EuropeanValue;
import versewind.organ.Instrument;
import versewind.organ.Room;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.Verse;

/** What is to be said with every list of levels: what they are, and what they may mean for the ears. */
public final class Caution {

    /** What the levels are. */
    public static final String ESTIMATE = "All levels are estimates; none is a measurement.";

    /** What the number behind a verdict is. */
    public static final String SHARE =
            "Share: of all that is heard, this much is the organ's own, or the soloed melody's.";

    /** Who comes first where ears are concerned. */
    public static final String DEFERENCE = "Not a measurement; follow local rules and qualified advice.";

    private static final double FARTHEST_APART = 2;

    private Caution() {}

    /** That more people are expected than there are seats, where the seats are known. */
    public static Optional<String> people(int people, Room room) {
        return room.seats() > 0 && people > room.seats()
                ? Optional.of(people + " people are expected, but the church has " + room.seats() + " seats.")
                : Optional.empty();
    }

    /** That a choir is said to be larger than the church has seats, where these are known. */
    public static Optional<String> choir(Verse verse, Room room) {
        boolean isChoir = verse.mode() == Mode.SMALL_CHOIR && verse.people().isPresent();
        return isChoir && room.seats() > 0 && verse.people().getAsInt() > room.seats()
                ? Optional.of("A choir of " + verse.people().getAsInt() + " is more than the " + room.seats()
                        + " seats of the church.")
                : Optional.empty();
    }

    /** Where more are expected, or sing in a choir, than there are seats. */
    public static List<String> crowds(Plan plan, Room room) {
        return Stream.concat(
                        people(plan.heading().people(), room).stream(),
                        plan.places().stream().flatMap(place -> choir(plan.verse(place), room).stream()))
                .distinct()
                .toList();
    }

    /** What is to be known of an organ before its levels are believed. */
    public static List<String> organ(Instrument organ) {
        return Stream.concat(
                        room(organ.room()).stream(),
                        organ.stops().stream()
                                .filter(knob -> knob.stop().isTrimmedInVain())
                                .map(Caution::trim))
                .toList();
    }

    private static String trim(Instrument.Knob knob) {
        return knob.name() + " has a trim without effect: its pipes are those of "
                + knob.stop().borrowed().orElseThrow() + ", which may be trimmed instead.";
    }

    /**
     * How surely the room is known, where it was not measured in every octave.
     *
     * <p>Source: Carvalho, 41 churches (1995), for what surfaces give.
     */
    static Optional<String> room(Room room) {
        if (room.reverberation() instanceof Room.MeasuredTimes times) {
            Optional<String> uneven = uneven(times);
            return uneven.isPresent() || times.isComplete() ? uneven : Optional.of(timed(times));
        }
        return Optional.of(
                "Reverberation: calculated from the surfaces, so levels may be out by 1 to 2 dB. A clap timed in"
                        + " a few octaves is more certain.");
    }

    /** Times in neighbouring octaves hardly ever differ by a factor of two: an estimate. */
    private static Optional<String> uneven(Room.MeasuredTimes times) {
        List<Map.Entry<Integer, Double>> octaves = List.copyOf(times.octaveS().entrySet());
        return IntStream.range(1, octaves.size())
                .filter(i ->
                        isUneven(octaves.get(i - 1).getValue(), octaves.get(i).getValue()))
                .mapToObj(i -> "Reverberation: " + octaves.get(i - 1).getValue() + " s at "
                        + octaves.get(i - 1).getKey() + " Hz beside "
                        + octaves.get(i).getValue() + " s at "
                        + octaves.get(i).getKey() + " Hz is hardly possible: check both.")
                .findFirst();
    }

    private static boolean isUneven(double one, double other) {
        return Math.max(one, other) >= FARTHEST_APART * Math.min(one, other);
    }

    private static String timed(Room.MeasuredTimes times) {
        String octaves = times.octaveS().keySet().stream().map(String::valueOf).collect(Collectors.joining(", "));
        return "Reverberation: timed at " + octaves + " Hz; the other octaves are estimated from that"
                + (times.surfaces().isPresent() ? ", from the air and from the surfaces." : " and from the air.");
    }

    /**
     * What the highest level may mean for the ears, from the upper action value of the European directive on, which is
     * also the level that NIOSH recommends for 8 hours at most.
     *
     * <p>Source: NIOSH publication 98-126 (1998), 1.1; its clause from memory; Directive 2003/10/EC, Article
     * 3(1).
     *
     * @param loudestDba the highest level in dB(A); empty where nothing sounds
     */
    public static Optional<String> hearing(OptionalDouble loudestDba) {
        if (loudestDba.isEmpty() || loudestDba.getAsDouble() < EuropeanValue.UPPER_ACTION.levelDbA()) {
            return Optional.empty();
        }
        return Optional.of("Hearing: up to " + Math.round(loudestDba.getAsDouble())
                + " dB(A). NIOSH: 85 dB(A) over 8 hours; EU action values: 80 and 85 dB(A)."
                + " " + DEFERENCE);
    }
}
