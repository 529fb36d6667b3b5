package versewind.sound;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Supplier;
import versewind.plan.Sung;
import versewind.plan.Verse;

/**
 * The estimates made last, by all that they depend on: a key changes one verse of a plan, and the others are asked for
 * again in every frame and by every rule. Not thread-safe.
 */
final class EstimatesMade<T> {

    /** Enough for a long service and what rules try out in it. */
    private static final int MOST = 512;

    private final Map<Asked, T> made = new LinkedHashMap<>(MOST, 0.75f, true) {

        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Asked, T> eldest) {
            return size() > MOST;
        }
    };

    /** What is estimated of a verse, made if it is not kept. */
    T get(Verse verse, int servicePeople, OptionalInt tempo, Supplier<T> making) {
        Asked asked = new Asked(verse, servicePeople, tempo);
        T kept = made.get(asked);
        if (kept == null) {
            kept = making.get();
            made.put(asked, kept);
        }
        return kept;
    }

    /**
     * What an estimate depends on: of the verse, what is played and sung. Its methods are written out, because a
     * record's own are slow until compiled.
     */
    private record Asked(Verse verse, int servicePeople, OptionalInt tempo) {

        @Override
        public int hashCode() {
            return 31 * (31 * verse.registration().hashCode() + verse.sungBy().ordinal()) + servicePeople;
        }

        @Override
        public boolean equals(Object object) {
            return object instanceof Asked other
                    && servicePeople == other.servicePeople
                    && tempo.equals(other.tempo)
                    && isSame(verse, other.verse);
        }

        private static boolean isSame(Verse one, Verse other) {
            return one.kind().isOrganAlone() == other.kind().isOrganAlone()
                    && isSame(one.sung(), other.sung())
                    && one.hands().layout() == other.hands().layout()
                    && one.hands().right() == other.hands().right()
                    && one.hands().left() == other.hands().left()
                    && one.registration().equals(other.registration());
        }

        private static boolean isSame(Sung one, Sung other) {
            return one.by() == other.by()
                    && one.singing() == other.singing()
                    && one.people().equals(other.people())
                    && one.share().inTen() == other.share().inTen();
        }
    }
}
