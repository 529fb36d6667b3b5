package versewind.proposal;

import versewind.organ.Knobs;

/**
 * A draft as a verse judges it.
 *
 * @param sketch the draft and its sound
 * @param points what speaks against it
 * @param isSound whether it breaks no rule that nobody breaks, and is near to what suits the verse
 * @param isAtEase whether a little more or less would do as well
 * @param balance its balance, in the unit of {@link Target}
 * @param levelDba its level in dB(A)
 * @param kinds bits of the classes of stops that the hands sound
 * @param heard where a change of it is heard
 */
record Candidate(
        Sketch sketch,
        double points,
        boolean isSound,
        boolean isAtEase,
        double balance,
        double levelDba,
        long kinds,
        Heard heard) {

    /** A difference that nobody hears as one, in dB. */
    private static final double UNHEARD_DB = 1;

    /** True if another is the same to the ear, or goes by the same name. */
    boolean isLike(Candidate other) {
        boolean isUnheard = Math.abs(levelDba - other.levelDba) < UNHEARD_DB && kinds == other.kinds;
        return sketch.sound().isLike(other.sketch.sound())
                || (isUnheard && draft().hands().equals(other.draft().hands()));
    }

    Draft draft() {
        return sketch.draft();
    }

    Candidate with(double otherPoints) {
        return new Candidate(sketch, otherPoints, isSound, isAtEase, balance, levelDba, kinds, heard);
    }

    Knobs setting() {
        return Knobs.drawn(draft().registration());
    }
}
