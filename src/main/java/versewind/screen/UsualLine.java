package versewind.screen;

import java.util.Optional;
import versewind.calibration.Experience;
import versewind.calibration.HeardRegistration;
import versewind.plan.Verse;
import versewind.rules.FromUsual;

/** A verse beside the usual registration, in a few words: "a step above your usual, +2 dB". */
final class UsualLine {

    private UsualLine() {}

    /** Empty where no usual registration applies, or one of them is silent. */
    static Optional<String> of(State state, PlanEdit work, Verse verse) {
        int people = work.plan().heading().people();
        Experience known = work.organ().experience();
        Optional<HeardRegistration> nearest =
                known.nearest(verse, verse.people().orElse(people));
        if (nearest.isEmpty()) {
            return Optional.empty();
        }
        HeardRegistration usual = nearest.get();
        String name = known.usual().size() == 1 ? "your usual" : "\"" + usual.name() + "\"";
        boolean isSame = usual.registration().equals(verse.registration())
                && usual.hands().equals(verse.hands());
        return isSame
                ? Optional.of("as " + name)
                : FromUsual.of(work.sound(), usual.verse(), verse, people).map(from -> words(state, from, name));
    }

    private static String words(State state, FromUsual from, String name) {
        String level = StatusView.signed(state, from.db()) + " dB";
        if (from.steps().isEmpty()) {
            return Math.round(from.db()) == 0 ? "level with " + name : level + " from " + name;
        }
        int steps = Math.abs(from.steps().getAsInt());
        return (steps == 1 ? "a step" : steps + " steps") + (from.db() > 0 ? " above " : " below ") + name + ", "
                + level;
    }
}
