package versewind.sound;

import java.util.Locale;
import java.util.Map;
import versewind.acoustics.AbsorptionTable;
import versewind.acoustics.Reverberation;
import versewind.acoustics.RoomConstant;
import versewind.organ.Room;

/**
 * Whether there can be such a room: a mistake in a volume, an area or a time is told here, before anything is reckoned
 * from it.
 *
 * <p>A room of V m3 has a surface of (36 pi V^2)^(1/3) m2 at least, that of a ball. Its surfaces cannot absorb as much as
 * their own area, nor can a time be so short that they would have to. Where the surfaces are not known, four balls'
 * surface is taken for the most that a room may have: an estimate, for a church with its pillars has one and a half to
 * three. People are no surface: they are counted by their number.
 *
 * <p>Checked against: {@code PossibleRoomTest}.
 */
public final class PossibleRoom {

    private static final double MOST_BALLS = 4;

    private PossibleRoom() {}

    /**
     * Gives the room back.
     *
     * @throws IllegalArgumentException with a sentence, if there can be no such room
     */
    public static Room require(Room room) {
        double ballM2 = Math.cbrt(36 * Math.PI * room.volumeM3() * room.volumeM3());
        room.reverberation().known().ifPresent(surfaces -> requireSurfaces(room, surfaces, ballM2));
        if (room.reverberation() instanceof Room.MeasuredTimes times) {
            double mostM2 = times.surfaces().map(Room.Surfaces::areaM2).orElse(MOST_BALLS * ballM2);
            times.octaveS().entrySet().forEach(time -> requireTime(room, time, mostM2));
        }
        return room;
    }

    private static void requireSurfaces(Room room, Room.Surfaces surfaces, double ballM2) {
        AbsorptionTable table = AbsorptionTable.load();
        double[] absorption = new double[AbsorptionTable.OCTAVES_HZ.size()];
        for (Room.Surface surface : surfaces.list()) {
            AbsorptionTable.Material material = table.surface(surface.material());
            for (int octave = 0; octave < absorption.length; octave++) {
                absorption[octave] += surface.areaM2() * material.absorption().get(octave);
            }
        }
        double areaM2 = surfaces.areaM2();
        if (areaM2 < ballM2) {
            throw new IllegalArgumentException("the surfaces add up to " + whole(areaM2) + " m2, but no room of "
                    + whole(room.volumeM3()) + " m3 has less than " + whole(ballM2)
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
