package versewind.acoustics;

import java.util.Arrays;
import java.util.OptionalDouble;

/** Levels in the bands of {@link ThirdOctaves}, for showing: a silent band has none. An immutable value. */
public final class BandLevels {

    private final double[] power;

    private BandLevels(double[] power) {
        this.power = power;
    }

    /** The levels of a spectrum of powers. */
    public static BandLevels of(double[] power) {
        ThirdOctaves.requireSpectrum(power);
        return new BandLevels(power.clone());
    }

    /** Level in dB of a third-octave band, 0 to 27; empty for silence. */
    public OptionalDouble levelDb(int band) {
        return power[band] > 0 ? OptionalDouble.of(ThirdOctaves.powerToDb(power[band])) : OptionalDouble.empty();
    }

    /** The powers re (20 uPa)^2, a copy. */
    public double[] power() {
        return power.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof BandLevels that && Arrays.equals(power, that.power);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(power);
    }

    @Override
    public String toString() {
        return Arrays.toString(power);
    }
}
