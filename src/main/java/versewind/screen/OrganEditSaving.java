package versewind.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import versewind.organ.FormerNames;
import versewind.organ.Instrument;
import versewind.workshop.Change;
import versewind.workshop.DraftHistory;
import versewind.workshop.Problem;

/** Taking an organ to the bench, saving what was changed of it, and leaving it. */
final class OrganEditSaving {

    private OrganEditSaving() {}

    static void into(Map<Command, Handler> handlers) {
        handlers.put(Command.SAVE_ORGAN, OrganEditCommands.bench(OrganEditSaving::save));
        handlers.put(Command.CLOSE_ORGAN, OrganEditCommands.bench(OrganEditSaving::close));
    }

    static State opened(State state, Event.OrganOpened opened) {
        OrganEdit bench = OrganEdit.of(opened.id(), opened.organ());
        State next = state.closed().with(Notice.says(opened.sentence()));
        return opened.draft()
                .map(draft ->
                        aboutDraft(next, bench.with(bench.history().after(draft).undo())))
                .orElseGet(() -> next.with(Optional.of(bench)));
    }

    /** What is to become of work that was kept: until then it stands as what could be done again. */
    private static State aboutDraft(State state, OrganEdit bench) {
        Question.Answer takeUp = new Question.Answer(
                "t",
                "take it up",
                closed -> closed.with(
                        closed.bench().map(each -> each.with(each.history().redo()))));
        Question.Answer forget =
                new Question.Answer("f", "forget it", closed -> dropped(closed).wants(Effects::dropOrganDraft));
        return state.with(Optional.of(bench))
                .open(new Question(
                        "Work on this organ was cut off before it was saved, and has been kept.",
                        List.of(takeUp, forget)));
    }

    /** With what was changed of the organ taken back. */
    private static State dropped(State state) {
        return state.with(state.bench()
                .map(bench -> bench.with(DraftHistory.of(bench.history().saved()))));
    }

    private static State save(State state, OrganEdit bench) {
        List<Problem> problems = bench.problems();
        if (!problems.isEmpty()) {
            String more = problems.size() == 1 ? "" : " (and " + (problems.size() - 1) + " more)";
            return state.with(Optional.of(bench.at(problems.get(0).line())))
                    .with(Notice.warns("Not saved. " + problems.get(0).sentence() + more));
        }
        if (!bench.history().isUnsaved()) {
            return state.says("All is saved already.");
        }
        return state.wants(saving(bench, List.of()));
    }

    private static Effect saving(OrganEdit bench, List<Effect> then) {
        Instrument next = bench.draft().instrument().orElseThrow();
        FormerNames names = Change.of(bench.organ(), bench.draft()).names();
        return effects -> effects.saveOrgan(next, names, then);
    }

    static State saved(State state, Event.OrganSaved saved) {
        State next = state.bench()
                .map(bench -> state.with(Optional.of(bench.savedAs(saved.organ()))))
                .orElse(state);
        return next.with(Notice.says(saved.sentence())).wants(saved.then());
    }

    private static State close(State state, OrganEdit bench) {
        if (bench.history().isUnsaved()) {
            return asked(state, effects -> List.of(new Event.OrganClosed()));
        }
        return closed(state);
    }

    /** Back to the plan, read again if its organ was written; where none is open, to the organs. */
    static State closed(State state) {
        boolean written = state.bench()
                .filter(bench -> bench.freshness() == OrganEdit.Freshness.WRITTEN)
                .isPresent();
        State next = state.with(Optional.<OrganEdit>empty()).closed();
        if (next.work().isEmpty()) {
            return LibraryScreen.organs(next);
        }
        return written
                ? next.wants(effects -> effects.openPlan(next.work().get().id()))
                : next;
    }

    /** Asks what is to become of what was changed, before something that leaves the organ. */
    static State asked(State state, Effect then) {
        OrganEdit bench = state.bench().orElseThrow();
        List<Question.Answer> answers = new ArrayList<>();
        int wrong = bench.problems().size();
        if (wrong == 0) {
            answers.add(
                    new Question.Answer("s", "save, then go on", closed -> closed.wants(saving(bench, List.of(then)))));
        }
        answers.add(new Question.Answer("d", "go on without saving", closed -> dropped(closed)
                .wants(Effects::dropOrganDraft)
                .wants(then)));
        answers.add(Question.Answer.STAY);
        String why = wrong == 0
                ? ""
                : " It cannot be saved as it is: " + bench.problems().get(0).sentence();
        return state.open(new Question("This organ has changes that are not saved." + why, answers));
    }
}
