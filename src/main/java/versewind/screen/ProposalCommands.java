package versewind.screen;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.plan.Edit;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.proposal.Proposal;
import versewind.proposal.RegistrationProposer;
import versewind.proposal.ServiceProposal;

/** Having registrations proposed: for the verse where we are at once, for a hymn or the service while the player waits. */
final class ProposalCommands {
    private ProposalCommands() {}

    static void into(Map<Command, Handler> handlers) {
        handlers.put(Command.PROPOSE, Handler.verse((state, work, verse) -> open(state, work)));
        handlers.put(Command.PROPOSAL_BELOW, panel((state, work, panel) -> toRow(state, panel, panel.at() + 1)));
        handlers.put(Command.PROPOSAL_ABOVE, panel((state, work, panel) -> toRow(state, panel, panel.at() - 1)));
        handlers.put(Command.TAKE_PROPOSAL, panel(ProposalCommands::take));
        handlers.put(
                Command.PROPOSE_HYMN,
                panel((state, work, panel) ->
                        search(state, work, OptionalInt.of(work.place().hymn()))));
        handlers.put(Command.PROPOSE_SERVICE, panel((state, work, panel) -> search(state, work, OptionalInt.empty())));
        handlers.put(Command.CLOSE_PROPOSALS, state -> Transition.to(state.closed()));
        handlers.put(Command.STOP_SEARCH, state -> Transition.to(state, new Effect.StopProposing()));
    }

    @FunctionalInterface
    private interface OnProposals {
        Transition on(State state, PlanEdit work, Panel.Proposals panel);
    }

    private static Handler panel(OnProposals handler) {
        return Handler.work((state, work) ->
                state.panel() instanceof Panel.Proposals panel ? handler.on(state, work, panel) : Transition.to(state));
    }

    private static Transition open(State state, PlanEdit work) {
        RegistrationProposer.OfVerse found =
                RegistrationProposer.of(work.sound()).forVerse(work.plan(), work.place());
        Optional<String> none = found.none();
        return none.isPresent()
                ? Transition.says(state, none.get())
                : Transition.to(state.with(new Panel.Proposals(found.proposals(), 0)));
    }

    private static Transition toRow(State state, Panel.Proposals panel, int row) {
        int at = Math.max(0, Math.min(row, panel.rows().size() - 1));
        return Transition.to(state.with(new Panel.Proposals(panel.rows(), at)));
    }

    private static Transition take(State state, PlanEdit work, Panel.Proposals panel) {
        Proposal chosen = panel.rows().get(panel.at());
        Verse drawn = chosen.on(work.plan(), work.place(), work.instrument());
        return Handler.change(state.closed(), work, drawn);
    }

    private static Transition search(State state, PlanEdit work, OptionalInt hymn) {
        Optional<Plan> heeded = work.isHeeding() ? Optional.of(work.plan()) : Optional.empty();
        return Transition.to(
                state.with(new Panel.Searching(0, verses(work.plan(), hymn))),
                new Effect.Propose(work.plan(), hymn, heeded));
    }

    private static int verses(Plan plan, OptionalInt hymn) {
        return hymn.isPresent()
                ? plan.hymns().get(hymn.getAsInt()).verses().size()
                : plan.hymns().stream().mapToInt(each -> each.verses().size()).sum();
    }

    /** The search is so far. */
    static Transition searched(State state, Event.Searched searched) {
        return state.panel() instanceof Panel.Searching
                ? Transition.to(state.with(new Panel.Searching(searched.verses(), searched.of())))
                : Transition.to(state);
    }

    /** The search has ended: what it found becomes one edit. */
    static Transition proposed(State state, Event.Proposed proposed) {
        Optional<PlanEdit> work = state.work();
        boolean isAwaited = state.panel() instanceof Panel.Searching
                && work.isPresent()
                && work.get().plan().equals(proposed.plan());
        if (!isAwaited) {
            return Transition.to(state);
        }
        ServiceProposal found = proposed.found();
        if (found.verses().isEmpty()) {
            return Transition.says(state.closed(), "Nothing is proposed.");
        }
        Edit edit = new Edit.SetHymns(
                List.copyOf(found.on(proposed.plan()).hymns()), work.get().place());
        Transition step = Handler.edit(state.closed(), work.get(), edit);
        return step.saying(words(found));
    }

    private static String words(ServiceProposal found) {
        int verses = found.verses().size();
        String pistons = found.pistons() == 0 ? "" : ", " + found.pistons() + " on pistons";
        String left = found.unsearched() == 0 ? "" : "; " + found.unsearched() + " were not reached";
        return verses + (verses == 1 ? " verse is" : " verses are") + " drawn anew" + pistons + left
                + ". u takes it back.";
    }
}
