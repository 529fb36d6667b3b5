package versewind.sound;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import versewind.acoustics.DiffuseField;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.Room;
import versewind.plan.Mode;
import versewind.plan.Verse;

/**
 * What reaches the ears that are nearest to the pipes: the organist's and those of a choir in its place.
 *
 * <p>The organ's sound power is taken back from what the nave hears, and brought to the seat as {@link RoomSound} does:
 * near the pipes direct and diffuse, farther by Barron's revised theory. To it comes the singing: to the organist as the
 * diffuse field of all; to a member of a choir that of the others around, or of the congregation. One's own voice is left
 * out.
 *
 * <p>Range: as the organ's level, and more within a few metres, for an organ is no point: an estimate.
 *
 * <p>Checked against: {@code EarSeatsTest}.
 */
public final class EarSeats {

    private final RoomSound room;
    private final double louder;
    private final Room.Distances distances;
    private final Map<Integer, Filled> filled = new HashMap<>();

    /** What reaches each seat from the organ, and the diffuse field 4/A, with a number of people in the room. */
    private final class Filled {
        private final double[] nave;
        private final double[] console;
        private final double[] choir;
        private final double[] reverberant = new double[ThirdOctaves.COUNT];

        Filled(int people) {
            nave = room.heardAt(distances.naveM(), people);
            console = room.heardAt(distances.consoleM(), people);
            choir = room.heardAt(distances.choirM(), people);
            for (int band = 0; band < ThirdOctaves.COUNT; band++) {
                reverberant[band] = DiffuseField.reverberantPerM2(room.absorptionM2(band, people));
            }
        }
    }

    /**
     * Levels in dB(A) during a verse.
     *
     * @param organist at the console; empty where nothing sounds
     * @param choir in the choir; empty where nothing sounds
     */
    public record Levels(OptionalDouble organist, OptionalDouble choir) {}

    /** The seats around an instrument, in its room and among its singers as a calibration found them. */
    public EarSeats(OrganSound sound) {
        Room around = sound.organ().room();
        room = new RoomSound(around, sound.offsets().roomDb());
        louder = ThirdOctaves.dbToPower(sound.offsets().singersDb());
        distances = around.distances();
    }

    /** Distance in m from the pipes to the organist. */
    public double organistM() {
        return distances.consoleM();
    }

    /** Distance in m from the organ to the choir. */
    public double choirM() {
        return distances.choirM();
    }

    /**
     * Levels at both seats during a verse.
     *
     * @param verse the verse
     * @param servicePeople number of people at the service
     * @param estimate what the verse sounds like, from the same number of people
     */
    public Levels during(Verse verse, int servicePeople, Estimate estimate) {
        PeoplePresent people = PeoplePresent.of(verse, servicePeople);
        Filled here = filled.computeIfAbsent(people.present(), Filled::new);
        double[] voice =
                verse.mode() == Mode.SOLO_VOICE ? Singers.soloist(verse.singing()) : Singers.voice(verse.singing());
        double[] inNave = estimate.bands().power();
        double[] console = new double[ThirdOctaves.COUNT];
        double[] choir = new double[ThirdOctaves.COUNT];
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            double organ = inNave[band] / here.nave[band];
            double reverberant = here.reverberant[band];
            console[band] = organ * here.console[band] + louder * voice[band] * people.singers() * reverberant;
            choir[band] = organ * here.choir[band] + louder * voice[band] * aroundChoirPerM2(people, reverberant);
        }
        return new Levels(level(console), level(choir));
    }

    private static double aroundChoirPerM2(PeoplePresent people, double reverberantPerM2) {
        return switch (people.place()) {
            case IN_THE_NAVE -> people.singers() * reverberantPerM2;
            case AT_THE_CHOIR -> Singers.amongPerM2(people.singers(), reverberantPerM2);
        };
    }

    private static OptionalDouble level(double[] power) {
        double weighted = ThirdOctaves.aWeightedPower(power);
        return weighted > 0 ? OptionalDouble.of(ThirdOctaves.powerToDb(weighted)) : OptionalDouble.empty();
    }
}
