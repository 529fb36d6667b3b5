package versewind.screen;

import java.util.Optional;
import versewind.plan.Feedback;
import versewind.plan.HeardAs;
import versewind.plan.Verse;
import versewind.sound.Margin;

/** What the organist says of the verses after the service, and heeding it. */
final class VerseFeedbackCommands {
    private VerseFeedbackCommands() {}

    /** From nothing said to too soft, right, too strong, nothing said. */
    static State answer(State state, PlanEdit work, Verse verse) {
        if (work.estimate(verse).margin().kind() == Margin.Kind.ORGAN_ALONE) {
            return state.says("The organ plays alone here; nobody sings.");
        }
        Optional<Feedback> next = next(verse, work.plan().heading().people());
        State step = PlanChanges.change(state, work, verse.withAnswer(next));
        String said = next.map(
                        answer -> verse.label() + " was " + answer.heard().word() + ", with " + answer.present()
                                + " present." + (work.isWithFeedback() ? "" : " Press Y to use it in the estimates."))
                .orElse("No feedback on " + verse.label() + ".");
        return step.says(said);
    }

    private static Optional<Feedback> next(Verse verse, int present) {
        int at = verse.answer().map(answer -> answer.heard().ordinal() + 1).orElse(0);
        int then = verse.answer().map(Feedback::present).orElse(present);
        return at < HeardAs.values().length ? Optional.of(new Feedback(HeardAs.values()[at], then)) : Optional.empty();
    }

    static State heed(State state, PlanEdit work) {
        if (work.isWithFeedback()) {
            return state.with(work.withoutFeedback()).says("Feedback is no longer used.");
        }
        int answered = work.plan().answered().size();
        if (answered == 0) {
            return state.says("No feedback recorded yet. Press y to record it for this verse.");
        }
        return state.with(work.withFeedback())
                .says("Feedback on " + (answered == 1 ? "one verse" : answered + " verses")
                        + " is used: estimates are updated and more certain.");
    }
}
