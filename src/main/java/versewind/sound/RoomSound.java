package versewind.sound;

import java.util.List;
import java.util.Optional;
import versewind.acoustics.AbsorptionTable;
import versewind.acoustics.AirTable;
import versewind.acoustics.BandAudibility;
import versewind.acoustics.BarronRevisedTheory;
import versewind.acoustics.DiffuseField;
import versewind.acoustics.Reverberation;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.Room;

/**
 * The room: absorption, reverberation, and level at a distance from a source.
 *
 * <p>Absorption area A of the empty room by octave: A = 0.161 V/T from measured reverberation times, else from surfaces
 * and air by Sabine. Each person adds the absorption of one standing. Measured times hold for 125 Hz to 4 kHz, where
 * {@link TimedOctaves} fills gaps; below, that of 125 Hz is used, above, that of 4 kHz with the further absorption of
 * the air.
 *
 * <p>Level at a seat: Barron's revised theory beyond the critical distance, with the reverberation time of the room as
 * it is filled; nearer, the classical direct and diffuse field. Sources are omnidirectional.
 *
 * <p>Range: within 1 dB with measured times (an estimate), within 1 to 2.3 dB from surfaces (Carvalho, 41 churches,
 * 1995). Air at 15 C and 60 % humidity (an estimate).
 *
 * <p>Checked against: {@code RoomSoundTest}.
 */
final class RoomSound {

    private static final double DIRECTIVITY = 1;
    private static final double AIR_C = 15;
    private static final double AIR_HUMIDITY_PERCENT = 60;

    /** A reverberant level so much higher has absorption in this proportion; for derivatives. */
    private static final double LITTLE_DB = 0.01;

    private static final double LITTLE_LESS = ThirdOctaves.dbToPower(-LITTLE_DB);
    private static final String PERSON = "audience standing per person";

    /** First octave of the tables, 125 Hz, counted as in {@link ThirdOctaves#octaveOf}. */
    private static final int FIRST_OCTAVE = ThirdOctaves.octaveOf(BandAudibility.FIRST_THIRD_OCTAVE);

    private final Room room;
    private final double[] emptyM2 = new double[ThirdOctaves.COUNT];
    private final double[] personM2 = new double[ThirdOctaves.COUNT];

    /**
     * A room.
     *
     * @param moreDb reverberant level above the estimate in dB, by which all absorption is less
     */
    RoomSound(Room room, double moreDb) {
        this.room = PossibleRoom.require(room);
        double factor = ThirdOctaves.dbToPower(-moreDb);
        AbsorptionTable table = AbsorptionTable.load();
        double[] empty = emptyM2(table);
        AbsorptionTable.Material person = table.material(PERSON).orElseThrow();
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            int octave = Math.max(0, Math.min(empty.length - 1, ThirdOctaves.octaveOf(band) - FIRST_OCTAVE));
            emptyM2[band] = factor * empty[octave];
            personM2[band] = factor * person.absorption().get(octave);
        }
    }

    private double[] emptyM2(AbsorptionTable table) {
        double[] air = AirTable.load().attenuationPerM(AIR_C, AIR_HUMIDITY_PERCENT);
        for (int octave = 0; octave < air.length; octave++) {
            air[octave] = Reverberation.airAbsorptionM2(room.volumeM3(), air[octave]);
        }
        Optional<double[]> surfacesM2 = room.reverberation().known().map(known -> surfacesM2(table, known));
        return room.reverberation() instanceof Room.MeasuredTimes times
                ? new TimedOctaves(room.volumeM3(), times.octaveS(), surfacesM2, air).absorptionM2()
                : sum(surfacesM2.orElseThrow(), air);
    }

    private static double[] sum(double[] some, double[] others) {
        double[] sum = some.clone();
        for (int octave = 0; octave < sum.length; octave++) {
            sum[octave] += others[octave];
        }
        return sum;
    }

    /** Absorption area of surfaces in m2, by octave from 125 Hz. */
    static double[] surfacesM2(AbsorptionTable table, Room.Surfaces surfaces) {
        double[] sum = new double[AbsorptionTable.OCTAVES_HZ.size()];
        for (Room.Surface surface : surfaces.list()) {
            List<Double> absorption = table.surface(surface.material()).absorption();
            for (int octave = 0; octave < sum.length; octave++) {
                sum[octave] += surface.areaM2() * absorption.get(octave);
            }
        }
        return sum;
    }

    /** Absorption area in m2 of a band with a number of people in the room. */
    double absorptionM2(int band, int people) {
        return emptyM2[band] + people * personM2[band];
    }

    /** Reverberation time in s of a band with a number of people in the room. */
    double reverberationS(int band, int people) {
        return Reverberation.sabineS(room.volumeM3(), absorptionM2(band, people));
    }

    /** The seats with a number of people in the room. */
    Seats seats(int people) {
        return new Seats(this, room.distances(), people);
    }

    /** The path from a source to a seat at a distance. */
    Path path(double distanceM, int people) {
        double[] gain = new double[ThirdOctaves.COUNT];
        double[] byTheRoom = new double[ThirdOctaves.COUNT];
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            double absorptionM2 = absorptionM2(band, people);
            double levelDb = levelDb(distanceM, absorptionM2);
            gain[band] = ThirdOctaves.dbToPower(levelDb);
            byTheRoom[band] = (levelDb(distanceM, absorptionM2 * LITTLE_LESS) - levelDb) / LITTLE_DB;
        }
        return new Path(gain, byTheRoom);
    }

    /** Level in dB at a distance, for a sound power level of 0 dB, with an absorption area in m2. */
    private double levelDb(double distanceM, double absorptionM2) {
        if (distanceM <= DiffuseField.criticalDistanceM(DIRECTIVITY, absorptionM2)) {
            return DiffuseField.levelDb(0, DIRECTIVITY, distanceM, absorptionM2);
        }
        double timeS = Reverberation.sabineS(room.volumeM3(), absorptionM2);
        return BarronRevisedTheory.at(room.volumeM3(), timeS, DIRECTIVITY, distanceM)
                .levelDb(0);
    }
}
