package versewind.sound;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import versewind.organ.Instrument;

/** An organ whose boxes and singers are of another kind than estimated, which no trim can express. */
public final class OtherOrgan {

    private static final int BAND_500_HZ = 13;
    private static final double BANDS_AN_OCTAVE = 3;

    private OtherOrgan() {}

    /**
     * Opens it.
     *
     * @param organ with its own trims
     * @param roomDb reverberant level of the room above the estimate
     * @param boxTiltDb how much more a closed box takes away for every octave above 500 Hz, and less below, by division
     * @param voiceDb level of the singers above the estimate, by octave from 125 Hz
     */
    public static OrganSound open(Instrument organ, double roomDb, List<Double> boxTiltDb, double[] voiceDb) {
        List<Optional<Shutters>> shutters = IntStream.range(0, boxTiltDb.size())
                .mapToObj(division -> organ.divisions()
                        .get(division)
                        .box()
                        .map(box -> tilted(Shutters.closedLossDb(box), boxTiltDb.get(division))))
                .toList();
        OrganPower power = new OrganPower(organ).behind(organ, shutters);
        return new OrganSound(
                organ, power, new Singers(voiceDb), new Offsets(0, roomDb), Optional.empty(), FeltVerses.NONE);
    }

    private static Shutters tilted(double[] closedLossDb, double tiltDb) {
        for (int band = 0; band < closedLossDb.length; band++) {
            closedLossDb[band] += tiltDb * (band - BAND_500_HZ) / BANDS_AN_OCTAVE;
        }
        return new Shutters(closedLossDb);
    }
}
