package versewind.screen.library;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import versewind.organ.Count;
import versewind.organ.Counterparts;
import versewind.organ.Instrument;
import versewind.organ.Quoted;
import versewind.organ.Registration;
import versewind.organ.RegistrationText;
import versewind.plan.BroughtHymn;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Player;
import versewind.plan.ServiceHeading;
import versewind.plan.Sought;
import versewind.plan.VersePlace;
import versewind.screen.state.Chooser;
import versewind.screen.state.Effect;
import versewind.screen.state.Effects;
import versewind.screen.state.Event;
import versewind.screen.state.FormBox;
import versewind.screen.state.Leaving;
import versewind.screen.state.PlanChanges;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.ServiceForm;
import versewind.screen.state.State;
import versewind.screen.toolkit.ShortWords;
import versewind.sheet.Wording;
import versewind.sound.OrganSound;
import versewind.sound.Transfer;

/** What comes of looking into the library. */
public interface LibraryEvent extends Event {

    /**
     * Some of the plans there are.
     *
     * @param plans in any order
     * @param files how many there are in all
     * @param part whether they are the first that were read
     */
    record PlansListed(List<ListedPlan> plans, int files, Part part) implements LibraryEvent {

        /** Which of the plans they are. */
        public enum Part {
            FIRST,
            MORE
        }

        public PlansListed {
            plans = List.copyOf(plans);
        }

        @Override
        public State on(State state) {
            return LibraryScreen.seen(state, library -> library.with(this));
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
    record PlanAssessed(String id, int verses, int wantingAttention, int cautions, String trouble)
            implements LibraryEvent {
        @Override
        public State on(State state) {
            return LibraryScreen.seen(state, library -> library.with(this));
        }
    }

    /** The instruments there are: shown where they are looked at, or else to choose one for a new plan. */
    record InstrumentsListed(List<Chooser.Row> instruments) implements LibraryEvent {
        @Override
        public State on(State state) {
            if (state.top() instanceof LibraryScreen screen && screen.library().side() == LibraryState.Side.ORGANS) {
                return LibraryScreen.seen(state, library -> library.withOrgans(instruments));
            }
            if (state.top() instanceof LibraryScreen screen && screen.library().aim() == LibraryState.Aim.MOVE) {
                return moving(state, screen.library().planList().current(), instruments);
            }
            if (instruments.isEmpty()) {
                return state.closed().warns("There is no organ in the folder instruments yet.");
            }
            return state.open(Chooser.of(
                    "For which organ?",
                    LibraryState.under(state).lastUsedFirst(instruments),
                    (id, choosing) -> choosing.wants(effects -> effects.beginPlan(id))));
        }

        private static State moving(State state, Optional<ListedPlan> plan, List<Chooser.Row> rows) {
            List<Chooser.Row> others = rows.stream()
                    .filter(row -> !row.id().equals(plan.map(ListedPlan::organ).orElse("")))
                    .toList();
            State opening = LibraryScreen.seen(state, library -> library.aimedAt(LibraryState.Aim.OPEN));
            return plan.map(moved -> opening.open(Chooser.of(
                            "Play \"" + moved.title() + "\" on which organ?",
                            others,
                            (id, choosing) -> Leaving.afterAsking(
                                    choosing, "transfer the service", effects -> effects.movePlan(moved.id(), id)))))
                    .orElse(opening);
        }
    }

    /**
     * Words were looked for in the plans.
     *
     * @param typed the words
     * @param where a text that holds them, by the ids of the plans
     */
    record PlansFound(String typed, Map<String, String> where) implements LibraryEvent {
        @Override
        public State on(State state) {
            return LibraryScreen.seen(
                    state,
                    library -> library.filter().text().equals(typed)
                            ? library.with(new LibraryState.Found(typed, where))
                            : library);
        }
    }

    /**
     * A service was moved to another organ, where it is open now: which registrations serve the most verses, to be set
     * on pistons first, and what is missing and replaced.
     */
    record ServiceMoved(List<Counterparts.Replacement> replaced) implements LibraryEvent {

        private static final int MOST_TO_SET = 8;

        @Override
        public State on(State state) {
            return state.onWork(work -> {
                List<Chooser.Row> rows = new ArrayList<>();
                RegistrationText text = new RegistrationText(work.instrument());
                Map<Registration, Long> verses = work.plan().places().stream()
                        .map(place -> work.plan().verse(place).registration())
                        .filter(drawn -> !drawn.stops().isEmpty())
                        .collect(Collectors.groupingBy(each -> each, LinkedHashMap::new, Collectors.counting()));
                verses.entrySet().stream()
                        .sorted(Map.Entry.<Registration, Long>comparingByValue().reversed())
                        .limit(MOST_TO_SET)
                        .forEach(each -> rows.add(new Chooser.Row(
                                "set",
                                "Set first: " + text.format(each.getKey()),
                                Count.of(each.getValue(), "verse"))));
                replaced.stream()
                        .filter(each -> !each.was().startsWith("piston "))
                        .sorted(Comparator.comparing(each -> each.becomes().isPresent()))
                        .forEach(each -> rows.add(row(each)));
                return state.open(Chooser.read("On " + work.instrument().name(), rows));
            });
        }
    }

    /**
     * A plan was begun: its form is shown, in place of the list from which its organ was chosen.
     *
     * @param instrument id of its instrument
     * @param name what the instrument is called
     * @param player who plays new plans
     * @param people how many are expected, unless something else is typed
     */
    record PlanBegun(String instrument, String name, Player player, int people) implements LibraryEvent {
        @Override
        public State on(State state) {
            ServiceHeading usual = new ServiceHeading("", Optional.empty(), people, "").withPlayer(player);
            FormBox form = ServiceForm.ofNewPlan(
                    state, instrument, name, usual, LibraryState.under(state).days());
            return state.top() instanceof Chooser ? state.show(form) : state.open(form);
        }
    }

    /**
     * Something was done in the library, which is no longer as it was read.
     *
     * @param sentence what
     * @param marked the plan that it was done to, if it is still there
     */
    record LibraryChanged(String sentence, Optional<String> marked) implements LibraryEvent {
        @Override
        public State on(State state) {
            LibraryState library = state.top() instanceof LibraryScreen screen ? screen.library() : LibraryState.UNREAD;
            return state.closed()
                    .open(new LibraryScreen(marked.map(library::marking).orElse(library)))
                    .says(sentence)
                    .wants(Effects::listPlans);
        }
    }

    /**
     * The earlier versions of a plan, to choose one.
     *
     * @param plan name of its file without the ending
     * @param versions their indices, and when they were saved
     */
    record VersionsListed(String plan, List<Chooser.Row> versions) implements LibraryEvent {
        @Override
        public State on(State state) {
            if (versions.isEmpty()) {
                return state.says("No earlier version of this plan is kept.");
            }
            return state.open(Chooser.of(
                    "Which version of " + plan + "? The plan opens with it as an edit.",
                    versions,
                    (id, choosing) -> Leaving.afterAsking(
                            choosing,
                            "open the earlier version",
                            effects -> effects.openVersion(plan, Integer.parseInt(id)))));
        }
    }

    /** An earlier version of the plan that was just opened becomes an edit of it. */
    record VersionRead(Plan version) implements LibraryEvent {
        @Override
        public State on(State state) {
            return state.onWork(work -> PlanChanges.edit(
                    state.says("Restored; not saved yet. u undoes it."), work, version, VersePlace.START));
        }
    }

    /**
     * The hymns of the plan that was chosen.
     *
     * @param plan name of its file without the ending
     * @param title its title
     * @param hymns their indices, numbers with titles, and tunes
     */
    record HymnsRead(String plan, String title, List<Chooser.Row> hymns) implements LibraryEvent {
        @Override
        public State on(State state) {
            return state.open(Chooser.of(
                    "Which hymn of \"" + title + "\"?",
                    hymns,
                    (id, choosing) -> choosing.wants(
                            effects -> effects.bringHymn(plan, Integer.parseInt(id), Effect.Bringing.NEW_HYMN))));
        }
    }

    /**
     * Hymns like one of the plan that is open were found: said where nothing else was, or listed to draw the same.
     *
     * @param like which
     * @param found the plan and the index of each, parted by a line end; the service; its organ
     * @param telling how it is told
     */
    record HymnsFound(Hymn like, List<Chooser.Row> found, Effect.Telling telling) implements LibraryEvent {

        @Override
        public State on(State state) {
            boolean isCurrent = state.work().flatMap(PlanEdit::hymn).equals(Optional.of(like));
            if (!isCurrent) {
                return state;
            }
            String name = like.tune().isBlank() ? like.title() : like.tune();
            return switch (telling) {
                case IN_A_SENTENCE ->
                    found.isEmpty()
                                    || !(state.isSpoken()
                                            || state.notice().text().isBlank())
                            ? state
                            : state.says(name + " is also in " + found.get(0).first()
                                    + (found.size() > 1 ? " and " + (found.size() - 1) + " more" : "")
                                    + ". B shows it, to draw the same.");
                case LISTED ->
                    found.isEmpty()
                            ? state.says("No other plan has " + Quoted.text(name) + ".")
                            : state.open(Chooser.of(
                                    name + " is also in these services. Draw the same?", found, HymnsFound::chosen));
            };
        }

        private static State chosen(String id, State choosing) {
            int end = id.indexOf('\n');
            int index = Integer.parseInt(id.substring(end + 1));
            return choosing.close()
                    .wants(effects -> effects.bringHymn(id.substring(0, end), index, Effect.Bringing.VERSES));
        }
    }

    /**
     * A hymn is brought over: it comes after the current one, or its verses replace the current ones; and what of it
     * is drawn otherwise on this organ is told.
     *
     * @param hymn as it was planned
     * @param instrument for which
     * @param as as what
     */
    record HymnBrought(Hymn hymn, Instrument instrument, Effect.Bringing as) implements LibraryEvent {
        @Override
        public State on(State state) {
            return state.work().map(work -> brought(state.closed(), work)).orElse(state);
        }

        private State brought(State closed, PlanEdit work) {
            BroughtHymn here = new Transfer(
                            instrument.equals(work.instrument()) ? work.sound() : OrganSound.open(instrument),
                            work.sound(),
                            work.plan().heading().people())
                    .of(hymn);
            Hymn locked = here.hymn().locking(work.plan().locks());
            boolean isForCurrent = as == Effect.Bringing.VERSES && work.hymn().isPresent();
            int at = work.hymn().isEmpty() ? 0 : work.place().hymn() + (isForCurrent ? 0 : 1);
            Plan plan = isForCurrent
                    ? work.plan().withHymn(at, work.hymn().get().completedFrom(locked))
                    : work.plan().inserting(at, locked);
            String verses = isForCurrent
                    ? Wording.otherVerses(work.hymn().get(), plan.hymns().get(at))
                    : "";
            State after = PlanChanges.edit(
                    closed.says("Copied" + verses + "; u to undo."), work, plan, new VersePlace(at, 0));
            List<Chooser.Row> replaced =
                    here.replacements().stream().map(LibraryEvent::row).toList();
            return replaced.isEmpty() ? after : after.open(Chooser.read("Replaced on this organ", replaced));
        }
    }

    private static Chooser.Row row(Counterparts.Replacement of) {
        return new Chooser.Row(of.was(), of.was(), of.becomes().orElse("no equivalent on this organ"));
    }

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
            String when = date.map(day -> ShortWords.day(day) + " " + day).orElse("");
            String all = String.join("\n", title, when, organ, id, condition.words);
            return new ListedPlan(id, title, date, organ, edited, condition, Sought.plain(all));
        }
    }
}
