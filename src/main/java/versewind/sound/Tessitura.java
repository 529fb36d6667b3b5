package versewind.sound;

import java.util.List;
import versewind.acoustics.TableResource;
import versewind.organ.Division;

/**
 * The share of its time in which each part sounds each key, averaged over many four-part hymns.
 *
 * <p>A bass above the top of a short pedal is played an octave lower (common practice).
 *
 * <p>Range: keys 36 to 81, as MIDI note numbers.
 *
 * <p>Source: {@code tessitura.csv}, counted in the JSB Chorales data set.
 *
 * <p>Checked against: {@code TessituraTest}, means and standard deviations of the four parts.
 */
final class Tessitura {

    /** Lowest key of any part, bottom C. */
    static final int LOWEST_KEY = Division.BOTTOM_KEY;

    private static final int OCTAVE = 12;

    private final double[][] shares;

    private Tessitura(double[][] shares) {
        this.shares = shares;
    }

    /** The tessitura on an instrument with a pedal up to a key. */
    static Tessitura overPedalTo(int topPedalKey) {
        List<List<String>> rows = TableResource.rows("tessitura.csv");
        double[][] shares = new double[VoicePart.values().length][rows.size()];
        for (List<String> row : rows) {
            int key = Integer.parseInt(row.get(0));
            for (VoicePart part : VoicePart.values()) {
                int sounded = part == VoicePart.BASS_ON_PEDAL ? lowered(key, topPedalKey) : key;
                shares[part.ordinal()][sounded - LOWEST_KEY] += Double.parseDouble(row.get(1 + column(part)));
            }
        }
        for (double[] part : shares) {
            normalise(part);
        }
        return new Tessitura(shares);
    }

    private static int column(VoicePart part) {
        return switch (part) {
            case SOPRANO -> 0;
            case ALTO -> 1;
            case TENOR -> 2;
            case BASS_IN_HAND, BASS_ON_PEDAL -> 3;
        };
    }

    private static int lowered(int key, int top) {
        int lowered = key;
        while (lowered > top) {
            lowered -= OCTAVE;
        }
        return lowered;
    }

    private static void normalise(double[] part) {
        double sum = 0;
        for (double share : part) {
            sum += share;
        }
        for (int i = 0; i < part.length; i++) {
            part[i] /= sum;
        }
    }

    /** Highest key of any part. */
    int highestKey() {
        return LOWEST_KEY + shares[0].length - 1;
    }

    /** True if a part sounds any key from one to below another. */
    boolean sounds(VoicePart part, int fromKey, int beforeKey) {
        for (int key = fromKey; key < beforeKey; key++) {
            if (share(part, key) > 0) {
                return true;
            }
        }
        return false;
    }

    /** Share of its time in which a part sounds a key, 0 to 1; the shares of a part sum to 1. */
    double share(VoicePart part, int key) {
        return shares[part.ordinal()][key - LOWEST_KEY];
    }
}
