package versewind.sound;

import java.util.OptionalDouble;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.Room;
import versewind.plan.Verse;

/**
 * Levels at the ears nearest to the pipes: the organist's, and those of a choir in its place.
 *
 * <p>The organ's sound power is recovered from its spectrum in the nave and brought to the seat by the paths of {@link
 * RoomSound}. The singing is added: for the organist the diffuse field of all singers; for a member of the choir that
 * of the others around, or of the congregation. One's own voice is left out.
 *
 * <p>Range: as the level of the organ; wider within a few metres, since an organ is not a point source (an estimate).
 *
 * <p>Checked against: {@code EarSeatsTest}.
 */
public final class EarSeats {

    private final OrganSound sound;
    private final Room.Distances distances;

    /**
     * Levels in dB(A) during a verse.
     *
     * @param organist at the console; empty if nothing sounds
     * @param choir in the choir; empty if nothing sounds
     */
    public record Levels(OptionalDouble organist, OptionalDouble choir) {}

    /** The ears around an organ. */
    public EarSeats(OrganSound sound) {
        this.sound = sound;
        distances = sound.organ().room().distances();
    }

    /** Distance in m from the pipes to the organist. */
    public double organistM() {
        return distances.consoleM();
    }

    /** Distance in m from the pipes to the choir. */
    public double choirM() {
        return distances.choirM();
    }

    /**
     * Levels at both seats during a verse.
     *
     * @param verse the verse
     * @param servicePeople number of people at the service
     * @param estimate the estimate of the same verse with the same people
     */
    public Levels during(Verse verse, int servicePeople, Estimate estimate) {
        PeoplePresent people = PeoplePresent.of(verse, servicePeople);
        Seats seats = sound.seats(people.present());
        double[] voice = sound.voice(verse);
        double[] inNave = estimate.bands().power();
        double[] console = new double[ThirdOctaves.COUNT];
        double[] choir = new double[ThirdOctaves.COUNT];
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            double organ = inNave[band] / seats.organInNave().gain()[band];
            double diffuse = seats.reverberant()[band];
            console[band] = organ * seats.organAt(Seat.CONSOLE).gain()[band] + voice[band] * people.singers() * diffuse;
            choir[band] =
                    organ * seats.organAt(Seat.CHOIR).gain()[band] + voice[band] * aroundChoirPerM2(people, diffuse);
        }
        return new Levels(ThirdOctaves.levelDba(console), ThirdOctaves.levelDba(choir));
    }

    private static double aroundChoirPerM2(PeoplePresent people, double reverberantPerM2) {
        return switch (people.place()) {
            case IN_THE_NAVE -> people.singers() * reverberantPerM2;
            case AT_THE_CHOIR -> people.singers() < 2 ? 0 : Singers.amongPerM2(people.singers(), reverberantPerM2);
        };
    }
}
