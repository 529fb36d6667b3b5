package versewind.proposal;

import versewind.organ.IndexSet;

/**
 * A draft as a verse judges it.
 *
 * @param sketch the draft and its sound
 * @param points what speaks against it by itself
 * @param balance its balance, in the unit of {@link Target}
 * @param levelDba its level in dB(A)
 * @param boxes bits of the divisions whose boxes are heard
 * @param stopsHeard all stops of the divisions that are played
 * @param couplersHeard all couplers of the keys that are played
 */
record Candidate(
        Sketch sketch,
        double points,
        double balance,
        double levelDba,
        long boxes,
        IndexSet stopsHeard,
        IndexSet couplersHeard) {

    Draft draft() {
        return sketch.draft();
    }

    Candidate with(double otherPoints) {
        return new Candidate(sketch, otherPoints, balance, levelDba, boxes, stopsHeard, couplersHeard);
    }

    boolean hearsBox(int division) {
        return (boxes & 1L << division) != 0;
    }

    GeneralSetting setting() {
        return GeneralSetting.of(draft().registration());
    }
}
