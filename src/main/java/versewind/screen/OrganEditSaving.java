package versewind.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import versewind.organ.Instrument;
import versewind.workshop.Change;
import versewind.workshop.Problem;

/** Taking an organ to the bench, saving what was changed of it, and leaving it. */
final class OrganEditSaving {

    private OrganEditSaving() {}

    static void into(Map<Command, Handler> handlers) {
        handlers.put(Command.SAVE_ORGAN, OrganEditCommands.bench(OrganEditSaving::save));
        handlers.put(Command.CLOSE_ORGAN, OrganEditCommands.bench(OrganEditSaving::close));
    }

    static Transition opened(State state, Event.OrganOpened opened) {
        OrganEdit bench = OrganEdit.of(opened.id(), opened.organ());
        State next = state.closed().with(Notice.says(opened.sentence()));
        return opened.draft()
                .map(draft ->
                        aboutDraft(next, bench.with(bench.history().after(draft).undo())))
                .orElseGet(() -> Transition.to(next.with(Optional.of(bench))));
    }

    /** What is to become of work that was kept: until then it stands as what could be done again. */
    private static Transition aboutDraft(State state, OrganEdit bench) {
        Panel.Answer takeUp = new Panel.Answer(Key.of('t'), "take it up", List.of(), Panel.Reply.TAKE_UP_ORGAN);
        Panel.Answer forget = new Panel.Answer(
                Key.of('f'), "forget it", List.of(new Effect.DropOrganDraft()), Panel.Reply.DROP_ORGAN);
        return Transition.to(state.with(Optional.of(bench))
                .with(new Panel.Question(
                        "Work on this organ was cut off before it was saved, and has been kept.",
                        List.of(takeUp, forget),
                        new Panel.None())));
    }

    private static Transition save(State state, OrganEdit bench) {
        List<Problem> problems = bench.problems();
        if (!problems.isEmpty()) {
            String more = problems.size() == 1 ? "" : " (and " + (problems.size() - 1) + " more)";
            return Transition.to(state.with(Optional.of(bench.at(problems.get(0).line())))
                    .with(Notice.warns("Not saved. " + problems.get(0).sentence() + more)));
        }
        if (!bench.history().isUnsaved()) {
            return Transition.says(state, "All is saved already.");
        }
        return Transition.to(state, saving(bench, List.of()));
    }

    private static Effect saving(OrganEdit bench, List<Effect> then) {
        Instrument next = bench.draft().instrument().orElseThrow();
        return new Effect.SaveOrgan(
                next, Change.of(bench.organ(), bench.draft()).names(), then);
    }

    static Transition saved(State state, Event.OrganSaved saved) {
        State next = state.bench()
                .map(bench -> state.with(Optional.of(bench.savedAs(saved.organ()))))
                .orElse(state);
        return new Transition(next.with(Notice.says(saved.sentence())), saved.then());
    }

    private static Transition close(State state, OrganEdit bench) {
        if (bench.history().isUnsaved()) {
            return asked(state, new Effect.CloseOrgan());
        }
        return closed(state);
    }

    /** Back to the plan, read again if its organ was written; where none is open, to the organs. */
    static Transition closed(State state) {
        boolean written = state.bench()
                .filter(bench -> bench.freshness() == OrganEdit.Freshness.WRITTEN)
                .isPresent();
        State next = state.with(Optional.<OrganEdit>empty()).closed();
        if (next.work().isEmpty()) {
            return LibraryCommands.organs(next);
        }
        return written
                ? Transition.to(next, new Effect.OpenPlan(next.work().get().id()))
                : Transition.to(next);
    }

    /** Asks what is to become of what was changed, before something that leaves the organ. */
    static Transition asked(State state, Effect then) {
        OrganEdit bench = state.bench().orElseThrow();
        List<Panel.Answer> answers = new ArrayList<>();
        int wrong = bench.problems().size();
        if (wrong == 0) {
            answers.add(new Panel.Answer(
                    Key.of('s'), "save, then go on", List.of(saving(bench, List.of(then))), Panel.Reply.BACK));
        }
        answers.add(new Panel.Answer(
                Key.of('d'),
                "go on without saving",
                List.of(new Effect.DropOrganDraft(), then),
                Panel.Reply.DROP_ORGAN));
        answers.add(Panel.Answer.STAY);
        String why = wrong == 0
                ? ""
                : " It cannot be saved as it is: " + bench.problems().get(0).sentence();
        Panel under = state.behindQuestion();
        return Transition.to(
                state.with(new Panel.Question("This organ has changes that are not saved." + why, answers, under)));
    }
}
