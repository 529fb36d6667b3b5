package versewind.screen;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import versewind.plan.Edit;
import versewind.plan.History;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.VersePlace;
import versewind.sheet.Sheet;
import versewind.sheet.SheetHtml;
import versewind.sheet.SheetOptions;
import versewind.workshop.DraftHistory;

/** Saving, opening, making plans, asking what is to become of unsaved work, leaving. */
final class FileCommands {

    private FileCommands() {}

    static void into(Map<Command, Handler> handlers) {
        handlers.put(Command.SAVE, Handler.work(FileCommands::save));
        handlers.put(
                Command.SAVE_UNDER,
                Handler.work((state, work) -> Transition.to(state.with(ServiceForm.ofSaveUnder(work)))));
        handlers.put(Command.WRITE_SHEET, Handler.work(FileCommands::writeSheet));
        handlers.put(Command.LEAVE, FileCommands::leave);
        handlers.put(Command.INTERRUPT, FileCommands::interrupt);
        handlers.put(Command.REPAINT, state -> Transition.to(state, new Effect.Repaint()));
        handlers.put(Command.HELP, state -> Transition.to(state.with(new Panel.Help(0))));
    }

    private static Transition save(State state, PlanEdit work) {
        if (!work.history().isUnsaved()) {
            return Transition.says(state, "All is saved already.");
        }
        return Transition.to(state, new Effect.Save(work.plan(), List.of()));
    }

    /** Saves the plan under another title, in a file of its own. */
    static Transition saveUnder(State state, PlanEdit work, String title) {
        ServiceHeading heading = work.plan().heading().withTitle(title);
        PlanEdit after =
                work.with(work.history().after(new Edit.SetHeading(heading))).at(work.place());
        return Transition.to(state.with(after), new Effect.SaveUnder(after.plan()));
    }

    private static Transition writeSheet(State state, PlanEdit work) {
        Sheet sheet = Sheet.of(work.plan(), work.sound(), SheetOptions.USUAL);
        return Transition.to(state, new Effect.WriteSheet(SheetHtml.of(sheet)));
    }

    private static Transition leave(State state) {
        return afterAsking(state, new Effect.Quit());
    }

    /** Leaves from anywhere, after asking what is to become of unsaved work and of what was typed into a form. */
    private static Transition interrupt(State state) {
        if (!state.isUnsaved() && state.panel() instanceof Panel.Form form && form.isTyped()) {
            Panel.Answer leave =
                    new Panel.Answer(Key.of('d'), "leave without it", List.of(new Effect.Quit()), Panel.Reply.BACK);
            return Transition.to(state.with(new Panel.Question(
                    "What was typed here is not kept yet.", List.of(leave, Panel.Answer.STAY), form)));
        }
        return leave(state);
    }

    /** Does something that closes the plan, after asking what is to become of unsaved work. */
    static Transition afterAsking(State state, Effect then) {
        if (state.bench().filter(bench -> bench.history().isUnsaved()).isPresent()) {
            return OrganEditSaving.asked(state, then);
        }
        if (!state.isUnsaved() || state.work().isEmpty()) {
            return Transition.to(state.closed(), then);
        }
        Panel.Answer save = new Panel.Answer(
                Key.of('s'),
                "save, then go on",
                List.of(new Effect.Save(state.work().get().plan(), List.of(then))),
                Panel.Reply.BACK);
        Panel.Answer discard = new Panel.Answer(
                Key.of('d'), "go on without saving", List.of(new Effect.DropDraft(), then), Panel.Reply.BACK);
        Panel under = state.behindQuestion();
        return Transition.to(state.with(new Panel.Question(
                "This plan has changes that are not saved.", List.of(save, discard, Panel.Answer.STAY), under)));
    }

    static Transition saved(State state, Event.Saved saved) {
        State next = state.work()
                .map(work -> state.with(
                        work.with(work.history().savedAs(saved.plan())).withoutDraft()))
                .orElse(state);
        return new Transition(next.with(Notice.says("Saved.")), saved.then());
    }

    static Transition saveRefused(State state, Event.SaveRefused refused) {
        Panel.Answer over = new Panel.Answer(
                Key.of('w'),
                "write ours over it",
                List.of(new Effect.SaveOver(refused.plan(), refused.then())),
                Panel.Reply.BACK);
        return Transition.to(state.with(new Panel.Question(
                "The plan's file was changed by somebody else since it was opened here.",
                List.of(over, Panel.Answer.STAY),
                state.panel())));
    }

    /** What went wrong is said below the plan; where none is open, instead of it, with the way back to the list. */
    static Transition failed(State state, String sentence) {
        if (state.work().isPresent() || state.bench().isPresent() || state.panel() instanceof Panel.Library) {
            return Transition.to(state.with(Notice.warns(sentence)));
        }
        Panel.Answer choose = new Panel.Answer(
                Key.of(Key.Named.ENTER), "choose another plan", List.of(new Effect.ListPlans()), Panel.Reply.BACK);
        return Transition.to(
                state.with(new Panel.Question(sentence, List.of(choose), new Panel.Library(LibraryState.UNREAD))));
    }

    static Transition instrumentsListed(State state, Event.InstrumentsListed listed) {
        if (listed.instruments().isEmpty()) {
            return Transition.to(
                    state.closed().with(Notice.warns("There is no instrument yet in the folder instruments.")));
        }
        return Transition.to(state.with(new Panel.Chooser(
                "For which organ?", Panel.rows(listed.instruments()), TextLine.EMPTY, 0, new Panel.Choice.Organ())));
    }

    /** The plan goes on in its new file; what had been kept beside the old one is no longer wanted there. */
    static Transition savedUnder(State state, Event.SavedUnder saved) {
        return Transition.to(state.work()
                .map(work -> state.with(work.under(saved.id(), work.history().savedAs(saved.plan()))))
                .orElse(state)
                .with(Notice.says("Saved as " + saved.id() + ".json, which is now worked on.")));
    }

    static Transition planOpened(State state, Event.PlanOpened opened) {
        boolean wasNeverSaved = opened.draft().equals(Optional.of(opened.plan()));
        PlanEdit work = new PlanEdit(
                opened.id(),
                opened.instrument(),
                opened.sound(),
                wasNeverSaved ? History.ofUnsaved(opened.plan()) : History.of(opened.plan()),
                VersePlace.START,
                PlanEdit.Side.STOPS,
                0,
                wasNeverSaved ? Optional.empty() : opened.draft());
        State next = state.closed().with(work).with(Notice.NONE);
        if (wasNeverSaved) {
            return Transition.says(next, "This plan has no file; only unsaved work on it was kept.");
        }
        return Transition.to(
                work.draft().map(draft -> next.with(aboutDraft(opened, draft))).orElse(next));
    }

    /** What is to become of work that was kept; it can be taken up if it is for the organ that is open. */
    private static Panel.Question aboutDraft(Event.PlanOpened opened, Plan draft) {
        Panel.Answer takeUp = new Panel.Answer(Key.of('t'), "take it up", List.of(), Panel.Reply.TAKE_UP_DRAFT);
        Panel.Answer forget =
                new Panel.Answer(Key.of('f'), "forget it", List.of(new Effect.DropDraft()), Panel.Reply.FORGET_DRAFT);
        Panel.Answer leave = new Panel.Answer(Key.of('q'), "leave", List.of(new Effect.Quit()), Panel.Reply.BACK);
        boolean fits = draft.instrument().equals(opened.plan().instrument()) && draft.fits(opened.instrument());
        return fits
                ? new Panel.Question(
                        "Work on this plan was cut off before it was saved, and has been kept.",
                        List.of(takeUp, forget),
                        new Panel.None())
                : new Panel.Question(
                        "Unsaved work on this plan was kept, but it is for another organ: " + draft.instrument() + ".",
                        List.of(forget, leave),
                        new Panel.None());
    }

    /** After a key while a question is asked. */
    static Transition answered(State state, Panel.Question question, Key key) {
        for (Panel.Answer answer : question.answers()) {
            if (answer.key().equals(key)) {
                return new Transition(replied(state.with(question.under()), answer.reply()), answer.effects());
            }
        }
        return Transition.to(state);
    }

    private static State replied(State state, Panel.Reply reply) {
        return switch (reply) {
            case BACK -> state;
            case FORGET_DRAFT ->
                state.work().map(work -> state.with(work.withoutDraft())).orElse(state);
            case TAKE_UP_ORGAN ->
                state.with(state.bench().map(bench -> bench.with(bench.history().redo())));
            case DROP_ORGAN ->
                state.with(state.bench()
                        .map(bench -> bench.with(DraftHistory.of(bench.history().saved()))));
            case TAKE_UP_DRAFT -> state.work().map(work -> takenUp(state, work)).orElse(state);
        };
    }

    /** The draft becomes the plan; the plan as it was saved stays what undo leads back to by saving nothing. */
    private static State takenUp(State state, PlanEdit work) {
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
