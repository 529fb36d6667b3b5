package versewind.screen;

/** What a command does with a state. */
@FunctionalInterface
interface Handler {

    State on(State state);

    /** What a command does with the plan that is open. */
    @FunctionalInterface
    interface OnWork {
        State on(State state, PlanEdit work);
    }

    /** A command that needs an open plan. */
    static Handler work(OnWork handler) {
        return state -> state.work()
                .map(work -> handler.on(state, work))
                .orElseGet(() -> state.says("No plan is open. Press o to open one."));
    }
}
