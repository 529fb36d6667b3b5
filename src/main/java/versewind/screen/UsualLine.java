package versewind.screen;

import java.util.Optional;
import versewind.calibration.Experience;
import versewind.plan.Verse;
import versewind.rules.FromUsual;

/** A verse beside the usual registration, in a few words: "a step above your usual, +2 dB". */
final class UsualLine {

    private UsualLine() {}

    /** Empty where no usual registration applies, or one of them is silent. */
    static Optional<String> of(State state, PlanEdit work, Verse verse) {
        int people = work.plan().heading().people();
        Experience known = work.organ().experience();
        return known.nearest(verse, verse.people().orElse(people))
                .flatMap(usual -> FromUsual.of(work.sound(), usual.verse(), verse, people)
                        .map(from -> from.words(known.called(usual), db -> StatusView.signed(state, db))));
    }
}
