package versewind.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** Receives the rows that speak against a draft. */
interface Rows {

    /**
     * Adds a row.
     *
     * @param kind of what it is
     * @param points what it costs; nothing is added for 0
     * @param sentence says it; asked for only where it is told
     */
    void add(PartKind kind, double points, Supplier<String> sentence);

    /** Adds up the points. */
    final class Sum implements Rows {
        /** Cost from which a verdict is that of a lead that is lost, or the like. */
        private static final double LOST = 5;

        private double points;
        private boolean isSound = true;

        @Override
        public void add(PartKind kind, double more, Supplier<String> sentence) {
            points += more;
            isSound &= more == 0 || (kind != PartKind.FAULT && (kind != PartKind.VERDICT || more < LOST));
        }

        /** True while no rule is broken that nobody breaks, and the verdict is not the worst. */
        boolean isSound() {
            return isSound;
        }

        double points() {
            return points;
        }
    }

    /** Keeps every row with its sentence. */
    final class Told implements Rows {
        private final List<ScorePart> parts = new ArrayList<>();

        @Override
        public void add(PartKind kind, double points, Supplier<String> sentence) {
            if (points > 0) {
                parts.add(new ScorePart(kind, points, sentence.get()));
            }
        }

        Score score() {
            return new Score(parts);
        }
    }
}
