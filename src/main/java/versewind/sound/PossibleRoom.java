package versewind.sound;

import java.util.Locale;
import java.util.Map;
import versewind.acoustics.AbsorptionTable;
import versewind.acoustics.Reverberation;
import versewind.acoustics.RoomConstant;
import versewind.organ.Room;

/**
 * Rejects impossible rooms: a mistake in a volume, an area or a time is reported before anything is computed from it.
 *
 * <p>A room of V m3 has a surface of at least (36 pi V^2)^(1/3) m2, that of a sphere. Its surfaces absorb less than
 * their own area, and its times are no shorter than that allows. If the surfaces are unknown, four times the sphere is
 * taken as the most (an estimate: churches have one and a half to three times). People are counted by their number, not
 * as a surface.
 *
 * <p>Checked against: {@code PossibleRoomTest}.
 */
public final class PossibleRoom {

    private static final double MOST_SPHERES = 4;

    private PossibleRoom() {}

    /**
     * Returns a possible room.
     *
     * @throws IllegalArgumentException with a sentence, if the room is impossible
     */
    public static Room require(Room room) {
        double sphereM2 = Math.cbrt(36 * Math.PI * room.volumeM3() * room.volumeM3());
        room.reverberation().known().ifPresent(surfaces -> requireSurfaces(room, surfaces, sphereM2));
        if (room.reverberation() instanceof Room.MeasuredTimes times) {
            double mostM2 = times.surfaces().map(Room.Surfaces::areaM2).orElse(MOST_SPHERES * sphereM2);
            times.octaveS().entrySet().forEach(time -> requireTime(room, time, mostM2));
        }
        return room;
    }

    private static void requireSurfaces(Room room, Room.Surfaces surfaces, double sphereM2) {
        double[] absorption = RoomSound.surfacesM2(AbsorptionTable.load(), surfaces);
        double areaM2 = surfaces.areaM2();
        if (areaM2 < sphereM2) {
            throw new IllegalArgumentException("the surfaces add up to " + whole(areaM2) + " m2, but no room of "
                    + whole(room.volumeM3()) + " m3 has less than " + whole(sphereM2)
                    + " m2: a surface is missing, or the volume is wrong");
        }
        for (double absorptionM2 : absorption) {
            RoomConstant.meanAbsorption(areaM2, absorptionM2);
        }
    }

    private static void requireTime(Room room, Map.Entry<Integer, Double> time, double mostM2) {
        double absorptionM2 = Reverberation.absorptionM2(room.volumeM3(), time.getValue());
        if (absorptionM2 >= mostM2) {
            throw new IllegalArgumentException(
                    "a reverberation of " + time.getValue() + " s at " + time.getKey() + " Hz would need "
                            + whole(absorptionM2) + " m2 of absorption, and a room of " + whole(room.volumeM3())
                            + " m3 has not so much surface: the time is too short, or the volume is wrong");
        }
    }

    private static String whole(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }
}
