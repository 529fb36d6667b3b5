package versewind.screen.plan;

import java.util.List;
import java.util.Optional;
import versewind.calibration.CalibratedOrgan;
import versewind.calibration.Experience;
import versewind.plan.Plan;
import versewind.proposal.RegistrationProposer;
import versewind.proposal.ServiceProposal;
import versewind.screen.state.Event;
import versewind.screen.state.State;

/** What comes of searching for registrations, of reading a meter, and of what an organist usually draws. */
public interface PlanEvent extends Event {

    /** Of the verses for which registrations are searched so many are done. */
    record Searched(int verses, int of) implements PlanEvent {
        @Override
        public State on(State state) {
            return state.update(SearchScreen.class, screen -> new SearchScreen(verses, of));
        }
    }

    /**
     * Registrations were searched for a verse, to the end or until it was stopped.
     *
     * @param plan of which
     * @param found what was found
     */
    record VerseProposed(Plan plan, RegistrationProposer.OfVerse found) implements PlanEvent {
        @Override
        public State on(State state) {
            return SearchScreen.found(state, this);
        }
    }

    /**
     * Registrations were searched for many verses, to the end or until it was stopped.
     *
     * @param plan for which
     * @param found what was found
     */
    record Proposed(Plan plan, ServiceProposal found) implements PlanEvent {
        @Override
        public State on(State state) {
            return SearchScreen.found(state, this);
        }
    }

    /**
     * The organ was fitted to readings, and its file written.
     *
     * @param organ its sound and calibration after the fit
     * @param outliers indices of the readings that disagree with all others
     */
    record Recalibrated(CalibratedOrgan organ, List<Integer> outliers) implements PlanEvent {
        @Override
        public State on(State state) {
            return ReadingsScreen.recalibrated(state, this);
        }

        public Recalibrated {
            outliers = List.copyOf(outliers);
        }
    }

    /** The usual registrations of the organ that is being changed were asked for. */
    record UsualOpened(CalibratedOrgan organ) implements PlanEvent {
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
    record UsualKept(CalibratedOrgan organ, Optional<Experience> before) implements PlanEvent {
        @Override
        public State on(State state) {
            return UsualScreen.kept(state, this);
        }
    }
}
