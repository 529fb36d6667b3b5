package versewind.screen;

import java.util.Optional;
import versewind.calibration.CalibratedOrgan;
import versewind.calibration.Experience;

/** What comes of asking for what is usual on an organ, and of keeping it. */
public final class UsualEvent {

    private UsualEvent() {}

    /** The usual registrations of the organ that is being changed were asked for. */
    public record Opened(CalibratedOrgan organ) implements Event {
        @Override
        public State on(State state) {
            return UsualScreen.open(state, organ, UsualScreen.Owner.ORGAN_BEING_CHANGED);
        }
    }

    /**
     * What an organist knows without a meter was kept in the organ's file.
     *
     * @param organ as it is known now
     * @param before what undo goes back to; empty after an undo, and where an organ is changed
     */
    public record Kept(CalibratedOrgan organ, Optional<Experience> before) implements Event {
        @Override
        public State on(State state) {
            return UsualScreen.kept(state, this);
        }
    }
}
