package versewind.screen.state;

import java.util.List;
import java.util.Optional;
import versewind.calibration.Experience;
import versewind.plan.Feedback;
import versewind.plan.HeardAs;
import versewind.plan.Verse;
import versewind.sound.Balance;

/** What the organist says of the verses after the service, and keeping it. */
public final class VerseFeedbackCommands {
    private VerseFeedbackCommands() {}

    /** From nothing said to too soft, right, too strong, nothing said. */
    public static State answer(State state, PlanEdit work, Verse verse) {
        if (work.estimate(verse).balance().kind() == Balance.Kind.ORGAN_ALONE) {
            return state.says("The organ plays alone here; nobody sings.");
        }
        Optional<Feedback> next = next(verse, work.plan().heading().people());
        State step = PlanChanges.change(state, work, verse.withAnswer(next));
        return step.says(next.map(answer -> recorded(verse, answer)).orElse("No feedback on " + verse.label() + "."));
    }

    /** What was recorded at once, what the key records next, and how it is undone or kept. */
    private static String recorded(Verse verse, Feedback answer) {
        String again = next(verse.withAnswer(Optional.of(answer)), answer.present())
                .map(then -> then.heard().word())
                .orElse("none");
        return "Recorded: " + verse.label() + " was " + answer.heard().word() + ", " + answer.present()
                + " present. y again: " + again + "; u: undo; Y: keep it.";
    }

    private static Optional<Feedback> next(Verse verse, int present) {
        int at = verse.answer().map(answer -> answer.heard().ordinal() + 1).orElse(0);
        int then = verse.answer().map(Feedback::present).orElse(present);
        return at < HeardAs.values().length ? Optional.of(new Feedback(HeardAs.values()[at], then)) : Optional.empty();
    }

    /** Keeps the feedback on this service with the organ, so that the next service begins with it. */
    public static State keep(State state, PlanEdit work) {
        if (work.plan().answered().isEmpty()) {
            return state.says("No feedback recorded yet. Press y to record it for this verse.");
        }
        Experience known = work.organ().experience();
        if (known.unkept(work.plan()).isEmpty()) {
            return state.says("The feedback on this service is kept with the organ already.");
        }
        return state.wants(effects -> effects.keepExperience(known.keepingAnswers(work.plan()), Optional.of(known)));
    }

    /** Asks, once for all that is new, whether to keep the feedback on this service with the organ. */
    public static State askedToKeep(State state) {
        return state.onWork(work -> {
            int news = work.organ().experience().unkept(work.plan()).size();
            if (news == 0) {
                return state;
            }
            return state.open(new Question(
                    "Keep the feedback on " + (news == 1 ? "one verse" : news + " verses") + " with "
                            + work.instrument().name() + "? The next service then begins with it.",
                    List.of(
                            new Question.Answer(
                                    "Enter", "yes, keep it", closed -> closed.onWork(now -> keep(closed, now))),
                            new Question.Answer("Esc", "not now", closed -> closed))));
        });
    }
}
