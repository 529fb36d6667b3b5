package versewind.screen;

import java.util.List;
import java.util.Map;
import versewind.plan.History;
import versewind.plan.Place;

/** Saving, opening, making plans, asking what is to become of unsaved work, leaving. */
final class Filing {

    private static final Panel.Answer STAY =
            new Panel.Answer(Key.of(Key.Named.ESCAPE), "stay here", List.of(), Panel.Reply.BACK);

    private Filing() {}

    static void into(Map<Command, Handler> handlers) {
        handlers.put(Command.SAVE, Handler.work(Filing::save));
        handlers.put(Command.PLANS, state -> Step.to(state, new Effect.ListPlans()));
        handlers.put(Command.LEAVE, Filing::leave);
        handlers.put(Command.INTERRUPT, Filing::interrupt);
        handlers.put(Command.REPAINT, state -> Step.to(state, new Effect.Repaint()));
        handlers.put(Command.HELP, state -> Step.to(state.with(new Panel.Help(0))));
    }

    private static Step save(State state, Work work) {
        if (!work.history().isUnsaved()) {
            return Step.says(state, "All is saved already.");
        }
        return Step.to(state, new Effect.Save(work.plan(), List.of()));
    }

    private static Step leave(State state) {
        return afterAsking(state, new Effect.Quit());
    }

    /** Leaves the plan; a form, a list or the help is closed first, so that nothing typed is lost by one key. */
    private static Step interrupt(State state) {
        if (state.panel() instanceof Panel.Question) {
            return state.isUnsaved() ? Step.to(state) : Step.to(state, new Effect.Quit());
        }
        if (state.panel() instanceof Panel.None || state.work().isEmpty()) {
            return leave(state);
        }
        return Step.says(state.closed(), "Closed. Ctrl-C once more leaves.");
    }

    /** Does something that closes the plan, after asking what is to become of unsaved work. */
    static Step afterAsking(State state, Effect then) {
        if (!state.isUnsaved() || state.work().isEmpty()) {
            return Step.to(state.closed(), then);
        }
        Panel.Answer save = new Panel.Answer(
                Key.of('s'),
                "save, then go on",
                List.of(new Effect.Save(state.work().get().plan(), List.of(then))),
                Panel.Reply.BACK);
        Panel.Answer discard = new Panel.Answer(
                Key.of('d'), "go on without saving", List.of(new Effect.DropDraft(), then), Panel.Reply.BACK);
        return Step.to(state.with(
                new Panel.Question("This plan has changes that are not saved.", List.of(save, discard, STAY))));
    }

    static Step saved(State state, Input.Saved saved) {
        State next = state.work()
                .map(work -> state.with(
                        work.with(work.history().savedAs(saved.plan())).withoutDraft()))
                .orElse(state);
        return new Step(next.with(Notice.says("Saved.")), saved.then());
    }

    static Step saveRefused(State state, Input.SaveRefused refused) {
        Panel.Answer over = new Panel.Answer(
                Key.of('w'),
                "write ours over it",
                List.of(new Effect.SaveOver(refused.plan(), refused.then())),
                Panel.Reply.BACK);
        return Step.to(state.with(new Panel.Question(
                "The plan's file was changed by somebody else since it was opened here.", List.of(over, STAY))));
    }

    /** What went wrong is said in the last row, or, where that is too short for it, over the plan. */
    static Step failed(State state, String sentence) {
        if (Text.columns(sentence) <= state.columns() - 2 && state.work().isPresent()) {
            return Step.to(state.with(Notice.warns(sentence)));
        }
        Panel.Answer goOn = new Panel.Answer(
                Key.of(Key.Named.ENTER),
                state.work().isPresent() ? "go on" : "choose another plan",
                state.work().isPresent() ? List.of() : List.of(new Effect.ListPlans()),
                Panel.Reply.BACK);
        return Step.to(state.with(new Panel.Question(sentence, List.of(goOn))));
    }

    static Step plansListed(State state, Input.PlansListed listed) {
        return Step.to(state.with(chooser("Plans", listed.plans(), Panel.Choice.PLAN)));
    }

    static Step instrumentsListed(State state, Input.InstrumentsListed listed) {
        if (listed.instruments().isEmpty()) {
            return Step.to(state.closed().with(Notice.warns("There is no instrument yet in the folder instruments.")));
        }
        return Step.to(state.with(chooser("For which organ?", listed.instruments(), Panel.Choice.INSTRUMENT)));
    }

    private static Panel.Chooser chooser(String title, List<Input.Listed> listed, Panel.Choice choice) {
        List<Panel.Row> rows = listed.stream()
                .map(each -> new Panel.Row(each.id(), each.title(), each.detail()))
                .toList();
        return new Panel.Chooser(title, rows, TextLine.EMPTY, 0, choice);
    }

    static Step planOpened(State state, Input.PlanOpened opened) {
        Work work = new Work(
                opened.id(),
                opened.instrument(),
                opened.sound(),
                History.of(opened.plan()),
                Place.START,
                Work.Side.STOPS,
                0,
                opened.draft().filter(draft -> !draft.equals(opened.plan())));
        State next = state.closed().with(work).with(Notice.NONE);
        if (work.draft().isEmpty()) {
            return Step.to(next);
        }
        Panel.Answer takeUp = new Panel.Answer(Key.of('t'), "take it up", List.of(), Panel.Reply.TAKE_UP_DRAFT);
        Panel.Answer forget =
                new Panel.Answer(Key.of('f'), "forget it", List.of(new Effect.DropDraft()), Panel.Reply.FORGET_DRAFT);
        return Step.to(next.with(new Panel.Question(
                "Work on this plan was cut off before it was saved, and has been kept.", List.of(takeUp, forget))));
    }

    /** After a key while a question is asked. */
    static Step answered(State state, Panel.Question question, Key key) {
        for (Panel.Answer answer : question.answers()) {
            if (answer.key().equals(key)) {
                return new Step(replied(state.closed(), answer.reply()), answer.effects());
            }
        }
        return Step.to(state);
    }

    private static State replied(State state, Panel.Reply reply) {
        return switch (reply) {
            case BACK -> state;
            case FORGET_DRAFT ->
                state.work().map(work -> state.with(work.withoutDraft())).orElse(state);
            case TAKE_UP_DRAFT -> state.work().map(work -> takenUp(state, work)).orElse(state);
        };
    }

    /** The draft becomes the plan; the plan as it was saved stays what undo leads back to by saving nothing. */
    private static State takenUp(State state, Work work) {
        return work.draft()
                .map(draft -> state.with(work.with(new History(
                                        draft,
                                        work.history().saved(),
                                        work.history().done(),
                                        work.history().undone()))
                                .withoutDraft())
                        .with(Notice.says("Taken up; it is not saved yet.")))
                .orElse(state);
    }
}
