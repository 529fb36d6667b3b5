package versewind.sound;

import versewind.acoustics.DiffuseField;
import versewind.acoustics.Reverberation;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.Room;

/**
 * The paths from organ and singers to the seats of a room with a number of people in it. The arrays it gives are shared
 * and not to be written to.
 *
 * <p>Checked against: {@code RoomSoundTest}, {@code SingersTest}.
 */
final class Seats {

    private final Room.Distances distances;
    private final Path organInNave;
    private final Path organAtChoir;
    private final Path choirInNave;
    private final Path organFar;
    private final Path organAtConsole;
    private final double[] reverberant = new double[ThirdOctaves.COUNT];

    Seats(RoomSound room, Room.Distances distances, int people) {
        this.distances = distances;
        organInNave = room.path(distances.naveM(), people);
        organAtChoir = room.path(distances.choirM(), people);
        choirInNave = room.path(distances.choirToNaveM(), people);
        organFar = room.path(distances.farM(), people);
        organAtConsole = room.path(distances.consoleM(), people);
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            reverberant[band] = DiffuseField.reverberantPerM2(room.absorptionM2(band, people));
        }
    }

    /** From the organ to the middle of the nave. */
    Path organInNave() {
        return organInNave;
    }

    /** From the organ to a seat. */
    Path organAt(Seat seat) {
        return switch (seat) {
            case NAVE -> organInNave;
            case FAR -> organFar;
            case CHOIR -> organAtChoir;
            case CONSOLE -> organAtConsole;
        };
    }

    /** From the organ to the singers. */
    Path organAmong(PeoplePresent.Place place) {
        return switch (place) {
            case IN_THE_NAVE -> organInNave;
            case AT_THE_CHOIR -> organAtChoir;
        };
    }

    /** The diffuse field, 4/A in 1/m2. */
    double[] reverberant() {
        return reverberant;
    }

    /** The singing as heard: a congregation by one of its members, a choir or a soloist in the nave. */
    void singing(PeoplePresent people, double[] voice, double[] heard) {
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            heard[band] = voice[band]
                    * switch (people.place()) {
                        case IN_THE_NAVE -> Singers.amongPerM2(people.singers(), reverberant[band]);
                        case AT_THE_CHOIR -> people.singers() * choirInNave.gain()[band];
                    };
        }
    }

    /** The part of the singing that grows with the room: of a congregation the diffuse field. */
    void singingByTheRoom(PeoplePresent people, double[] voice, double[] heard) {
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            heard[band] = voice[band]
                    * switch (people.place()) {
                        case IN_THE_NAVE -> Singers.others(people.singers()) * reverberant[band];
                        case AT_THE_CHOIR ->
                            people.singers()
                                    * choirInNave.gain()[band]
                                    * choirInNave.byTheRoom()[band];
                    };
        }
    }

    /** Time that sound takes from the organ to the farthest singers, in ms. */
    double lagMs(PeoplePresent.Place place) {
        double distanceM =
                switch (place) {
                    case IN_THE_NAVE -> distances.farM();
                    case AT_THE_CHOIR -> distances.choirM();
                };
        return 1000 * distanceM / Reverberation.SPEED_OF_SOUND_M_S;
    }
}
