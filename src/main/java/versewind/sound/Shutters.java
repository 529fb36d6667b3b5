package versewind.sound;

import java.util.List;
import versewind.organ.BoxPosition;
import versewind.organ.SwellBox;

/**
 * An estimate of what a swell box takes away, by band and position.
 *
 * <p>Closed, the loss D against open is that of swell_box.csv, interpolated over the logarithm of frequency, less the
 * box's trim, and never less than nothing. Between, the shutters stand at an angle th, 0 closed and 90 degrees open, and
 * let through tau = tau_c + (1 - tau_c) (1 - cos th); the loss is 10 lg{[(tau + q) / tau] / (1 + q)} dB, where q is the
 * absorption area inside the box over the area of its front, and tau_c is such that the loss at th = 0 is D. The first
 * crack does most of the work. An open box still takes 2 dB away from pipes that would stand free.
 *
 * <p>Range: 5 dB. A wider box never lowers any band.
 *
 * <p>Source: an estimate from geometry; no published measurement was found.
 *
 * <p>Checked against: {@code ShuttersTest}.
 */
final class Shutters {

    private static final double OPEN_LOSS_DB = 2;
    private static final double ABSORPTION_OVER_FRONT = 0.5;

    private final double[][] passed;

    Shutters(SwellBox box) {
        passed = new double[BoxPosition.values().length][ThirdOctaves.COUNT];
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            double closedDb = Math.max(0, Table.closedLossDb(ThirdOctaves.centreHz(band)) - box.trimDb());
            for (BoxPosition position : BoxPosition.values()) {
                double lossDb = lossDb(closedDb, position.opening()) + OPEN_LOSS_DB;
                passed[position.ordinal()][band] = ThirdOctaves.power(-lossDb);
            }
        }
    }

    /** Share of the power that comes out, by band. */
    double[] passed(BoxPosition position) {
        return passed[position.ordinal()];
    }

    /** Loss in dB against the open box, for a loss when closed and an opening of 0 to 1. */
    static double lossDb(double closedDb, double opening) {
        double q = ABSORPTION_OVER_FRONT;
        double closed = q / (ThirdOctaves.power(closedDb) * (1 + q) - 1);
        double through = closed + (1 - closed) * (1 - Math.cos(opening * Math.PI / 2));
        return ThirdOctaves.levelDb((through + q) / through / (1 + q));
    }

    private static final class Table {
        private static final List<List<String>> ROWS = TableResource.rows("swell_box.csv");

        private static double closedLossDb(double frequencyHz) {
            double belowHz = hz(0);
            double belowDb = db(0);
            for (int i = 0; i < ROWS.size(); i++) {
                if (hz(i) >= frequencyHz) {
                    double share = hz(i) == belowHz ? 0 : Math.log(frequencyHz / belowHz) / Math.log(hz(i) / belowHz);
                    return belowDb + share * (db(i) - belowDb);
                }
                belowHz = hz(i);
                belowDb = db(i);
            }
            return belowDb;
        }

        private static double hz(int row) {
            return Double.parseDouble(ROWS.get(row).get(0));
        }

        private static double db(int row) {
            return Double.parseDouble(ROWS.get(row).get(1));
        }
    }
}
