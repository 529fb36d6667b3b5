package versewind.sound;

import java.util.List;
import java.util.stream.IntStream;
import versewind.organ.Instrument;
import versewind.organ.Room;
import versewind.organ.Stop;
import versewind.organ.Trims;

/**
 * What nobody knows of an organ in its room before it was heard: how many dB each of these is off its estimate, and how
 * far off it may well be.
 *
 * <p>One offset of the whole organ, one trim a rank, one a swell box, one of the singers, one of the room. They are taken
 * as independent and normal, with mean 0 and these standard deviations in dB: organ 6, rank 3, box 4, singers 4, room 1
 * where its reverberation was measured and 2 where it follows from surfaces.
 *
 * <p>Source: estimates, but for the room: 1 to 2.3 dB from surfaces (Carvalho, 41 churches, 1995).
 */
final class Parameters {

    /** Place of the whole organ. */
    static final int ORGAN = 0;

    static final double ORGAN_SD_DB = 6;
    static final double RANK_SD_DB = 3;
    static final double BOX_SD_DB = 4;
    static final double SINGERS_SD_DB = 4;
    static final double MEASURED_ROOM_SD_DB = 1;
    static final double RECKONED_ROOM_SD_DB = 2;

    private static final int FIRST_RANK = 1;

    private final int stops;
    private final int divisions;
    private final double roomSdDb;

    Parameters(Instrument organ) {
        stops = organ.stops().size();
        divisions = organ.divisions().size();
        roomSdDb =
                organ.room().reverberation() instanceof Room.MeasuredTimes ? MEASURED_ROOM_SD_DB : RECKONED_ROOM_SD_DB;
    }

    /** How many places there are. */
    int count() {
        return room() + 1;
    }

    /** Place of a rank, by the index of its stop. */
    int rank(int stop) {
        return FIRST_RANK + stop;
    }

    /** Place of the swell box of a division. */
    int box(int division) {
        return FIRST_RANK + stops + division;
    }

    /** Place of the singers. */
    int singers() {
        return FIRST_RANK + stops + divisions;
    }

    /** Place of the room. */
    int room() {
        return singers() + 1;
    }

    /** Standard deviation in dB of what stands at a place. */
    double sdDb(int place) {
        if (place == ORGAN) {
            return ORGAN_SD_DB;
        }
        if (place < box(0)) {
            return RANK_SD_DB;
        }
        if (place < singers()) {
            return BOX_SD_DB;
        }
        return place == singers() ? SINGERS_SD_DB : roomSdDb;
    }

    /**
     * Trims that are off by what is found; none farther than 20 dB.
     *
     * @param before the trims of the organ
     * @param foundDb by place, in dB
     */
    Trims trims(Trims before, double[] foundDb) {
        List<Double> stopsDb = IntStream.range(0, stops)
                .mapToObj(stop -> cut(before.stopsDb().get(stop) + foundDb[rank(stop)]))
                .toList();
        List<Double> boxesDb = IntStream.range(0, divisions)
                .mapToObj(division -> cut(before.boxesDb().get(division) + foundDb[box(division)]))
                .toList();
        return new Trims(cut(before.organDb() + foundDb[ORGAN]), stopsDb, boxesDb);
    }

    private static double cut(double trimDb) {
        return Math.max(-Stop.WIDEST_TRIM_DB, Math.min(Stop.WIDEST_TRIM_DB, trimDb));
    }

    /** What is found of singers and room. */
    Offsets offsets(double[] foundDb) {
        return new Offsets(foundDb[singers()], foundDb[room()]);
    }
}
