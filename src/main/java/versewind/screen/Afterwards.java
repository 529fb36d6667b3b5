package versewind.screen;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import versewind.plan.Answer;
import versewind.plan.Edit;
import versewind.plan.Heard;
import versewind.plan.Place;
import versewind.plan.Verse;
import versewind.sound.Margin;

/** After the service: was the organ too soft, right or too strong, verse by verse. */
final class Afterwards {

    private Afterwards() {}

    static void into(Map<Command, Handler> handlers) {
        handlers.put(Command.HOW_IT_WAS, Desking.desk(Afterwards::open));
        Handler below = answers((state, work, panel) -> toRow(state, work, panel, panel.at() + 1));
        handlers.put(Command.ANSWER_BELOW, below);
        handlers.put(Command.ANSWER_BELOW_BY_PEDAL, below);
        handlers.put(Command.ANSWER_ABOVE, answers((state, work, panel) -> toRow(state, work, panel, panel.at() - 1)));
        for (Map.Entry<Command, Heard> each : Map.of(
                        Command.WAS_TOO_SOFT, Heard.TOO_SOFT,
                        Command.WAS_RIGHT, Heard.RIGHT,
                        Command.WAS_TOO_STRONG, Heard.TOO_STRONG)
                .entrySet()) {
            handlers.put(
                    each.getKey(),
                    answers((state, work, panel) -> answer(
                            state,
                            work,
                            panel,
                            Optional.of(
                                    new Answer(each.getValue(), panel.notes().people(work))))));
        }
        handlers.put(Command.NO_ANSWER, answers((state, work, panel) -> answer(state, work, panel, Optional.empty())));
        handlers.put(
                Command.CLOSE_ANSWERS,
                answers((state, work, panel) -> Step.to(state.with(new Panel.Desk(panel.notes())))));
    }

    @FunctionalInterface
    private interface OnAnswers {
        Step on(State state, Work work, Panel.Answers panel);
    }

    private static Handler answers(OnAnswers handler) {
        return Handler.work((state, work) ->
                state.panel() instanceof Panel.Answers panel ? handler.on(state, work, panel) : Step.to(state));
    }

    /** The verses that are asked about: all but those in which the organ plays alone, too soft or too strong for nobody. */
    static List<Place> asked(Work work) {
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
    static Step open(State state, Work work, DeskNotes notes) {
        List<Place> places = asked(work);
        if (places.isEmpty()) {
            return Step.says(state, "There is no verse to ask about.");
        }
        int at = 0;
        while (at < places.size() - 1
                && ServiceOrder.verse(work.plan(), places.get(at)).answer().isPresent()) {
            at++;
        }
        return Step.to(state.with(new Panel.Answers(at, notes.with(DeskNotes.Leaving.NO))));
    }

    private static Step toRow(State state, Work work, Panel.Answers panel, int row) {
        int last = asked(work).size() - 1;
        return Step.to(state.with(new Panel.Answers(Math.max(0, Math.min(row, last)), panel.notes())));
    }

    /** The answer goes into the plan's file at once; if the plan had other changes that are not saved, beside it with those. */
    private static Step answer(State state, Work work, Panel.Answers panel, Optional<Answer> answer) {
        Place place = asked(work).get(panel.at());
        Verse verse = ServiceOrder.verse(work.plan(), place);
        Edit edit = new Edit.SetVerse(place.hymn(), place.verse(), verse.withAnswer(answer));
        Work after = work.with(work.history().after(edit));
        State next = toRow(state, work, panel, panel.at() + (answer.isPresent() ? 1 : 0))
                .state()
                .with(after);
        if (after.plan().equals(work.plan())) {
            return Step.to(next);
        }
        return switch (panel.notes().opened()) {
            case ALONE, FROM_SAVED -> Step.to(next, new Effect.Save(after.plan(), List.of()));
            case FROM_UNSAVED ->
                new Step(
                        next.with(Notice.says("Kept with the plan's other changes; there, "
                                + Command.SAVE.keys().get(0).name() + " saves them all.")),
                        List.of(new Effect.KeepDraft(after.plan())));
        };
    }
}
