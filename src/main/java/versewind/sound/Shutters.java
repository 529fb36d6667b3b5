package versewind.sound;

import java.util.List;
import versewind.acoustics.TableResource;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.BoxPosition;
import versewind.organ.SwellBox;

/**
 * Loss of level through a swell box, by band and position. An estimate.
 *
 * <p>Closed, the loss D against open is that of {@code swell_box.csv}, interpolated over log frequency, minus the trim
 * of the box, at least 0. In between, the shutters stand at an angle th, 0 closed and 90 degrees open, and transmit tau
 * = tau_c + (1 - tau_c) (1 - cos th); the loss is 10 lg{[(tau + q) / tau] / (1 + q)} dB, with q the absorption area
 * inside the box over the area of its front, and tau_c such that the loss at th = 0 is D. Most of the change is in the
 * first opening. An open box loses 2 dB against pipes that stand free.
 *
 * <p>Range: within 5 dB (an estimate). Opening a box never lowers any band.
 *
 * <p>Source: an estimate from geometry; no published measurement was found.
 *
 * <p>Checked against: {@code ShuttersTest}.
 */
final class Shutters {

    private static final double OPEN_LOSS_DB = 2;
    private static final double ABSORPTION_OVER_FRONT = 0.5;

    /** Step of the trim for the numerical derivative, in dB. */
    private static final double STEP_DB = 1;

    private final double[][] passed;
    private final double[][] slope;

    Shutters(SwellBox box) {
        this(closedLossDb(box));
    }

    /** Shutters that take this many dB away when closed, by band. */
    Shutters(double[] closedLossDb) {
        passed = new double[BoxPosition.values().length][ThirdOctaves.COUNT];
        slope = new double[BoxPosition.values().length][ThirdOctaves.COUNT];
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            double closedDb = Math.max(0, closedLossDb[band]);
            double moreDb = Math.max(0, closedLossDb[band] + STEP_DB);
            double lessDb = Math.max(0, closedLossDb[band] - STEP_DB);
            for (BoxPosition position : BoxPosition.values()) {
                double lossDb = lossDb(closedDb, position.opening()) + OPEN_LOSS_DB;
                passed[position.ordinal()][band] = ThirdOctaves.dbToPower(-lossDb);
                slope[position.ordinal()][band] =
                        (lossDb(moreDb, position.opening()) - lossDb(lessDb, position.opening())) / (2 * STEP_DB);
            }
        }
    }

    /** Loss of a closed box in dB by band; below 0 where its trim takes away more than the table has. */
    static double[] closedLossDb(SwellBox box) {
        double[] lossDb = new double[ThirdOctaves.COUNT];
        for (int band = 0; band < lossDb.length; band++) {
            lossDb[band] = Table.closedLossDb(band) - box.trimDb();
        }
        return lossDb;
    }

    /** Share of the power that comes out, by band. */
    double[] passed(BoxPosition position) {
        return passed[position.ordinal()];
    }

    /**
     * How many dB more come out for each dB of trim, by band: 1 where a closed box lets out what it lets out, 0 open.
     */
    double[] slope(BoxPosition position) {
        return slope[position.ordinal()];
    }

    /** Loss against the open box in dB, from the loss when closed and an opening of 0 to 1. */
    static double lossDb(double closedDb, double opening) {
        double q = ABSORPTION_OVER_FRONT;
        double closed = q / (ThirdOctaves.dbToPower(closedDb) * (1 + q) - 1);
        double through = closed + (1 - closed) * (1 - Math.cos(opening * Math.PI / 2));
        return ThirdOctaves.powerToDb((through + q) / through / (1 + q));
    }

    /** The table: by octaves from 31.5 Hz, the middle third of the first octave. */
    private static final class Table {
        private static final double[] LOSS_DB = read();

        private static double[] read() {
            List<List<String>> rows = TableResource.rows("swell_box.csv");
            double[] lossDb = new double[rows.size()];
            for (int octave = 0; octave < lossDb.length; octave++) {
                lossDb[octave] = Double.parseDouble(rows.get(octave).get(1));
            }
            return lossDb;
        }

        private static double closedLossDb(int band) {
            double octave = Math.max(0, Math.min(LOSS_DB.length - 1, (band - 1) / 3.0));
            int below = (int) octave;
            int above = Math.min(LOSS_DB.length - 1, below + 1);
            return LOSS_DB[below] + (octave - below) * (LOSS_DB[above] - LOSS_DB[below]);
        }
    }
}
