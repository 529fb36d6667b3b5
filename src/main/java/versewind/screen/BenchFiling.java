package versewind.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import versewind.organ.Instrument;
import versewind.workshop.Change;
import versewind.workshop.Problem;

/** Taking an organ to the bench, saving what was changed of it, and leaving it. */
final class BenchFiling {

    private BenchFiling() {}

    static void into(Map<Command, Handler> handlers) {
        handlers.put(Command.SAVE_ORGAN, Benching.bench(BenchFiling::save));
        handlers.put(Command.CLOSE_ORGAN, Benching.bench(BenchFiling::close));
    }

    static Step opened(State state, Input.OrganOpened opened) {
        Bench bench = Bench.of(opened.id(), opened.organ());
        State next = state.closed().with(Notice.says(opened.sentence()));
        return opened.draft()
                .map(draft ->
                        aboutDraft(next, bench.with(bench.history().after(draft).undo())))
                .orElseGet(() -> Step.to(next.with(Optional.of(bench))));
    }

    /** What is to become of work that was kept: until then it stands as what could be done again. */
    private static Step aboutDraft(State state, Bench bench) {
        Panel.Answer takeUp = new Panel.Answer(Key.of('t'), "take it up", List.of(), Panel.Reply.TAKE_UP_ORGAN);
        Panel.Answer forget = new Panel.Answer(
                Key.of('f'), "forget it", List.of(new Effect.DropOrganDraft()), Panel.Reply.DROP_ORGAN);
        return Step.to(state.with(Optional.of(bench))
                .with(new Panel.Question(
                        "Work on this organ was cut off before it was saved, and has been kept.",
                        List.of(takeUp, forget),
                        new Panel.None())));
    }

    private static Step save(State state, Bench bench) {
        List<Problem> problems = bench.problems();
        if (!problems.isEmpty()) {
            String more = problems.size() == 1 ? "" : " (and " + (problems.size() - 1) + " more)";
            return Step.to(state.with(Optional.of(bench.at(problems.get(0).line())))
                    .with(Notice.warns("Not saved. " + problems.get(0).sentence() + more)));
        }
        if (!bench.history().isUnsaved()) {
            return Step.says(state, "All is saved already.");
        }
        return Step.to(state, saving(bench, List.of()));
    }

    private static Effect saving(Bench bench, List<Effect> then) {
        Instrument next = bench.draft().instrument().orElseThrow();
        return new Effect.SaveOrgan(
                next, Change.of(bench.organ(), bench.draft()).names(), then);
    }

    static Step saved(State state, Input.OrganSaved saved) {
        State next = state.bench()
                .map(bench -> state.with(Optional.of(bench.savedAs(saved.organ()))))
                .orElse(state);
        return new Step(next.with(Notice.says(saved.sentence())), saved.then());
    }

    private static Step close(State state, Bench bench) {
        if (bench.history().isUnsaved()) {
            return asked(state, new Effect.CloseOrgan());
        }
        return closed(state);
    }

    /** Back to the plan, read again if its organ was written; where none is open, to the organs. */
    static Step closed(State state) {
        boolean written = state.bench()
                .filter(bench -> bench.freshness() == Bench.Freshness.WRITTEN)
                .isPresent();
        State next = state.with(Optional.<Bench>empty()).closed();
        if (next.work().isEmpty()) {
            return Shelving.organs(next);
        }
        return written ? Step.to(next, new Effect.OpenPlan(next.work().get().id())) : Step.to(next);
    }

    /** Asks what is to become of what was changed, before something that leaves the organ. */
    static Step asked(State state, Effect then) {
        Bench bench = state.bench().orElseThrow();
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
        return Step.to(
                state.with(new Panel.Question("This organ has changes that are not saved." + why, answers, under)));
    }
}
