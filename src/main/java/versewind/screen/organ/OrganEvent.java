package versewind.screen.organ;

import java.util.List;
import java.util.Optional;
import versewind.calibration.Experience;
import versewind.organ.Instrument;
import versewind.schema.OrganDraft;
import versewind.screen.state.Effect;
import versewind.screen.state.Event;
import versewind.screen.state.State;

/** What comes of opening an organ to change it, and of saving it. */
public interface OrganEvent extends Event {

    /**
     * An organ was opened to be changed.
     *
     * @param id name of its file without the ending
     * @param organ as it lies saved
     * @param known what its organist knows without a meter
     * @param sentence what is to be said of it; blank for nothing
     * @param draft work on it that was kept and not saved
     */
    record OrganOpened(String id, Instrument organ, Experience known, String sentence, Optional<OrganDraft> draft)
            implements OrganEvent {
        @Override
        public State on(State state) {
            return OrganScreen.opened(state, this);
        }
    }

    /**
     * An organ was made of a stop list, and is open. Its room is asked next, and then what is usually drawn.
     *
     * @param opened as it was opened
     */
    record OrganMade(OrganOpened opened) implements OrganEvent {
        @Override
        public State on(State state) {
            return OrganScreen.made(state, opened);
        }
    }

    /** The organ that is being changed is written in the background, and then its plans. */
    record SavingBegun() implements OrganEvent {
        @Override
        public State on(State state) {
            return state.open(new SavingScreen(0, 0));
        }
    }

    /** Of the plans that may know the organ by former names so many have been looked at. */
    record Rewriting(int plans, int of) implements OrganEvent {
        @Override
        public State on(State state) {
            return state.update(SavingScreen.class, screen -> new SavingScreen(plans, of));
        }
    }

    /** The organ and its plans are written, or could not be: what came of it. */
    record SavingEnded(Event outcome) implements OrganEvent {
        @Override
        public State on(State state) {
            return outcome.on(state.top() instanceof SavingScreen ? state.close() : state);
        }
    }

    /**
     * The organ that is being changed was written.
     *
     * @param organ as it was written
     * @param sentence what became of its plans
     * @param then what is to be done now
     */
    record OrganSaved(Instrument organ, String sentence, List<Effect> then) implements OrganEvent {
        @Override
        public State on(State state) {
            return state.update(OrganScreen.class, screen -> screen.written(organ))
                    .says(sentence)
                    .wants(then);
        }
    }
}
