package versewind.screen;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import versewind.calibration.CalibratedOrgan;
import versewind.calibration.Experience;
import versewind.organ.Instrument;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Player;
import versewind.plan.Sought;
import versewind.proposal.RegistrationProposer;
import versewind.proposal.ServiceProposal;
import versewind.rules.DynamicSteps;
import versewind.schema.OrganDraft;

/** Something that happened outside. */
public interface Event {

    /** What comes of it: the state after it, with what is wanted done. */
    State on(State state);

    /** A key was pressed. */
    record Press(Key key) implements Event {
        @Override
        public State on(State state) {
            return Update.press(state.with(Notice.NONE), key);
        }
    }

    /** Text was pasted as one piece. */
    record Paste(String text) implements Event {
        @Override
        public State on(State state) {
            return state.top().pasted(text, state.with(Notice.NONE));
        }
    }

    /** The terminal has another size now. */
    record Resize(int columns, int rows) implements Event {
        @Override
        public State on(State state) {
            return state.sized(columns, rows);
        }
    }

    /** Nobody listens any more: the line was dropped or the input ended. */
    record Hangup() implements Event {
        @Override
        public State on(State state) {
            return Update.hangup(state);
        }
    }

    /**
     * A plan was written.
     *
     * @param plan as it was written
     * @param then what is to be done now
     */
    record Saved(Plan plan, List<Effect> then) implements Event {
        @Override
        public State on(State state) {
            return FileCommands.saved(state, this);
        }
    }

    /**
     * A plan was not written, since its file has changed since it was read.
     *
     * @param plan as it was to be written
     * @param then what was to be done then
     */
    record SaveRefused(Plan plan, List<Effect> then) implements Event {
        @Override
        public State on(State state) {
            return FileCommands.saveRefused(state, this);
        }
    }

    /** Something was done; the sentence says what and where. */
    record Done(String sentence) implements Event {
        @Override
        public State on(State state) {
            return state.says(sentence);
        }
    }

    /** Something could not be done; the sentence says what, where and what to do. */
    record Failed(String sentence) implements Event {
        @Override
        public State on(State state) {
            return FileCommands.failed(state, sentence);
        }
    }

    /**
     * Some of the plans there are.
     *
     * @param plans in any order
     * @param files how many there are in all
     * @param part whether they are the first that were read
     */
    record PlansListed(List<ListedPlan> plans, int files, Part part) implements Event {
        @Override
        public State on(State state) {
            return LibraryScreen.listed(state, this);
        }

        /** Which of the plans they are. */
        public enum Part {
            FIRST,
            MORE
        }

        public PlansListed {
            plans = List.copyOf(plans);
        }
    }

    /**
     * How a plan of the library stands.
     *
     * @param id name of its file without the ending
     * @param verses how many verses it has
     * @param wantingAttention how many of them want attention
     * @param cautions how many cautions stand in it
     * @param trouble why it cannot be read or estimated; blank if it can
     */
    record PlanAssessed(String id, int verses, int wantingAttention, int cautions, String trouble) implements Event {
        @Override
        public State on(State state) {
            return LibraryScreen.assessed(state, this);
        }
    }

    /**
     * The hymns of a plan.
     *
     * @param plan name of its file without the ending
     * @param title its title
     * @param hymns their indices, numbers with titles, and tunes
     */
    record HymnsRead(String plan, String title, List<Listed> hymns) implements Event {
        @Override
        public State on(State state) {
            return LibraryScreen.hymnsRead(state, this);
        }
    }

    /**
     * A hymn is brought over.
     *
     * @param hymn as it was planned
     * @param instrument for which
     */
    record HymnBrought(Hymn hymn, Instrument instrument) implements Event {
        @Override
        public State on(State state) {
            return LibraryScreen.brought(state, this);
        }
    }

    /**
     * Something was done in the library.
     *
     * @param sentence what
     * @param marked the plan that it was done to, if it is still there
     */
    record LibraryChanged(String sentence, Optional<String> marked) implements Event {
        @Override
        public State on(State state) {
            return LibraryScreen.changed(state, this);
        }
    }

    /**
     * The plan that is open was written to a file of its own, on which work goes on.
     *
     * @param id name of that file without the ending
     * @param plan as it was written
     */
    record SavedUnder(String id, Plan plan) implements Event {
        @Override
        public State on(State state) {
            return FileCommands.savedUnder(state, this);
        }
    }

    /**
     * A plan was begun.
     *
     * @param instrument id of its instrument
     * @param player who plays new plans
     */
    record PlanBegun(String instrument, Player player) implements Event {
        @Override
        public State on(State state) {
            return LibraryScreen.begun(state, this);
        }
    }

    /** The instruments there are. */
    record InstrumentsListed(List<Listed> instruments) implements Event {
        @Override
        public State on(State state) {
            return LibraryScreen.instrumentsListed(state, this);
        }
    }

    /**
     * A plan was opened.
     *
     * @param id name of its file without the ending
     * @param plan as it lies saved
     * @param instrument the instrument it is for
     * @param organ its sound and calibration
     * @param draft unsaved work on it that was found beside it
     */
    record PlanOpened(String id, Plan plan, Instrument instrument, CalibratedOrgan organ, Optional<Plan> draft)
            implements Event {
        @Override
        public State on(State state) {
            return FileCommands.planOpened(state, this);
        }
    }

    /**
     * The organ was fitted to readings, and its file written.
     *
     * @param organ its sound and calibration after the fit
     * @param outliers indices of the readings that disagree with all others
     */
    record Recalibrated(CalibratedOrgan organ, List<Integer> outliers) implements Event {
        @Override
        public State on(State state) {
            return ReadingsScreen.recalibrated(state, this);
        }

        public Recalibrated {
            outliers = List.copyOf(outliers);
        }
    }

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
            implements Event {
        @Override
        public State on(State state) {
            return OrganScreen.opened(state, this);
        }
    }

    /** Of the verses for which registrations are searched so many are done. */
    record Searched(int verses, int of) implements Event {
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
    record VerseProposed(Plan plan, RegistrationProposer.OfVerse found) implements Event {
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
    record Proposed(Plan plan, ServiceProposal found) implements Event {
        @Override
        public State on(State state) {
            return SearchScreen.found(state, this);
        }
    }

    /** The organ that was being changed is left. */
    record OrganClosed() implements Event {
        @Override
        public State on(State state) {
            return OrganScreen.closed(state);
        }
    }

    /**
     * The organ that is being changed was written.
     *
     * @param organ as it was written
     * @param sentence what became of its plans
     * @param then what is to be done now
     */
    record OrganSaved(Instrument organ, String sentence, List<Effect> then) implements Event {
        @Override
        public State on(State state) {
            return OrganScreen.saved(state, this);
        }
    }

    /**
     * It was found what makes a verse stronger and softer.
     *
     * @param of which verse, and for how many people
     * @param ladder its steps
     */
    record LadderFound(Effect.LadderOf of, DynamicSteps ladder) implements Event {
        @Override
        public State on(State state) {
            return DeskScreen.found(state, this);
        }
    }

    /**
     * A file in a list.
     *
     * @param id its name without the ending
     * @param title what it calls itself
     * @param detail date, place or what is wrong with it
     */
    record Listed(String id, String title, String detail) {}

    /**
     * A plan in the library.
     *
     * @param id name of its file without the ending
     * @param title its title
     * @param date the day, if set
     * @param organ name of its instrument's file without the ending
     * @param edited when it was last written
     * @param condition what is known of it without reading it whole
     * @param plain all that is looked through for what is typed, as {@link versewind.plan.Sought#plain} writes it
     */
    record ListedPlan(
            String id,
            String title,
            Optional<LocalDate> date,
            String organ,
            LocalDateTime edited,
            Condition condition,
            String plain) {

        /** What is known of a plan without reading it whole. */
        public enum Condition {
            SAVED(""),
            UNSAVED_WORK("unsaved changes"),
            UNREADABLE("cannot be read");

            private final String words;

            Condition(String words) {
                this.words = words;
            }

            /** In words; blank where there is nothing to say. */
            String words() {
                return words;
            }
        }

        /** A plan that is found by its file, title, date and organ. */
        public static ListedPlan of(
                String id,
                String title,
                Optional<LocalDate> date,
                String organ,
                LocalDateTime edited,
                Condition condition) {
            String when = date.map(day -> HeaderView.day(day) + " " + day).orElse("");
            String all = String.join("\n", title, when, organ, id, condition.words);
            return new ListedPlan(id, title, date, organ, edited, condition, Sought.plain(all));
        }
    }
}
