package versewind.proposal;

import versewind.organ.IndexSet;
import versewind.rules.OrganFacts;
import versewind.rules.StopClass;

/** The classes of stops that may be drawn for a verse: those of the organ that are not locked out. */
final class OpenClasses {

    private final boolean[] any = new boolean[StopClass.COUNT];
    private final boolean[][] inDivision;

    OpenClasses(OrganFacts organ, IndexSet never) {
        inDivision = new boolean[organ.organ().divisions().size()][StopClass.COUNT];
        for (int stop = 0; stop < organ.stops(); stop++) {
            if (!never.contains(stop)) {
                int layer = organ.layer(stop).ordinal();
                any[layer] = true;
                inDivision[organ.divisionOf(stop)][layer] = true;
            }
        }
    }

    boolean has(StopClass layer) {
        return any[layer.ordinal()];
    }

    boolean has(int division, StopClass layer) {
        return inDivision[division][layer.ordinal()];
    }

    /** True for a division with a 2 ft flue. */
    boolean hasTwo(int division) {
        return has(division, StopClass.PRINCIPAL_2) || has(division, StopClass.FLUTE_2);
    }
}
