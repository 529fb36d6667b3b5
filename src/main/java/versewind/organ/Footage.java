package versewind.organ;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The nominal length of a stop's lowest pipe in feet, as an exact fraction: 8, 2 2/3, 1 3/5.
 *
 * <p>A stop of f feet sounds the harmonic 8/f of what is written: 4 ft the second, 2 2/3 ft the third. Pitches are
 * pure, not tempered. Written as the trade writes it, a whole number and a fraction: "2 2/3".
 *
 * <p>Source: ISO 16:1975 (a1 = 440 Hz) and the arithmetic of the harmonic series.
 *
 * <p>Range: 1/8 to 64 ft; the fraction is kept in its lowest terms.
 */
public record Footage(int numerator, int denominator) implements Comparable<Footage> {

    /** Frequency of a1, the A above middle C, in Hz (ISO 16:1975). */
    private static final double A1_HZ = 440.0;

    private static final int A1_MIDI = 69;
    private static final int UNISON_FEET = 8;
    private static final Pattern WRITTEN = Pattern.compile("(?:(\\d{1,2})|(?:(\\d{1,2}) )?(\\d{1,2})/(\\d{1,2}))");

    public Footage {
        if (numerator <= 0 || denominator <= 0) {
            throw new IllegalArgumentException("a footage is more than nothing: " + numerator + "/" + denominator);
        }
        if (numerator > 64 * denominator || 8 * numerator < denominator) {
            throw new IllegalArgumentException("a footage lies between 1/8 and 64 ft");
        }
        int divisor = gcd(numerator, denominator);
        numerator /= divisor;
        denominator /= divisor;
    }

    /** A whole number of feet. */
    public static Footage of(int feet) {
        return new Footage(feet, 1);
    }

    /** Reads "8", "2 2/3" or "1/2"; empty for anything else. */
    public static Optional<Footage> parse(String written) {
        Matcher matcher = WRITTEN.matcher(written);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        int whole = number(matcher.group(1)) + number(matcher.group(2));
        int numerator = number(matcher.group(3));
        int denominator = matcher.group(4) == null ? 1 : number(matcher.group(4));
        if (denominator == 0 || (matcher.group(4) != null && (numerator == 0 || numerator >= denominator))) {
            return Optional.empty();
        }
        try {
            return Optional.of(new Footage(whole * denominator + numerator, denominator));
        } catch (IllegalArgumentException outOfRange) {
            return Optional.empty();
        }
    }

    private static int number(String digits) {
        return digits == null ? 0 : Integer.parseInt(digits);
    }

    /** Length in feet. */
    public double feet() {
        return (double) numerator / denominator;
    }

    /** Harmonic number of the unison: 8 ft is 1, 4 ft 2, 2 2/3 ft 3, 16 ft 1/2. Unit: none. */
    public double harmonic() {
        return UNISON_FEET / feet();
    }

    /** Pitch above 8 ft in pure semitones, 12 lb(harmonic): 4 ft is 12, 2 2/3 ft 19.02. */
    public double semitones() {
        return 12 * Math.log(harmonic()) / Math.log(2);
    }

    /**
     * Frequency in Hz that this pitch sounds for a key: harmonic * 440 * 2^((key - 69)/12).
     *
     * <p>Checked against: {@code FootageTest}, every row of pitch_lengths.csv.
     *
     * @param midiKey key as a MIDI note number, 36 for the bottom C, 60 for middle C
     */
    public double frequencyHz(int midiKey) {
        return harmonic() * A1_HZ * Math.pow(2, (midiKey - A1_MIDI) / 12.0);
    }

    /** Longer pipes first: 16, 8, 4, 2 2/3. */
    @Override
    public int compareTo(Footage other) {
        return Integer.compare(other.numerator * denominator, numerator * other.denominator);
    }

    /** As the trade writes it: "2 2/3". */
    @Override
    public String toString() {
        int whole = numerator / denominator;
        int rest = numerator % denominator;
        if (rest == 0) {
            return Integer.toString(whole);
        }
        String fraction = rest + "/" + denominator;
        return whole == 0 ? fraction : whole + " " + fraction;
    }

    private static int gcd(int a, int b) {
        return b == 0 ? a : gcd(b, a % b);
    }
}
