package versewind.screen.state;

import java.util.List;
import java.util.Optional;
import versewind.plan.Plan;

/** Leaving the program or what is open, after asking what is to become of unsaved work. */
public final class Leaving {

    public static final String INTERRUPT = "Ctrl-C";

    /** What is done then where the program is left. */
    public static final String LEAVE = "leave Versewind";

    private Leaving() {}

    /**
     * Does something that closes the plan, after asking what is to become of unsaved work.
     *
     * @param doing what is done then, in words that follow "save and": "leave"
     */
    public static State afterAsking(State state, String doing, Effect then) {
        State asking = state.top() instanceof Question ? state.close() : state;
        Optional<Screen> unsaved =
                state.screens().stream().filter(Screen::isUnsaved).findFirst();
        if (unsaved.isPresent()) {
            return unsaved.get().asked(asking, doing, then);
        }
        if (!state.isUnsaved() || state.work().isEmpty()) {
            return state.closed().wants(then);
        }
        Plan plan = state.work().get().plan();
        return asking.open(new Question(
                "This plan has unsaved changes.",
                List.of(
                        new Question.Answer(
                                "s",
                                "save and " + doing,
                                closed -> closed.wants(effects -> effects.save(plan, List.of(then)))),
                        new Question.Answer(
                                "x", "discard the changes and " + doing, closed -> closed.wants(Effects::dropDraft)
                                        .wants(then)),
                        Question.Answer.STAY)));
    }

    /** Leaves from anywhere, after asking what is to become of unsaved work and of what was typed into a form. */
    public static State interrupt(State state) {
        if (!state.isUnsaved() && state.top() instanceof FormBox form && form.isTyped()) {
            Question.Answer leave =
                    new Question.Answer("x", "discard it and leave", closed -> closed.wants(Effects::quit));
            return state.open(new Question("What you typed is not saved yet.", List.of(leave, Question.Answer.STAY)));
        }
        return afterAsking(state, LEAVE, Effects::quit);
    }

    static State hangup(State state) {
        State kept = state.work()
                .filter(work -> work.history().isUnsaved())
                .map(work -> state.wants(effects -> effects.keepDraft(work.history())))
                .orElse(state);
        return kept.wants(Effects::quit);
    }
}
