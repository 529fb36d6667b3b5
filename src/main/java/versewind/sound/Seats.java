package versewind.sound;

import versewind.acoustics.Reverberation;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.Room;

/**
 * What reaches the seats of a room with a number of people in it: mean-square pressure re (20 uPa)^2 for a sound power of
 * 1 pW, by band.
 */
final class Seats {

    private final double[] organInNave;
    private final double[] organAtChoir;
    private final double[] choirInNave;
    private final double[] organFar;
    private final double[] organAtConsole;
    private final double[] reverberant;
    private final Room.Distances distances;

    /**
     * The seats.
     *
     * @param organInNave from the organ to the seat in the middle of the nave
     * @param organAtChoir from the organ to the place of a choir or a soloist
     * @param choirInNave from a choir or a soloist to the seat in the nave
     * @param organFar from the organ to the singers who are farthest from it
     * @param organAtConsole from the organ to the organist
     * @param reverberant 4/A, the diffuse field
     * @param distances of the room
     */
    Seats(
            double[] organInNave,
            double[] organAtChoir,
            double[] choirInNave,
            double[] organFar,
            double[] organAtConsole,
            double[] reverberant,
            Room.Distances distances) {
        this.organInNave = organInNave;
        this.organAtChoir = organAtChoir;
        this.choirInNave = choirInNave;
        this.organFar = organFar;
        this.organAtConsole = organAtConsole;
        this.reverberant = reverberant;
        this.distances = distances;
    }

    /** What a source of sound power re 1 pW sounds like in the nave, written into a spectrum. */
    void organInNave(double[] organ, double[] heard) {
        multiply(organ, organInNave, heard);
    }

    /** What the organ sounds like among the singers. */
    void organAmong(PeoplePresent.Place place, double[] organ, double[] heard) {
        multiply(organ, organAmong(place), heard);
    }

    /** What singers sound like: a congregation to one of them, a choir or a soloist to the nave. */
    void singing(PeoplePresent people, double[] voice, double[] heard) {
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            heard[band] = voice[band]
                    * switch (people.place()) {
                        case IN_THE_NAVE -> Singers.amongPerM2(people.singers(), reverberant[band]);
                        case AT_THE_CHOIR -> people.singers() * choirInNave[band];
                    };
        }
    }

    /** From sound power to what is heard of the organ in the nave. */
    double[] organInNave() {
        return organInNave;
    }

    /** From sound power to what is heard of the organ at a seat. */
    double[] organAt(Seat seat) {
        return switch (seat) {
            case NAVE -> organInNave;
            case FAR -> organFar;
            case CHOIR -> organAtChoir;
            case CONSOLE -> organAtConsole;
        };
    }

    /** From sound power to what is heard of the organ among the singers. */
    double[] organAmong(PeoplePresent.Place place) {
        return switch (place) {
            case IN_THE_NAVE -> organInNave;
            case AT_THE_CHOIR -> organAtChoir;
        };
    }

    /** What of the singing comes by way of the room: of a congregation the diffuse field, of a choir all of it. */
    void singingByTheRoom(PeoplePresent people, double[] voice, double[] heard) {
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            heard[band] = voice[band]
                    * switch (people.place()) {
                        case IN_THE_NAVE -> Math.max(0, people.singers() - 1) * reverberant[band];
                        case AT_THE_CHOIR -> people.singers() * choirInNave[band];
                    };
        }
    }

    /** Time in ms that sound needs from the organ to the farthest of the singers. */
    double lagMs(PeoplePresent.Place place) {
        double distanceM =
                switch (place) {
                    case IN_THE_NAVE -> distances.farM();
                    case AT_THE_CHOIR -> distances.choirM();
                };
        return 1000 * distanceM / Reverberation.SPEED_OF_SOUND_M_S;
    }

    private static void multiply(double[] power, double[] share, double[] product) {
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            product[band] = power[band] * share[band];
        }
    }
}
