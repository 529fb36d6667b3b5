package versewind.sound;

import java.util.Optional;
import java.util.OptionalDouble;
import versewind.acoustics.BandLevels;

/**
 * What a verse sounds like, estimated; no measurement.
 *
 * @param organDba level in dB(A) of the organ at a seat in the nave; empty when it is silent
 * @param sone loudness of the organ in the nave in sone, 0 when it is silent (ISO 532-1)
 * @param phon its loudness level in phon; empty when it is silent
 * @param dynamic how loud that is on this organ; empty when it is silent
 * @param organAmongSingersDba level in dB(A) of the organ among the singers, or where they would stand; empty when it is
 *     silent
 * @param singers number of people who sing, 0 when the organ plays alone
 * @param singersDba level in dB(A) of the singing: for a congregation at a seat among the singers, of the others; for a
 *     choir or a soloist in the nave. Empty when nobody (else) sings
 * @param margin how far what should be heard stands above what disturbs it
 * @param lagMs time in ms that sound needs from the organ to the farthest of the singers
 * @param lagBeats the same as a share of a beat; empty without a tempo
 * @param bands levels of the organ in the nave
 * @param plusMinus how far the three levels may well be off
 */
public record Estimate(
        OptionalDouble organDba,
        double sone,
        OptionalDouble phon,
        Optional<Dynamic> dynamic,
        OptionalDouble organAmongSingersDba,
        int singers,
        OptionalDouble singersDba,
        Margin margin,
        double lagMs,
        OptionalDouble lagBeats,
        BandLevels bands,
        StdDevs plusMinus) {

    /** Whether no pipe speaks. */
    public boolean isSilent() {
        return organDba.isEmpty();
    }
}
