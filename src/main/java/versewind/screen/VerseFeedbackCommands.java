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
            return state.says("The organ plays alone here; there is nobody it could be too soft or too strong for.");
        }
        Optional<Feedback> next = next(verse, work.plan().heading().people());
        State step = PlanChanges.change(state, work, verse.withAnswer(next));
        String said = next.map(
                        answer -> verse.label() + " was " + answer.heard().word() + ", with " + answer.present()
                                + " present." + (work.isWithFeedback() ? "" : " Y takes it into account."))
                .orElse("Nothing is said of " + verse.label() + ".");
        return step.says(said);
    }

    private static Optional<Feedback> next(Verse verse, int present) {
        int at = verse.answer().map(answer -> answer.heard().ordinal() + 1).orElse(0);
        int then = verse.answer().map(Feedback::present).orElse(present);
        return at < HeardAs.values().length ? Optional.of(new Feedback(HeardAs.values()[at], then)) : Optional.empty();
    }

    static State heed(State state, PlanEdit work) {
        if (work.isWithFeedback()) {
            return state.with(work.withoutFeedback())
                    .says("What was said of the verses is not taken into account any more.");
        }
        int answered = work.plan().answered().size();
        if (answered == 0) {
            return state.says("Of no verse is it said yet how it was. y says it of this one.");
        }
        return state.with(work.withFeedback())
                .says("What was said of " + (answered == 1 ? "one verse" : answered + " verses")
                        + " is taken into account: levels move to it and are surer.");
    }
}
