package versewind.sound;

import java.util.List;
import java.util.stream.IntStream;
import versewind.organ.Instrument;
import versewind.organ.Room;
import versewind.organ.Stop;
import versewind.organ.Trims;

/**
 * The unknown parameters of an organ in its room, each an error of the estimate in dB, and their prior distribution.
 *
 * <p>One offset of the whole organ, one trim for each rank and each swell box, one offset of the singers and one of the
 * room; and three common errors: of each {@link PipeRecipe}, whose level all its ranks share; of the organist's taste,
 * common to all that is judged by ear; of the device, common to all readings. The prior is independent and normal with
 * mean 0 and these standard deviations in dB: organ 4, rank 3, half of its variance in common with the others of its
 * recipe, box 4, singers 3, taste 2, device 2, room 1 with reverberation times measured in four octaves or more, else
 * 2.
 *
 * <p>Source: estimates, except for the room: 1 to 2.3 dB from surfaces (Carvalho, 41 churches, 1995).
 *
 * <p>Checked against: {@code LevelSensitivityTest}.
 */
public final class Parameters {

    /** Index of the whole organ. */
    static final int ORGAN = 0;

    private static final double ORGAN_SD_DB = 4;
    private static final double RANK_SD_DB = 3 / Math.sqrt(2);
    private static final double RECIPE_SD_DB = 3 / Math.sqrt(2);
    private static final double BOX_SD_DB = 4;
    private static final double SINGERS_SD_DB = 3;
    private static final double TASTE_SD_DB = 2;
    private static final double DEVICE_SD_DB = 2;
    private static final double MEASURED_ROOM_SD_DB = 1;
    private static final double CALCULATED_ROOM_SD_DB = 2;

    /** Octaves from which a room counts as measured. */
    private static final int MEASURED_OCTAVES = 4;

    private static final int FIRST_RANK = 1;

    private final int stops;
    private final int divisions;
    private final int[] recipeOfStop;
    private final double roomSdDb;

    /** The parameters of an instrument. */
    public Parameters(Instrument organ) {
        stops = organ.stops().size();
        divisions = organ.divisions().size();
        recipeOfStop = organ.stops().stream()
                .mapToInt(knob ->
                        PipeRecipe.of(knob.stop().family(), knob.stop().pipe()).ordinal())
                .toArray();
        boolean isMeasured = organ.room().reverberation() instanceof Room.MeasuredTimes times
                && times.octaveS().size() >= MEASURED_OCTAVES;
        roomSdDb = isMeasured ? MEASURED_ROOM_SD_DB : CALCULATED_ROOM_SD_DB;
    }

    /** Number of parameters. */
    public int count() {
        return device() + 1;
    }

    /** Index of a rank, by its stop. */
    int rank(int stop) {
        return FIRST_RANK + stop;
    }

    /** Index of what a rank, by its stop, has in common with all of its recipe. */
    int recipe(int stop) {
        return FIRST_RANK + stops + recipeOfStop[stop];
    }

    /** Index of the swell box of a division. */
    int box(int division) {
        return FIRST_RANK + stops + PipeRecipe.COUNT + division;
    }

    /** Index of the singers. */
    int singers() {
        return box(divisions);
    }

    /** Index of the room. */
    int room() {
        return singers() + 1;
    }

    /** Index of the organist's taste, which no level depends on: how much stronger than others the organ is felt. */
    public int taste() {
        return room() + 1;
    }

    /** Index of the error that all readings of one meter or phone have in common. */
    public int device() {
        return taste() + 1;
    }

    /** Prior standard deviation of a parameter in dB. */
    public double sdDb(int index) {
        if (index == ORGAN) {
            return ORGAN_SD_DB;
        }
        if (index < FIRST_RANK + stops) {
            return RANK_SD_DB;
        }
        if (index < box(0)) {
            return RECIPE_SD_DB;
        }
        if (index < singers()) {
            return BOX_SD_DB;
        }
        if (index == taste()) {
            return TASTE_SD_DB;
        }
        if (index == device()) {
            return DEVICE_SD_DB;
        }
        return index == singers() ? SINGERS_SD_DB : roomSdDb;
    }

    /**
     * Trims corrected by parameter values, each cut at 20 dB either way.
     *
     * @param before trims of the organ
     * @param valuesDb one value a parameter, in dB
     */
    public Trims trims(Trims before, double[] valuesDb) {
        List<Double> stopsDb = IntStream.range(0, stops)
                .mapToObj(stop -> cut(before.stopsDb().get(stop) + valuesDb[rank(stop)] + valuesDb[recipe(stop)]))
                .toList();
        List<Double> boxesDb = IntStream.range(0, divisions)
                .mapToObj(division -> cut(before.boxesDb().get(division) + valuesDb[box(division)]))
                .toList();
        return new Trims(cut(before.organDb() + valuesDb[ORGAN]), stopsDb, boxesDb);
    }

    private static double cut(double trimDb) {
        return Math.max(-Stop.WIDEST_TRIM_DB, Math.min(Stop.WIDEST_TRIM_DB, trimDb));
    }

    /** The values of singers and room among the parameter values, in dB. */
    public Offsets offsets(double[] valuesDb) {
        return new Offsets(valuesDb[singers()], valuesDb[room()]);
    }
}
