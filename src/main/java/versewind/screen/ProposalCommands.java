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
        handlers.put(Command.CLOSE_PROPOSALS, state -> state.closed());
        handlers.put(Command.STOP_SEARCH, state -> state.wants(new Effect.StopProposing()));
    }

    @FunctionalInterface
    private interface OnProposals {
        State on(State state, PlanEdit work, Panel.Proposals panel);
    }

    private static Handler panel(OnProposals handler) {
        return Handler.work((state, work) ->
                state.panel() instanceof Panel.Proposals panel ? handler.on(state, work, panel) : state);
    }

    private static State open(State state, PlanEdit work) {
        RegistrationProposer.OfVerse found =
                RegistrationProposer.of(work.sound()).forVerse(work.plan(), work.place());
        Optional<String> none = found.none();
        return none.isPresent() ? state.says(none.get()) : state.with(new Panel.Proposals(found.proposals(), 0));
    }

    private static State toRow(State state, Panel.Proposals panel, int row) {
        int at = Math.max(0, Math.min(row, panel.rows().size() - 1));
        return state.with(new Panel.Proposals(panel.rows(), at));
    }

    private static State take(State state, PlanEdit work, Panel.Proposals panel) {
        Proposal chosen = panel.rows().get(panel.at());
        Verse drawn = chosen.on(work.plan(), work.place(), work.instrument());
        return Handler.change(state.closed(), work, drawn);
    }

    private static State search(State state, PlanEdit work, OptionalInt hymn) {
        Optional<Plan> heard = work.isWithFeedback() ? Optional.of(work.plan()) : Optional.empty();
        return state.with(new Panel.Searching(0, verses(work.plan(), hymn)))
                .wants(new Effect.Propose(work.plan(), hymn, heard));
    }

    private static int verses(Plan plan, OptionalInt hymn) {
        return hymn.isPresent()
                ? plan.hymns().get(hymn.getAsInt()).verses().size()
                : plan.hymns().stream().mapToInt(each -> each.verses().size()).sum();
    }

    /** The search is so far. */
    static State searched(State state, Event.Searched searched) {
        return state.panel() instanceof Panel.Searching
                ? state.with(new Panel.Searching(searched.verses(), searched.of()))
                : state;
    }

    /** The search has ended: what it found becomes one edit. */
    static State proposed(State state, Event.Proposed proposed) {
        Optional<PlanEdit> work = state.work();
        boolean isAwaited = state.panel() instanceof Panel.Searching
                && work.isPresent()
                && work.get().plan().equals(proposed.plan());
        if (!isAwaited) {
            return state;
        }
        ServiceProposal found = proposed.found();
        if (found.verses().isEmpty()) {
            return state.closed().says("Nothing is proposed.");
        }
        Edit edit = new Edit.SetHymns(
                List.copyOf(found.on(proposed.plan()).hymns()), work.get().place());
        State step = Handler.edit(state.closed(), work.get(), edit);
        return step.says(words(found));
    }

    private static String words(ServiceProposal found) {
        int verses = found.verses().size();
        String pistons = found.pistons() == 0 ? "" : ", " + found.pistons() + " on pistons";
        String left = found.unsearched() == 0 ? "" : "; " + found.unsearched() + " were not reached";
        return verses + (verses == 1 ? " verse is" : " verses are") + " drawn anew" + pistons + left
                + ". u takes it back.";
    }
}
