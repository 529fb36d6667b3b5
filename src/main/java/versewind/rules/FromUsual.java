package versewind.rules;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.DoubleFunction;
import versewind.organ.IndexSet;
import versewind.organ.Registration;
import versewind.plan.Verse;
import versewind.sound.OrganSound;

/**
 * A verse measured by a usual registration.
 *
 * @param isSame true if it is the usual registration itself
 * @param db level of the organ in the nave above that of the usual registration, in dB
 * @param steps how many steps of the {@link BuildingLine} it is above it, {@value #MOST_STEPS} at most, if both are on
 *     the line of the same keyboard and the level goes their way, by {@link DynamicSteps#LEAST_STEP_DB} for each at
 *     least
 */
public record FromUsual(boolean isSame, double db, OptionalInt steps) {

    /** Farther off nobody counts steps, and the level says more. */
    private static final int MOST_STEPS = 2;

    /**
     * Measures a verse.
     *
     * @param sound the instrument
     * @param usual the usual registration, as a verse
     * @param verse the verse
     * @param people at the service
     * @return empty if one of them is silent
     */
    public static Optional<FromUsual> of(OrganSound sound, Verse usual, Verse verse, int people) {
        boolean isSame =
                usual.hands().equals(verse.hands()) && usual.registration().equals(verse.registration());
        return sound.step(usual, verse, people)
                .map(level -> new FromUsual(
                        isSame, level.db(), isSame ? OptionalInt.empty() : steps(sound, usual, verse, level)));
    }

    private static OptionalInt steps(OrganSound sound, Verse usual, Verse verse, OrganSound.LevelStep level) {
        if (!usual.hands().equals(verse.hands())) {
            return OptionalInt.empty();
        }
        BuildingLine line = new BuildingLine(OrganFacts.of(sound), usual.hands(), IndexSet.EMPTY);
        Optional<BuildingLine.Rung> from = reached(line, usual.registration());
        Optional<BuildingLine.Rung> to = reached(line, verse.registration());
        if (from.isEmpty() || to.isEmpty()) {
            return OptionalInt.empty();
        }
        int steps = to.get().number() - from.get().number();
        boolean areHeard = Math.abs(steps) <= MOST_STEPS
                && steps * level.db() > 0
                && Math.abs(level.db()) >= Math.abs(steps) * DynamicSteps.LEAST_STEP_DB
                && Math.round(level.db()) != 0;
        return areHeard ? OptionalInt.of(steps) : OptionalInt.empty();
    }

    /** The rung that a registration has reached, if nothing of a later step is drawn over it. */
    private static Optional<BuildingLine.Rung> reached(BuildingLine line, Registration drawn) {
        return line.reached(drawn).filter(rung -> line.begun(drawn).stream()
                .allMatch(addition -> addition.step().compareTo(rung.step()) <= 0));
    }

    /**
     * In a few words: "a step above your usual, +2 dB".
     *
     * @param usual what the usual registration is called
     * @param signed a level with its sign
     */
    public String words(String usual, DoubleFunction<String> signed) {
        if (isSame) {
            return "as " + usual;
        }
        long whole = Math.round(Math.abs(db));
        String side = (db > 0 ? " above " : " below ") + usual;
        if (steps.isEmpty()) {
            return whole == 0 ? "level with " + usual : whole + " dB" + side;
        }
        int many = Math.abs(steps.getAsInt());
        return (many == 1 ? "a step" : many + " steps") + side + ", " + signed.apply(db) + " dB";
    }
}
