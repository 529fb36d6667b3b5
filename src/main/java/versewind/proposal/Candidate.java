package versewind.proposal;

/**
 * A draft as a verse judges it.
 *
 * @param sketch the draft and its sound
 * @param points what speaks against it
 * @param isSound whether it breaks no rule that nobody breaks
 * @param balance its balance, in the unit of {@link Target}
 * @param levelDba its level in dB(A)
 * @param heard where a change of it is heard
 */
record Candidate(Sketch sketch, double points, boolean isSound, double balance, double levelDba, Heard heard) {

    Draft draft() {
        return sketch.draft();
    }

    Candidate with(double otherPoints) {
        return new Candidate(sketch, otherPoints, isSound, balance, levelDba, heard);
    }

    GeneralSetting setting() {
        return GeneralSetting.of(draft().registration());
    }
}
