package versewind.screen;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import versewind.plan.Edit;
import versewind.plan.Feedback;
import versewind.plan.HeardAs;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.sound.Margin;

/** After the service: was the organ too soft, right or too strong, verse by verse. */
final class FeedbackCommands {

    private FeedbackCommands() {}

    static void into(Map<Command, Handler> handlers) {
        handlers.put(Command.HOW_IT_WAS, DeskCommands.desk(FeedbackCommands::open));
        Handler below = answers((state, work, panel) -> toRow(state, work, panel, panel.at() + 1));
        handlers.put(Command.ANSWER_BELOW, below);
        handlers.put(Command.ANSWER_BELOW_BY_PEDAL, below);
        handlers.put(Command.ANSWER_ABOVE, answers((state, work, panel) -> toRow(state, work, panel, panel.at() - 1)));
        for (Map.Entry<Command, HeardAs> each : Map.of(
                        Command.WAS_TOO_SOFT, HeardAs.TOO_SOFT,
                        Command.WAS_RIGHT, HeardAs.RIGHT,
                        Command.WAS_TOO_STRONG, HeardAs.TOO_STRONG)
                .entrySet()) {
            handlers.put(
                    each.getKey(),
                    answers((state, work, panel) -> answer(
                            state,
                            work,
                            panel,
                            Optional.of(
                                    new Feedback(each.getValue(), panel.notes().people(work))))));
        }
        handlers.put(Command.NO_ANSWER, answers((state, work, panel) -> answer(state, work, panel, Optional.empty())));
        handlers.put(Command.CLOSE_ANSWERS, answers((state, work, panel) -> state.with(new Panel.Desk(panel.notes()))));
    }

    @FunctionalInterface
    private interface OnAnswers {
        State on(State state, PlanEdit work, Panel.Answers panel);
    }

    private static Handler answers(OnAnswers handler) {
        return Handler.work(
                (state, work) -> state.panel() instanceof Panel.Answers panel ? handler.on(state, work, panel) : state);
    }

    /** The verses that are asked about: all but those in which the organ plays alone, too soft or too strong for nobody. */
    static List<VersePlace> asked(PlanEdit work) {
        int people = work.plan().heading().people();
        return ServiceOrder.places(work.plan()).stream()
                .filter(place -> work.sound()
                                .estimate(
                                        ServiceOrder.verse(work.plan(), place),
                                        people,
                                        work.plan().hymns().get(place.hymn()).tempo())
                                .margin()
                                .kind()
                        != Margin.Kind.ORGAN_ALONE)
                .toList();
    }

    /** The list at the first verse without an answer, or at its end. */
    static State open(State state, PlanEdit work, DeskNotes notes) {
        List<VersePlace> places = asked(work);
        if (places.isEmpty()) {
            return state.says("There is no verse to ask about.");
        }
        int at = 0;
        while (at < places.size() - 1
                && ServiceOrder.verse(work.plan(), places.get(at)).answer().isPresent()) {
            at++;
        }
        return state.with(new Panel.Answers(at, notes.with(DeskNotes.Leaving.NO)));
    }

    private static State toRow(State state, PlanEdit work, Panel.Answers panel, int row) {
        int last = asked(work).size() - 1;
        return state.with(new Panel.Answers(Math.max(0, Math.min(row, last)), panel.notes()));
    }

    /** The answer goes into the plan's file at once; if the plan had other changes that are not saved, beside it with those. */
    private static State answer(State state, PlanEdit work, Panel.Answers panel, Optional<Feedback> answer) {
        VersePlace place = asked(work).get(panel.at());
        Verse verse = ServiceOrder.verse(work.plan(), place);
        Edit edit = new Edit.SetVerse(place.hymn(), place.verse(), verse.withAnswer(answer));
        PlanEdit after = work.with(work.history().after(edit));
        State next = toRow(state, work, panel, panel.at() + (answer.isPresent() ? 1 : 0))
                .with(after);
        if (after.plan().equals(work.plan())) {
            return next;
        }
        return switch (panel.notes().opened()) {
            case ALONE, FROM_SAVED -> next.wants(new Effect.Save(after.plan(), List.of()));
            case FROM_UNSAVED ->
                next.with(Notice.says("Kept with the plan's other changes; there, "
                                + Command.SAVE.keys().get(0).name() + " saves them all."))
                        .wants(List.of(new Effect.KeepDraft(after.plan())));
        };
    }
}
