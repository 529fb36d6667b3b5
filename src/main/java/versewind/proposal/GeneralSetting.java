package versewind.proposal;

import versewind.organ.IndexSet;
import versewind.organ.Registration;

/**
 * What a general piston sets: everything that is drawn, but not the boxes.
 *
 * @param stops indices of the stops drawn
 * @param couplers indices of the couplers drawn
 * @param tremulants indices of the tremulants drawn
 */
record GeneralSetting(IndexSet stops, IndexSet couplers, IndexSet tremulants) {

    static GeneralSetting of(Registration drawn) {
        return new GeneralSetting(drawn.stops(), drawn.couplers(), drawn.tremulants());
    }
}
